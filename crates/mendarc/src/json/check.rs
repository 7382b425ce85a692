//! What a check found: `mendarc.check/1`.

use std::time::Duration;

use ::diagnostic::{Diagnostic as Found, Sources};
use proof::{About, Finding as Known, Manner, Proof};
use protocol::Family;
use schemars::JsonSchema;
use serde::Serialize;

use super::{Diagnostic, diagnostics, to_text, usual_cautions};

/// The schema of a check.
pub const CHECK_SCHEMA: &str = "mendarc.check/1";

/// A check of protocol files, and with `--every-record` its proof. Where there are several families the numbers are
/// sums, the lists stand one after the other, and each family has an entry of its own.
#[derive(Debug, Serialize, JsonSchema)]
pub struct Check {
    schema: &'static str,
    #[serde(flatten)]
    proof: Option<OfFamily>,
    families: Vec<OfFamily>,
    cautions: Vec<String>,
    diagnostics: Vec<Diagnostic>,
}

/// The proof of a family.
#[derive(Debug, Clone, Default, Serialize, JsonSchema)]
struct OfFamily {
    family: String,
    /// The protocols with their editions.
    protocols: Vec<Edition>,
    /// Whether every record was gone through; false for a check of the files alone.
    proved: bool,
    /// Stopped before the end.
    partial: bool,
    /// "by rule": records that the rules cannot tell apart share one composed plan. "singly": each was composed.
    manner: Option<&'static str>,
    dimensions: Vec<Dimension>,
    /// What of a record changes no plan of the family, and what reads it.
    beside: Vec<Beside>,
    excluded: Vec<Excluded>,
    records: u64,
    distinct_plans: u64,
    cover_comparisons: u64,
    /// Whole prescriptions issued and checked, with `--whole`.
    prescriptions: u64,
    breakpoints: usize,
    threads: usize,
    elapsed_s: f64,
    #[serde(rename = "unsafe")]
    unsafe_plans: Vec<Finding>,
    looser: Vec<Finding>,
    stiffening: Vec<Finding>,
    /// The edition it was compared with; null where none comes with the program.
    compared_with_edition: Option<String>,
    /// The lines that are not those of that edition, by their place.
    changed_lines: Vec<String>,
    /// Days that the tables of a plan cannot hold apart; then nothing was gone through.
    off_grid: Vec<String>,
    /// Records whose own plan was not the one that stood for them, with `--singly`.
    not_shared: u64,
    /// What a new edition says otherwise than the one that comes with the program; no finding.
    new_edition: Vec<Finding>,
}

#[derive(Debug, Clone, Serialize, JsonSchema)]
struct Edition {
    id: String,
    edition: String,
}

#[derive(Debug, Clone, Serialize, JsonSchema)]
struct Dimension {
    fact: String,
    classes: Vec<String>,
    /// Why each class is one, in the order of the classes.
    because: Vec<String>,
    /// Pairs of classes by their place, of which the second is the next worse.
    covers: Vec<(u8, u8)>,
}

#[derive(Debug, Clone, Serialize, JsonSchema)]
struct Beside {
    fact: &'static str,
    classes: usize,
    because: String,
}

#[derive(Debug, Clone, Serialize, JsonSchema)]
struct Excluded {
    rule: &'static str,
    records: u64,
}

/// One finding with the mildest record that shows it. Days are half open.
#[derive(Debug, Clone, Serialize, JsonSchema)]
struct Finding {
    kind: String,
    message: String,
    key: Option<String>,
    from_day: u16,
    until_day: u16,
    rule: Option<String>,
    /// How many records have such a plan; null where nobody counted.
    records: Option<u64>,
    who: String,
    record: String,
    compared_with: Option<String>,
}

/// The document of a check of the files alone.
pub fn files(families: &[Family], found: &[Found], sources: &Sources) -> String {
    document(families.iter().map(of_family).collect(), found, sources)
}

