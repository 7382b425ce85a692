//! The messages of a language.

use std::borrow::Cow;
use std::fmt;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use unic_langid::{LanguageIdentifier, langid};

use crate::Language;

/// The files of a language: name and text.
const ENGLISH: &[(&str, &str)] = &[
    ("exercises", include_str!("../../../locales/en/exercises.ftl")),
    ("activities", include_str!("../../../locales/en/activities.ftl")),
    ("care", include_str!("../../../locales/en/care.ftl")),
    ("tests", include_str!("../../../locales/en/tests.ftl")),
    ("drawing", include_str!("../../../locales/en/drawing.ftl")),
    ("first-days", include_str!("../../../locales/en/first-days.ftl")),
    ("cautions", include_str!("../../../locales/en/cautions.ftl")),
    ("prescription", include_str!("../../../locales/en/prescription.ftl")),
    ("handout", include_str!("../../../locales/en/handout.ftl")),
    ("calendar", include_str!("../../../locales/en/calendar.ftl")),
    ("letters", include_str!("../../../locales/en/letters.ftl")),
];

/// The files of a language: name and text.
const SPANISH: &[(&str, &str)] = &[
    ("exercises", include_str!("../../../locales/es/exercises.ftl")),
    ("activities", include_str!("../../../locales/es/activities.ftl")),
    ("care", include_str!("../../../locales/es/care.ftl")),
    ("tests", include_str!("../../../locales/es/tests.ftl")),
    ("drawing", include_str!("../../../locales/es/drawing.ftl")),
    ("first-days", include_str!("../../../locales/es/first-days.ftl")),
    ("cautions", include_str!("../../../locales/es/cautions.ftl")),
    ("prescription", include_str!("../../../locales/es/prescription.ftl")),
    ("handout", include_str!("../../../locales/es/handout.ftl")),
    ("calendar", include_str!("../../../locales/es/calendar.ftl")),
];

/// What a message is told: a text or a number.
#[derive(Debug, Clone, PartialEq)]
pub enum Argument<'a> {
    /// A word, a name, a date as it shall be read.
    Text(Cow<'a, str>),
    /// A number; the language decides on plurals by it.
    Number(f64),
}

impl<'a> From<&'a str> for Argument<'a> {
    fn from(text: &'a str) -> Self {
        Self::Text(Cow::Borrowed(text))
    }
}

impl From<String> for Argument<'_> {
    fn from(text: String) -> Self {
        Self::Text(Cow::Owned(text))
    }
}

impl From<f64> for Argument<'_> {
    fn from(number: f64) -> Self {
        Self::Number(number)
    }
}

impl From<u16> for Argument<'_> {
    fn from(number: u16) -> Self {
        Self::Number(f64::from(number))
    }
}

/// Every message of one language.
///
/// # Example
/// ```
/// use wording::Messages;
/// let messages = Messages::english();
/// assert_eq!(messages.text("first-days-sleep-title", &[]), "Sleep");
/// // A message that does not exist is seen, and never silently empty.
/// assert_eq!(messages.text("no-such-text", &[]), "‹no-such-text›");
/// ```
pub struct Messages {
    language: Language,
    bundle: FluentBundle<FluentResource>,
    faults: Vec<String>,
}

impl fmt::Debug for Messages {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Messages").field("language", &self.language).finish_non_exhaustive()
    }
}

impl Messages {
    /// The messages of a language.
    pub fn of(language: Language) -> Self {
        match language {
            Language::English => Self::english(),
            Language::Spanish => Self::read(Language::Spanish, langid!("es"), SPANISH),
        }
    }

    /// The English messages.
    pub fn english() -> Self {
        Self::read(Language::English, langid!("en-US"), ENGLISH)
    }

