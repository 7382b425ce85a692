//! The catalogue: exercises, daily activities, care poses and visit tests.

use body::{Fingers, Joint, Mode, Movement, Position};
use exercise::{
    BladeHold, Elbow, Equipment, Forearm, Occasion, Other, OtherArm, Path, Posture, Purpose, SlingDuring, Supervision,
    Trunk, Turn, UpperArm, Weight, Wrist,
};
use serde_json::{Value, json};

use super::shape::{
    angle, any, count, defined, effort, evidence_ids, file, id, list, load, table, text, whole, with_definitions, words,
};

/// The days of a week, as the reader bounds them.
const DAYS_A_WEEK: i64 = 7;

/// The schema of a catalogue file.
pub fn schema() -> Value {
    let whole_file = table(
        &[],
        &[
            (
                "exercise",
                list(entry(&[
                    "id",
                    "purpose",
                    "posture",
                    "other_arm",
                    "supervision",
                    "sling",
                    "demands",
                    "positions",
                    "dose",
                ])),
            ),
            ("activity", list(entry(&["id", "posture", "sling"]))),
            (
                "care",
                list(entry(&["id", "posture", "sling", "elevation", "rotation_internal", "rotation_external", "for"])),
            ),
            ("test", list(entry(&["id", "posture", "demands", "positions"]))),
        ],
    );
    with_definitions(
        file(
            "Exercise catalogue",
            "What the arm is asked to do: each entry is a list of demands. Texts stand in the language files.",
            whole_file,
        ),
        &[("demand", demand()), ("evidence", evidence_ids())],
    )
}

fn entry(required: &[&str]) -> Value {
    let muscle = || defined("evidence");
    table(
        required,
        &[
            ("id", id()),
            ("purpose", words(Purpose::WORDS)),
            ("posture", words(Posture::WORDS)),
            ("equipment", list(words(Equipment::WORDS))),
            ("instead", list(text())),
            ("other_arm", words(OtherArm::WORDS)),
            ("supervision", words(Supervision::WORDS)),
            ("sling", words(SlingDuring::WORDS)),
            ("demands", list(defined("demand"))),
            ("other_demands", list(defined("demand"))),
            (
                "dose",
                table(
                    &["sets", "repetitions", "hold_s", "times_per_day"],
                    &[
                        ("sets", count()),
                        ("repetitions", count()),
                        ("hold_s", count()),
                        ("times_per_day", count()),
                        ("days_per_week", whole(1, DAYS_A_WEEK)),
                        ("evidence", list(defined("evidence"))),
                    ],
                ),
            ),
            (
                "muscle",
                table(&[], &[("supraspinatus", muscle()), ("infraspinatus", muscle()), ("subscapularis", muscle())]),
            ),
            ("positions", positions()),
            ("elevation", angle()),
            ("rotation_internal", angle()),
            ("rotation_external", angle()),
            ("for", words(Occasion::WORDS)),
            ("evidence", list(defined("evidence"))),
        ],
    )
}

/// The body at the start and at the end; no degrees stand here, they are those of the demands.
fn positions() -> Value {
    let hold = || {
        table(
            &[],
            &[
                ("trunk", words(Trunk::WORDS)),
                ("upper_arm", words(UpperArm::WORDS)),
                ("turn", words(Turn::WORDS)),
                ("elbow", words(Elbow::WORDS)),
                ("forearm", words(Forearm::WORDS)),
                ("wrist", words(Wrist::WORDS)),
                ("fingers", words(Fingers::WORDS)),
                ("blade", words(BladeHold::WORDS)),
            ],
        )
    };
    table(
        &[],
        &[
            ("at", hold()),
            ("weight", words(Weight::WORDS)),
            ("other", words(Other::WORDS)),
            ("path", words(Path::WORDS)),
            ("start", hold()),
            ("end", hold()),
        ],
    )
}

fn demand() -> Value {
    let limit = || json!({ "const": "limit" });
    table(
        &["joint", "movement", "mode"],
        &[
            ("joint", words(Joint::WORDS)),
            ("movement", words(Movement::WORDS)),
            ("position", words(Position::WORDS)),
            ("mode", words(Mode::WORDS)),
            ("from", angle()),
            ("to", any(&[limit(), angle()])),
            ("load", any(&[limit(), load()])),
            ("effort", effort()),
            ("most", any(&[angle(), load()])),
        ],
    )
}
