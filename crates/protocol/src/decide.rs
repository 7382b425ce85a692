//! Which protocol and which rules a record gets, put together class by class.

use operative::{DimensionId, Facts};

use crate::compile::Compiled;
use crate::resolve::Requested;

/// What the classes of a record answer to the conditions of a family: a bit for each rule and each selection.
///
/// The answers of all dimensions joined with [`Answers::and`] are those of the record.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Answers {
    /// Rules none of whose necessary conditions is missed.
    rules: u128,
    /// Rules of which one of the alternative conditions holds.
    rules_any: u128,
    /// The same of selections.
    selects: u64,
    selects_any: u64,
}

impl Answers {
    /// What holds where no condition was asked yet.
    pub const NOTHING_ASKED: Self = Self { rules: u128::MAX, rules_any: 0, selects: u64::MAX, selects_any: 0 };

    /// The answers of two sets of dimensions together.
    #[must_use]
    pub const fn and(self, other: Self) -> Self {
        Self {
            rules: self.rules & other.rules,
            rules_any: self.rules_any | other.rules_any,
            selects: self.selects & other.selects,
            selects_any: self.selects_any | other.selects_any,
        }
    }
}

/// Decides from answers alone, which is what makes a walk over every record fast.
#[derive(Debug)]
pub struct Decider<'c> {
    compiled: &'c Compiled<'c>,
    /// Rules without alternative conditions.
    plain: u128,
    plain_selects: u64,
    /// For each protocol the rules that may fire under it.
    under: Vec<u128>,
}

impl<'c> Decider<'c> {
    /// The decider of a compiled family.
    pub fn new(compiled: &'c Compiled<'c>) -> Self {
        let rules = || (0..).zip(&compiled.rules);
        let bits = |holds: &dyn Fn(usize) -> bool| {
            rules().filter(|(place, _)| holds(*place)).fold(0_u128, |bits, (place, _): (usize, _)| bits | 1 << place)
        };
        let under = (0..compiled.bases.len())
            .map(|protocol| bits(&|place| compiled.rules[place].own.is_none_or(|own| own == protocol)))
            .collect();
        let selects = compiled.selects.iter().enumerate().filter(|(_, (when, _))| when.any.is_empty());
        Self {
            compiled,
            plain: bits(&|place| compiled.rules[place].any.is_empty()),
            plain_selects: selects.fold(0, |bits, (place, _)| bits | 1 << place),
            under,
        }
    }

    /// What one class of one dimension answers.
    pub fn answers(&self, of: DimensionId, class: u8) -> Answers {
        let mut answers = Answers::NOTHING_ASKED;
        let holds = |mask: u16| mask & (1 << class) != 0;
        for (place, rule) in self.compiled.rules.iter().enumerate() {
            if rule.all.iter().any(|(on, mask)| *on == of && !holds(*mask)) {
                answers.rules &= !(1 << place);
            }
            if rule.any.iter().any(|(on, mask)| *on == of && holds(*mask)) {
                answers.rules_any |= 1 << place;
            }
        }
        for (place, (when, _)) in self.compiled.selects.iter().enumerate() {
            if when.all.iter().any(|condition| condition.dimension == of && !holds(condition.mask)) {
                answers.selects &= !(1 << place);
            }
            if when.any.iter().any(|condition| condition.dimension == of && holds(condition.mask)) {
                answers.selects_any |= 1 << place;
            }
        }
        answers
    }

    /// The protocol and the fired rules for some facts: together with the safe arcs they decide the plan.
    pub fn of(&self, facts: &Facts, requested: Requested) -> (u8, u128) {
        let dimensions = (0..).map(DimensionId).zip(facts.classes);
        let answers = dimensions.map(|(of, class)| self.answers(of, class));
        self.decide(answers.fold(Answers::NOTHING_ASKED, Answers::and), requested)
    }

    /// The protocol and the fired rules for the answers of every dimension.
    pub fn decide(&self, answers: Answers, requested: Requested) -> (u8, u128) {
        let chosen = requested.0.map_or_else(|| self.selected(answers), usize::from);
        let rules = answers.rules & (answers.rules_any | self.plain) & self.under[chosen];
        (chosen as u8, rules)
    }

    fn selected(&self, answers: Answers) -> usize {
        let count = self.compiled.selects.len();
        let fire = answers.selects & (answers.selects_any | self.plain_selects);
        // Only as many bits as there are selections.
        let fire = if count < 64 { fire & ((1 << count) - 1) } else { fire }; // not medical: bits of a word
        match fire.checked_ilog2() {
            Some(last) => self.compiled.selects[last as usize].1,
            None => self.compiled.default,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Choices, Library, resolve};
    use diagnostic::{FileId, Sink};
    use operative::{DIMENSION_COUNT, DIMENSIONS, SafeArcs, dim};
    use proptest::prelude::*;

    proptest! {
        /// Class by class it is decided as it is composed.
        #[test]
        fn what_is_decided_is_what_is_composed(
            drawn in prop::collection::vec(any::<prop::sample::Index>(), DIMENSION_COUNT),
            asked in prop::option::of(0..3_u8),
        ) {
            let mut next = 0..;
            let library = Library::shipped(|_, _| FileId(next.next().unwrap_or_default()), &mut Sink::new());
            let family = library.families.iter().find(|family| family.file.id == "cuff").expect("it is shipped");
            let compiled = Compiled::new(family, &Choices::of(family), &[]);
            let nobody = Facts { classes: [0; DIMENSION_COUNT], safe_arcs: SafeArcs::default() };
            let facts = (0..).map(DimensionId).zip(DIMENSIONS).zip(drawn).fold(nobody, |facts, ((id, of), drawn)| {
                facts.with(id, drawn.index(of.classes.len()) as u8)
            });
            let facts = facts.with(dim::PROCEDURE, 0);
            let plan = resolve(&compiled, &facts, Requested(asked));
            prop_assert_eq!(Decider::new(&compiled).of(&facts, Requested(asked)), (plan.protocol, plan.fired.0));
        }
    }
}
