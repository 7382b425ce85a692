//! What was issued, put before the checker: nothing that fails it is ever given.

use diagnostic::{Diagnostic, Sink};
use evidence::ids;
use plan::Prescription;
use protocol::checker::{
    Basis, Fault, Held, Issued, Loosening, Opening, OtherShoulder, WentBack, faults_of_prescription,
};
use quantity::PostoperativeDay;

use crate::issue::{Case, Context, Extras};
use crate::session::days_between;

/// So many faults are told one by one.
const TOLD: usize = 5; // not medical: keeps a refusal readable

/// What the checker is told: settings and openings as they were written. The files, the options, the facts and the
/// protocol asked for are those the plan was made from; it judges what follows from them by itself.
pub(crate) struct Told {
    holds: Vec<Held>,
    backs: Vec<WentBack>,
    loosenings: Vec<Loosening>,
    openings: Vec<Opening>,
}

impl Told {
    /// What the settings and openings of a case say.
    pub(crate) fn of(case: &Case<'_>) -> Self {
        let settings = case.settings;
        let operated_on = case.record.operation_date();
        let holds = settings.holds.iter();
        let backs = settings.backs.iter();
        let loosenings = settings.loosenings.iter();
        let openings = case.openings.0.iter();
        Self {
            holds: holds.map(|hold| Held { from_day: hold.from_day, days: hold.days, joint: hold.joint }).collect(),
            backs: backs.map(|back| WentBack { day: back.day, stage: back.stage.value.clone() }).collect(),
            loosenings: loosenings
                .map(|written| Loosening {
                    key: written.key,
                    from_day: written.from_day,
                    until_day: written.until_day,
                    cell: written.up_to,
                })
                .collect(),
            openings: openings
                .filter_map(|opening| {
                    let day = PostoperativeDay::of(opening.on.value, operated_on)?;
                    Some(Opening { stage: opening.stage.value.clone(), day: day.count() })
                })
                .collect(),
        }
    }

    /// The prescription with everything it was made from.
    pub(crate) fn issued<'c>(
        &'c self,
        case: &'c Case<'_>,
        context: &'c Context<'_>,
        extras: &Extras,
        prescription: &'c Prescription,
    ) -> Issued<'c> {
        let dated = context.dated;
        let other = context.sessions.other.as_ref();
        Issued {
            prescription,
            basis: Basis {
                family: dated.compiled.family,
                choices: dated.choices,
                facts: &dated.facts,
                requested: extras.requested,
            },
            catalogue: case.catalogue,
            home_margin: case.settings.home_margin.map_or(ids::HOME_MARGIN.degrees(), |margin| margin.value),
            holds: &self.holds,
            backs: &self.backs,
            loosenings: &self.loosenings,
            openings: &self.openings,
            other: other.map(|other| OtherShoulder {
                basis: Basis {
                    family: other.dated.compiled.family,
                    choices: other.dated.choices,
                    facts: &other.dated.facts,
                    requested: other.requested,
                },
                days_ahead: i32::try_from(days_between(other.operated_on, context.operated_on)).unwrap_or(i32::MIN),
            }),
        }
    }
}

/// Refuses a prescription that fails its check, each fault in a sentence.
///
/// # Errors
/// `plan-fails-its-check`: the first faults one by one, and how many more there are.
pub(crate) fn refuse(faults: &[Fault], sink: &mut Sink) {
    let more = faults.len().saturating_sub(TOLD);
    for (place, fault) in faults.iter().take(TOLD).enumerate() {
        let mut refusal = Diagnostic::error("plan-fails-its-check", fault.message.clone())
            .help("nothing is printed; this is a fault of the program or of the protocol files, and not of the record");
        if place + 1 == TOLD && more > 0 {
            refusal = refusal.fact(format!("and {more} more"));
        }
        sink.push(refusal);
    }
}

/// What is wrong with a prescription, judged without the code that made it.
pub(crate) fn faults(
    case: &Case<'_>,
    context: &Context<'_>,
    extras: &Extras,
    prescription: &Prescription,
) -> Vec<Fault> {
    faults_of_prescription(&Told::of(case).issued(case, context, extras, prescription))
}
