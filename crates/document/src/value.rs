//! One TOML value with its place and its path.

use diagnostic::{Diagnostic, Sink, Span, Spanned};
use jiff::civil::Date;
use quantity::QuantityError;
use toml::de::DeValue;

use crate::nearest;
use crate::table::Table;

/// A value, the place it stands at, and the dotted path that leads to it.
#[derive(Debug)]
pub struct Value<'s> {
    pub(crate) value: DeValue<'s>,
    /// Where the value stands.
    pub span: Span,
    /// The path from the top of the file, such as `operation.tendon[0].name`.
    pub path: String,
}

impl<'s> Value<'s> {
    fn kind(&self) -> &'static str {
        match &self.value {
            DeValue::String(_) => "text",
            DeValue::Integer(_) => "a whole number",
            DeValue::Float(_) => "a number",
            DeValue::Boolean(_) => "true or false",
            DeValue::Datetime(_) => "a date",
            DeValue::Array(_) => "a list",
            DeValue::Table(_) => "a table",
        }
    }

    fn wrong_type(&self, wanted: &str) -> Diagnostic {
        Diagnostic::error("wrong-type", format!("`{}` is {}, not {wanted}", self.path, self.kind()))
            .at(self.span)
            .label(format!("{wanted} is needed here"))
    }

    /// The value as text.
    pub fn text(self, sink: &mut Sink) -> Option<Spanned<String>> {
        match self.value {
            DeValue::String(text) if text.chars().any(is_invisible) => {
                sink.push(
                    Diagnostic::error(
                        "invisible-character",
                        format!("`{}` holds an invisible control character", self.path),
                    )
                    .at(self.span)
                    .help("write the text again by hand; such characters change what a page shows"),
                );
                None
            }
            DeValue::String(text) => Some(Spanned::new(text.into_owned(), self.span)),
            _ => {
                sink.push(self.wrong_type("text in quotes"));
                None
            }
        }
    }

    /// The value as `true` or `false`.
    pub fn boolean(self, sink: &mut Sink) -> Option<Spanned<bool>> {
        match self.value {
            DeValue::Boolean(value) => Some(Spanned::new(value, self.span)),
            _ => {
                sink.push(self.wrong_type("true or false"));
                None
            }
        }
    }

    /// The value as a whole number.
    pub fn integer(self, sink: &mut Sink) -> Option<Spanned<i64>> {
        if let DeValue::Integer(number) = &self.value
            && let Ok(value) = i64::from_str_radix(number.as_str(), number.radix())
        {
            return Some(Spanned::new(value, self.span));
        }
        if matches!(self.value, DeValue::Integer(_)) {
            sink.push(
                Diagnostic::error("out-of-range", format!("`{}` is larger than any number here can be", self.path))
                    .at(self.span),
            );
            return None;
        }
        sink.push(self.wrong_type("a whole number"));
        None
    }

    /// The value as a number, whole or decimal; never NaN or infinite.
    pub fn number(self, sink: &mut Sink) -> Option<Spanned<f64>> {
        let value = match &self.value {
            DeValue::Integer(number) => i64::from_str_radix(number.as_str(), number.radix()).ok().map(|n| n as f64),
            DeValue::Float(number) => number.as_str().parse().ok(),
            _ => None,
        };
        match value {
            Some(value) if value.is_finite() => Some(Spanned::new(value, self.span)),
            Some(_) => {
                sink.push(
                    Diagnostic::error("out-of-range", format!("`{}` is not a finite number", self.path)).at(self.span),
                );
                None
            }
            None => {
                sink.push(self.wrong_type("a number"));
                None
            }
        }
    }

    /// The value as a civil date.
    pub fn date(self, sink: &mut Sink) -> Option<Spanned<Date>> {
        let written = match &self.value {
            DeValue::Datetime(written) => written,
            DeValue::String(_) => {
                sink.push(self.wrong_type("a date").help("write the date without quotes: 2026-03-02"));
                return None;
            }
            _ => {
                sink.push(self.wrong_type("a date").help("write a date as 2026-03-02"));
                return None;
            }
        };
        let (Some(date), None, None) = (written.date, written.time, written.offset) else {
            sink.push(
                Diagnostic::error("wrong-type", format!("`{}` needs a date without a time", self.path))
                    .at(self.span)
                    .help("write a date as 2026-03-02"),
            );
            return None;
        };
        match Date::new(date.year as i16, date.month as i8, date.day as i8) {
            Ok(date) => Some(Spanned::new(date, self.span)),
            Err(_) => {
                sink.push(Diagnostic::error("no-such-date", format!("{written} is not in the calendar")).at(self.span));
                None
            }
        }
    }

    /// The value as one of a few words.
    pub fn word<T: Copy>(self, words: &[(&str, T)], sink: &mut Sink) -> Option<Spanned<T>> {
        let path = self.path.clone();
        let text = self.text(sink)?;
        if let Some((_, value)) = words.iter().find(|(word, _)| *word == text.value) {
            return Some(text.map(|_| *value));
        }
        let mut fault =
            Diagnostic::error("unknown-word", format!("`{}` is not a value of `{path}`", shown(&text.value)))
                .at(text.span)
                .fact(format!("known values: {}", list(words.iter().map(|(word, _)| *word))));
        if let Some(near) = nearest(&text.value, words.iter().map(|(word, _)| *word)) {
            fault = fault.help(format!("did you mean \"{near}\"?"));
        }
        sink.push(fault);
        None
    }

    /// The value as a quantity such as `"18 mm"`, read by the quantity's own `parse`.
    pub fn quantity<Q>(
        self,
        name: &str,
        example: &str,
        parse: impl Fn(&str) -> Result<Q, QuantityError>,
        sink: &mut Sink,
    ) -> Option<Spanned<Q>> {
        if matches!(self.value, DeValue::Integer(_) | DeValue::Float(_)) {
            let bare = match &self.value {
                DeValue::Integer(number) => number.as_str().to_owned(),
                DeValue::Float(number) => number.as_str().to_owned(),
                _ => unreachable!("checked above"),
            };
            sink.push(
                Diagnostic::error(unit_code(name), format!("{name} has no unit"))
                    .at(self.span)
                    .label(format!("a {name} is needed here, such as \"{example}\""))
                    .help(with_unit(&bare, example)),
            );
            return None;
        }
        let text = self.text(sink)?;
        match parse(&text.value) {
            Ok(value) => Some(text.map(|_| value)),
            Err(error) => {
                sink.push(quantity_fault(name, example, &text, &error));
                None
            }
        }
    }

    /// The value as a list of values.
    pub fn list(self, sink: &mut Sink) -> Option<Vec<Value<'s>>> {
        let wrong = self.wrong_type("a list in brackets");
        match self.value {
            DeValue::Array(array) => Some(
                array
                    .into_iter()
                    .enumerate()
                    .map(|(index, item)| {
                        let span = place(self.span, item.span());
                        Value { value: item.into_inner(), span, path: format!("{}[{index}]", self.path) }
                    })
                    .collect(),
            ),
            _ => {
                sink.push(wrong);
                None
            }
        }
    }

    /// The value as a table.
    pub fn table(self, sink: &mut Sink) -> Option<Table<'s>> {
        let wrong = self.wrong_type("a table");
        match self.value {
            DeValue::Table(table) => Some(Table::new(table, self.span, self.path)),
            _ => {
                sink.push(wrong);
                None
            }
        }
    }

    /// Whether the value is text.
    pub fn is_text(&self) -> bool {
        matches!(self.value, DeValue::String(_))
    }

    /// Whether the value is a table.
    pub fn is_table(&self) -> bool {
        matches!(self.value, DeValue::Table(_))
    }

    /// Whether the value is a list.
    pub fn is_list(&self) -> bool {
        matches!(self.value, DeValue::Array(_))
    }
}

