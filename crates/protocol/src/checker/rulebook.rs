//! Every line of a family's files, each evaluated on the facts by itself.

use body::{Joint, Key, Mode, Movement, Position};
use operative::Facts;
use plan::{Bound, Cell, SlingPosition, Wear};
use quantity::Degrees;

use super::arcs::{ArcSays, arc_says};
use crate::file::{Limit, ProtocolFile, Rule};
use crate::library::chosen;
use crate::{Choices, Family, Requested};

/// The files of a family under the surgeon's options, as they were written.
#[derive(Debug, Clone)]
pub struct Rulebook<'f> {
    /// The family.
    pub family: &'f Family,
    /// The surgeon's options.
    pub choices: Choices,
}

/// What of the files is in force for the facts of one record.
#[derive(Debug, Clone)]
pub struct InForce<'f> {
    /// The place of the protocol that is followed.
    pub followed: usize,
    /// The followed protocol first, then each that a finding lets cap the plan.
    pub protocols: Vec<(usize, &'f ProtocolFile)>,
    /// The rules whose conditions hold.
    pub rules: Vec<&'f Rule>,
    facts: Facts,
    choices: Choices,
    arcs_end: Option<u16>,
}

/// What one line of the files says of a key on a run of days.
#[derive(Debug, Clone, Copy)]
pub struct Line<'f> {
    /// First day.
    pub from: u16,
    /// First day after; `None` to the end.
    pub until: Option<u16>,
    /// The most it allows.
    pub cell: Cell,
    /// Which line it is.
    pub says: Says<'f>,
}

/// Where a line of the files stands.
#[derive(Debug, Clone, Copy)]
pub enum Says<'f> {
    /// A limit of a protocol in force.
    Protocol(&'f ProtocolFile, &'f Limit),
    /// A protocol in force that gives no limit for these days: what is not listed is not allowed.
    NotListed(&'f ProtocolFile),
    /// A rule that a finding adds.
    Rule(&'f Rule),
    /// A safe arc of the record, by its index.
    SafeArc(u8),
}

/// Everything the files say of one key.
#[derive(Debug, Clone)]
pub struct Lines<'f> {
    /// The key.
    pub key: Key,
    /// Each line, those of the modes it rests on included.
    pub lines: Vec<Line<'f>>,
}

impl<'f> Rulebook<'f> {
    /// The files of a family under some options.
    pub fn new(family: &'f Family, choices: &Choices) -> Self {
        Self { family, choices: choices.clone() }
    }

    /// What is in force for some facts.
    ///
    /// # Method
    /// The protocol that was asked for, else the last selection that holds, else
    /// the default. Every rule of the family, and every rule of that protocol,
    /// whose own conditions hold under the options.
    pub fn in_force(&self, facts: &Facts, requested: Requested) -> InForce<'f> {
        let family = self.family;
        let mut followed = family.protocol(&family.file.default).unwrap_or(0);
        for select in family.file.selects.iter().filter(|select| select.when.holds(facts)) {
            followed = family.protocol(&select.protocol).unwrap_or(followed);
        }
        if let Some(asked) = requested.0 {
            followed = usize::from(asked);
        }
        let shared = family.rules.rules.iter();
        let own = family.protocols[followed].rules.rules.iter();
        let rules: Vec<&Rule> = shared
            .chain(own)
            .filter(|rule| chosen(rule.choice.as_ref(), &self.choices) && rule.when.holds(facts))
            .collect();
        let mut protocols = vec![(followed, &family.protocols[followed])];
        for capping in rules.iter().filter_map(|rule| family.protocol(rule.cap.as_deref()?)) {
            if !protocols.iter().any(|(place, _)| *place == capping) {
                protocols.push((capping, &family.protocols[capping]));
            }
        }
        let mut in_force =
            InForce { followed, protocols, rules, facts: *facts, choices: self.choices.clone(), arcs_end: None };
        in_force.arcs_end = in_force.gate(&family.file.safe_arc_until_stage);
        in_force
    }
}

impl<'f> InForce<'f> {
    /// The latest gate of a stage over everything in force; `None` where nothing in force has the stage.
    pub fn gate(&self, stage: &str) -> Option<u16> {
        let of_protocols = self.protocols.iter().flat_map(|(_, protocol)| &protocol.stages);
        let own = of_protocols.filter(|known| known.id == stage).map(|known| known.gate.count()).max()?;
        let moved = self.rules.iter().flat_map(|rule| &rule.gates).filter(|(id, _)| id == stage);
        Some(moved.map(|(_, day)| day.count()).fold(own, u16::max))
    }

    /// The most that is allowed of a key on a day: the lowest of everything said of it.
    pub fn most(&self, key: Key, day: u16) -> Cell {
        self.lines(key).most(day)
    }

