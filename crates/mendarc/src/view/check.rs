//! What a check found, for a person: the findings first, then what was looked at.

use std::fmt::Write as _;
use std::time::Duration;

use proof::{About, Finding, Manner, Proof};
use protocol::Family;

use crate::shelf::Shelf;
use crate::view::paint::{FAINT, HEADING, LOUD, VALUE, paint, wrapped};

/// The families whose files were checked.
pub fn files(families: &[Family]) -> String {
    let mut page = String::new();
    for family in families {
        let protocols: Vec<String> =
            family.protocols.iter().map(|protocol| format!("{} (edition {})", protocol.id, protocol.edition)).collect();
        let rules = family.rules().count();
        let _ = writeln!(page, "{}: {}", paint(HEADING, &family.file.id), family.file.title);
        let _ = writeln!(page, "  {}; {rules} rules", protocols.join(", "));
    }
    let _ = writeln!(page, "the files are sound one by one; `--every-record` proves what they come to together");
    page
}

/// The proofs of families.
pub fn proofs(proofs: &[(Proof<'_>, Duration)], shelf: &Shelf) -> String {
    let mut page = String::new();
    // What was found stands before what was looked at, for every family.
    for (proof, took) in proofs {
        let family = proof.space.family;
        let _ = writeln!(page, "{}: {}", paint(HEADING, &family.file.id), family.file.title);
        findings(&mut page, proof);
        counts(&mut page, proof, *took);
        let _ = writeln!(page);
    }
    for (proof, _) in proofs {
        let _ = writeln!(page, "{}", paint(HEADING, &format!("what was gone through: {}", proof.space.family.file.id)));
        space(&mut page, proof);
        let _ = writeln!(page);
    }
    let caution = shelf.messages.text(wording::cautions::LINE, &[]);
    let _ = writeln!(page, "{}", paint(FAINT, &wrapped(&caution, 96, "")));
    page
}

fn findings(page: &mut String, proof: &Proof<'_>) {
    let parts = [
        (About::Unsafe, "would overload the repair", "nothing overloads the repair"),
        (About::Looser, "would loosen the plan for a worse finding", "no finding loosens a plan"),
        (About::Stiffening, "would only immobilize", "nothing only immobilizes"),
    ];
    for (about, bad, good) in parts {
        let found: Vec<&Finding> = proof.about(about).filter(|finding| !finding.is_of_edition()).collect();
        if found.is_empty() && proof.walked.partial {
            // What was not gone through to its end is not said to be good.
        } else if found.is_empty() && proof.about(about).next().is_none() {
            let _ = writeln!(page, "  {good}");
        } else if found.is_empty() {
            let _ = writeln!(page, "  {good} by the rules of these files");
        } else {
            part(page, &found, bad);
        }
    }
    // What keeps every rule of its own files, and is not what the edition says.
    let of_edition = [
        (About::Unsafe, "would allow more, or sooner, than the edition these files call themselves"),
        (About::Stiffening, "would allow less, or later, than the edition these files call themselves"),
    ];
    for (about, bad) in of_edition {
        let found: Vec<&Finding> = proof.about(about).filter(|finding| finding.is_of_edition()).collect();
        if !found.is_empty() {
            part(page, &found, bad);
        }
    }
    for fault in &proof.walked.off_grid {
        let _ = writeln!(page, "  {}", paint(LOUD, fault));
    }
    if proof.walked.not_shared > 0 {
        let of = counted(proof.walked.not_shared, "record");
        let _ =
            writeln!(page, "  {}", paint(LOUD, &format!("{of} have another plan than the one that stands for them")));
    }
    if proof.walked.partial {
        let _ = writeln!(page, "  {}", paint(LOUD, "stopped before the end: this proves nothing"));
    }
    match &proof.compared_with {
        None => {
            let _ = writeln!(
                page,
                "  no edition of these protocols comes with the program: there was nothing to compare with"
            );
        }
        Some(edition) if proof.new_edition.is_empty() && proof.findings.is_empty() => {
            let _ = writeln!(page, "  the same as edition {edition}");
        }
        Some(_) => {}
    }
    if !proof.new_edition.is_empty() {
        let _ = writeln!(page, "  a new edition; against the one that comes with the program:");
        for finding in &proof.new_edition {
            let _ = writeln!(page, "  - {}", wrapped(&finding.message, 92, "    "));
        }
    }
}

/// Some findings under their heading; of the first one the record too, since one record is enough on a screen.
fn part(page: &mut String, found: &[&Finding], heading: &str) {
    let _ = writeln!(page, "  {}", paint(LOUD, &format!("{} {heading}:", counted(found.len() as u64, "finding"))));
    for (place, finding) in found.iter().enumerate() {
        let _ = writeln!(page, "  - {}", wrapped(&finding.message, 92, "    "));
        let whose = if finding.records > 0 {
            format!("{}, such as: {}", counted(finding.records, "record"), finding.who)
        } else {
            format!("for: {}", finding.who)
        };
        let _ = writeln!(page, "    {}", paint(FAINT, &wrapped(&whose, 92, "    ")));
        if place == 0 {
            shown(page, "the record", &finding.record);
            if let Some(other) = &finding.compared_with {
                shown(page, "compared with", other);
            }
        }
    }
}

fn shown(page: &mut String, title: &str, record: &str) {
    if record.is_empty() {
        return;
    }
    let _ = writeln!(page, "    {title}:");
    for line in record.lines() {
        let _ = writeln!(page, "      {line}");
    }
}

fn counts(page: &mut String, proof: &Proof<'_>, took: Duration) {
    let walked = &proof.walked;
    let _ = writeln!(
        page,
        "  {}, {}, {} with the next worse record",
        paint(VALUE, &counted(walked.records, "record")),
        counted(walked.distinct_plans, "distinct plan"),
        counted(walked.cover_comparisons, "comparison")
    );
    let whole = match proof.prescriptions {
        0 => "exercises, goals and activities hang on these plans and are checked when a prescription is issued; \
              `--whole` issues one for each distinct plan"
            .to_owned(),
        issued => format!("{} issued and checked as a whole", counted(issued, "prescription")),
    };
    let _ = writeln!(page, "  {}", wrapped(&whole, 94, "  "));
    let manner = match proof.manner {
        Manner::ByRule => "records that the rules cannot tell apart share one composed plan",
        Manner::Singly => "every record composed and checked by itself",
    };
    let _ = writeln!(
        page,
        "  {} of days on which something changes; {} in {:.1} s; {manner}",
        counted(walked.breakpoints as u64, "run"),
        counted(proof::threads() as u64, "thread"),
        took.as_secs_f64()
    );
}

fn space(page: &mut String, proof: &Proof<'_>) {
    for axis in &proof.space.axes {
        let _ = writeln!(page, "  {} {}", paint(HEADING, &axis.name), axis.classes.len());
        for class in &axis.classes {
            let _ = writeln!(page, "    {}: {}", class.name, wrapped(&class.because, 88, "      "));
        }
    }
    for (rule, records) in &proof.walked.excluded {
        let _ = writeln!(page, "  no record can be: {rule} ({})", grouped(*records));
    }
    let mut told: Vec<(&str, Vec<&str>)> = Vec::new();
    for beside in &proof.space.beside {
        let name = beside.dimension.get().map_or("", |dimension| dimension.name);
        match told.iter_mut().find(|(because, _)| *because == beside.because) {
            Some((_, names)) => names.push(name),
            None => told.push((&beside.because, vec![name])),
        }
    }
    for (because, names) in told {
        let because = if because.is_empty() { "nothing reads it" } else { because };
        let line = format!("changes no plan: {} ({because})", names.join(", "));
        let _ = writeln!(page, "  {}", wrapped(&line, 94, "    "));
    }
}

fn counted(count: u64, what: &str) -> String {
    format!("{} {what}{}", grouped(count), if count == 1 { "" } else { "s" })
}

/// A number with its thousands apart.
fn grouped(count: u64) -> String {
    let digits = count.to_string();
    let mut text = String::new();
    for (place, digit) in digits.chars().enumerate() {
        if place > 0 && (digits.len() - place).is_multiple_of(3) {
            text.push(' ');
        }
        text.push(digit);
    }
    text
}