pub(crate) fn place(near: Span, range: std::ops::Range<usize>) -> Span {
    Span { file: near.file, start: range.start as u32, end: range.end as u32 }
}

/// How a bare number is written with the unit of an example: "18 mm", or "day 42".
fn with_unit(bare: &str, example: &str) -> String {
    if !bare.chars().all(|c| c.is_ascii_digit() || matches!(c, '.' | '-')) {
        return format!("write it as \"{example}\"");
    }
    match example.split_once(' ') {
        Some(("day", _)) => format!("if a postoperative day is meant, write \"day {bare}\""),
        Some((_, unit)) => format!("if {unit} is meant, write \"{bare} {unit}\""),
        None => format!("write it as \"{example}\""),
    }
}

fn unit_code(name: &str) -> &'static str {
    match name {
        "length" => "length-without-unit",
        "angle" => "angle-without-unit",
        "load" => "load-without-unit",
        "effort" => "effort-without-unit",
        _ => "number-without-unit",
    }
}

/// The diagnostic for a quantity that could not be read from text.
pub fn quantity_fault(name: &str, example: &str, text: &Spanned<String>, error: &QuantityError) -> Diagnostic {
    let written = shown(&text.value);
    let fault = match error {
        QuantityError::NoUnit => Diagnostic::error(unit_code(name), format!("{name} has no unit"))
            .label(format!("a {name} is needed here, such as \"{example}\""))
            .help(with_unit(written.trim(), example)),
        QuantityError::NoNumber => Diagnostic::error("not-a-quantity", format!("`{written}` is not a {name}"))
            .help(format!("write a {name} such as \"{example}\"")),
        QuantityError::UnknownUnit { found } => {
            Diagnostic::error("unknown-unit", format!("`{}` is not a unit of a {name}", shown(found)))
                .help(format!("write a {name} such as \"{example}\""))
        }
        QuantityError::TooPrecise => {
            Diagnostic::error("too-precise", format!("a {name} of `{written}` is finer than can be kept"))
                .help("round it")
        }
        QuantityError::OutOfRange => {
            Diagnostic::error("out-of-range", format!("`{written}` is beyond any possible {name}"))
        }
    };
    fault.at(text.span)
}

/// Characters that steer a terminal or turn the direction of text; line breaks and tabs are none of them.
fn is_invisible(c: char) -> bool {
    (c.is_control() && !matches!(c, '\n' | '\r' | '\t'))
        || matches!(c, '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{feff}')
}

/// What the user wrote, cut to a length that fits a message and without control characters.
pub(crate) fn shown(text: &str) -> String {
    let clean: String =
        text.chars().map(|c| if c.is_control() || is_invisible(c) { ' ' } else { c }).take(40).collect();
    if text.chars().count() > 40 { format!("{clean}…") } else { clean }
}

pub(crate) fn list<'w>(words: impl Iterator<Item = &'w str>) -> String {
    words.collect::<Vec<_>>().join(", ")
}
