//! Content lines: properties and components as text.
//!
//! Escaping is that of the `icalendar` crate. Its components are not used for writing: they put
//! the present time and a random id into every part that has none, alarms and time zones among
//! them, and the same calendar has to be the same text. Nor is its folding, whose last line can
//! have 76 octets.

use std::fmt;

use icalendar::Property;

/// Text that grows by content lines, each ended with CRLF and folded at 75 octets.
#[derive(Debug, Default)]
pub(super) struct Lines(String);

impl Lines {
    /// A property without parameters.
    pub(super) fn property(&mut self, name: &str, value: impl Into<String>) -> fmt::Result {
        self.write(Property::new(name, value))
    }

    /// A property with one parameter.
    pub(super) fn qualified(&mut self, name: &str, parameter: (&str, &str), value: String) -> fmt::Result {
        self.write(Property::new(name, value).append_parameter(parameter).done())
    }

    /// A property that holds words of people.
    pub(super) fn words(&mut self, name: &str, text: &str) -> fmt::Result {
        self.property(name, readable(text))
    }

    /// A component: its first line, what stands in it, its last line.
    pub(super) fn component<E>(&mut self, name: &str, body: impl FnOnce(&mut Self) -> Result<(), E>) -> Result<(), E> {
        // A component's name is a word of this crate's: there is nothing to escape or fold.
        self.0 += &format!("BEGIN:{name}\r\n");
        body(self)?;
        self.0 += &format!("END:{name}\r\n");
        Ok(())
    }

    /// The whole text.
    pub(super) fn into_text(self) -> String {
        self.0
    }

    /// One content line, as many lines as it needs, none of them cut inside a letter.
    fn fold(&mut self, line: &str) {
        let (mut rest, mut room) = (line, LINE);
        while rest.len() > room {
            let (now, later) = rest.split_at(rest.floor_char_boundary(room));
            self.0 += now;
            self.0 += "\r\n ";
            // The space that begins the next line counts.
            (rest, room) = (later, LINE - 1);
        }
        self.0 += rest;
        self.0 += "\r\n";
    }

    fn write(&mut self, property: Property) -> fmt::Result {
        let folded: String = property.try_into()?;
        // A value has no line end left in it, so each of these is a fold.
        self.fold(folded.replace("\r\n ", "").trim_end_matches("\r\n"));
        Ok(())
    }
}

/// The octets of a line, its end left out (RFC 5545, 3.1).
const LINE: usize = 75;

/// The text with every kind of line end as one, and without the control characters that
/// RFC 5545 (3.1) keeps out of a value.
pub(super) fn readable(text: &str) -> String {
    text.replace("\r\n", "\n")
        .chars()
        .filter_map(|letter| match letter {
            // Some readers end a line at each of these, and one would fall out of its property.
            '\r' | '\u{b}' | '\u{c}' | '\u{85}' | '\u{2028}' | '\u{2029}' => Some('\n'),
            '\n' | '\t' => Some(letter),
            _ if letter.is_control() => None,
            _ => Some(letter),
        })
        .collect()
}
