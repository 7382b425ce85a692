//! Reading the settings file.

use body::{Build, Hair, Joint, Key, Look, Mode, Movement, Position};
use diagnostic::{Diagnostic, FileId, Sink, Spanned};
use document::Table;
use jiff::civil::Weekday;
use plan::{Bound, Cell};
use quantity::{Degrees, Kilograms, Percent, PostoperativeDay};

use crate::settings::{
    Back, Clinic, Contact, FeverLimit, Hold, Loosening, Paper, PaperSize, Permission, Practice, Prefer, ProtocolChoice,
    Settings, Therapy,
};

const WEEKDAYS: &[(&str, Weekday)] = &[
    ("Mon", Weekday::Monday),
    ("Tue", Weekday::Tuesday),
    ("Wed", Weekday::Wednesday),
    ("Thu", Weekday::Thursday),
    ("Fri", Weekday::Friday),
    ("Sat", Weekday::Saturday),
    ("Sun", Weekday::Sunday),
];

/// Reads a settings file.
///
/// # Errors
/// `None` where the file is not TOML; every other fault is a diagnostic, and
/// what is faulty is left out.
pub fn read(file: FileId, text: &str, sink: &mut Sink) -> Option<Settings> {
    let mut table = document::read(file, text, sink)?;
    let settings = Settings {
        contact: table.table("contact", sink).map(|contact| read_contact(contact, sink)).unwrap_or_default(),
        practice: table.table("practice", sink).map(|practice| read_practice(practice, sink)).unwrap_or_default(),
        paper: table.table("paper", sink).map(|paper| read_paper(paper, sink)).unwrap_or_default(),
        therapy: table.table("therapy", sink).map(|therapy| read_therapy(therapy, sink)).unwrap_or_default(),
        clinic: table.table("clinic", sink).map(|clinic| read_clinic(clinic, sink)).unwrap_or_default(),
        choice: table.table("choice", sink).and_then(|choice| read_choice(choice, sink)),
        prefers: table.tables("prefer", sink).into_iter().filter_map(|prefer| read_prefer(prefer, sink)).collect(),
        backs: table.tables("back", sink).into_iter().filter_map(|back| read_back(back, sink)).collect(),
        holds: table.tables("hold", sink).into_iter().filter_map(|hold| read_hold(hold, sink)).collect(),
        loosenings: table
            .tables("loosening", sink)
            .into_iter()
            .filter_map(|loosening| read_loosening(loosening, sink))
            .collect(),
        home_margin: table.quantity("home_margin", "angle", "5 deg", Degrees::parse, sink).filter(|margin| {
            let believable = (Degrees::whole(0)..=evidence::ids::HOME_MARGIN_MOST.degrees()).contains(&margin.value);
            if !believable {
                sink.push(
                    Diagnostic::error(
                        "out-of-range",
                        format!("a home margin of {} degrees is not believable", margin.value),
                    )
                    .at(margin.span)
                    .help(format!("write 0 to {} degrees", evidence::ids::HOME_MARGIN_MOST.degrees())),
                );
            }
            believable
        }),
        home_margin_reason: table.text("home_margin_reason", sink),
        adopted_goals: table.texts("adopted_goals", sink),
    };
    table.finish(sink);
    Some(settings)
}

/// A number to call fits a page.
const LONGEST_NUMBER: usize = 64; // not medical: room on a page

fn read_contact(mut table: Table<'_>, sink: &mut Sink) -> Contact {
    let mut number = |key: &'static str, sink: &mut Sink| {
        let text = table.text(key, sink)?;
        if text.value.trim().is_empty() || text.value.chars().any(char::is_control) || text.value.len() > LONGEST_NUMBER
        {
            sink.push(Diagnostic::error("no-number", format!("`contact.{key}` is no number to call")).at(text.span));
            return None;
        }
        Some(text.value)
    };
    let (day, night) = (number("day", sink), number("night", sink));
    table.finish(sink);
    Contact { day, night }
}

/// A name or an address fits a line of a letter.
const LONGEST_NAME: usize = 120; // not medical: room on a page
/// What a surgeon writes about tablets fits a box on a patient's sheet, and a reason fits beside a line.
const LONGEST_TEXT: usize = 400; // not medical: room on a page

/// A text that is printed: it says something, and is no longer than its place.
fn printed(text: Option<Spanned<String>>, most: usize, sink: &mut Sink) -> Option<String> {
    let text = text?;
    if !says_something(&text.value) || text.value.chars().any(char::is_control) {
        sink.push(Diagnostic::error("text-not-printable", "this text can't be printed").at(text.span));
        return None;
    }
    fits(&text, most, sink).then_some(text.value)
}

/// Whether a text is no longer than its place on paper.
fn fits(text: &Spanned<String>, most: usize, sink: &mut Sink) -> bool {
    let length = text.value.chars().count();
    if length > most {
        sink.push(
            Diagnostic::error(
                "text-too-long",
                format!("this text has {length} characters, and its place holds {most}"),
            )
            .at(text.span)
            .help("say it shorter"),
        );
    }
    length <= most
}

