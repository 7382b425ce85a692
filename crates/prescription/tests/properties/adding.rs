//! Adding a finding, or not recording one, never loosens.

use proptest::prelude::*;
use proptest::sample::select;

use crate::plans::{Texts, looser_day, prescribe};
use crate::records::{Arc, Tendon, Written, choice, record};

/// Findings that may be added to a record, each by its name.
const FINDINGS: &[&str] = &[
    "poor tissue",
    "high tension",
    "partial repair",
    "revision",
    "tenotomy",
    "tenodesis",
    "superior labrum",
    "anterior labrum",
    "clavicle",
    "release",
    "larger",
    "second tendon",
    "teres minor",
    "subscapularis",
    "complete subscapularis",
    "open",
    "slower",
    "rotation arc",
    "elevation arc",
    "arc of no day",
    "unknown biceps",
    "unknown labrum",
    "unknown tissue",
    "unknown tension",
    "unknown revision",
    "unknown size",
    "unknown clavicle",
    "painful other arm",
    "smoking",
    "stiffness",
];

/// The record with a finding added; the same where the record holds something worse or other already.
fn with(finding: &str, written: &Written) -> Written {
    let mut more = written.clone();
    let one = more.tendons.len() == 1;
    let tendon = |name: &'static str, part: &'static str| Tendon {
        name,
        part,
        repair: "double row",
        tissue: Some("good"),
        tension: Some("low"),
    };
    let arc = |movement, up_to, until| Arc { movement, up_to, until };
    // A tendon of which nothing is known counts as the worst; naming it is no longer adding.
    let tissue_known = more.tendons.iter().all(|tendon| tendon.tissue.is_some());
    let tension_known = more.tendons.iter().all(|tendon| tendon.tension.is_some());
    match finding {
        "poor tissue" if tissue_known => more.tendons[0].tissue = Some("poor"),
        "high tension" if tension_known => more.tendons[0].tension = Some("high"),
        "partial repair" => more.tendons[0].repair = "partial repair",
        "revision" if more.revision.is_some() => more.revision = Some(true),
        "tenotomy" if more.biceps == Some("none") => more.biceps = Some("tenotomy"),
        "tenodesis" if more.biceps == Some("none") => more.biceps = Some("tenodesis"),
        "superior labrum" if more.labrum == Some("none") => more.labrum = Some("superior repair"),
        "anterior labrum" if more.labrum == Some("none") => more.labrum = Some("anterior repair"),
        "clavicle" if more.clavicle.is_some() => more.clavicle = Some(true),
        "release" => more.release = Some(true),
        "larger" => more.anteroposterior = more.anteroposterior.max(35),
        "second tendon" if one && more.tendons[0].name == "supraspinatus" => {
            more.tendons.push(tendon("infraspinatus", "complete"));
        }
        "teres minor" if more.tendons.iter().all(|tendon| tendon.name != "teres minor") => {
            more.tendons.push(tendon("teres minor", "complete"));
        }
        "subscapularis" if more.tendons.iter().all(|tendon| tendon.name != "subscapularis") => {
            more.tendons.push(tendon("subscapularis", "upper part"));
        }
        "complete subscapularis" => more.tendons.iter_mut().for_each(|tendon| tendon.part = "complete"),
        "open" => more.approach = "open",
        "slower" => more.slower = Some(true),
        "rotation arc" => more.arcs.push(arc("external rotation", 10, Some(60))),
        "elevation arc" => more.arcs.push(arc("forward elevation", 70, Some(100))),
        "arc of no day" => more.arcs.push(arc("abduction", 40, None)),
        "unknown biceps" => more.biceps = None,
        "unknown labrum" => more.labrum = None,
        "unknown tissue" => more.tendons[0].tissue = None,
        "unknown tension" => more.tendons[0].tension = None,
        "unknown revision" => more.revision = None,
        "unknown size" => (more.mediolateral, more.retraction) = (None, None),
        "unknown clavicle" => more.clavicle = None,
        "painful other arm" if more.other_arm.is_some() => more.other_arm = Some("painful"),
        "smoking" => more.smoking = Some(true),
        "stiffness" => more.stiffness = Some(true),
        _ => {}
    }
    more
}

/// Whether not recording a size could make the tear smaller: only where the sizes alone made it large.
fn loses_a_large_size(finding: &str, written: &Written) -> bool {
    let large = |size: Option<u8>| size.is_some_and(|size| size > 50);
    finding == "unknown size" && (large(written.mediolateral) || large(written.retraction))
}

proptest! {
    #![proptest_config(crate::config())]

    #[test]
    fn adding_a_finding_never_loosens(
        written in record(),
        settings in choice(),
        findings in prop::collection::vec(select(FINDINGS), 3),
    ) {
        let mut before = (written.clone(), prescribe(Texts { record: &written.text(), settings, ..Texts::default() }));
        for finding in findings {
            if loses_a_large_size(finding, &before.0) {
                continue;
            }
            let more = with(finding, &before.0);
            let text = more.text();
            let after = prescribe(Texts { record: &text, settings, ..Texts::default() });
            prop_assert_eq!(looser_day(&after, &before.1), None, "{} was added:\n{}{}", finding, text, settings);
            before = (more, after);
        }
    }
}

/// Each finding does something to the small neutral record, but for those that by policy change no limit there.
#[test]
fn each_finding_tells() {
    let neutral = Written {
        birth: jiff::civil::date(1970, 6, 11),
        date: jiff::civil::date(2026, 3, 2),
        side: "right",
        approach: "arthroscopic",
        revision: Some(false),
        anteroposterior: 18,
        mediolateral: Some(10),
        retraction: Some(8),
        tendons: vec![Tendon {
            name: "supraspinatus",
            part: "upper part",
            repair: "double row",
            tissue: Some("good"),
            tension: Some("low"),
        }],
        infiltration: Some(1),
        biceps: Some("none"),
        labrum: Some("none"),
        clavicle: Some(false),
        release: Some(false),
        arcs: Vec::new(),
        other_arm: Some("sound"),
        smoking: Some(false),
        stiffness: Some(false),
        slower: None,
    };
    let plan = |written: &Written| prescribe(Texts { record: &written.text(), ..Texts::default() });
    let before = plan(&neutral);
    let silent: Vec<&str> = FINDINGS
        .iter()
        .copied()
        .filter(|finding| looser_day(&before, &plan(&with(finding, &neutral))).is_none())
        .collect();
    assert_eq!(
        silent,
        [
            "clavicle",
            "release",
            "complete subscapularis",
            "open",
            "unknown clavicle",
            "painful other arm",
            "smoking",
            "stiffness",
        ]
    );
}
