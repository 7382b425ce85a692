//! Visits on clinic days.

use diagnostic::{Diagnostic, Sink};
use jiff::civil::Date;
use plan::VisitLine;
use quantity::PostoperativeDay;

use crate::dated::Dated;
use crate::rows::protocols;
use crate::settings::Clinic;

/// Every visit: those the protocol names, and one at each gate, on the first clinic day from then on.
pub(crate) fn all(dated: &Dated<'_>, operated_on: Date, clinic: &Clinic, sink: &mut Sink) -> Vec<VisitLine> {
    if clinic.days.is_empty() {
        sink.push(
            Diagnostic::note(
                "no-clinic-days",
                "no clinic days are set, so visits stand on the day they are due, weekends too",
            )
            .help("write [clinic] with days = [\"Mon\", \"Thu\"] in the settings"),
        );
    }
    let mut visits = Vec::new();
    let mut named: Vec<(u16, u16, &str)> = Vec::new();
    for visit in protocols(dated).flat_map(|protocol| &protocol.visits) {
        if !named.iter().any(|(_, _, purpose)| *purpose == visit.purpose) {
            named.push((visit.due.count(), visit.latest.count(), &visit.purpose));
        }
    }
    for (due, latest, purpose) in named {
        let Some(visit) = on_clinic_day(due, purpose.to_owned(), operated_on, clinic) else {
            sink.push(no_clinic_day(purpose));
            continue;
        };
        if visit.day.count() > latest {
            sink.push(
                Diagnostic::warning(
                    "visit-outside-window",
                    format!("the {purpose} visit falls on day {}, after day {latest}", visit.day.count()),
                )
                .help("find a day outside the usual clinic"),
            );
        }
        visits.push(visit);
    }
    for (stage, gate) in dated.stages().into_iter().filter(|(_, gate)| *gate > 0) {
        let purpose = format!("gate: {}", dated.compiled.stages[stage]);
        match on_clinic_day(gate, purpose.clone(), operated_on, clinic) {
            Some(visit) => visits.push(visit),
            None => sink.push(no_clinic_day(&purpose)),
        }
    }
    visits.sort_by_key(|visit| visit.due_day);
    visits
}

fn no_clinic_day(purpose: &str) -> Diagnostic {
    Diagnostic::warning("no-clinic-day", format!("no clinic day was found within a year for: {purpose}"))
        .help("look at `clinic.days` and `clinic.holidays` in the settings")
}

/// The first clinic day on or after a day; the day itself where no clinic days are set.
fn on_clinic_day(due: u16, purpose: String, operated_on: Date, clinic: &Clinic) -> Option<VisitLine> {
    let due_day = PostoperativeDay::new(due);
    let last = due.saturating_add(365); // not medical: a year of looking
    let day = (due..=last).find(|&day| clinic.sees_patients_on(PostoperativeDay::new(day).date(operated_on)))?;
    let day = PostoperativeDay::new(day);
    Some(VisitLine { due_day, day, date: day.date(operated_on), purpose })
}