fn read_practice(mut table: Table<'_>, sink: &mut Sink) -> Practice {
    let mut line = |key: &'static str, sink: &mut Sink| {
        let text = table.text(key, sink);
        printed(text, LONGEST_NAME, sink)
    };
    let practice =
        Practice { surgeon: line("surgeon", sink), name: line("name", sink), address: line("address", sink) };
    table.finish(sink);
    practice
}

fn read_paper(mut table: Table<'_>, sink: &mut Sink) -> Paper {
    let size = table.word("size", PaperSize::WORDS, sink).map(|size| size.value).unwrap_or_default();
    let tablets = table.text("tablets", sink);
    let tablets = printed(tablets, LONGEST_TEXT, sink);
    let tablets_es = table.text("tablets_es", sink);
    let tablets_es = printed(tablets_es, LONGEST_TEXT, sink);
    let fever = table.word("fever", FeverLimit::WORDS, sink).map(|fever| fever.value).unwrap_or_default();
    let build = table.word("build", Build::WORDS, sink).map(|build| build.value).unwrap_or_default();
    let hair = table.word("hair", Hair::WORDS, sink).map(|hair| hair.value).unwrap_or_default();
    table.finish(sink);
    Paper { size, tablets, tablets_es, fever, look: Look { build, hair } }
}

fn read_therapy(mut table: Table<'_>, sink: &mut Sink) -> Therapy {
    let times_a_week = count(&mut table, "times_a_week", DAYS_A_WEEK, sink);
    let weeks = count(&mut table, "weeks", WEEKS_A_YEAR, sink);
    let mut permission = |key: &'static str, sink: &mut Sink| read_permission(table.text(key, sink)?, sink);
    let (manual_therapy, pool, traction) =
        (permission("manual_therapy", sink), permission("pool", sink), permission("traction", sink));
    table.finish(sink);
    Therapy { times_a_week, weeks, manual_therapy, pool, traction }
}

const DAYS_A_WEEK: u16 = 7; // not medical: a week has seven days
const WEEKS_A_YEAR: u16 = 52; // not medical: a year has 52 weeks

/// A whole number from 1 on.
fn count(table: &mut Table<'_>, key: &'static str, most: u16, sink: &mut Sink) -> Option<u16> {
    let number = table.take(key)?.integer(sink)?;
    let count = u16::try_from(number.value).ok().filter(|count| (1..=most).contains(count));
    if count.is_none() {
        sink.push(Diagnostic::error("out-of-range", format!("`{key}` is from 1 to {most}")).at(number.span));
    }
    count
}

/// "no", or "day 42".
fn read_permission(written: Spanned<String>, sink: &mut Sink) -> Option<Permission> {
    if written.value == "no" {
        return Some(Permission::No);
    }
    match PostoperativeDay::parse(&written.value) {
        Ok(day) => Some(Permission::From(day)),
        Err(_) => {
            sink.push(
                Diagnostic::error("no-such-day", format!("`{}` is neither \"no\" nor a day", written.value))
                    .at(written.span)
                    .help("write \"no\", or the first day it is allowed, such as \"day 42\""),
            );
            None
        }
    }
}

fn read_clinic(mut table: Table<'_>, sink: &mut Sink) -> Clinic {
    let mut days = Vec::new();
    if let Some(value) = table.take("days") {
        for item in value.list(sink).unwrap_or_default() {
            days.extend(item.word(WEEKDAYS, sink).map(|day| day.value));
        }
    }
    let mut holidays = Vec::new();
    if let Some(value) = table.take("holidays") {
        for item in value.list(sink).unwrap_or_default() {
            holidays.extend(item.date(sink).map(|date| date.value));
        }
    }
    let time_zone = table.text("time_zone", sink).filter(|zone| is_zone(zone, sink)).map(|text| text.value);
    table.finish(sink);
    Clinic { days, holidays, time_zone }
}

/// Whether a text has the form of a name in the time zone database; whether it is one is for the calendar to say.
fn is_zone(zone: &Spanned<String>, sink: &mut Sink) -> bool {
    let fits = !zone.value.is_empty()
        && zone.value.len() <= LONGEST_NUMBER
        && zone.value.chars().all(|c| c.is_ascii_alphanumeric() || "/_+-".contains(c));
    if !fits {
        sink.push(
            Diagnostic::error("no-time-zone", "`clinic.time_zone` names no time zone")
                .at(zone.span)
                .help("write a name such as \"Europe/Berlin\""),
        );
    }
    fits
}

fn read_choice(mut table: Table<'_>, sink: &mut Sink) -> Option<ProtocolChoice> {
    let protocol = table.require("protocol", sink).and_then(|value| value.text(sink));
    let reason = table.text("reason", sink);
    let confirm = table.text("confirm", sink);
    let confirm_large = table.text("confirm_large", sink);
    table.finish(sink);
    Some(ProtocolChoice { protocol: protocol?, reason, confirm, confirm_large })
}

