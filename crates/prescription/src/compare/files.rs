//! The courses of protocol files, whatever the record.

mod family;
mod protocol;

use std::collections::BTreeSet;

use ::protocol::{Choices, Family};
use exercise::Catalogue;

use super::change::{Comparison, compare};
use super::course::Course;

/// What a comparison of files is about.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Scope {
    /// The protocol, where a whole edition is compared.
    pub protocol: Option<String>,
    /// The rule; its limits only cap, and `free` means that it leaves a key alone.
    pub rule: Option<String>,
    /// The choice and the option that these changes need; `None` under the defaults.
    pub option: Option<(String, String)>,
}

/// A comparison and what it is about.
#[derive(Debug, Clone, PartialEq)]
pub struct Scoped {
    /// What it is about.
    pub scope: Scope,
    /// What differs.
    pub comparison: Comparison,
}

/// A family with the place of one of its protocols.
#[derive(Debug, Clone, Copy)]
pub struct Edition<'f> {
    /// The family.
    pub family: &'f Family,
    /// The protocol, by its place.
    pub place: usize,
}

/// What differs between two protocols of a family, in one folder or in two.
///
/// # Method
/// Each protocol by itself and its own rules; where the folders are two, the
/// rules that both families share with all their protocols as well. First
/// under the default of every choice, then what another option adds.
pub fn compare_protocols(a: Edition<'_>, b: Edition<'_>, folders: Folders, catalogue: &Catalogue) -> Vec<Scoped> {
    let pairs = [Pair { label: None, a: a.place, b: b.place }];
    let sides = Sides { a: a.family, b: b.family, folders, catalogue };
    sides.under_every_option(&pairs)
}

/// What differs between two editions of a family, protocol by protocol.
pub fn compare_editions(a: &Family, b: &Family, only: Option<&str>, catalogue: &Catalogue) -> Vec<Scoped> {
    let shared = a.protocols.iter().enumerate().filter_map(|(place, protocol)| {
        let other = b.protocol(&protocol.id)?;
        Some(Pair { label: Some(&protocol.id), a: place, b: other })
    });
    let pairs: Vec<Pair<'_>> = shared.filter(|pair| only.is_none_or(|only| pair.label == Some(only))).collect();
    Sides { a, b, folders: Folders::Two, catalogue }.under_every_option(&pairs)
}

/// Whether both sides come from one folder, and so share the rules of the family.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Folders {
    /// One.
    One,
    /// Two.
    Two,
}

struct Pair<'f> {
    label: Option<&'f str>,
    a: usize,
    b: usize,
}

struct Sides<'f> {
    a: &'f Family,
    b: &'f Family,
    folders: Folders,
    catalogue: &'f Catalogue,
}

impl Sides<'_> {
    fn under_every_option(&self, pairs: &[Pair<'_>]) -> Vec<Scoped> {
        let usual = self.under(pairs, None);
        let options: BTreeSet<(&str, &str)> = [self.a, self.b]
            .into_iter()
            .flat_map(Family::choices)
            .flat_map(|choice| choice.options.iter().skip(1).map(|option| (choice.id.as_str(), option.as_str())))
            .collect();
        let mut found = usual.clone();
        for option in options {
            for mut scoped in self.under(pairs, Some(option)) {
                if let Some(known) = usual.iter().find(|known| known.scope == scoped.scope) {
                    scoped.comparison.leave_out(&known.comparison);
                }
                scoped.scope.option = Some((option.0.to_owned(), option.1.to_owned()));
                found.push(scoped);
            }
        }
        found.retain(|scoped| !scoped.comparison.is_empty());
        found
    }

    /// Everything under one option; an option that a side does not have is its default there, which is said beside.
    fn under(&self, pairs: &[Pair<'_>], option: Option<(&str, &str)>) -> Vec<Scoped> {
        let choices = |family: &Family| {
            let mut choices = Choices::of(family);
            if let Some((id, option)) = option
                && family.choices().any(|choice| choice.id == id && choice.options.iter().any(|is| is == option))
            {
                choices.take(id, option);
            }
            choices
        };
        let (of_a, of_b) = (choices(self.a), choices(self.b));
        let mut found = Vec::new();
        for pair in pairs {
            let scope = Scope { protocol: pair.label.map(str::to_owned), ..Scope::default() };
            let a = Course::of_protocol(self.a, pair.a, &of_a, self.catalogue);
            let b = Course::of_protocol(self.b, pair.b, &of_b, self.catalogue);
            found.push(Scoped { scope: scope.clone(), comparison: compare(&a, &b) });
            let rules = self.rules((Some(pair.a), &of_a), (Some(pair.b), &of_b));
            found.extend(rules.into_iter().map(|(rule, comparison)| {
                let scope = Scope { rule: Some(rule), ..scope.clone() };
                Scoped { scope, comparison }
            }));
        }
        if self.folders == Folders::Two {
            for (rule, comparison) in self.rules((None, &of_a), (None, &of_b)) {
                found.push(Scoped { scope: Scope { rule: Some(rule), ..Scope::default() }, comparison });
            }
            let comparison = compare(&Course::of_family(self.a), &Course::of_family(self.b));
            found.push(Scoped { scope: Scope::default(), comparison });
        }
        found
    }

    /// The rules of one owner on each side, by their ids.
    fn rules(&self, a: (Option<usize>, &Choices), b: (Option<usize>, &Choices)) -> Vec<(String, Comparison)> {
        let ids = |family: &Family, owner: Option<usize>| -> Vec<String> {
            family.rules().filter(|(own, _)| *own == owner).map(|(_, rule)| rule.id.clone()).collect()
        };
        let mut all = ids(self.a, a.0);
        all.extend(ids(self.b, b.0));
        let mut seen = BTreeSet::new();
        all.retain(|id| seen.insert(id.clone()));
        all.into_iter()
            .map(|id| {
                let of_a = Course::of_rules(self.a, a.0, &id, a.1);
                let of_b = Course::of_rules(self.b, b.0, &id, b.1);
                let comparison = compare(&of_a, &of_b);
                (id, comparison)
            })
            .collect()
    }
}
