//! `draw`: a true picture or a diagnostic, whole or not at all.

use std::fs;

use crate::runs::{Written, mendarc};

/// Draws into a folder of its own.
fn draws(arguments: &[&str], name: &str) -> (crate::runs::Run, Option<String>) {
    let files = Written::new();
    let path = files.path(name);
    let mut all = vec!["draw"];
    all.extend(arguments);
    all.extend(["--out", path.as_str()]);
    let run = mendarc(&all);
    (run, fs::read_to_string(&path).ok())
}

#[test]
fn an_exercise_is_drawn_at_its_angle_on_its_side() {
    let (run, svg) = draws(&["stick-external-rotation", "--angle", "25", "--side", "left"], "turn.svg");
    assert_eq!(run.status, 0, "{}", run.stderr);
    let svg = svg.expect("a drawing");
    assert!(svg.contains("<title>Stick turn outward, left arm</title>"), "{}", &svg[..400]);
    assert!(svg.contains(">25°</text>") && svg.contains(">LEFT</text>"));
    assert!(!svg.contains("<script"));
}

#[test]
fn its_words_are_those_of_the_language() {
    let (run, svg) = draws(&["supine-elevation", "--angle", "90", "--limit", "95", "--language", "es"], "raise.svg");
    assert_eq!(run.status, 0, "{}", run.stderr);
    let svg = svg.expect("a drawing");
    assert!(svg.contains(">DERECHO</text>") && svg.contains(">alto</text>"));
}

#[test]
fn a_moving_drawing_stands_still_for_who_asks_for_it() {
    let (run, svg) = draws(&["forward-elevation", "--angle", "90", "--animated"], "raise.svg");
    assert_eq!(run.status, 0, "{}", run.stderr);
    let svg = svg.expect("a drawing");
    assert!(svg.contains("@media (prefers-reduced-motion:reduce)") && !svg.contains("<script"));
}

#[test]
fn what_can_not_be_drawn_truly_is_refused() {
    for (arguments, name, code) in [
        (&["pendullum"][..], "x.svg", "unknown-exercise"),
        (&["supine-elevation", "--angle", "181"], "x.svg", "impossible-angle"),
        (&["supine-elevation", "--angle", "-5"], "x.svg", "angle-beyond-exercise"),
        (&["supine-elevation", "--angle", "much"], "x.svg", "impossible-angle"),
        (&["stick-external-rotation", "--angle", "120"], "x.svg", "angle-beyond-exercise"),
        (&["ball-squeeze", "--angle", "20"], "x.svg", "angle-without-movement"),
        (&["forward-elevation", "--angle", "100", "--limit", "90"], "x.svg", "angle-beyond-limit"),
        (&["pendulum"], "x.gif", "unknown-picture-format"),
        (&["pendulum", "--language", "xx"], "x.svg", "language-not-there"),
    ] {
        let (run, written) = draws(arguments, name);
        assert_ne!(run.status, 0, "{arguments:?}");
        assert!(run.stderr.contains(code), "{arguments:?}: {}", run.stderr);
        assert_eq!(written, None, "{arguments:?}");
    }
}

#[test]
fn the_whole_catalogue_fits_on_one_sheet() {
    let (run, svg) = draws(&["--all"], "all.svg");
    assert_eq!(run.status, 0, "{}", run.stderr);
    let drawings = svg.expect("a sheet").matches("<svg x=").count();
    assert!(drawings >= 199, "{drawings}");
}
