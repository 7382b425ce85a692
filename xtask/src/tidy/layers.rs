//! The layer table and the code map of `ARCHITECTURE.md`, against what cargo says.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use std::process::Command;

use anyhow::Context;

use super::{Fault, files};

const PAGE: &str = "ARCHITECTURE.md";

/// Each crate of the workspace with the workspace crates it is built on.
type Crates = BTreeMap<String, Vec<String>>;

/// Crates that are missing, unknown, or built on what their layer may not be built on.
pub fn faults(root: &Path) -> anyhow::Result<Vec<Fault>> {
    let Ok(page) = fs::read_to_string(root.join(PAGE)) else {
        return Ok(vec![fault(0, "architecture-missing", "there is no such page".into())]);
    };
    let crates = crates(root)?;
    let mut faults = layers(&page, &crates);
    faults.extend(code_map(&page, &crates));
    Ok(faults)
}

fn fault(line: usize, code: &'static str, message: String) -> Fault {
    Fault { path: PAGE.into(), line, code, message }
}

fn crates(root: &Path) -> anyhow::Result<Crates> {
    let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let output = Command::new(cargo)
        .args(["metadata", "--no-deps", "--offline", "--format-version", "1"])
        .current_dir(root)
        .output()
        .context("running cargo metadata")?;
    anyhow::ensure!(output.status.success(), "cargo metadata: {}", String::from_utf8_lossy(&output.stderr));
    let metadata: serde_json::Value = serde_json::from_slice(&output.stdout)?;
    let packages = metadata["packages"].as_array().context("cargo metadata without packages")?;
    let names: Vec<&str> = packages.iter().filter_map(|package| package["name"].as_str()).collect();
    let built_on = |package: &serde_json::Value| -> Vec<String> {
        let dependencies = package["dependencies"].as_array().into_iter().flatten();
        dependencies
            // What only tests use does not shape the program.
            .filter(|dependency| dependency["kind"].as_str() != Some("dev"))
            .filter_map(|dependency| dependency["name"].as_str())
            .filter(|name| names.contains(name))
            .map(str::to_owned)
            .collect()
    };
    Ok(packages.iter().filter_map(|package| Some((package["name"].as_str()?.to_owned(), built_on(package)))).collect())
}

/// The height of a layer in halves: `½` is 1, `3` is 6.
fn height(layer: &str) -> Option<u8> {
    match layer {
        "½" => Some(1),
        "-" | "–" => Some(u8::MAX),
        number => number.parse::<u8>().ok()?.checked_mul(2),
    }
}

fn layers(page: &str, crates: &Crates) -> Vec<Fault> {
    let mut faults = Vec::new();
    let mut rows: BTreeMap<String, (usize, u8, Vec<String>)> = BTreeMap::new();
    for (line, text) in files::section(page, "Layers") {
        let Some(cells) = files::cells(text, "crate") else { continue };
        let [name, layer, may] = cells.as_slice() else {
            faults.push(fault(line, "layer-row", "a row has crate, layer and may depend on".into()));
            continue;
        };
        let Some(height) = height(layer) else {
            faults.push(fault(line, "layer-row", format!("`{layer}` is not a layer: write 0, ½, 1, 2, …")));
            continue;
        };
        let may = may
            .split(',')
            .map(|name| name.trim().to_owned())
            .filter(|name| !matches!(name.as_str(), "" | "-" | "–" | "nothing"))
            .collect();
        rows.insert(name.clone(), (line, height, may));
    }
    if rows.is_empty() {
        return vec![fault(0, "layers-missing", "no table of layers under the heading \"Layers\"".into())];
    }
    for (name, built_on) in crates {
        let Some((line, height, may)) = rows.get(name) else {
            faults.push(fault(0, "crate-without-layer", format!("`{name}` is not in the table of layers")));
            continue;
        };
        for other in built_on.iter().filter(|other| !may.contains(other)) {
            faults.push(fault(
                *line,
                "layer-broken",
                format!("`{name}` is built on `{other}`, which the table does not allow"),
            ));
        }
        for other in may {
            match rows.get(other) {
                None => faults.push(fault(*line, "unknown-crate", format!("`{other}` has no row of its own"))),
                Some((_, below, _)) if below > height => faults.push(fault(
                    *line,
                    "layer-upward",
                    format!("`{name}` may not depend on `{other}`, which stands in a layer above"),
                )),
                Some(_) => {}
            }
        }
    }
    for (name, (line, ..)) in rows.iter().filter(|(name, _)| !crates.contains_key(*name)) {
        faults.push(fault(*line, "unknown-crate", format!("`{name}` is not a crate of the workspace")));
    }
    faults
}

fn code_map(page: &str, crates: &Crates) -> Vec<Fault> {
    let lines = files::section(page, "Code map");
    let mut faults: Vec<Fault> = crates
        .keys()
        .filter(|name| !lines.iter().any(|(_, line)| line.contains(&format!("`{name}`"))))
        .map(|name| fault(0, "crate-not-mapped", format!("the code map does not name `{name}`")))
        .collect();
    for (line, text) in &lines {
        let Some(cells) = files::cells(text, "crate") else { continue };
        let name = cells.first().map_or("", String::as_str);
        if !crates.contains_key(name) {
            faults.push(fault(*line, "unknown-crate", format!("`{name}` is not a crate of the workspace")));
        }
    }
    faults
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(table: &str, crates: &[(&str, &[&str])]) -> Vec<&'static str> {
        let page = format!("# A\n\n## Layers\n| crate | layer | may depend on |\n|---|---|---|\n{table}\n## Next\n");
        let crates = crates
            .iter()
            .map(|(name, on)| ((*name).to_owned(), on.iter().map(|on| (*on).to_owned()).collect()))
            .collect();
        layers(&page, &crates).into_iter().map(|fault| fault.code).collect()
    }

    #[test]
    fn what_the_table_allows_is_well() {
        let table = "| `body` | 0 | – |\n| `plan` | ½ | `body` |\n| `tool` | – | body, plan |";
        assert_eq!(check(table, &[("body", &[]), ("plan", &["body"]), ("tool", &["plan"])]), [""; 0]);
    }

    #[test]
    fn each_breach_is_named() {
        let body = ("body", &[] as &[&str]);
        assert_eq!(check("| body | 0 | – |\n| plan | 1 | – |", &[body, ("plan", &["body"])]), ["layer-broken"]);
        assert_eq!(check("| body | 0 | – |", &[body, ("plan", &[])]), ["crate-without-layer"]);
        assert_eq!(check("| body | 0 | – |\n| old | 1 | body |", &[body]), ["unknown-crate"]);
        assert_eq!(check("| body | 0 | plan |\n| plan | 1 | body |", &[body, ("plan", &["body"])]), ["layer-upward"]);
        assert_eq!(check("| body | low | – |", &[body]), ["layers-missing"]);
        assert_eq!(check("", &[body]), ["layers-missing"]);
    }

    #[test]
    fn the_code_map_names_every_crate_and_no_other() {
        let crates: Crates = [("body".to_owned(), Vec::new())].into();
        let codes = |map: &str| -> Vec<_> {
            code_map(&format!("## Code map\n{map}\n"), &crates).into_iter().map(|fault| fault.code).collect()
        };
        assert_eq!(codes("| `body` | words |"), [""; 0]);
        assert_eq!(codes("- `body`: words"), [""; 0]);
        assert_eq!(codes(""), ["crate-not-mapped"]);
        assert_eq!(codes("| `body` | words |\n| `soul` | none |"), ["unknown-crate"]);
    }
}
