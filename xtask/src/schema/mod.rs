//! `cargo xtask schema`: JSON Schemas (draft 2020-12) of the files people write, so that an
//! editor completes keys and words. The readers remain the judges; a schema says less.

#[cfg(feature = "schema")]
mod exercise;
#[cfg(feature = "schema")]
mod fits;
#[cfg(feature = "schema")]
mod protocol;
#[cfg(feature = "schema")]
mod record;
#[cfg(feature = "schema")]
mod settings;
#[cfg(feature = "schema")]
mod shape;

use std::path::Path;

use crate::Mode;
#[cfg(feature = "schema")]
use crate::Output;

/// The schema files.
#[cfg(feature = "schema")]
pub fn outputs() -> Vec<Output> {
    [
        ("record", record::schema()),
        ("settings", settings::schema()),
        ("protocol", protocol::protocol()),
        ("family", protocol::family()),
        ("exercise", exercise::schema()),
    ]
    .into_iter()
    .map(|(name, schema)| Output { path: format!("schemas/{name}.schema.json"), text: format!("{schema:#}\n") })
    .collect()
}

/// Writes or compares the schemas, and holds every shipped file against its own; gives whether all was well.
#[cfg(feature = "schema")]
pub fn run(root: &Path, mode: Mode) -> anyhow::Result<bool> {
    let faults = fits::shipped(root)?;
    for fault in &faults {
        eprintln!("{fault}");
    }
    let mut current = faults.is_empty();
    for output in outputs() {
        let settled = output.settle(root, mode)?;
        if !settled {
            eprintln!("run `cargo xtask schema`");
        }
        current &= settled;
    }
    Ok(current)
}

/// The same, by this program built with the clinical crates.
#[cfg(not(feature = "schema"))]
pub fn run(root: &Path, mode: Mode) -> anyhow::Result<bool> {
    use anyhow::Context;

    let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let mut command = std::process::Command::new(cargo);
    command.args(["run", "--quiet", "--package", "xtask", "--features", "schema", "--", "schema"]);
    if mode == Mode::Check {
        command.arg("--check");
    }
    let status = command.current_dir(root).status().context("building the schemas")?;
    Ok(status.success())
}
