//! The short words of the table of limits.

use body::{Joint, Mode, Movement, Position};
use jiff::civil::Date;
use plan::{Allowed, Bound};
use quantity::{Kilograms, PostoperativeDay};
use wording::{Argument, Language, dates};

use crate::household;
use crate::limits_columns::Standing;
use crate::limits_table::{DayColumn, GroupRow, Region, Value};

/// "no", "≤ 90°", "≤ 2.27 kg (5 lb)", "free"; with "supine" where only lying on the back.
pub(crate) fn value(value: Value) -> String {
    let text = allowed(value.allowed);
    if value.only_lying { format!("{text}\nsupine") } else { text }
}

/// A value without its position.
pub(crate) fn allowed(allowed: Allowed) -> String {
    match allowed {
        Allowed::No => "no".into(),
        Allowed::Free => "free".into(),
        Allowed::UpTo(Bound::Angle(angle)) => format!("≤ {angle}°"),
        Allowed::UpTo(Bound::Load(kilograms)) => {
            let [kilograms, pounds] = load(kilograms);
            format!("≤ {kilograms} kg ({pounds} lb)")
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

/// "15 Apr\nday 14", with the year where it is another than that of the column before; that of the first stands in the
/// corner. What is in force while a gate waits has no day of its own: "in force\nnow".
pub(crate) fn column_title(column: &DayColumn<'_>, before: Option<&DayColumn<'_>>) -> String {
    if column.standing == Standing::Now {
        return "in force\nnow".into();
    }
    let date = dates::day_and_month(column.date, Language::English);
    if before.is_none_or(|before| before.date.year() == column.date.year()) {
        format!("{date}\nday {}", column.day.count())
    } else {
        format!("{date}\n{}\nday {}", column.date.year(), column.day.count())
    }
}

/// "once opened\nnot before 15 Apr\nday 14": while a gate waits, the day of a stage behind it may be over already.
pub(crate) fn once_opened(title: &str) -> String {
    format!("once opened\nnot before {title}")
}

/// "from, in 2026": the year of the first column.
pub(crate) fn corner(columns: &[DayColumn<'_>]) -> String {
    columns.first().map_or("from".into(), |first| format!("from, in {}", first.date.year()))
}

/// Whether the stage of a column is opened.
pub(crate) const fn standing(column: &DayColumn<'_>) -> &'static str {
    match column.standing {
        Standing::Now | Standing::Open => "open",
        Standing::Over => "over",
        Standing::Planned => "planned, not open",
    }
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
///
/// A row that holds most movements of the shoulder and of its modes says "all other movements": each of the rest has a
/// row of its own.
pub(crate) fn label(row: &GroupRow<'_>) -> String {
    if row.region == Region::Load {
        return joined(row.movements.iter().map(|(_, movement, _)| movement.name()));
    }
    let position = row.movements.first().map_or(Position::Any, |(_, _, position)| *position);
    format!("{}: {}", modes(row, position), movements(row, position))
}

fn modes(row: &GroupRow<'_>, position: Position) -> String {
    if row.modes == [Mode::Passive, Mode::ActiveAssisted, Mode::Active] && position == Position::Any {
        return "passive to active".into();
    }
    let words = row.modes.iter().map(|mode| match (position, mode, row.region) {
        // Beside effort with the arm at the side: this is for every other position too.
        (Position::Any, Mode::Isometric, Region::Shoulder) => format!("{} (other positions)", mode_word(*mode)),
        _ => format!("{}{}", mode_word(*mode), position_word(position)),
    });
    words.collect::<Vec<_>>().join(", ")
}

/// The movements of a row, joint by joint.
fn movements(row: &GroupRow<'_>, position: Position) -> String {
    let mut parts: Vec<String> = Vec::new();
    for joint in [Joint::Shoulder, Joint::Scapula, Joint::Elbow, Joint::Forearm, Joint::Wrist, Joint::Hand] {
        let of_joint: Vec<Movement> =
            row.movements.iter().filter(|(own, ..)| *own == joint).map(|(_, movement, _)| *movement).collect();
        let whole = whole(joint);
        let is_whole = !whole.is_empty() && whole.iter().all(|movement| of_joint.contains(movement));
        match joint_word(joint) {
            _ if of_joint.is_empty() => {}
            Some(word) if is_whole && of_joint.len() == whole.len() => parts.push(word.into()),
            Some(word) => parts.push(format!("{word} {}", joined(movement_words(&of_joint).into_iter()))),
            None if is_whole && of_joint.len() == whole.len() => parts.push("all movements".into()),
            // More than half: no other row of these modes can hold as many.
            None if position == Position::Any && of_joint.len() * 2 > whole.len() => {
                parts.push("all other movements".into());
            }
            None => parts.push(joined(movement_words(&of_joint).into_iter())),
        }
    }
    parts.join("; ")
}

/// Movements in short; those that go together under one word.
fn movement_words(of: &[Movement]) -> Vec<&'static str> {
    let has = |pair: [Movement; 2]| pair.iter().all(|movement| of.contains(movement));
    let elevation = has([Movement::ForwardElevation, Movement::ScapularPlaneElevation]);
    let rotation = has([Movement::ExternalRotation, Movement::InternalRotation]);
    let words = of.iter().filter_map(|movement| match movement {
        Movement::ForwardElevation if elevation => Some("elevation"),
        Movement::ScapularPlaneElevation if elevation => None,
        Movement::ExternalRotation if rotation => Some("rotation"),
        Movement::InternalRotation if rotation => None,
        other => Some(movement_word(*other)),
    });
    words.collect()
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
