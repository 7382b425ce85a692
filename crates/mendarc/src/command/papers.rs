//! The files of `--out`: sheets as PDF, the visits as a calendar, the prescription as JSON.

use std::path::Path;

use diagnostic::{Diagnostic, Severity, Sink};
use exchange::calendar::{Calendar, Subject, Visit, VisitTime, previous, uid};
use jiff::civil::{Date, Time};
use prescription::{Case, Settings};
use sheets::{Desk, Document, NoNumber};
use wording::{Language, Messages};

use crate::desk::with_desk;
use crate::folder::Folder;
use crate::json;

/// The time of day that stamps a calendar; the day is that of issue.
const STAMP: Time = Time::midnight();

/// Puts everything of a prescription into a folder; gives the names of its files.
///
/// # Errors
/// What could not be written; then nothing was. A handout without both numbers is left out, and the others are
/// written: that is told before, by [`no_number`].
pub fn write(
    folder: &Path,
    case: &Case<'_>,
    patient: &Messages,
    english: &Messages,
    json: &str,
    sink: &mut Sink,
) -> Result<Vec<String>, Diagnostic> {
    // What is to be said of the case was said when it was prescribed a moment ago.
    let mut said = Sink::new();
    with_desk(case, english, &mut said, |desk| put(folder, desk, patient, json, sink)).unwrap_or_else(|| {
        let why = said.into_sorted().into_iter().find(|found| found.severity == Severity::Error);
        Err(why.unwrap_or_else(|| Diagnostic::error("cannot-print", "the day of issue gives no sheets")))
    })
}

fn put(
    folder: &Path,
    desk: &Desk<'_>,
    patient: &Messages,
    json: &str,
    sink: &mut Sink,
) -> Result<Vec<String>, Diagnostic> {
    let mut folder = Folder::open(folder)?;
    folder.put("prescription.json", json.as_bytes())?;
    let calendar = calendar(desk, patient, &folder, sink)?;
    folder.put("visits.ics", calendar.as_bytes())?;
    let mut documents = Vec::new();
    match sheets::handout(&Desk { messages: patient, ..*desk }) {
        Ok(handout) => documents.push(("patient.pdf", handout)),
        // One of an earlier run would not belong to the other sheets.
        Err(NoNumber::Both | NoNumber::Day | NoNumber::Night) => folder.outdate("patient.pdf"),
    }
    documents.push(("surgeon.pdf", sheets::surgeon_page(desk, &json::sha256(json.as_bytes()))));
    documents.push(("therapist.pdf", sheets::letter(desk)));
    documents.push(("work.pdf", sheets::work_note(desk)));
    for ((name, _), pdf) in documents.iter().zip(laid_out(&documents)) {
        folder.put(name, &pdf?)?;
    }
    folder.finish()
}

