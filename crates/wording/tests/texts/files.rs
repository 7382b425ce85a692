//! The files of texts as their own reader sees them.

use std::collections::BTreeSet;
use std::fs;
use std::path::PathBuf;
use std::sync::OnceLock;

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement, VariantKey};
use wording::{Argument, Language, Messages};

/// The files that patients read.
pub const FOR_PATIENTS: &[&str] =
    &["exercises", "activities", "care", "tests", "first-days", "cautions", "prescription", "handout", "calendar"];

/// A text of a file: a message, or an attribute of one.
#[derive(Debug, Clone)]
pub struct Text {
    pub id: String,
    pub attribute: Option<String>,
    pub pattern: Pattern<String>,
}

/// What a pattern asks for and says, wherever in it.
#[derive(Debug, Default, PartialEq, Eq)]
pub struct Asked {
    pub variables: BTreeSet<String>,
    pub messages: BTreeSet<String>,
    /// Variable, keys and default of each choice, in the order of the file.
    pub choices: Vec<Choice>,
    /// Every piece of plain text.
    pub said: Vec<String>,
}

#[derive(Debug, PartialEq, Eq)]
pub struct Choice {
    pub variable: String,
    pub keys: BTreeSet<String>,
    pub default: String,
}

impl Text {
    /// Id and attribute as they stand in a file.
    pub fn name(&self) -> String {
        self.attribute.as_ref().map_or_else(|| self.id.clone(), |attribute| format!("{}.{attribute}", self.id))
    }

    pub fn asked(&self) -> Asked {
        let mut asked = Asked::default();
        asked.pattern(&self.pattern);
        asked
    }

    /// The text with something in the place of each variable: a number where that does.
    pub fn shown(&self, messages: &Messages) -> String {
        let samples = [
            ("side", "left".into()),
            ("landmark", "shoulder".into()),
            ("mode", "helped".into()),
            ("bound", "degrees".into()),
            ("day_number", "555-0100".into()),
            ("night_number", "555-0101".into()),
        ];
        let mut told: Vec<(&str, Argument<'_>)> = variables().iter().map(|name| (name.as_str(), 2.0.into())).collect();
        told.extend(samples);
        let text = match &self.attribute {
            None => messages.text(&self.id, &told),
            Some(name) => messages.attribute_with(&self.id, name, &told).expect("an attribute of the file"),
        };
        assert!(!text.contains(['\u{2039}', '$']), "{}: {text}", self.name());
        text
    }
}

/// Every variable that some text asks for.
fn variables() -> &'static BTreeSet<String> {
    static VARIABLES: OnceLock<BTreeSet<String>> = OnceLock::new();
    VARIABLES.get_or_init(|| {
        let all = FOR_PATIENTS.iter().flat_map(|file| texts(Language::English, file));
        all.flat_map(|text| text.asked().variables).collect()
    })
}

/// Every text of a file, in its order.
pub fn texts(language: Language, file: &str) -> Vec<Text> {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR"))
        .join("../../locales")
        .join(language.code())
        .join(format!("{file}.ftl"));
    let written = fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    let resource = fluent_syntax::parser::parse(written).unwrap_or_else(|(_, errors)| panic!("{file}: {errors:?}"));
    let mut texts = Vec::new();
    for entry in resource.body {
        let Entry::Message(message) = entry else { continue };
        let id = message.id.name;
        texts.extend(message.value.map(|pattern| Text { id: id.clone(), attribute: None, pattern }));
        texts.extend(message.attributes.into_iter().map(|attribute| Text {
            id: id.clone(),
            attribute: Some(attribute.id.name),
            pattern: attribute.value,
        }));
    }
    texts
}

impl Asked {
    fn pattern(&mut self, pattern: &Pattern<String>) {
        for element in &pattern.elements {
            match element {
                PatternElement::TextElement { value } => self.said.push(value.clone()),
                PatternElement::Placeable { expression } => self.expression(expression),
            }
        }
    }

    fn expression(&mut self, expression: &Expression<String>) {
        match expression {
            Expression::Inline(inline) => self.inline(inline),
            Expression::Select { selector, variants } => {
                self.inline(selector);
                let InlineExpression::VariableReference { id } = selector else { panic!("{selector:?} selects") };
                let key = |key: &VariantKey<String>| match key {
                    VariantKey::Identifier { name } => name.clone(),
                    VariantKey::NumberLiteral { value } => value.clone(),
                };
                let default = variants.iter().find(|variant| variant.default).expect("Fluent asks for one");
                self.choices.push(Choice {
                    variable: id.name.clone(),
                    keys: variants.iter().map(|variant| key(&variant.key)).collect(),
                    default: key(&default.key),
                });
                for variant in variants {
                    self.pattern(&variant.value);
                }
            }
        }
    }

    fn inline(&mut self, inline: &InlineExpression<String>) {
        match inline {
            InlineExpression::VariableReference { id } => {
                self.variables.insert(id.name.clone());
            }
            InlineExpression::MessageReference { id, .. } => {
                self.messages.insert(id.name.clone());
            }
            InlineExpression::Placeable { expression } => self.expression(expression),
            InlineExpression::StringLiteral { .. } | InlineExpression::NumberLiteral { .. } => {}
            InlineExpression::FunctionReference { .. } | InlineExpression::TermReference { .. } => {
                panic!("no text needs {inline:?} yet")
            }
        }
    }
}