fn read_prefer(mut table: Table<'_>, sink: &mut Sink) -> Option<Prefer> {
    let choice = table.require("choice", sink).and_then(|value| value.text(sink));
    let option = table.require("option", sink).and_then(|value| value.text(sink));
    let reason = table.text("reason", sink);
    let confirm = table.text("confirm", sink);
    table.finish(sink);
    Some(Prefer { choice: choice?, option: option?, reason, confirm })
}

fn read_back(mut table: Table<'_>, sink: &mut Sink) -> Option<Back> {
    let stage = table.require("stage", sink).and_then(|value| value.text(sink));
    let day = day(&mut table, "day", sink);
    let reason = reason(&mut table, sink);
    table.finish(sink);
    Some(Back { stage: stage?, day: day?, reason: reason?.value })
}

fn read_hold(mut table: Table<'_>, sink: &mut Sink) -> Option<Hold> {
    let from_day = day(&mut table, "from_day", sink);
    let days = day(&mut table, "days", sink);
    let reason = reason(&mut table, sink);
    // A hold of the shoulder holds everything that rests on it: gates, sling and loads.
    let joint = table
        .word("joint", Joint::WORDS, sink)
        .map(|joint| joint.value)
        .filter(|joint| !matches!(joint, Joint::Shoulder | Joint::Scapula | Joint::WholeArm));
    table.finish(sink);
    Some(Hold { from_day: from_day?, days: days?, reason: reason?.value, joint })
}

fn read_loosening(mut table: Table<'_>, sink: &mut Sink) -> Option<Loosening> {
    let span = table.span;
    let joint = table.require("joint", sink).and_then(|value| value.word(Joint::WORDS, sink));
    let movement = table.require("movement", sink).and_then(|value| value.word(Movement::WORDS, sink));
    let mode = table.require("mode", sink).and_then(|value| value.word(Mode::WORDS, sink));
    let position = table.word("position", Position::WORDS, sink).map_or(Position::Any, |position| position.value);
    let from_day = day(&mut table, "from_day", sink);
    let until_day = day(&mut table, "until_day", sink);
    let written = table.require("up_to", sink).and_then(|value| value.text(sink));
    let confirm = table.text("confirm", sink);
    let reason = reason(&mut table, sink);
    table.finish(sink);
    let key = Key { joint: joint?.value, movement: movement?.value, position, mode: mode?.value };
    if !key.exists() {
        sink.push(Diagnostic::error("no-such-key", format!("`{key}` names no key")).at(span));
        return None;
    }
    let (from_day, until_day, written) = (from_day?, until_day?, written?);
    if until_day <= from_day {
        sink.push(
            Diagnostic::error("empty-span", format!("day {from_day} until {until_day} holds no day"))
                .at(span)
                .help("`until_day` is the first day after the span"),
        );
        return None;
    }
    let up_to = bound_for(key, &written, sink)?;
    Some(Loosening { key, from_day, until_day, up_to, written, confirm, reason: reason? })
}

/// The value of a loosening, in the unit its key counts.
fn bound_for(key: Key, written: &Spanned<String>, sink: &mut Sink) -> Option<Cell> {
    if written.value == "free" {
        return Some(Cell::FREE);
    }
    let (name, example, parsed) = if key.is_load() {
        ("load", "2 kg", Kilograms::parse(&written.value).map(Bound::Load))
    } else if key.is_effort() {
        ("effort", "30 %", Percent::parse(&written.value).map(Bound::Effort))
    } else {
        ("angle", "30 deg", Degrees::parse(&written.value).map(Bound::Angle))
    };
    match parsed {
        Ok(bound) => Some(Cell::up_to(bound)),
        Err(error) => {
            sink.push(document::quantity_fault(name, example, written, &error));
            None
        }
    }
}

/// Whether a text holds a letter or a digit at all.
pub(crate) fn says_something(text: &str) -> bool {
    text.chars().any(char::is_alphanumeric)
}

/// A number of days: whole, from 0 to ten years.
fn day(table: &mut Table<'_>, key: &'static str, sink: &mut Sink) -> Option<u16> {
    let number = table.require(key, sink)?.integer(sink)?;
    match u16::try_from(number.value) {
        Ok(day) if day <= 3650 => Some(day), // not medical: ten years, far beyond any plan
        _ => {
            sink.push(Diagnostic::error("out-of-range", format!("`{key}` is not a number of days")).at(number.span));
            None
        }
    }
}

/// A reason that says something.
fn reason(table: &mut Table<'_>, sink: &mut Sink) -> Option<Spanned<String>> {
    let text = table.require("reason", sink)?.text(sink)?;
    if !says_something(&text.value) {
        sink.push(
            Diagnostic::error("no-reason", "the reason is empty")
                .at(text.span)
                .help("write in a few words why; it is printed beside the plan"),
        );
        return None;
    }
    fits(&text, LONGEST_TEXT, sink).then_some(text)
}
