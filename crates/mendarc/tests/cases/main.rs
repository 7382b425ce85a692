//! Every file of `cases/` against the library: a clinical story, its record, and what is expected of it.
//!
//! No expectation stands here; all of them stand in the files, and `cases/README.md`
//! says how they are written. A failed one is named with its file and line.

mod dated;
mod days;
mod expect;
#[cfg(feature = "paper")]
mod first_page;
mod found;
mod judged;
mod lines;
mod one_day;
mod paper;
mod story;
mod world;

use mendarc::shelf::Shelf;

/// What is wrong in a story, each with its line.
fn faults(text: &str, shelf: &Shelf) -> Vec<String> {
    let steps = match story::read(text) {
        Ok(steps) => steps,
        Err(fault) => return vec![format!("{}: {}", fault.line, fault.message)],
    };
    steps.iter().flat_map(|step| judged::faults(step, shelf)).collect()
}

#[test]
fn every_case_holds() {
    let shelf = shelf();
    let files = judged::stories();
    let count = files.len();
    let judge = |path: &std::path::PathBuf| -> Vec<String> {
        let text = std::fs::read_to_string(path).expect("a case is text");
        let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
        faults(&text, &shelf).into_iter().map(|fault| format!("cases/{name}:{fault}")).collect()
    };
    // Every second file on a thread of its own.
    let (here, there): (Vec<_>, Vec<_>) = files.iter().enumerate().partition(|(place, _)| place % 2 == 0);
    let failed: Vec<String> = std::thread::scope(|scope| {
        let other = scope.spawn(|| there.iter().flat_map(|(_, path)| judge(path)).collect::<Vec<_>>());
        let mut failed: Vec<String> = here.iter().flat_map(|(_, path)| judge(path)).collect();
        failed.extend(other.join().expect("the second half was judged"));
        failed.sort();
        failed
    });
    assert!(failed.is_empty(), "{} expectations fail:\n{}", failed.len(), failed.join("\n"));
    assert!(count >= 25, "only {count} cases were found");
}

/// The runner itself: a false expectation of each kind is found, with its line.
#[test]
fn a_false_expectation_is_found() {
    let example = include_str!("../../../../examples/small-cuff.toml");
    let shelf = shelf();
    let wrong = [
        "protocol delayed",
        "capped by delayed",
        "why size-30",
        "index 3",
        "index none",
        "first shoulder/forward elevation/passive 2026-03-17",
        "first shoulder/forward elevation/passive never",
        "limit day 14 to 42 shoulder/forward elevation/any/passive up_to 90 deg",
        "limit day 13 shoulder/external rotation/any/passive up_to 20 deg",
        "limit day 36 shoulder/forward elevation/any/active-assisted up_to 90 deg lying",
        "limit day 14 shoulder/forward elevation/any/passive up_to 90 deg lying",
        "reason day 20 shoulder/forward elevation/any/passive delayed/passive-elevation",
        "reason day 20 shoulder/{forward elevation, abduction}/any/passive staged/passive-elevation",
        "no-reason day 0 to 41 shoulder/forward elevation/any/passive staged/passive-elevation",
        "no-caution",
        "sling day 0 to 42 always neutral",
        "sling day 0 always internal rotation",
        "sling-off day 0 meals",
        "exercise day 13 pendulum",
        "exercise day 14 pendulum repetitions 10 to 20",
        "exercise day 14 stick-external-rotation target 20 deg",
        "no-exercise day 14 to 20 pendulum",
        "only day 14 shoulder: pendulum",
        "quiet day 0 to 42",
        "dropped day 14 pendulum",
        "replaced day 14 pendulum by table-slide",
        "goal day 14 no-such-goal",
        "no-goal day 20 assisted/passive-elevation",
        "stage passive day 15",
        "stage passive day 14 opened",
        "criteria passive no-complication, sling-kept",
        "criteria passive none",
        "ends day 364",
        "visit wound due day 11",
        "return drive day 55",
        "question surgeon.slower blocking",
        "no-question-at-all",
        "completions 2",
        "caution no such caution",
        "loosened nothing",
        "moved nothing",
        "today 2026-03-20 stage passive",
        "today 2026-03-20 basis opened",
        "today 2026-03-20 limit shoulder/forward elevation/any/passive up_to 90 deg",
        "today 2026-03-20 not before passive 2026-03-17",
        "today 2026-03-20 exercise pendulum",
        "may 2026-04-20 drive yes",
        "may 2026-04-20 drive not before 2026-04-28",
        "error length-without-unit",
        "error length-without-unit line 12",
    ];
    for expectation in wrong {
        let text = format!("# A story\n\n```toml record\n{example}```\n\n```expect\n{expectation}\n```\n");
        let line = text.lines().position(|line| line == expectation).expect("the expectation stands in the story") + 1;
        let faults = faults(&text, &shelf);
        assert!(faults.iter().any(|fault| fault.starts_with(&format!("{line}: "))), "`{expectation}` held: {faults:?}");
    }
}

/// An error that nobody expected fails a case as well.
#[test]
fn an_error_nobody_expected_is_found() {
    let text = "# A story\n\n```toml record\n[patient]\n```\n\n```expect\n```\n";
    assert!(!faults(text, &shelf()).is_empty());
}

fn shelf() -> Shelf {
    let mut sink = diagnostic::Sink::new();
    let shelf = Shelf::new(&mut diagnostic::Sources::new(), &mut sink);
    assert!(!sink.has_errors(), "{:?}", sink.found());
    shelf
}
