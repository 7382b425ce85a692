//! Whether the shipped files fit their schemas, so that an editor never marks a good file.
//!
//! Only the words of JSON Schema that our schemas use are understood; patterns and formats are
//! left to the readers. A word that is not understood is a fault, so that none is passed over.

use std::path::Path;

use serde_json::{Map, Value};
use toml::de::{DeTable, DeValue};

use crate::tidy::under;

/// Every fault of every shipped file, with its place.
pub fn shipped(root: &Path) -> anyhow::Result<Vec<String>> {
    let mut faults = Vec::new();
    for folder in ["exercises", "protocols", "examples"] {
        for (path, text) in under(root, folder, &[".toml"])? {
            let schema = match folder {
                "exercises" => super::exercise::schema(),
                "protocols" if path.ends_with("/family.toml") => super::protocol::family(),
                "protocols" => super::protocol::protocol(),
                _ if path.contains("practice") => super::settings::schema(),
                _ if path.contains("opened") => continue,
                _ => super::record::schema(),
            };
            match DeTable::parse(&text) {
                Ok(table) => {
                    faults.extend(check(&schema, &table_of(table.get_ref())).map(|at| format!("{path}: {at}")))
                }
                Err(error) => faults.push(format!("{path}: {}", error.message())),
            }
        }
    }
    Ok(faults)
}

fn table_of(table: &DeTable<'_>) -> Value {
    let entries = table.iter().map(|(key, value)| (key.get_ref().to_string(), value_of(value.get_ref())));
    Value::Object(entries.collect())
}

fn value_of(value: &DeValue<'_>) -> Value {
    match value {
        DeValue::String(text) => Value::String(text.to_string()),
        DeValue::Integer(number) => {
            i64::from_str_radix(number.as_str(), number.radix()).map_or(Value::Null, Value::from)
        }
        DeValue::Float(number) => number.as_str().parse::<f64>().map_or(Value::Null, Value::from),
        DeValue::Boolean(value) => Value::Bool(*value),
        DeValue::Datetime(date) => Value::String(date.to_string()),
        DeValue::Array(items) => items.iter().map(|item| value_of(item.get_ref())).collect(),
        DeValue::Table(table) => table_of(table),
    }
}

/// The first fault of a value, if there is one.
fn check(schema: &Value, value: &Value) -> Option<String> {
    fault(schema, schema, value, "")
}

fn fault(root: &Value, schema: &Value, value: &Value, at: &str) -> Option<String> {
    let words = schema.as_object()?;
    let fits = |schema: &Value| fault(root, schema, value, at).is_none();
    let here = |what: String| Some(format!("{}: {what}", if at.is_empty() { "the file" } else { at }));
    for (word, said) in words {
        let found = match word.as_str() {
            "$ref" => {
                let place = said.as_str().unwrap_or_default().trim_start_matches('#');
                match root.pointer(place) {
                    Some(defined) => fault(root, defined, value, at),
                    None => here(format!("no definition {place}")),
                }
            }
            "type" if !is_type(value, said.as_str().unwrap_or_default()) => {
                here(format!("{value} is not of type {said}"))
            }
            "enum" if !said.as_array().is_some_and(|words| words.contains(value)) => {
                here(format!("{value} is not a known word"))
            }
            "const" if said != value => here(format!("{value} is not {said}")),
            "minimum" if value.as_f64() < said.as_f64() => here(format!("{value} is under {said}")),
            "maximum" if value.as_f64() > said.as_f64() => here(format!("{value} is over {said}")),
            "required" => {
                let missing = |key: &&Value| value.is_object() && value.get(key.as_str().unwrap_or_default()).is_none();
                let key = said.as_array().into_iter().flatten().find(missing);
                key.and_then(|key| here(format!("{key} is missing")))
            }
            "properties" => properties(root, words, value, at),
            "items" => value
                .as_array()
                .into_iter()
                .flatten()
                .enumerate()
                .find_map(|(index, item)| fault(root, said, item, &format!("{at}[{index}]"))),
            "anyOf" if !said.as_array().is_some_and(|all| all.iter().any(fits)) => {
                here(format!("{value} fits none of the choices"))
            }
            "oneOf" if said.as_array().is_some_and(|all| all.iter().filter(|one| fits(one)).count() != 1) => {
                here("not exactly one of the choices fits".into())
            }
            "allOf" => said.as_array().into_iter().flatten().find_map(|schema| fault(root, schema, value, at)),
            "if" if fits(said) => words.get("then").and_then(|then| fault(root, then, value, at)),
            "type" | "enum" | "const" | "minimum" | "maximum" | "anyOf" | "oneOf" | "if" | "then" => None,
            // Told to people and editors, or judged by the readers.
            "$schema"
            | "$defs"
            | "title"
            | "description"
            | "examples"
            | "pattern"
            | "format"
            | "additionalProperties" => None,
            other => here(format!("this check does not understand `{other}`")),
        };
        if found.is_some() {
            return found;
        }
    }
    None
}

