//! The pieces schemas are made of.

use serde_json::{Map, Value, json};

/// A schema file: an object with a name and what it describes.
pub fn file(title: &str, description: &str, body: Value) -> Value {
    let mut whole = json!({
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": title,
        "description": description,
    });
    if let (Value::Object(whole), Value::Object(body)) = (&mut whole, body) {
        whole.extend(body);
    }
    whole
}

/// A table with these keys, those in `required`, and no others.
pub fn table(required: &[&str], keys: &[(&str, Value)]) -> Value {
    let keys: Map<String, Value> = keys.iter().map(|(key, value)| ((*key).to_owned(), value.clone())).collect();
    let mut table = json!({ "type": "object", "additionalProperties": false, "properties": keys });
    if !required.is_empty() {
        table["required"] = json!(required);
    }
    table
}

/// A list of something.
pub fn list(item: Value) -> Value {
    json!({ "type": "array", "items": item })
}

/// Any text.
pub fn text() -> Value {
    json!({ "type": "string" })
}

/// True or false.
pub fn boolean() -> Value {
    json!({ "type": "boolean" })
}

/// A date of the calendar, written without quotes.
pub fn date() -> Value {
    json!({ "type": "string", "format": "date" })
}

/// A whole number of a range.
pub fn whole(from: i64, to: i64) -> Value {
    json!({ "type": "integer", "minimum": from, "maximum": to })
}

/// A whole number from 0.
pub fn count() -> Value {
    json!({ "type": "integer", "minimum": 0 })
}

/// Lower-case words joined by hyphens.
pub fn id() -> Value {
    json!({ "type": "string", "pattern": "^[a-z0-9]+(-[a-z0-9]+)*$" })
}

/// One of the words of a vocabulary.
pub fn words<T>(words: &[(&str, T)]) -> Value {
    one_of(words.iter().map(|(word, _)| *word))
}

/// One of some texts.
pub fn one_of<'w>(words: impl Iterator<Item = &'w str>) -> Value {
    json!({ "enum": words.collect::<Vec<_>>() })
}

/// A number with one of the units, in one text.
fn quantity(units: &str, example: &str) -> Value {
    json!({
        "type": "string",
        "pattern": format!("^\\s*[-+\u{2212}]?[0-9]+(\\.[0-9]+)?\\s*({units})\\s*$"),
        "examples": [example],
    })
}

/// A length.
pub fn length() -> Value {
    quantity("mm|cm", "18 mm")
}

/// An angle.
pub fn angle() -> Value {
    quantity("deg|degrees|°", "40 deg")
}

/// A load.
pub fn load() -> Value {
    quantity("kg|lb", "2.27 kg")
}

/// An effort.
pub fn effort() -> Value {
    quantity("%|percent", "30 %")
}

/// A day counted from the operation.
pub fn day() -> Value {
    json!({ "type": "string", "pattern": "^\\s*day\\s*[0-9]+\\s*$|^\\s*[0-9]+ (day|days|week|weeks)\\s*$", "examples": ["day 42"] })
}

/// Any of some schemas.
pub fn any(choices: &[Value]) -> Value {
    json!({ "anyOf": choices })
}

/// A reference to a definition of the same file.
pub fn defined(name: &str) -> Value {
    json!({ "$ref": format!("#/$defs/{name}") })
}

/// Definitions of a file.
pub fn with_definitions(mut schema: Value, definitions: &[(&str, Value)]) -> Value {
    let definitions: Map<String, Value> =
        definitions.iter().map(|(name, value)| ((*name).to_owned(), value.clone())).collect();
    schema["$defs"] = Value::Object(definitions);
    schema
}

/// The ids of the table of evidence.
pub fn evidence_ids() -> Value {
    one_of(evidence::ENTRIES.iter().map(|entry| entry.id))
}
