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
        record(&mut page, proof);
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
    // The edition first: a file that keeps its own rules may still allow more than anybody signed for.
    edition(page, proof);
    let parts = [
        (About::Unsafe, "would overload the repair", "each plan keeps every line of these files"),
        (About::Looser, "would loosen the plan for a worse finding", "no finding loosens a plan"),
        (
            About::Stiffening,
            "would only immobilize, or promise a later day than the plans keep",
            "no plan only immobilizes",
        ),
    ];
    for (about, bad, good) in parts {
        let found: Vec<&Finding> = proof.about(about).filter(|finding| !finding.is_of_edition()).collect();
        if !found.is_empty() {
            part(page, &found, bad);
        } else if !proof.walked.partial {
            let _ = writeln!(page, "  {good}");
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
}

/// How the files stand to the edition that comes with the program.
fn edition(page: &mut String, proof: &Proof<'_>) {
    let Some(edition) = &proof.compared_with else {
        let _ =
            writeln!(page, "  no edition of these protocols comes with the program: there was nothing to compare with");
        return;
    };
    if proof.changed_lines.is_empty() {
        let _ = writeln!(page, "  line for line edition {edition}");
        return;
    }
    let differences: Vec<&Finding> = if proof.is_newer {
        proof.new_edition.iter().collect()
    } else {
        proof.findings.iter().filter(|finding| finding.is_of_edition()).collect()
    };
    let count = |about: About| differences.iter().filter(|finding| finding.about == about).count() as u64;
    let what = if proof.is_newer {
        format!("a new edition, and not {edition}")
    } else {
        format!("NOT edition {edition}, which these files call themselves")
    };
    let verdict = format!(
        "{what}: {} allow more or sooner, {} less or later",
        counted(count(About::Unsafe), "difference"),
        grouped(count(About::Stiffening))
    );
    let _ = writeln!(page, "  {}", paint(LOUD, &wrapped(&verdict, 92, "  ")));
    for (about, heading) in [(About::Unsafe, "more, or sooner"), (About::Stiffening, "less, or later")] {
        let of: Vec<&Finding> = differences.iter().copied().filter(|finding| finding.about == about).collect();
        if !of.is_empty() {
            part(page, &of, heading);
        }
    }
    let lines = format!("the lines that differ: {}", proof.changed_lines.join("; "));
    let _ = writeln!(page, "  {}", paint(FAINT, &wrapped(&lines, 94, "  ")));
}

/// So many findings of a kind are shown; the JSON document has them all.
const SHOWN: usize = 24; // not medical: a page of them

/// Some findings under their heading.
fn part(page: &mut String, found: &[&Finding], heading: &str) {
    let _ = writeln!(page, "  {}", paint(LOUD, &format!("{} {heading}:", counted(found.len() as u64, "finding"))));
    for finding in found.iter().take(SHOWN) {
        let _ = writeln!(page, "  - {}", wrapped(&finding.message, 92, "    "));
        let whose = if finding.records > 0 {
            format!("{}, the mildest: {}", counted(finding.records, "combination"), finding.who)
        } else {
            format!("for: {}", finding.who)
        };
        let _ = writeln!(page, "    {}", paint(FAINT, &wrapped(&whose, 92, "    ")));
    }
    if found.len() > SHOWN {
        let _ = writeln!(page, "  and {} more; `--json` has them all", found.len() - SHOWN);
    }
}

/// The mildest record of the first finding, after all words.
fn record(page: &mut String, proof: &Proof<'_>) {
    let all = || proof.findings.iter().chain(&proof.new_edition).filter(|finding| !finding.record.is_empty());
    // A fault by itself before one that is only against the edition.
    let Some(first) = all().find(|finding| !finding.is_of_edition()).or_else(|| all().next()) else { return };
    let _ = writeln!(page, "  the mildest record of: {}", wrapped(&first.message, 92, "    "));
    shown(page, "the record", &first.record);
    if let Some(other) = &first.compared_with {
        shown(page, "compared with", other);
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
        paint(VALUE, &counted(walked.records, "combination")),
        counted(walked.distinct_plans(), "distinct plan"),
        counted(walked.cover_comparisons, "comparison")
    );
    let facts = kinds_of_record(proof);
    let _ = writeln!(
        page,
        "  ({} by their facts, with safe arcs, the protocol asked for and the options)",
        if facts == 1 { "1 kind of record".into() } else { format!("{} kinds of record", grouped(facts)) }
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

/// How many kinds of record there are by their facts alone.
fn kinds_of_record(proof: &Proof<'_>) -> u64 {
    let beside = proof.space.axes.iter().filter(|axis| !matches!(axis.what, proof::What::Fact(_)));
    proof.walked.records / beside.map(|axis| axis.classes.len() as u64).product::<u64>()
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