    fn read(language: Language, locale: LanguageIdentifier, files: &[(&str, &str)]) -> Self {
        let mut bundle = FluentBundle::new_concurrent(vec![locale]);
        // No invisible direction marks around arguments: they would reach paper and JSON.
        bundle.set_use_isolating(false);
        let mut faults = Vec::new();
        for (name, text) in files {
            let resource = match FluentResource::try_new((*text).to_owned()) {
                Ok(resource) => resource,
                Err((resource, errors)) => {
                    faults.extend(errors.iter().map(|error| format!("{name}: {error}")));
                    resource
                }
            };
            if let Err(errors) = bundle.add_resource(resource) {
                faults.extend(errors.iter().map(|error| format!("{name}: {error}")));
            }
        }
        Self { language, bundle, faults }
    }

    /// The language these messages are in.
    pub const fn language(&self) -> Language {
        self.language
    }

    /// What was wrong in the language files: bad syntax, an id that stands twice. A test keeps it empty.
    pub fn faults(&self) -> &[String] {
        &self.faults
    }

    /// Whether there is a message of this id.
    pub fn has(&self, id: &str) -> bool {
        self.bundle.get_message(id).is_some_and(|message| message.value().is_some())
    }

    /// The text of a message.
    ///
    /// # Units and shape
    /// Arguments are pairs of name and value; of two with one name the later counts. A message
    /// that does not exist gives `‹id›`, an argument that was not told gives its name in braces.
    pub fn text(&self, id: &str, arguments: &[(&str, Argument<'_>)]) -> String {
        self.bundle.get_message(id).and_then(|message| message.value()).map_or_else(
            || format!("‹{id}›"),
            |pattern| {
                let told = told(arguments);
                self.bundle.format_pattern(pattern, Some(&told), &mut Vec::new()).into_owned()
            },
        )
    }

    /// The text of a message's attribute, such as a step of an exercise.
    pub fn attribute(&self, id: &str, name: &str) -> Option<String> {
        self.attribute_with(id, name, &[])
    }

    /// The text of a message's attribute that takes arguments.
    pub fn attribute_with(&self, id: &str, name: &str, arguments: &[(&str, Argument<'_>)]) -> Option<String> {
        let attribute = self.bundle.get_message(id)?.get_attribute(name)?;
        let told = told(arguments);
        Some(self.bundle.format_pattern(attribute.value(), Some(&told), &mut Vec::new()).into_owned())
    }

    /// The names of a message's attributes, in the order of the file.
    pub fn attributes(&self, id: &str) -> Vec<String> {
        self.bundle
            .get_message(id)
            .map(|message| message.attributes().map(|attribute| attribute.id().to_owned()).collect())
            .unwrap_or_default()
    }
}

fn told<'a>(arguments: &'a [(&'a str, Argument<'a>)]) -> FluentArgs<'a> {
    let mut told = FluentArgs::with_capacity(arguments.len());
    for (name, value) in arguments {
        let value: FluentValue<'_> = match value {
            Argument::Text(text) => FluentValue::from(text.as_ref()),
            Argument::Number(number) => FluentValue::from(*number),
        };
        told.set(*name, value);
    }
    told
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_language_files_have_no_fault() {
        for (code, language) in Language::WORDS {
            assert_eq!(Messages::of(*language).faults(), [""; 0], "{code}");
        }
    }

    #[test]
    fn an_argument_that_was_not_told_is_seen() {
        let text = Messages::english().text("first-days-call-day", &[]);
        assert_eq!(text, "By day: {$day_number}");
    }

    #[test]
    fn hostile_arguments_stay_text() {
        let number = "{ $night_number } <b>\u{202e}";
        let text = Messages::english().text("first-days-call-day", &[("day_number", number.into())]);
        assert_eq!(text, format!("By day: {number}"));
    }

    #[test]
    fn of_two_arguments_the_later_counts() {
        let told = [("day_number", "1".into()), ("day_number", "2".into())];
        assert_eq!(Messages::english().text("first-days-call-day", &told), "By day: 2");
    }
}
