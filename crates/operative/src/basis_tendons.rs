//! What of the lists of a record led to a class.

use diagnostic::Spanned;

use crate::basis::{self, Basis, NOT_RECORDED};
use crate::record::{Record, TendonEntry};
use crate::words::Tendon;

impl Record {
    /// How each listed tendon was fixed.
    pub(crate) fn basis_repairs(&self) -> Vec<Basis> {
        let each = self.operation.tendons.iter().map(|tendon| {
            let name = tendon.name.value;
            let mut basis = basis::of(tendon.path("repair"), tendon.repair, |repair| format!("{name}: {repair}"));
            if tendon.repair.is_none() {
                basis.shown = format!("{name}: {NOT_RECORDED}");
            }
            basis
        });
        or_no_tendon(each.collect())
    }

    /// The repairs that are partial, else those not recorded, else all.
    pub(crate) fn basis_construct(&self) -> Vec<Basis> {
        let all = self.basis_repairs();
        let partial: Vec<Basis> = all.iter().filter(|basis| basis.shown.ends_with("partial repair")).cloned().collect();
        let open: Vec<Basis> = all.iter().filter(|basis| basis.shown.ends_with(NOT_RECORDED)).cloned().collect();
        [partial, open, all].into_iter().find(|found| !found.is_empty()).unwrap_or_default()
    }

    /// One key of each repaired tendon.
    pub(crate) fn basis_of_each(
        &self,
        key: &str,
        value: impl Fn(&TendonEntry) -> Option<Spanned<&'static str>>,
    ) -> Vec<Basis> {
        // The worst is what led to the class: the bad ones, else those not recorded, else all.
        let all: Vec<&TendonEntry> = self.repaired_tendons().collect();
        let bad: Vec<&TendonEntry> = all
            .iter()
            .copied()
            .filter(|t| value(t).is_some_and(|found| ["poor", "high"].contains(&found.value)))
            .collect();
        let open: Vec<&TendonEntry> = all.iter().copied().filter(|t| value(t).is_none()).collect();
        let chosen = [bad, open, all].into_iter().find(|tendons| !tendons.is_empty()).unwrap_or_default();
        let each = chosen.into_iter().map(|tendon| {
            let name = tendon.name.value;
            let value = value(tendon);
            let shown = value.map_or(NOT_RECORDED, |value| value.value);
            Basis { path: tendon.path(key), span: value.map(|value| value.span), shown: format!("{name}: {shown}") }
        });
        or_no_tendon(each.collect())
    }

    /// The entry of one tendon, or that there is none.
    pub(crate) fn basis_tendon(&self, name: Tendon) -> Vec<Basis> {
        let Some(tendon) = self.tendon(name) else {
            return vec![Basis { path: "operation.tendon".into(), span: None, shown: format!("no {name} listed") }];
        };
        let mut basis = basis::of(tendon.path("repair"), tendon.repair, |repair| format!("{name}: {repair}"));
        if tendon.repair.is_none() {
            basis.shown = format!("{name}: {NOT_RECORDED}");
        }
        vec![basis::of(tendon.path("name"), Some(tendon.name), |name| name.name().to_owned()), basis]
    }

    /// The subscapularis: its entry, its part, and how it was reached.
    pub(crate) fn basis_subscapularis(&self) -> Vec<Basis> {
        let mut found = self.basis_tendon(Tendon::Subscapularis);
        if let Some(tendon) = self.tendon(Tendon::Subscapularis).filter(|tendon| tendon.is_repaired()) {
            found.push(basis::of(tendon.path("part"), tendon.part, |part| part.name().to_owned()));
            let approach = Some(self.operation.approach);
            found.push(basis::of("operation.approach", approach, |approach| approach.name().to_owned()));
        }
        found
    }

    /// The recorded grades, or that there is none.
    pub(crate) fn basis_grades(&self) -> Vec<Basis> {
        let found: Vec<_> = self
            .operation
            .fatty_infiltration
            .recorded()
            .map(|(path, grade)| basis::of(path, Some(grade), |grade| format!("Goutallier grade {grade}")))
            .collect();
        if found.is_empty() {
            vec![Basis { path: "operation.fatty_infiltration".into(), span: None, shown: NOT_RECORDED.into() }]
        } else {
            found
        }
    }

    /// The list of other procedures.
    pub(crate) fn basis_other(&self) -> Vec<Basis> {
        let path = "operation.also.other";
        match &self.operation.also.other {
            None => vec![Basis { path: path.into(), span: None, shown: "left out, read as none".into() }],
            Some(list) if list.value.is_empty() => {
                vec![Basis { path: path.into(), span: Some(list.span), shown: "none".into() }]
            }
            Some(list) => (0_usize..)
                .zip(&list.value)
                .map(|(index, text)| Basis {
                    path: format!("{path}[{index}]"),
                    span: Some(text.span),
                    shown: text.value.clone(),
                })
                .collect(),
        }
    }
}

/// A capsular release may list no tendon at all.
fn or_no_tendon(found: Vec<Basis>) -> Vec<Basis> {
    if found.is_empty() {
        vec![Basis { path: "operation.tendon".into(), span: None, shown: "no repaired tendon listed".into() }]
    } else {
        found
    }
}
