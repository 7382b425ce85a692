//! Reasons looked up after the plan is composed: rule, evidence, and the part of the record.

use evidence::ids;
use operative::{DimensionId, Record};
use plan::{LaneId, Reason, RecordPlace};
use protocol::Binding;
use protocol::file::{Limit, Rule, When};

use crate::dated::Dated;
use crate::issue::LineOf;

/// Looks reasons up for one record.
pub(crate) struct Reasons<'c> {
    pub dated: &'c Dated<'c>,
    pub record: &'c Record,
    pub line_of: LineOf<'c>,
}

impl Reasons<'_> {
    /// Why a lane has its value on a day.
    pub(crate) fn of_limit(&self, lane: LaneId, day: u16) -> Vec<Reason> {
        let dated = self.dated;
        if let Some(loosened) = dated.loosening(lane, day) {
            return vec![Reason {
                rule: "loosening".into(),
                text: format!("loosened by the surgeon: {}", loosened.reason),
                evidence: Vec::new(),
                record: Vec::new(),
            }];
        }
        let joint = dated.plan.grid.keys[usize::from(lane.0)].joint;
        let (lived, own) = (dated.column(joint, day), dated.plan.grid.column(day));
        // A hold never raises a limit: where the day itself is stricter, it has the reason.
        let column = if dated.plan.cell(lane, own) < dated.plan.cell(lane, lived) { own } else { lived };
        let bindings = dated.compiled.binding(&dated.plan, &dated.facts, lane, column);
        let mut reasons: Vec<Reason> =
            bindings.iter().map(|binding| self.of_binding(binding, dated.plan.grid.days[column])).collect();
        if lived != own && column == lived && dated.plan.cell(lane, own) != dated.plan.cell(lane, lived) {
            reasons.push(held());
        }
        reasons
    }

    /// Why the sling is worn as it is on a day.
    pub(crate) fn of_sling(&self, day: u16) -> Vec<Reason> {
        let dated = self.dated;
        let column = {
            let lived = dated.column(body::Joint::WholeArm, day);
            let own = dated.plan.grid.column(day);
            if dated.plan.wear[own] > dated.plan.wear[lived] { own } else { lived }
        };
        dated
            .compiled
            .sling_binding(&dated.plan, dated.choices, column)
            .into_iter()
            .map(|(rule, protocol, step)| {
                let protocol_id = &dated.compiled.protocol(protocol).id;
                let capped_by = (protocol != dated.plan.protocol)
                    .then(|| dated.compiled.capping_rule(&dated.plan, protocol))
                    .flatten();
                Reason {
                    rule: rule.map_or_else(|| format!("{protocol_id}/sling"), |rule| rule.id.clone()),
                    text: match (rule, capped_by) {
                        (Some(rule), _) => rule.title.clone(),
                        (None, Some(cap)) => format!("the sling of the {protocol_id} protocol ({})", cap.title),
                        (None, None) => format!("the sling of the {protocol_id} protocol"),
                    },
                    evidence: step.evidence.clone(),
                    record: match rule.or(capped_by) {
                        Some(rule) => self.places(&rule.when),
                        None => self.selection(),
                    },
                }
            })
            .collect()
    }

    fn of_binding(&self, binding: &Binding<'_>, plan_day: u16) -> Reason {
        match binding {
            Binding::Protocol { protocol, limit, capped_by } => {
                let protocol = self.dated.compiled.protocol(*protocol);
                let title = match not_before(limit, plan_day) {
                    Some(day) => format!("{}: not before day {day}", limit.title),
                    None => limit.title.clone(),
                };
                Reason {
                    rule: format!("{}/{}", protocol.id, limit.id),
                    text: match capped_by {
                        Some(rule) => format!("{title} ({})", rule.title),
                        None => title,
                    },
                    evidence: limit.evidence.clone(),
                    record: match capped_by {
                        Some(rule) => self.places(&rule.when),
                        None => self.selection(),
                    },
                }
            }
            Binding::ClosedWorld { .. } => Reason {
                rule: "closed-world".into(),
                text: ids::CLOSED_WORLD.what.into(),
                evidence: vec![ids::CLOSED_WORLD],
                record: Vec::new(),
            },
            Binding::Rule { rule } => self.of_rule(rule),
            Binding::SafeArc { index } => Reason {
                rule: "safe-arc".into(),
                text: ids::SAFE_ARC_CAPS.what.into(),
                evidence: vec![ids::SAFE_ARC_CAPS],
                record: self.safe_arc(*index),
            },
        }
    }

    /// A rule as a reason.
    pub(crate) fn of_rule(&self, rule: &Rule) -> Reason {
        Reason {
            rule: rule.id.clone(),
            text: rule.title.clone(),
            evidence: rule.evidence.clone(),
            record: self.places(&rule.when),
        }
    }

    /// The places of the record that satisfy conditions.
    pub(crate) fn places(&self, when: &When) -> Vec<RecordPlace> {
        when.holding(&self.dated.facts).flat_map(|condition| self.basis(condition.dimension)).collect()
    }

    /// The places of the record that the protocol was selected by.
    pub(crate) fn selection(&self) -> Vec<RecordPlace> {
        let family = &self.dated.compiled.family.file;
        let chosen = &self.dated.compiled.protocol(self.dated.plan.protocol).id;
        let fired: Vec<RecordPlace> = family
            .selects
            .iter()
            .filter(|select| select.protocol == *chosen && select.when.holds(&self.dated.facts))
            .flat_map(|select| self.places(&select.when))
            .collect();
        if !fired.is_empty() {
            return fired;
        }
        let mut dimensions: Vec<DimensionId> = family
            .selects
            .iter()
            .flat_map(|select| select.when.all.iter().chain(&select.when.any))
            .map(|c| c.dimension)
            .collect();
        dimensions.dedup();
        dimensions.into_iter().flat_map(|dimension| self.basis(dimension)).collect()
    }

    fn basis(&self, dimension: DimensionId) -> Vec<RecordPlace> {
        self.record
            .basis(dimension)
            .into_iter()
            .map(|basis| RecordPlace { line: basis.span.map(self.line_of), path: basis.path, shown: basis.shown })
            .collect()
    }

    fn safe_arc(&self, index: u8) -> Vec<RecordPlace> {
        let arcs = self.record.operation.safe_arcs.iter().filter(|arc| arc.index == index);
        arcs.map(|arc| RecordPlace {
            path: format!("operation.safe_arc[{index}].up_to"),
            shown: format!("{} up to {} deg", arc.movement.value, arc.up_to.value),
            line: Some((self.line_of)(arc.up_to.span)),
        })
        .collect()
    }
}

/// The first day on which a limit opens, where it is shut on a day.
fn not_before(limit: &Limit, day: u16) -> Option<u16> {
    let shut = !limit.steps.iter().any(|step| step.from <= day && step.until.is_none_or(|until| day < until));
    shut.then(|| limit.steps.iter().filter(|step| step.cell.is_open()).map(|step| step.from).find(|&from| from > day))
        .flatten()
}

/// The reason of a hold or a go-back.
fn held() -> Reason {
    Reason {
        rule: "hold".into(),
        text: ids::HOLD_KEEPS_LIMITS.what.into(),
        evidence: vec![ids::HOLD_KEEPS_LIMITS],
        record: Vec::new(),
    }
}
