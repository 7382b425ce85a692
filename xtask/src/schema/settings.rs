//! The settings of a surgeon.

use body::{Joint, Mode, Movement, Position};
use serde_json::{Value, json};

use super::shape::{
    angle, any, count, date, day, effort, evidence_ids, file, list, load, one_of, table, text, whole, words,
};

/// The schema of the settings file.
pub fn schema() -> Value {
    let weekday = one_of(["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"].into_iter());
    let permission = any(&[one_of(std::iter::once("no")), day()]);
    let keys = table(
        &[],
        &[
            ("contact", table(&[], &[("day", text()), ("night", text())])),
            ("practice", table(&[], &[("surgeon", text()), ("name", text()), ("address", text())])),
            (
                "paper",
                table(
                    &[],
                    &[
                        ("size", one_of(["a4", "letter"].into_iter())),
                        ("tablets", text()),
                        ("tablets_es", text()),
                        ("build", words(body::Build::WORDS)),
                        ("hair", words(body::Hair::WORDS)),
                        ("fever", one_of(["38.0 C", "38.3 C"].into_iter())),
                    ],
                ),
            ),
            (
                "therapy",
                table(
                    &[],
                    &[
                        ("times_a_week", whole(1, 7)),
                        ("weeks", whole(1, 52)),
                        ("manual_therapy", permission.clone()),
                        ("pool", permission.clone()),
                        ("traction", permission),
                    ],
                ),
            ),
            ("clinic", table(&[], &[("days", list(weekday)), ("holidays", list(date())), ("time_zone", text())])),
            (
                "choice",
                table(
                    &["protocol"],
                    &[("protocol", text()), ("reason", text()), ("confirm", text()), ("confirm_large", text())],
                ),
            ),
            (
                "prefer",
                list(table(
                    &["choice", "option"],
                    &[("choice", text()), ("option", text()), ("reason", text()), ("confirm", text())],
                )),
            ),
            (
                "back",
                list(table(&["stage", "day", "reason"], &[("stage", text()), ("day", count()), ("reason", text())])),
            ),
            (
                "hold",
                list(table(
                    &["from_day", "days", "reason"],
                    &[("from_day", count()), ("days", count()), ("reason", text()), ("joint", words(Joint::WORDS))],
                )),
            ),
            ("loosening", list(loosening())),
            ("home_margin", angle()),
            ("home_margin_reason", text()),
            ("adopted_goals", list(evidence_ids())),
        ],
    );
    file("Settings", "One surgeon's choices; everything is optional but the numbers on patients' paper.", keys)
}

fn loosening() -> Value {
    table(
        &["joint", "movement", "mode", "from_day", "until_day", "up_to", "reason"],
        &[
            ("joint", words(Joint::WORDS)),
            ("movement", words(Movement::WORDS)),
            ("position", words(Position::WORDS)),
            ("mode", words(Mode::WORDS)),
            ("from_day", count()),
            ("until_day", count()),
            ("up_to", any(&[json!({ "const": "free" }), angle(), load(), effort()])),
            ("confirm", text()),
            ("reason", text()),
        ],
    )
}
