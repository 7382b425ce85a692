//! From records to facts: no record has facts that are not believable.

use std::collections::BTreeSet;

use operative::{Facts, dim};
use proptest::collection::vec;
use proptest::prelude::any;
use proptest::strategy::{Strategy, ValueTree};
use proptest::test_runner::TestRunner;

use super::super::{excluded_by, is_believable};
use super::read;

#[track_caller]
fn reads_to_believable(text: &str) -> Option<Facts> {
    let facts = operative::facts(&read(text).ok()?);
    assert!(is_believable(&facts), "{}\n{text}", excluded_by(&facts).map_or("", |rule| rule.id));
    Some(facts)
}

const TENDONS: [&str; 4] = ["supraspinatus", "infraspinatus", "teres minor", "subscapularis"];

/// Every list of tendons: each not listed, left alone, fixed, fixed in part, or with nothing said.
#[test]
fn every_list_of_tendons_reads_to_believable_facts() {
    let states = [None, Some("\"not repaired\""), Some("\"double row\""), Some("\"partial repair\""), Some("")];
    let mut seen = BTreeSet::new();
    for choice in 0..states.len().pow(TENDONS.len() as u32) {
        for (approach, part) in
            ["arthroscopic", "open"].into_iter().flat_map(|a| ["upper part", "complete", ""].map(|p| (a, p)))
        {
            for procedure in ["rotator cuff repair", "capsular release"] {
                let mut text = format!(
                    "patient.birth_date = 1962-11-08\n[operation]\ndate = 2026-03-16\nside = \"left\"\n\
                     approach = \"{approach}\"\nprocedure = \"{procedure}\"\ntear.anteroposterior = \"14 mm\"\n"
                );
                let mut rest = choice;
                for name in TENDONS {
                    let state = states[rest % states.len()];
                    rest /= states.len();
                    let Some(repair) = state else { continue };
                    text.push_str(&format!("[[operation.tendon]]\nname = \"{name}\"\nthickness = \"full\"\n"));
                    if !repair.is_empty() {
                        text.push_str(&format!("repair = {repair}\n"));
                    }
                    if name == "subscapularis" && !part.is_empty() {
                        text.push_str(&format!("part = \"{part}\"\n"));
                    }
                }
                let Some(facts) = reads_to_believable(&text) else { continue };
                let tendons = [dim::REPAIRED_TENDONS, dim::INFRASPINATUS, dim::TERES_MINOR, dim::SUBSCAPULARIS];
                seen.insert((
                    facts.class(dim::PROCEDURE),
                    tendons.map(|of| facts.class(of)),
                    facts.class(dim::REPAIR_CONSTRUCT),
                ));
            }
        }
    }
    // 16 sets of repaired tendons, each with every construct, and the one of a release.
    assert_eq!(seen.len(), 16 * 3 + 1);
}

/// Reads dice off a tape, so that a record is as random as its tape.
struct Dice<'t>(std::slice::Iter<'t, u8>);

impl Dice<'_> {
    fn below(&mut self, sides: usize) -> usize {
        usize::from(self.0.next().copied().unwrap_or(0)) % sides
    }

    /// One of the values; an empty one stands for a key that is left out.
    fn line(&mut self, key: &str, values: &[&str]) -> String {
        let value = values[self.below(values.len())];
        if value.is_empty() { String::new() } else { format!("{key} = {value}\n") }
    }
}

const YES_NO: &[&str] = &["", "true", "false"];

