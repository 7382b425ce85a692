//! Every value from memory stands on the page of what still has to be read.

use std::fs;
use std::path::Path;

use evidence::HowKnown;

use super::Fault;

const PAGE: &str = "docs/open-sources.md";

/// Values from memory that the page does not name.
pub fn faults(root: &Path) -> anyhow::Result<Vec<Fault>> {
    let page = fs::read_to_string(root.join(PAGE)).unwrap_or_default();
    let reading = crate::evidence::read_folder(root)?;
    let from_memory = reading
        .table
        .entries
        .iter()
        .filter(|entry| entry.how_known.value == HowKnown::Memory)
        .map(|entry| entry.id.value.as_str());
    Ok(not_named(&page, from_memory))
}

fn not_named<'i>(page: &str, ids: impl Iterator<Item = &'i str>) -> Vec<Fault> {
    ids.filter(|id| !page.contains(&format!("`{id}`")))
        .map(|id| Fault {
            path: PAGE.into(),
            line: 0,
            code: "memory-not-listed",
            message: format!("`{id}` is known from memory only: say where it can be read"),
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_value_from_memory_is_named_whole() {
        let page = "| a paper | `a-value`, `a-value-later` |";
        assert_eq!(not_named(page, ["a-value", "a-value-later"].into_iter()), []);
        assert_eq!(not_named(page, ["a-val"].into_iter()).len(), 1);
    }
}
