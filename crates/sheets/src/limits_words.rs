//! The short words of the table of limits.

use body::{Joint, Mode, Movement, Position};
use jiff::civil::Date;
use plan::{Allowed, Bound, Prescription};
use quantity::{Kilograms, PostoperativeDay};
use wording::{Argument, Language, dates};

use crate::household;
use crate::limits_table::{DayColumn, GroupRow, Region, Value};

/// "no", "≤ 90°", "≤ 2.27 kg (5 lb)", "free"; with "on the back" where only lying.
pub(crate) fn value(value: Value) -> String {
    let text = allowed(value.allowed);
    if value.only_lying { format!("{text}\non the back") } else { text }
}

/// A value without its position.
pub(crate) fn allowed(allowed: Allowed) -> String {
    match allowed {
        Allowed::No => "no".into(),
        Allowed::Free => "free".into(),
        Allowed::UpTo(Bound::Angle(angle)) => format!("≤ {angle}°"),
        Allowed::UpTo(Bound::Load(kilograms)) => {
            let [kilograms, pounds] = load(kilograms);
            format!("≤ {kilograms} kg\n{pounds} lb")
        }
        Allowed::UpTo(Bound::Effort(percent)) => format!("≤ {percent} %\neffort"),
    }
}

/// Kilograms and whole pounds, rounded down.
pub(crate) fn load(kilograms: Kilograms) -> [String; 2] {
    household::load(kilograms, Language::English).map(|(_, argument)| match argument {
        Argument::Text(text) => text.into_owned(),
        Argument::Number(number) => number.to_string(),
    })
}

/// "15 Apr\nday 14", with the year where it is another than that of the column before.
pub(crate) fn column_title(column: &DayColumn<'_>, before: Option<&DayColumn<'_>>) -> String {
    let date = dates::day_and_month(column.date, Language::English);
    if before.is_some_and(|before| before.date.year() == column.date.year()) {
        format!("{date}\nday {}", column.day.count())
    } else {
        format!("{date}\n{}\nday {}", column.date.year(), column.day.count())
    }
}

/// "active: not opened".
pub(crate) fn stage(of: &Prescription, id: &str) -> String {
    let opened = of.stages.iter().any(|stage| stage.id == id && stage.opened);
    if opened { format!("{id}\nopened") } else { format!("{id}\nnot opened") }
}

/// "15 Apr 2026 (day 14)".
pub(crate) fn on(date: Date, day: PostoperativeDay) -> String {
    format!("{} (day {})", short(date), day.count())
}

/// "15 Apr 2026".
pub(crate) fn short(date: Date) -> String {
    dates::short(date, Language::English)
}

/// "passive, assisted: elevation, abduction"; "isometric (at side): …"; "hand load".
pub(crate) fn label(row: &GroupRow<'_>) -> String {
    if row.region == Region::Load {
        return joined(row.movements.iter().map(|(_, movement, _)| movement.name()));
    }
    let position = match row.movements.first() {
        Some((_, _, Position::Any)) | None => {
            // Beside a row for effort with the arm at the side: this one is for every other position too.
            if row.modes == [Mode::Isometric] && row.region == Region::Shoulder { " (any position)" } else { "" }
        }
        Some((_, _, named)) => position_word(*named),
    };
    let modes = joined(row.modes.iter().map(|mode| mode_word(*mode)));
    format!("{modes}{position}: {}", movements(row))
}

/// The movements of a row, joint by joint.
fn movements(row: &GroupRow<'_>) -> String {
    let mut parts: Vec<String> = Vec::new();
    for joint in [Joint::Shoulder, Joint::Scapula, Joint::Elbow, Joint::Forearm, Joint::Wrist, Joint::Hand] {
        let of_joint: Vec<Movement> =
            row.movements.iter().filter(|(own, ..)| *own == joint).map(|(_, movement, _)| *movement).collect();
        if of_joint.is_empty() {
            continue;
        }
        let text = joined(movement_words(joint, &of_joint).into_iter());
        parts.push(match joint_word(joint) {
            Some(word) => format!("{word} {text}"),
            None => text,
        });
    }
    parts.join("; ")
}

/// Movements in short; those that go together under one word.
fn movement_words(joint: Joint, of: &[Movement]) -> Vec<&'static str> {
    let whole = whole(joint);
    if !whole.is_empty() && whole.iter().all(|movement| of.contains(movement)) && whole.len() == of.len() {
        return vec![if joint == Joint::Shoulder || joint == Joint::Scapula { "all movements" } else { "all" }];
    }
    let elevation = [Movement::ForwardElevation, Movement::ScapularPlaneElevation];
    let both = elevation.iter().all(|movement| of.contains(movement));
    let mut words = Vec::new();
    for movement in of {
        match movement {
            Movement::ForwardElevation if both => words.push("elevation"),
            Movement::ScapularPlaneElevation if both => {}
            other => words.push(movement_word(*other)),
        }
    }
    words
}

/// The movements that together are all of a joint.
const fn whole(joint: Joint) -> &'static [Movement] {
    match joint {
        Joint::Shoulder => &[
            Movement::ForwardElevation,
            Movement::ScapularPlaneElevation,
            Movement::Abduction,
            Movement::Extension,
            Movement::ExternalRotation,
            Movement::InternalRotation,
            Movement::HorizontalAdduction,
            Movement::HandBehindBack,
            Movement::AbductionWithExternalRotation,
        ],
        Joint::Scapula => &[Movement::Placing, Movement::Shrug, Movement::Roll, Movement::Squeeze],
        Joint::Elbow | Joint::Wrist | Joint::Hand => &[Movement::Flexion, Movement::Extension],
        Joint::Forearm => &[Movement::Supination, Movement::Pronation],
        Joint::WholeArm => &[],
    }
}

const fn movement_word(movement: Movement) -> &'static str {
    match movement {
        Movement::HorizontalAdduction => "cross-body",
        Movement::HandBehindBack => "behind the back",
        other => other.name(),
    }
}

const fn joint_word(joint: Joint) -> Option<&'static str> {
    match joint {
        Joint::Shoulder | Joint::WholeArm => None,
        Joint::Scapula => Some("blade"),
        other => Some(other.name()),
    }
}

const fn mode_word(mode: Mode) -> &'static str {
    match mode {
        Mode::ActiveAssisted => "assisted",
        other => other.name(),
    }
}

const fn position_word(position: Position) -> &'static str {
    match position {
        Position::Any => "",
        Position::AtSide => " (at side)",
        Position::Abduction20 => " (20° abduction)",
        Position::Abduction45 => " (45° abduction)",
        Position::Abduction90 => " (90° abduction)",
        Position::ScapularPlane => " (scapular plane)",
    }
}

fn joined<'w>(words: impl Iterator<Item = &'w str>) -> String {
    words.collect::<Vec<_>>().join(", ")
}