/// The document of a proof.
pub fn proofs(proofs: &[(Proof<'_>, Duration)], found: &[Found], sources: &Sources) -> String {
    document(proofs.iter().map(|(proof, took)| of_proof(proof, *took)).collect(), found, sources)
}

fn document(families: Vec<OfFamily>, found: &[Found], sources: &Sources) -> String {
    to_text(&Check {
        schema: CHECK_SCHEMA,
        proof: families.iter().cloned().reduce(sum),
        families,
        cautions: usual_cautions(),
        diagnostics: diagnostics::all(found, sources),
    })
}

fn of_family(family: &Family) -> OfFamily {
    let protocols = family.protocols.iter();
    let edition = |protocol: &protocol::file::ProtocolFile| Edition {
        id: protocol.id.clone(),
        edition: protocol.edition.clone(),
    };
    OfFamily { family: family.file.id.clone(), protocols: protocols.map(edition).collect(), ..OfFamily::default() }
}

fn of_proof(proof: &Proof<'_>, took: Duration) -> OfFamily {
    let (space, walked) = (&proof.space, &proof.walked);
    let about = |about| proof.about(about).map(finding).collect();
    OfFamily {
        proved: proof.holds(),
        partial: walked.partial,
        manner: Some(match proof.manner {
            Manner::ByRule => "by rule",
            Manner::Singly => "singly",
        }),
        dimensions: space
            .axes
            .iter()
            .map(|axis| Dimension {
                fact: axis.name.clone(),
                classes: axis.classes.iter().map(|class| class.name.clone()).collect(),
                because: axis.classes.iter().map(|class| class.because.clone()).collect(),
                covers: axis.covers.clone(),
            })
            .collect(),
        beside: space
            .beside
            .iter()
            .filter_map(|beside| {
                let fact = beside.dimension.get()?.name;
                Some(Beside { fact, classes: beside.classes, because: beside.because.clone() })
            })
            .collect(),
        excluded: walked.excluded.iter().map(|(rule, records)| Excluded { rule, records: *records }).collect(),
        records: walked.records,
        distinct_plans: walked.distinct_plans(),
        cover_comparisons: walked.cover_comparisons,
        prescriptions: proof.prescriptions,
        breakpoints: walked.breakpoints,
        threads: proof::threads(),
        elapsed_s: took.as_secs_f64(),
        unsafe_plans: about(About::Unsafe),
        looser: about(About::Looser),
        stiffening: about(About::Stiffening),
        compared_with_edition: proof.compared_with.clone(),
        changed_lines: proof.changed_lines.clone(),
        off_grid: walked.off_grid.clone(),
        not_shared: walked.not_shared,
        new_edition: proof.new_edition.iter().map(finding).collect(),
        ..of_family(space.family)
    }
}

fn finding(known: &Known) -> Finding {
    Finding {
        kind: known.kind.clone(),
        message: known.message.clone(),
        key: known.key.map(|key| key.to_string()),
        from_day: known.from_day,
        until_day: known.until_day,
        rule: known.rule.clone(),
        records: (known.records > 0).then_some(known.records),
        who: known.who.clone(),
        record: known.record.clone(),
        compared_with: known.compared_with.clone(),
    }
}

fn sum(mut all: OfFamily, one: OfFamily) -> OfFamily {
    all.family = format!("{}, {}", all.family, one.family);
    all.protocols.extend(one.protocols);
    all.proved &= one.proved;
    all.partial |= one.partial;
    all.dimensions.extend(one.dimensions);
    all.beside.extend(one.beside);
    all.excluded.extend(one.excluded);
    all.records += one.records;
    all.distinct_plans += one.distinct_plans;
    all.cover_comparisons += one.cover_comparisons;
    all.prescriptions += one.prescriptions;
    all.breakpoints = all.breakpoints.max(one.breakpoints);
    all.elapsed_s += one.elapsed_s;
    all.unsafe_plans.extend(one.unsafe_plans);
    all.looser.extend(one.looser);
    all.stiffening.extend(one.stiffening);
    all.new_edition.extend(one.new_edition);
    all.changed_lines.extend(one.changed_lines);
    all.off_grid.extend(one.off_grid);
    all.not_shared += one.not_shared;
    all
}
