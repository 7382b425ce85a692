//! A small invented family without a fault, to put one fault into.

use diagnostic::{Diagnostic, FileId, Sink};

use super::catalogue;
use crate::Library;

const FAMILY: &str = r#"id = "plain"
title = "An invented operation"
procedure = "rotator cuff repair"
default = "quick"
safe_arc_until_stage = "active"
protocols = ["quick", "slow"]

[[select]]
id = "large"
title = "a large tear takes the slow protocol"
protocol = "slow"
when = [{ fact = "tear size", at_least = "30 to 50 mm" }]
evidence = ["delayed-from-size"]

[[question]]
id = "slower"
path = "surgeon.slower"
text = "slower?"
answered_by = "slower"
unless_capped_by = "slow"
when = [{ fact = "smoking", has = "yes" }]
evidence = ["slower-opinion"]
"#;

const QUICK: &str = r#"id = "quick"
edition = "1"
title = "Quick"
summary = "an invented protocol"
parts = ["hand"]
horizon = "day 365"
evidence = ["horizon"]

[[choice]]
id = "outward"
title = "passive external rotation"
options = ["20 deg", "30 deg"]
evidence = ["staged-passive-external-rotation", "external-rotation-wider"]

[[stage]]
id = "protection"
title = "Protection"
gate = "day 0"

[[stage]]
id = "passive"
title = "Passive"
gate = "day 14"
evidence = ["staged-passive-start"]

[[stage]]
id = "active"
title = "Active"
gate = "day 42"
evidence = ["staged-active-start"]
criteria = [
  { id = "elevation", text = "90 degrees", key = "shoulder/forward elevation/any/passive", at_least = "90 deg", evidence = ["criterion-elevation"] },
]

[[sling]]
from = "day 0"
until = "day 42"
wear = "always"
evidence = ["sling-always-until"]

[[sling]]
from = "day 42"
wear = "none"
evidence = ["sling-always-until"]

[[limit]]
id = "elevation"
title = "passive elevation"
keys = ["shoulder/forward elevation"]
modes = ["passive"]
steps = [{ from = "day 14", until = "day 42", up_to = "90 deg" }, { from = "day 42", allowed = "free" }]
evidence = ["staged-passive-start", "staged-passive-elevation", "staged-active-start"]

[[limit]]
id = "outward"
title = "passive external rotation"
keys = ["shoulder/external rotation"]
modes = ["passive"]
choice = { id = "outward", is = "20 deg" }
steps = [{ from = "day 14", until = "day 42", up_to = "20 deg" }, { from = "day 42", allowed = "free" }]
evidence = ["staged-passive-start", "staged-passive-external-rotation", "staged-active-start"]

[[limit]]
id = "outward-wider"
title = "passive external rotation"
keys = ["shoulder/external rotation"]
modes = ["passive"]
choice = { id = "outward", is = "30 deg" }
steps = [{ from = "day 14", until = "day 42", up_to = "30 deg" }, { from = "day 42", allowed = "free" }]
evidence = ["staged-passive-start", "external-rotation-wider", "staged-active-start"]

[[limit]]
id = "other"
title = "every other passive movement"
keys = ["shoulder/scapular-plane elevation", "shoulder/abduction", "shoulder/extension", "shoulder/internal rotation", "shoulder/horizontal adduction", "shoulder/hand behind back", "shoulder/abduction with external rotation"]
modes = ["passive"]
steps = [{ from = "day 42", allowed = "free" }]
evidence = ["staged-active-start"]

[[limit]]
id = "work"
title = "everything active"
keys = ["shoulder/*"]
modes = ["end-range stretch", "active-assisted", "active", "isometric", "resisted"]
steps = [{ from = "day 42", allowed = "free" }]
evidence = ["staged-active-start"]

[[limit]]
id = "hand-load"
title = "load in the hand"
keys = ["whole arm/hand load"]
modes = ["resisted"]
opened_by_surgeon = true
steps = [{ from = "day 84", up_to = "2.27 kg" }]
evidence = ["staged-hand-load-start", "first-hand-load"]

[[goal]]
id = "elevation"
key = "shoulder/forward elevation/any/passive"
from = "90 deg"
due = "day 42"
shown_from_stage = "passive"
evidence = ["criterion-elevation", "staged-active-start"]

[[exercise]]
id = "pendulum"
stage = "passive"
until_stage = "active"
evidence = ["staged-passive-start"]

[[return]]
activity = "drive"
from = "day 56"
evidence = ["driving-start"]

[[passive_by]]
keys = ["shoulder/forward elevation", "shoulder/external rotation"]
day = "day 14"
evidence = ["staged-passive-start"]

[[passive_by]]
keys = ["shoulder/scapular-plane elevation", "shoulder/abduction", "shoulder/extension", "shoulder/internal rotation", "shoulder/horizontal adduction", "shoulder/hand behind back", "shoulder/abduction with external rotation"]
day = "day 42"
evidence = ["staged-active-start"]
"#;

const SLOW: &str = r#"id = "slow"
edition = "1"
title = "Slow"
summary = "an invented protocol, later in everything"
horizon = "day 365"
evidence = ["horizon"]

[[stage]]
id = "protection"
title = "Protection"
gate = "day 0"

[[stage]]
id = "passive"
title = "Passive"
gate = "day 42"
evidence = ["delayed-passive-start"]

[[stage]]
id = "active"
title = "Active"
gate = "day 98"
evidence = ["delayed-active-start"]

[[sling]]
from = "day 0"
until = "day 42"
wear = "always"
evidence = ["sling-always-until"]

