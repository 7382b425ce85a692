//! The committed schemas of the documents are those their structs give.
//!
//! After a change: `MENDARC_WRITE_SCHEMA=1 cargo test -p mendarc --test schema`.

use std::path::Path;

use schemars::JsonSchema;

#[test]
fn the_committed_schema_is_current() {
    is_current::<mendarc::json::Prescription>("prescription.schema.json");
}

#[test]
fn the_committed_schema_of_a_comparison_is_current() {
    is_current::<mendarc::json::Comparison>("comparison.schema.json");
}

#[test]
fn the_committed_schema_of_a_check_is_current() {
    is_current::<mendarc::json::check::Check>("check.schema.json");
}

#[test]
fn the_committed_schema_of_a_ladder_is_current() {
    is_current::<mendarc::json::ladder::Ladder<'static>>("ladder.schema.json");
}

#[test]
fn the_committed_schema_of_angles_is_current() {
    is_current::<mendarc::json::angles::Angles>("angles.schema.json");
}

#[track_caller]
fn is_current<Document: JsonSchema>(name: &str) {
    // What is written, not what could be read: a key that may be left out is not required.
    let settings = schemars::generate::SchemaSettings::draft2020_12().for_serialize();
    let schema = settings.into_generator().into_root_schema_for::<Document>();
    let now = serde_json::to_string_pretty(&schema).expect("a schema serializes") + "\n";
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../schemas").join(name);
    if std::env::var_os("MENDARC_WRITE_SCHEMA").is_some() {
        std::fs::write(&path, &now).expect("the schemas folder can be written");
    }
    let committed = std::fs::read_to_string(&path).unwrap_or_default();
    assert!(committed == now, "schemas/{name} is not current; see the top of this test");
}
