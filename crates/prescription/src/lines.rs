//! Lines of the prescription that are looked up and not composed: why, stages, first days, indices.

use jiff::civil::Date;
use operative::Record;
use plan::{Criterion, FirstAllowed, Index, LaneId, Reason, StageLine};
use quantity::PostoperativeDay;

use crate::goals;
use crate::issue::{Case, Context, Extras};
use crate::today::Opened;

/// Why this protocol: the selection, the surgeon's choice, and what caps it.
pub(crate) fn why(context: &Context<'_>, extras: &Extras, case: &Case<'_>) -> Vec<Reason> {
    let dated = context.dated;
    let family = &dated.compiled.family.file;
    let chosen = dated.compiled.protocol(dated.plan.protocol);
    let mut why = Vec::new();
    let fired: Vec<_> = family.selects.iter().filter(|select| select.when.holds(&dated.facts)).collect();
    for select in fired.iter().filter(|select| select.protocol == chosen.id) {
        why.push(Reason {
            rule: format!("{}/{}", family.id, select.id),
            text: select.title.clone(),
            evidence: select.evidence.clone(),
            record: context.reasons.places(&select.when),
        });
    }
    if fired.is_empty() && chosen.id == family.default {
        why.push(Reason {
            rule: format!("{}/default", family.id),
            text: format!("{}: nothing in the record asks for another protocol", chosen.title),
            evidence: family.selects.iter().flat_map(|select| select.evidence.iter().copied()).collect(),
            record: context.reasons.selection(),
        });
    }
    if extras.requested.0.is_some() && why.is_empty() {
        let reason = case.settings.choice.as_ref().and_then(|choice| choice.reason.as_ref());
        why.push(Reason {
            rule: "surgeons-choice".into(),
            text: match reason {
                Some(reason) => format!("chosen by the surgeon: {}", reason.value),
                None => "chosen by the surgeon".into(),
            },
            evidence: Vec::new(),
            record: Vec::new(),
        });
    }
    for rule in dated.compiled.capping_rules(&dated.plan) {
        if rule.cap.as_ref() != Some(&chosen.id) {
            why.push(context.reasons.of_rule(rule));
        }
    }
    why
}

pub(crate) fn stage_lines(context: &Context<'_>, opened: &Opened, on: Option<Date>) -> Vec<StageLine> {
    let dated = context.dated;
    // Without a day that is asked about, everything that was ever opened counts.
    let asked =
        on.and_then(|on| PostoperativeDay::of(on, context.operated_on)).map_or(u16::MAX, PostoperativeDay::count);
    dated
        .stages()
        .into_iter()
        .filter_map(|(place, gate)| {
            let stage = goals::stage(dated, place)?;
            let day = PostoperativeDay::new(gate);
            let reason = |rule: String, text: &str, evidence: &[&'static evidence::Entry]| Reason {
                rule,
                text: text.to_owned(),
                evidence: evidence.to_vec(),
                record: context.reasons.selection(),
            };
            Some(StageLine {
                id: stage.id.clone(),
                title: stage.title.clone(),
                from_day: day,
                from: day.date(context.operated_on),
                opened: opened.is_open_for_good(place, asked),
                closes_again: opened.closes_again(place, asked).map(|day| {
                    let day = PostoperativeDay::new(day);
                    (day, day.date(context.operated_on))
                }),
                criteria: stage
                    .criteria
                    .iter()
                    .map(|criterion| Criterion {
                        id: criterion.id.clone(),
                        text: criterion.text.clone(),
                        reasons: vec![reason(
                            format!("criterion/{}/{}", stage.id, criterion.id),
                            &criterion.text,
                            &criterion.evidence,
                        )],
                    })
                    .collect(),
                reasons: vec![reason(format!("gate/{}", stage.id), "gate of the stage", &stage.evidence)],
            })
        })
        .collect()
}

/// The first day of each joint, movement and mode, in any position.
pub(crate) fn first_allowed(context: &Context<'_>) -> Vec<FirstAllowed> {
    let dated = context.dated;
    let grid = &dated.plan.grid;
    let days = dated.change_days();
    let mut first: Vec<FirstAllowed> = Vec::new();
    for (lane, key) in (0_u8..).map(LaneId).zip(&grid.keys) {
        let Some(&day) = days.iter().find(|&&day| dated.cell(lane, day).is_open()) else { continue };
        let mut reasons = context.reasons.of_limit(lane, day);
        if day > 0 {
            for reason in context.reasons.of_limit(lane, day - 1) {
                if reasons.iter().all(|known| known.rule != reason.rule) {
                    reasons.push(reason);
                }
            }
        }
        let line = FirstAllowed {
            key: key.in_position(body::Position::Any),
            day: PostoperativeDay::new(day),
            date: PostoperativeDay::new(day).date(context.operated_on),
            reasons,
        };
        match first.iter_mut().find(|known| known.key == line.key) {
            Some(known) if known.day <= line.day => {}
            Some(known) => *known = line,
            None => first.push(line),
        }
    }
    first
}

pub(crate) fn index(record: &Record) -> Vec<Index> {
    let index = operative::healing_index(record);
    if !index.applies {
        return Vec::new();
    }
    vec![Index {
        id: "rotator-cuff-healing",
        score: index.score,
        low: index.low,
        high: index.high,
        missing: index.missing,
        of: index.of,
        meaning: index.meaning,
        evidence: index.evidence.iter().filter_map(|id| evidence::entry(id)).collect(),
    }]
}