[[sling]]
from = "day 42"
wear = "weaning"
evidence = ["sling-always-until"]

[[limit]]
id = "passive"
title = "passive"
keys = ["shoulder/forward elevation", "shoulder/external rotation"]
modes = ["passive"]
steps = [{ from = "day 42", until = "day 98", up_to = "30 deg" }, { from = "day 98", allowed = "free" }]
evidence = ["delayed-passive-start", "delayed-passive-external-rotation", "delayed-active-start"]

[[limit]]
id = "other"
title = "every other passive movement"
keys = ["shoulder/scapular-plane elevation", "shoulder/abduction", "shoulder/extension", "shoulder/internal rotation", "shoulder/horizontal adduction", "shoulder/hand behind back", "shoulder/abduction with external rotation"]
modes = ["passive"]
steps = [{ from = "day 98", allowed = "free" }]
evidence = ["delayed-active-start"]

[[limit]]
id = "work"
title = "everything active"
keys = ["shoulder/*"]
modes = ["end-range stretch", "active-assisted", "active", "isometric", "resisted"]
steps = [{ from = "day 98", allowed = "free" }]
evidence = ["delayed-active-start"]

[[passive_by]]
keys = ["shoulder/forward elevation", "shoulder/external rotation"]
day = "day 42"
evidence = ["delayed-passive-start"]

[[passive_by]]
keys = ["shoulder/scapular-plane elevation", "shoulder/abduction", "shoulder/extension", "shoulder/internal rotation", "shoulder/horizontal adduction", "shoulder/hand behind back", "shoulder/abduction with external rotation"]
day = "day 98"
evidence = ["delayed-active-start"]
"#;

const HAND: &str = r#"[[limit]]
id = "hand"
title = "the hand"
keys = ["hand/flexion", "hand/extension"]
modes = ["passive", "active-assisted", "active"]
steps = [{ from = "day 0", allowed = "free" }]
evidence = ["elbow-hand-from-the-start"]
"#;

const RULES: &str = r#"[[rule]]
id = "subscapularis"
title = "external rotation opens in steps"
when = [{ fact = "subscapularis", at_least = "upper part, arthroscopic" }]
limits = [
  { keys = ["shoulder/external rotation"], modes = "all", steps = [
    { from = "day 0", until = "day 28", up_to = "0 deg" },
    { from = "day 28", until = "day 42", up_to = "45 deg" },
  ] },
]
evidence = ["subscapularis-shut", "subscapularis-first-step", "subscapularis-second-step", "subscapularis-upper-first"]

[[rule]]
id = "poor-tissue"
title = "the slow protocol caps the plan"
when = [{ fact = "tissue", at_least = "poor" }]
cap = "slow"
evidence = ["slower-principle"]

[[rule]]
id = "later"
title = "active motion starts later"
when = [{ fact = "biceps", has = "tenodesis" }]
gates = [{ stage = "passive", day = "day 28" }]
evidence = ["biceps-active-start"]
"#;

/// The files, as `plain/name.toml` and text.
pub(super) const FILES: [(&str, &str); 5] = [
    ("plain/family.toml", FAMILY),
    ("plain/quick.toml", QUICK),
    ("plain/slow.toml", SLOW),
    ("plain/hand.toml", HAND),
    ("plain/rules.toml", RULES),
];

/// Diagnostics as `file:line [first line of the span] code: message / help / help`.
pub(super) fn rendered(found: &[Diagnostic], files: &[(&str, &str)]) -> Vec<String> {
    found
        .iter()
        .map(|fault| {
            let place = fault.span.and_then(|span| {
                let (name, text) = files.get(usize::from(span.file.0))?;
                let line = 1 + text[..span.start as usize].matches('\n').count();
                let shown = text[span.start as usize..span.end as usize].lines().next().unwrap_or_default();
                let name = name.rsplit('/').next().unwrap_or_default();
                Some(format!("{name}:{line} [{shown}] "))
            });
            let helps: String = fault.helps.iter().map(|help| format!(" / {help}")).collect();
            format!("{}{}: {}{helps}", place.unwrap_or_default(), fault.code, fault.message)
        })
        .collect()
}

/// Reads and checks a family of files.
pub(super) fn findings(files: &[(&str, &str)]) -> Vec<String> {
    let mut sink = Sink::new();
    let numbered: Vec<_> = (0..).zip(files).map(|(id, (name, text))| (*name, FileId(id), *text)).collect();
    let library = Library::read(&numbered, &mut sink);
    library.check(&catalogue(), &mut sink);
    rendered(sink.found(), files)
}

/// Puts one fault, or several in a row, into the family; what is found must be exactly `expect`.
#[track_caller]
pub(super) fn check(file: &str, changes: &[(&str, &str)], expect: &[&str]) {
    let mut files: Vec<(&str, String)> = FILES.iter().map(|(name, text)| (*name, (*text).to_owned())).collect();
    let name = format!("plain/{file}.toml");
    let (_, text) = files.iter_mut().find(|(known, _)| *known == name).expect("a file of the family");
    for (from, to) in changes {
        assert!(text.contains(from), "{file} does not hold {from:?}");
        *text = text.replacen(from, to, 1);
    }
    let files: Vec<(&str, &str)> = files.iter().map(|(name, text)| (*name, text.as_str())).collect();
    assert_eq!(findings(&files), expect);
}

#[test]
fn the_invented_family_has_no_fault() {
    assert_eq!(findings(&FILES), Vec::<String>::new());
}
