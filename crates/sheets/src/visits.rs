//! Which visits a patient is told of.

use plan::VisitLine;

use crate::desk::Desk;

/// The visits of what is opened: after the day of issue, to the one at the gate of the first stage that is not
/// open, where the surgeon looks whether it may be.
pub fn of_patient<'a>(desk: &Desk<'a>) -> impl Iterator<Item = &'a VisitLine> {
    let gate = desk.prescription.stages.iter().find(|stage| !stage.opened).map(|stage| stage.from_day);
    let issued_on = desk.issued_on;
    let visits = desk.prescription.visits.iter();
    visits.filter(move |visit| visit.date > issued_on && gate.is_none_or(|gate| visit.due_day <= gate))
}
