//! Faults as they are found, day after day, joined to runs of days.

use body::Key;
use plan::words::of_days;

use crate::checker::fault::{Fault, Harm};

/// The faults so far; the same fault on the next day lengthens its run.
#[derive(Debug, Default)]
pub(super) struct Found {
    /// With sentences that do not name their days yet.
    faults: Vec<Fault>,
    finished: Vec<Fault>,
}

/// A fault before its days are known.
#[derive(Debug)]
pub(super) struct Wrong {
    pub harm: Harm,
    pub kind: &'static str,
    pub key: Option<Key>,
    pub rule: String,
    pub message: String,
}

impl Wrong {
    /// A fault that loads or moves the repair more than a rule allows.
    pub(super) fn overload(kind: &'static str, message: String) -> Self {
        Self { harm: Harm::Overload, kind, key: None, rule: kind.into(), message }
    }

    /// A fault that keeps something still or shut without need.
    pub(super) fn stiffness(kind: &'static str, message: String) -> Self {
        Self { harm: Harm::Stiffness, ..Self::overload(kind, message) }
    }

    /// The same about a key.
    pub(super) fn about(self, key: Key) -> Self {
        Self { key: Some(key), ..self }
    }

    /// The same because of a line of the files.
    pub(super) fn of_rule(self, rule: String) -> Self {
        Self { rule, ..self }
    }
}

impl Found {
    /// Adds a fault on a run of days.
    pub(super) fn on_days(&mut self, from_day: u16, until_day: u16, wrong: Wrong) {
        let Wrong { harm, kind, key, rule, message } = wrong;
        let same = self.faults.iter_mut().rev().find(|known| {
            known.until_day == from_day && known.kind == kind && known.key == key && known.message == message
        });
        match same {
            Some(known) => known.until_day = until_day,
            None => self.faults.push(Fault { harm, kind, key, from_day, until_day, message, rule }),
        }
    }

    /// Adds a fault on a day.
    pub(super) fn on(&mut self, day: u16, wrong: Wrong) {
        self.on_days(day, day.saturating_add(1), wrong);
    }

    /// Adds a fault whose sentence names its days already.
    pub(super) fn push(&mut self, fault: Fault) {
        self.finished.push(fault);
    }

    /// Every fault with its days in its sentence, the worst harm first.
    pub(super) fn into_faults(self) -> Vec<Fault> {
        let with_days = |fault: Fault| {
            let message = format!("{}: {}", of_days(fault.from_day, fault.until_day), fault.message);
            Fault { message, ..fault }
        };
        let mut faults: Vec<Fault> = self.faults.into_iter().map(with_days).chain(self.finished).collect();
        faults.sort_by_key(|fault| (fault.harm, fault.from_day));
        faults
    }
}
