//! Days, dates and keys as a case writes them.

use body::{ALL_KEYS, Key};
use jiff::civil::Date;
use plan::{Allowed, Bound};
use quantity::{Degrees, Kilograms, Percent, PostoperativeDay};

/// The words of an expectation that are not read yet.
#[derive(Debug, Clone, Copy)]
pub struct Words<'t>(pub &'t str);

impl<'t> Words<'t> {
    /// The next word.
    pub fn word(&mut self) -> Result<&'t str, String> {
        let text = self.0.trim_start();
        if text.is_empty() {
            return Err("the line ends too early".into());
        }
        let (word, rest) = text.split_once(' ').unwrap_or((text, ""));
        self.0 = rest;
        Ok(word)
    }

    /// The next word, if it is this one.
    pub fn take(&mut self, wanted: &str) -> bool {
        let mut ahead = *self;
        let found = ahead.word() == Ok(wanted);
        if found {
            *self = ahead;
        }
        found
    }

    /// Everything that is left.
    pub fn rest(&mut self) -> &'t str {
        std::mem::take(&mut self.0).trim()
    }

    /// Nothing may be left.
    pub fn end(mut self) -> Result<(), String> {
        match self.rest() {
            "" => Ok(()),
            left => Err(format!("`{left}` is not understood")),
        }
    }

    pub fn date(&mut self) -> Result<Date, String> {
        let word = self.word()?;
        word.parse().map_err(|_| format!("`{word}` is no date"))
    }

    pub fn number<T: std::str::FromStr>(&mut self) -> Result<T, String> {
        let word = self.word()?;
        word.parse().map_err(|_| format!("`{word}` is no number"))
    }

    /// One day: `day 14`, or a date.
    pub fn day(&mut self, operated_on: Date) -> Result<u16, String> {
        if self.take("day") {
            return self.number();
        }
        let date = self.date()?;
        PostoperativeDay::of(date, operated_on)
            .map(PostoperativeDay::count)
            .ok_or_else(|| format!("{date} is before the operation"))
    }

    /// Days: one, `day 14 to 41`, `2026-03-16 to 2026-04-12` (both included), or `day 84 on` up to the horizon.
    pub fn days(&mut self, operated_on: Date, horizon: u16) -> Result<Vec<u16>, String> {
        let by_number = self.0.trim_start().starts_with("day ");
        let first = self.day(operated_on)?;
        let last = if self.take("on") {
            horizon - 1
        } else if self.take("to") {
            if by_number { self.number()? } else { self.day(operated_on)? }
        } else {
            first
        };
        if last < first || last >= horizon {
            return Err(format!("day {first} to {last} holds no day of the plan"));
        }
        Ok((first..=last).collect())
    }
}

/// Keys as a case writes them: `shoulder/{forward elevation, abduction}/any/passive`; `*` stands for every word.
pub fn keys(written: &str) -> Result<Vec<Key>, String> {
    let parts: Vec<&str> = written.split('/').collect();
    let [joint, movement, position, mode] = parts[..] else {
        return Err(format!("`{written}` is not joint/movement/position/mode"));
    };
    let position = body::Position::named(position).ok_or_else(|| format!("`{position}` is no position"))?;
    for (words, known) in [
        (joint, body::Joint::WORDS.iter().map(|(word, _)| *word).collect::<Vec<_>>()),
        (movement, body::Movement::WORDS.iter().map(|(word, _)| *word).collect()),
        (mode, body::Mode::WORDS.iter().map(|(word, _)| *word).collect()),
    ] {
        if let Some(unknown) = one_of(words).into_iter().find(|word| *word != "*" && !known.contains(word)) {
            return Err(format!("`{unknown}` is no word of a key"));
        }
    }
    let is = |words: &str, word: &str| one_of(words).iter().any(|known| *known == "*" || *known == word);
    let found: Vec<Key> = ALL_KEYS
        .iter()
        .filter(|key| is(joint, key.joint.name()) && is(movement, key.movement.name()) && is(mode, key.mode.name()))
        .map(|key| key.in_position(position))
        .collect();
    if found.is_empty() { Err(format!("`{written}` names no key")) } else { Ok(found) }
}

fn one_of(words: &str) -> Vec<&str> {
    let inner = words.strip_prefix('{').and_then(|words| words.strip_suffix('}')).unwrap_or(words);
    inner.split(',').map(str::trim).collect()
}

/// A key and a value: `shoulder/abduction/any/active no`, `… free`, `… up_to 90 deg`.
pub fn keys_and_value(text: &str) -> Result<(Vec<Key>, String), String> {
    let text = text.trim();
    let (key, value) = match text.rfind(" up_to ") {
        Some(at) => text.split_at(at),
        None => text.rsplit_once(' ').ok_or("a key and a value are needed")?,
    };
    let value = value.trim();
    if !(["no", "free"].contains(&value) || value.starts_with("up_to ")) {
        return Err(format!("`{value}` is not no, free, or up_to and an amount"));
    }
    Ok((keys(key.trim())?, value.to_owned()))
}

/// The value as the plan holds it.
pub fn allowed(value: &str, key: Key) -> Result<Allowed, String> {
    let amount = match value {
        "no" => return Ok(Allowed::No),
        "free" => return Ok(Allowed::Free),
        _ => value.strip_prefix("up_to ").unwrap_or(value),
    };
    let bound = if key.is_load() {
        Kilograms::parse(amount).map(Bound::Load)
    } else if key.is_effort() {
        Percent::parse(amount).map(Bound::Effort)
    } else {
        Degrees::parse(amount).map(Bound::Angle)
    };
    bound.map(Allowed::UpTo).map_err(|fault| format!("`{amount}`: {fault:?}"))
}

/// A value in the words of a case.
pub fn shown(allowed: Allowed) -> String {
    match allowed {
        Allowed::No => "no".into(),
        Allowed::Free => "free".into(),
        Allowed::UpTo(Bound::Angle(angle)) => format!("up_to {} deg", angle.number()),
        Allowed::UpTo(Bound::Load(load)) => format!("up_to {} kg", load.number()),
        Allowed::UpTo(Bound::Effort(effort)) => format!("up_to {} %", effort.number()),
    }
}