/// A record of any keys with any values, whether or not they go together.
fn any_record(tape: &[u8]) -> String {
    let mut dice = Dice(tape.iter());
    let d = &mut dice;
    let sizes = &["", "\"0.1 mm\"", "\"9.9 mm\"", "\"10 mm\"", "\"29.9 mm\"", "\"3 cm\"", "\"50 mm\"", "\"50.1 mm\""];
    let grades = &["", "0", "1", "2", "3", "4"];
    let mut text = String::from("[patient]\n");
    text += &d.line("birth_date", &["1970-09-14", "1956-02-29", "1955-03-02", "1955-03-03", "1941-01-01"]);
    text += &d.line("sex", &["", "\"female\"", "\"male\"", "\"other\"", "\"unknown\""]);
    text += "[operation]\n";
    text += &d.line("date", &["2026-03-02", "2027-02-28", "2028-02-29"]);
    text += &d.line("side", &["\"left\"", "\"right\""]);
    text += &d.line("approach", &["\"arthroscopic\"", "\"arthroscopic\"", "\"mini-open\"", "\"open\""]);
    text += &d.line("procedure", &["", "", "\"rotator cuff repair\"", "\"capsular release\""]);
    text += &d.line("revision", YES_NO);
    text += "[operation.tear]\n";
    text += &d.line("anteroposterior", &[&sizes[1..], &sizes[1..], &sizes[1..], &[""]].concat());
    text += &d.line("mediolateral", sizes);
    text += &d.line("retraction", sizes);
    text += &d.line("retraction_patte", &["", "1", "2", "3"]);
    text += &d.line("delamination", YES_NO);
    // In some records every tendon was left alone, as at a capsular release.
    let left_alone = d.below(4) == 0;
    for name in TENDONS {
        // Now and then a tendon is listed twice.
        for _ in 0..[0, 0, 1, 1, 1, 1, 1, 2][d.below(8)] {
            text += &format!("[[operation.tendon]]\nname = \"{name}\"\n");
            text += &d.line("thickness", &["", "\"full\"", "\"full\"", "\"partial-bursal\"", "\"partial-articular\""]);
            if name == "subscapularis" {
                text += &d.line("part", &["", "\"upper part\"", "\"upper part\"", "\"complete\""]);
            }
            let repairs = &["", "\"single row\"", "\"double row\"", "\"partial repair\"", "\"not repaired\""];
            text += &d.line("repair", if left_alone { &repairs[4..] } else { repairs });
            text += &d.line("tissue", &["", "\"good\"", "\"fair\"", "\"poor\""]);
            text += &d.line("tension", &["", "\"low\"", "\"moderate\"", "\"high\""]);
        }
    }
    text += "[operation.fatty_infiltration]\n";
    for muscle in ["supraspinatus", "infraspinatus", ["teres_minor", "\"teres minor\""][d.below(2)], "subscapularis"] {
        text += &d.line(muscle, grades);
    }
    text += "[operation.also]\n";
    text += &d.line("biceps", &["", "\"none\"", "\"tenotomy\"", "\"tenodesis\""]);
    text += &d.line("labrum", &["", "\"none\"", "\"superior repair\"", "\"anterior repair\""]);
    for key in ["distal_clavicle_excision", "subacromial_decompression", "microfracture", "capsular_release"] {
        text += &d.line(key, YES_NO);
    }
    text += &d.line("other", &["", "[]", "[\"graft\"]", "[\"microfracture\"]"]);
    for _ in 0..d.below(3) {
        text += "[[operation.safe_arc]]\n";
        let movements = ["\"external rotation\"", "\"internal rotation\"", "\"extension\"", "\"hand behind back\""];
        text += &d.line("movement", &[&movements[..], &movements[..2], &movements[..2], &movements[..2]].concat());
        text += &d.line("up_to", &["\"0 deg\"", "\"-10 deg\"", "\"40.5 deg\"", "\"90 deg\"", "\"120 deg\""]);
        text += &d.line("until", &["", "", "\"day 0\"", "\"day 1\"", "\"day 42\"", "\"day 3650\""]);
    }
    text += "[other_arm]\n";
    text += &d.line("shoulder", &["", "\"sound\"", "\"painful\"", "\"operated\""]);
    text += &d.line("operated_on", &["", "", "", "2019-10-22", "1960-01-01"]);
    text += "[risk]\n";
    for key in ["diabetes", "smoking", "preoperative_stiffness", "pseudoparalysis"] {
        text += &d.line(key, YES_NO);
    }
    text += "[surgeon]\n";
    text += &d.line("slower", YES_NO);
    text += &d.line("stiff_shoulder", &["", "\"as composed\"", "\"loosened\""]);
    text + &d.line("beyond_delayed", &["", "\"as composed\""])
}

#[test]
fn no_random_record_has_facts_that_are_not_believable() {
    let tape = vec(any::<u8>(), 96);
    let mut runner = TestRunner::deterministic();
    let (mut repairs, mut releases) = (BTreeSet::new(), BTreeSet::new());
    let mut accepted = 0;
    for _ in 0..20_000 {
        let Ok(tape) = tape.new_tree(&mut runner) else { continue };
        let Some(facts) = reads_to_believable(&any_record(&tape.current())) else { continue };
        accepted += 1;
        if facts.class(dim::PROCEDURE) == 0 {
            repairs.insert(facts.classes)
        } else {
            releases.insert(facts.classes)
        };
    }
    // Enough of both were taken by the reader for the test to say something.
    assert!(accepted > 3000, "only {accepted} records were read");
    assert!(repairs.len() > 2500 && releases.len() > 100, "{} repairs, {} releases", repairs.len(), releases.len());
}
