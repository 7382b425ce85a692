//! The files of a folder, in a fixed order.

use std::fs;
use std::path::Path;

use anyhow::Context;

/// Path below `root` with forward slashes, and text, of every file under `folder` with one of
/// the endings. A folder that does not exist holds none.
pub fn under(root: &Path, folder: &str, endings: &[&str]) -> anyhow::Result<Vec<(String, String)>> {
    let mut found = Vec::new();
    let mut open = vec![folder.to_owned()];
    while let Some(folder) = open.pop() {
        let Ok(items) = fs::read_dir(root.join(&folder)) else { continue };
        for item in items {
            let item = item?;
            let name = item.file_name().to_string_lossy().into_owned();
            let path = format!("{folder}/{name}");
            if item.file_type()?.is_dir() {
                open.push(path);
            } else if endings.iter().any(|ending| name.ends_with(ending)) {
                let text = fs::read_to_string(root.join(&path)).with_context(|| format!("reading {path}"))?;
                found.push((path, text));
            }
        }
    }
    found.sort();
    Ok(found)
}

/// The lines of a markdown section, numbered from 1: from below `## title` to the next heading of its rank.
pub fn section<'t>(page: &'t str, title: &str) -> Vec<(usize, &'t str)> {
    page.lines()
        .enumerate()
        .map(|(index, line)| (index + 1, line))
        .skip_while(|(_, line)| line.trim() != format!("## {title}"))
        .skip(1)
        .take_while(|(_, line)| !line.starts_with("## ") && !line.starts_with("# "))
        .collect()
}

/// The cells of a markdown table row, trimmed and without backticks; none for other lines,
/// for the rule under the head, and for the head itself, whose first cell is `head`.
pub fn cells(line: &str, head: &str) -> Option<Vec<String>> {
    let inner = line.trim().strip_prefix('|')?.strip_suffix('|')?;
    let cells: Vec<String> = inner.split('|').map(|cell| cell.trim().replace('`', "")).collect();
    let first = cells.first()?;
    let is_rule = first.chars().all(|c| matches!(c, '-' | ':')) && !first.is_empty();
    (!is_rule && first != head).then_some(cells)
}