    /// Everything the files say of a key.
    pub fn lines(&self, key: Key) -> Lines<'f> {
        let mut lines = Vec::new();
        let mut at = Some(key);
        while let Some(key) = at {
            self.add_lines(key, &mut lines);
            // What is not allowed in the mode below is not allowed in this one.
            at = key.mode.rests_on().map(|below| key.in_mode(below)).filter(|below| below.exists());
        }
        Lines { key, lines }
    }

    fn add_lines(&self, key: Key, lines: &mut Vec<Line<'f>>) {
        for (_, protocol) in &self.protocols {
            of_protocol(protocol, &self.choices, key, lines);
        }
        for rule in &self.rules {
            of_rule(rule, key, lines);
        }
        for arc in self.facts.safe_arcs.iter() {
            let cell = match arc_says(arc.movement, key) {
                ArcSays::Nothing => continue,
                ArcSays::AtMost => Cell::up_to(Bound::Angle(arc.up_to)),
                ArcSays::No => Cell::NO,
            };
            lines.push(Line { from: 0, until: self.arc_ends(&arc), cell, says: Says::SafeArc(arc.index) });
        }
    }

    /// How much the sling has to be worn on a day at least.
    pub fn wear(&self, day: u16) -> Wear {
        let of_protocols = self.protocols.iter().flat_map(|(_, protocol)| &protocol.slings);
        let of_rules = self.rules.iter().flat_map(|rule| &rule.slings);
        of_protocols
            .chain(of_rules)
            .filter(|step| chosen(step.choice.as_ref(), &self.choices))
            .filter(|step| step.from <= day && step.until.is_none_or(|until| day < until))
            .map(|step| step.wear)
            .max()
            .unwrap_or(Wear::None)
    }

    /// How the sling has to hold the arm on a day: on the belly where the forearm may not point straight ahead.
    pub fn sling_position(&self, day: u16) -> SlingPosition {
        let own = self
            .protocols
            .iter()
            .flat_map(|(_, protocol)| &protocol.slings)
            .filter(|step| chosen(step.choice.as_ref(), &self.choices))
            .filter(|step| step.from <= day && step.until.is_none_or(|until| day < until))
            .map(|step| step.position)
            .max()
            .unwrap_or_default();
        let outward = Key::any(Joint::Shoulder, Movement::ExternalRotation, Mode::Passive);
        let straight_ahead = Cell::up_to(Bound::Angle(Degrees::whole(0)));
        // What keeps turning outward below neutral also keeps it out of the sling, open or shut.
        let below = self.lines(outward).on(day).any(|line| line.cell.is_open() && line.cell < straight_ahead);
        if below { SlingPosition::InternalRotation } else { own }
    }

    /// The facts these rules are in force for.
    pub fn facts(&self) -> &Facts {
        &self.facts
    }

    /// The first day on which a safe arc no longer binds.
    pub fn arc_ends(&self, arc: &operative::SafeArc) -> Option<u16> {
        arc.until.map(|day| day.count()).or(self.arcs_end)
    }
}

impl<'f> Lines<'f> {
    /// The lines that are about a day.
    pub fn on(&self, day: u16) -> impl Iterator<Item = &Line<'f>> {
        self.lines.iter().filter(move |line| line.from <= day && line.until.is_none_or(|until| day < until))
    }

    /// The most that is allowed on a day.
    pub fn most(&self, day: u16) -> Cell {
        self.strictest(day).map_or(Cell::NO, |line| line.cell)
    }

    /// The line that allows the least on a day.
    pub fn strictest(&self, day: u16) -> Option<&Line<'f>> {
        self.on(day).min_by_key(|line| line.cell)
    }
}

impl Says<'_> {
    /// The id of the line, for a program.
    pub fn id(&self) -> String {
        match self {
            Self::Protocol(protocol, limit) => format!("{}/{}", protocol.id, limit.id),
            Self::NotListed(protocol) => format!("{}/closed-world", protocol.id),
            Self::Rule(rule) => rule.id.clone(),
            Self::SafeArc(index) => format!("safe-arc[{index}]"),
        }
    }

    /// The line in words.
    pub fn title(&self) -> String {
        match self {
            Self::Protocol(protocol, limit) => format!("`{}` ({})", protocol.id, limit.title),
            Self::NotListed(protocol) => format!("`{}`, which does not list it on these days,", protocol.id),
            Self::Rule(rule) => format!("\"{}\"", rule.title),
            Self::SafeArc(_) => "the safe arc of the record".into(),
        }
    }
}

/// What a protocol alone says of a key: its limit on the days it names, and no on every other day.
pub(super) fn of_protocol<'f>(protocol: &'f ProtocolFile, choices: &Choices, key: Key, lines: &mut Vec<Line<'f>>) {
    let in_choice = |limit: &&Limit| chosen(limit.choice.as_ref(), choices);
    let naming = |key: Key| protocol.limits.iter().filter(in_choice).filter(move |limit| limit.keys.contains(&key));
    // A position that the protocol does not name has the value of any position.
    let key = if naming(key).next().is_some() { key } else { key.in_position(Position::Any) };
    let not_listed = |from, until| Line { from, until, cell: Cell::NO, says: Says::NotListed(protocol) };
    let before = lines.len();
    for limit in naming(key) {
        let mut day = 0;
        for step in &limit.steps {
            if step.from > day {
                lines.push(not_listed(day, Some(step.from)));
            }
            let says = Says::Protocol(protocol, limit);
            lines.push(Line { from: step.from, until: step.until, cell: step.cell, says });
            day = step.until.unwrap_or(u16::MAX);
        }
        if day < u16::MAX {
            lines.push(not_listed(day, None));
        }
    }
    if lines.len() == before {
        lines.push(not_listed(0, None));
    }
}

/// What a rule alone says of a key.
pub(super) fn of_rule<'f>(rule: &'f Rule, key: Key, lines: &mut Vec<Line<'f>>) {
    for limit in rule.limits.iter().filter(|limit| binds(limit, key)) {
        for step in limit.steps.iter().filter(|step| step.counts.fits(key)) {
            lines.push(Line { from: step.from, until: step.until, cell: step.cell, says: Says::Rule(rule) });
        }
    }
}

/// Whether a limit of a rule binds a key.
///
/// A limit given for one position binds every position: one that the rule names
/// as well is bound by name, and every other one because it is not named.
fn binds(limit: &Limit, key: Key) -> bool {
    limit.keys.iter().any(|own| (own.joint, own.movement, own.mode) == (key.joint, key.movement, key.mode))
}
