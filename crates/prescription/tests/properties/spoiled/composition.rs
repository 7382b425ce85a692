//! A plan made without what the checker is told.

use plan::Prescription;
use protocol::checker::Held;

use super::{ELEVATION, OUTWARD, SMALL};
use crate::judged::Told;
use crate::plans::{Texts, prescribe};

/// A plan made without what the checker is told: a hold, a finding, an option, a loosening, a line of the files.
#[test]
fn a_fault_of_the_composition() {
    let texts = Texts { record: SMALL, ..Texts::default() };
    let p = prescribe(texts);
    let kinds =
        |told: &Told, p: &Prescription| -> Vec<&str> { told.faults(p).into_iter().map(|fault| fault.kind).collect() };
    let mut held = Told::of(texts);
    held.holds.push(Held { from_day: 40, days: 14, joint: None });
    let found = held.faults(&p);
    assert!(found.iter().any(|fault| fault.message.contains("(the plan is held or gone back)")), "{found:#?}");
    assert!(kinds(&held, &p).contains(&"gate-too-early"));
    assert!(kinds(&held, &p).contains(&"sling-worn-less"));
    assert!(kinds(&held, &p).contains(&"return-too-early"));

    let poor = SMALL.replace("\"good\"", "\"poor\"");
    let told = Told::of(Texts { record: &poor, ..Texts::default() });
    let found = told.faults(&p);
    let first = found.iter().find(|fault| fault.key == Some(ELEVATION)).expect("a fault");
    assert!(first.message.contains("`delayed`"), "{first}");
    assert_eq!((first.from_day, first.until_day), (14, 42));
    assert!(kinds(&told, &p).contains(&"not-the-protocol"));

    let wider = "[[prefer]]\nchoice = \"external-rotation-limit\"\noption = \"30 deg\"\nreason = \"agreed\"\n\
                 confirm = \"30 deg\"\n";
    let wider = prescribe(Texts { settings: wider, ..texts });
    let found = Told::of(texts).faults(&wider);
    assert!(found.iter().any(|fault| fault.key == Some(OUTWARD) && fault.message.contains("10 degrees too much")));

    let loosened = "[[loosening]]\njoint = \"shoulder\"\nmovement = \"external rotation\"\n\
                    mode = \"passive\"\nfrom_day = 20\nuntil_day = 30\nup_to = \"30 deg\"\nreason = \"agreed\"\nconfirm = \"30 deg\"\n";
    let texts = Texts { settings: loosened, ..texts };
    let p = prescribe(texts);
    assert_eq!(Told::of(texts).faults(&p), vec![]);
    let mut told = Told::of(texts);
    told.loosenings.clear();
    let found = told.faults(&p);
    assert!(found.iter().all(|fault| fault.kind == "limit-above-rule" && fault.key == Some(OUTWARD)), "{found:#?}");
    assert_eq!(found.iter().map(|fault| (fault.from_day, fault.until_day)).collect::<Vec<_>>(), [(20, 30)]);
}