/// Every sheet as a PDF, each on a thread of its own.
fn laid_out(documents: &[(&'static str, Document)]) -> Vec<Result<Vec<u8>, Diagnostic>> {
    std::thread::scope(|scope| {
        let threads: Vec<_> =
            documents.iter().map(|(name, document)| scope.spawn(move || pdf(name, document))).collect();
        let stopped = || Err(Diagnostic::error("cannot-print", "a sheet was not finished"));
        threads.into_iter().map(|thread| thread.join().unwrap_or_else(|_| stopped())).collect()
    })
}

/// What to say where a patient would read of the tablets in a language that is not the sheet's.
pub fn untranslated(settings: &Settings, language: Language) -> Option<Diagnostic> {
    sheets::is_untranslated(settings, language).then(|| {
        Diagnostic::warning(
            "tablets-not-translated",
            "the tablets stand on the Spanish sheet as they were written, in another language",
        )
        .help("write them in Spanish as well: tablets_es = \"…\" under [paper]")
    })
}

/// What to say where a number to call is missing.
pub fn no_number(missing: NoNumber, what: &str) -> Diagnostic {
    let which = match missing {
        NoNumber::Both => "neither a day nor a night number is set",
        NoNumber::Day => "no day number is set",
        NoNumber::Night => "no night number is set",
    };
    Diagnostic::error("no-number-to-call", format!("{which}, and {what} goes out without both"))
        .help("write [contact] with day = \"…\" and night = \"…\" in the settings and name the file with `--settings`")
}

/// Lays a sheet out.
#[cfg(feature = "paper")]
pub fn pdf(name: &str, document: &Document) -> Result<Vec<u8>, Diagnostic> {
    paper::pdf(document).map_err(|failure| {
        let fault = Diagnostic::error("cannot-print", format!("{name} can't be printed: {failure}"));
        match failure {
            paper::Failure::NoGlyph { .. } => {
                fault.help("write that text of the record or the settings in Latin, Greek or Cyrillic letters")
            }
            _ => fault,
        }
    })
}

/// Without the feature `paper` nothing is laid out.
#[cfg(not(feature = "paper"))]
pub fn pdf(name: &str, _: &Document) -> Result<Vec<u8>, Diagnostic> {
    Err(Diagnostic::error("cannot-print", format!("{name} can't be printed: this program was built without paper"))
        .help("build it with the feature `paper`, which is on by default"))
}

/// Draws a picture as pixels, about 300 to an inch.
#[cfg(feature = "paper")]
pub fn png(svg: &str) -> Result<Vec<u8>, Diagnostic> {
    paper::png(svg, 12.0).map_err(|failure| Diagnostic::error("cannot-print", failure.to_string()))
}

/// Without the feature `paper` there are no faces to write with.
#[cfg(not(feature = "paper"))]
pub fn png(_: &str) -> Result<Vec<u8>, Diagnostic> {
    Err(Diagnostic::error("cannot-print", "this program was built without paper and writes no .png")
        .help("name the file .svg, or build it with the feature `paper`, which is on by default"))
}

/// The visits up to the first gate that is not open.
fn calendar(desk: &Desk<'_>, patient: &Messages, folder: &Folder, sink: &mut Sink) -> Result<String, Diagnostic> {
    let known = match folder.text("visits.ics").map(|text| previous(&text)) {
        Some(Ok(known)) => known,
        Some(Err(not_ours)) => {
            sink.push(
                Diagnostic::warning("calendar-replaced", format!("visits.ics is written anew: {not_ours}"))
                    .help("visits that stood in the old file are not cancelled by the new one"),
            );
            Vec::new()
        }
        None => Vec::new(),
    };
    let of = desk.prescription;
    let (title, name) = (patient.text("calendar-visit", &[]), patient.text("calendar-name", &[]));
    let bring = patient.text("calendar-bring", &[]);
    let gate = of.stages.iter().find(|stage| !stage.opened).map(|stage| stage.from_day);
    let mut seen: Vec<&str> = Vec::new();
    let mut visits = Vec::new();
    for visit in &of.visits {
        let order = seen.iter().filter(|purpose| **purpose == visit.purpose).count();
        seen.push(&visit.purpose);
        if gate.is_some_and(|gate| visit.due_day > gate) {
            continue;
        }
        let subject = Subject {
            patient: of.patient.as_deref(),
            operated_on: of.operated_on,
            side: of.side.name(),
            purpose: &visit.purpose,
            order,
        };
        visits.push(Visit {
            uid: uid(&subject),
            sequence: 0,
            title: &title,
            start: VisitTime::AllDay(visit.date),
            description: &bring,
            remind_days_before: Some(1),
        });
    }
    let zone = desk.settings.clinic.time_zone.as_deref().unwrap_or("UTC");
    let stamp = stamp(desk.issued_on);
    let calendar = Calendar { name: &name, time_zone: zone, stamp, visits, cancelled: Vec::new() }.following(&known);
    calendar.to_text().map_err(|fault| {
        Diagnostic::error("no-time-zone", format!("visits.ics can't be written: {fault}"))
            .help("write clinic.time_zone as a name of the time zone database, such as \"Europe/Berlin\"")
    })
}

fn stamp(date: Date) -> jiff::civil::DateTime {
    date.to_datetime(STAMP)
}