fn properties(root: &Value, words: &Map<String, Value>, value: &Value, at: &str) -> Option<String> {
    let (known, table) = (words.get("properties")?.as_object()?, value.as_object()?);
    let closed = words.get("additionalProperties") == Some(&Value::Bool(false));
    table.iter().find_map(|(key, value)| {
        let at = if at.is_empty() { key.clone() } else { format!("{at}.{key}") };
        match known.get(key) {
            Some(schema) => fault(root, schema, value, &at),
            None => closed.then(|| format!("{at}: not a key of the schema")),
        }
    })
}

fn is_type(value: &Value, name: &str) -> bool {
    match name {
        "object" => value.is_object(),
        "array" => value.is_array(),
        "string" => value.is_string(),
        "boolean" => value.is_boolean(),
        "integer" => value.is_i64() || value.is_u64(),
        "number" => value.is_number(),
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn first_fault(change: impl Fn(&str) -> String) -> Option<String> {
        let record = "[patient]\nbirth_date = 1968-05-02\n[operation]\ndate = 2026-03-02\nside = \"left\"\n\
                      approach = \"arthroscopic\"\n[[operation.tendon]]\nname = \"supraspinatus\"\n";
        let text = change(record);
        let table = DeTable::parse(&text).expect("TOML");
        check(&super::super::record::schema(), &table_of(table.get_ref()))
    }

    #[test]
    fn a_good_record_fits_and_each_slip_is_found() {
        assert_eq!(first_fault(str::to_owned), None);
        for (from, to, at) in [
            ("\"left\"", "\"sinister\"", "operation.side: \"sinister\" is not a known word"),
            ("\"left\"", "1", "operation.side: 1 is not a known word"),
            ("approach", "aproach", "operation.aproach: not a key of the schema"),
            ("birth_date = 1968-05-02\n", "", "patient: \"birth_date\" is missing"),
            (
                "\"supraspinatus\"",
                "\"suprespinatus\"",
                "operation.tendon[0].name: \"suprespinatus\" is not a known word",
            ),
            ("[[operation.tendon]]", "[operation.tendon]", "operation.tendon: "),
        ] {
            let found = first_fault(|record| record.replace(from, to)).unwrap_or_default();
            assert!(found.starts_with(at), "{from} to {to}: {found}");
        }
    }

    #[test]
    fn a_condition_knows_the_classes_of_its_own_fact() {
        let family = |has: &str| {
            let text = format!(
                "id = \"a\"\ntitle = \"a\"\nprocedure = \"rotator cuff repair\"\ndefault = \"a\"\n\
                 safe_arc_until_stage = \"a\"\n[[select]]\nid = \"a\"\ntitle = \"a\"\nprotocol = \"a\"\n\
                 when = [{{ fact = \"tear size\", {has} }}]\n"
            );
            let table = DeTable::parse(&text).expect("TOML");
            check(&super::super::protocol::family(), &table_of(table.get_ref()))
        };
        assert_eq!(family("at_least = \"30 to 50 mm\""), None);
        assert!(family("at_least = \"tenodesis\"").is_some());
        assert!(family("has = \"30 to 50 mm\", at_least = \"30 to 50 mm\"").is_some());
    }
}
