//! Exercises: their stage, limits, targets, loads, posture and muscle activity.

use plan::Replacement;
use quantity::Degrees;

use super::{SMALL, at, each, line, moved};
use crate::judged::Told;
use crate::plans::{Texts, prescribe};

#[test]
fn exercises() {
    each(
        Texts { record: SMALL, ..Texts::default() },
        &[
            (
                "half a degree further",
                |p| {
                    let line = line(p, 20, "stick-external-rotation");
                    line.target = line.target.map(|target| Degrees::from_steps(target.steps() + 5));
                },
                &["target-beyond-its-limit"],
                "its target is 15.5 degrees where passive external rotation is allowed up to 20 degrees, and 15 is the most",
            ),
            (
                "no target",
                |p| line(p, 20, "stick-external-rotation").target = None,
                &["target-beyond-its-limit"],
                "no angle is printed",
            ),
            (
                "too little arc",
                |p| line(p, 20, "stick-external-rotation").target = Some(Degrees::whole(10)),
                &["target-beyond-its-limit"],
                "under 15 degrees beyond its start",
            ),
            (
                "too many repetitions",
                |p| line(p, 20, "pendulum").repetitions += 1,
                &["exercise-not-as-written"],
                "its dose is not the one of the files",
            ),
            (
                "supervision forgotten",
                |p| {
                    let line = line(p, 20, "pendulum");
                    line.supervised = !line.supervised;
                },
                &["exercise-not-as-written"],
                "supervision",
            ),
            (
                "an exercise nobody knows",
                |p| line(p, 20, "pendulum").id = "windmill".into(),
                &["exercise-unknown"],
                "the catalogue has no such exercise",
            ),
            (
                "an exercise of a later stage",
                |p| moved(p, "pendulum", 20, 7),
                &["exercise-beyond-its-limit", "exercise-out-of-its-stage"],
                "exercise pendulum: it is listed from day 14 on: 14 days too early",
            ),
            (
                "active motion in the passive stage",
                |p| moved(p, "forward-elevation", 60, 20),
                &["exercise-beyond-its-limit", "exercise-out-of-its-stage", "exercise-above-the-ceiling"],
                "active forward elevation is not allowed",
            ),
            (
                "a hard exercise a stage too early",
                |p| moved(p, "wall-push-up", 120, 60),
                &["exercise-beyond-its-limit", "exercise-out-of-its-stage"],
                "weight through the arm is not allowed",
            ),
            (
                "upright while only lying is allowed",
                |p| line(p, 30, "supine-elevation").id = "wall-slide".into(),
                &["exercise-not-lying", "exercise-out-of-its-stage"],
                "it is done standing, against",
            ),
            (
                "an exercise after its stage",
                |p| moved(p, "pendulum", 41, 50),
                &["exercise-out-of-its-stage"],
                "no longer lists it on these days",
            ),
            (
                "an exercise that stands in for one of another purpose",
                |p| {
                    let place = at(p, 20);
                    let span = &mut p.spans[place];
                    let mut line = span.exercises[0].clone();
                    let other = "table-slide-sideways";
                    line.id = other.into();
                    span.replaced.push(Replacement { dropped: "shrug".into(), taken: other.into() });
                    span.exercises.push(line);
                },
                &["exercise-unknown"],
                "no such exercise",
            ),
            (
                "the load of a later day",
                |p| {
                    let later = line(p, 120, "biceps-curl").load;
                    line(p, 90, "biceps-curl").load = later;
                },
                &["load-beyond-its-limit"],
                "kg is the most for it",
            ),
        ],
    );
}

/// Shrugs were never measured; only a line of the protocol lets them in before active motion opens.
#[test]
fn the_ceiling_of_the_files() {
    let texts = Texts { record: SMALL, ..Texts::default() };
    let p = prescribe(texts);
    let files: Vec<(&str, String)> = protocol::SHIPPED
        .iter()
        .map(|(name, text)| (*name, text.replace("without_measurement = true\n", "")))
        .collect();
    let files: Vec<_> = files.iter().map(|(name, text)| (*name, diagnostic::FileId(0), text.as_str())).collect();
    let library = protocol::Library::read(&files, &mut diagnostic::Sink::new());
    let found = Told::of(texts).faults_under(&p, &library);
    assert!(found.iter().all(|fault| fault.kind == "exercise-above-the-ceiling"), "{found:#?}");
    assert!(found.iter().any(|fault| fault.message.contains("exercise shrug: nobody measured")), "{found:#?}");
}
