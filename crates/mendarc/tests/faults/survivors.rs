//! The changes that nothing has to catch, and why.

use std::collections::BTreeMap;

use toml::de::DeTable;

/// Name and reason of each listed survivor.
pub fn listed() -> BTreeMap<String, String> {
    let table = DeTable::parse(include_str!("survivors.toml")).expect("the list of survivors is TOML");
    let Some(list) = table.get_ref().get("survivor") else { return BTreeMap::new() };
    let text = |entry: &toml::Spanned<toml::de::DeValue<'_>>, key: &str| -> String {
        let found = entry.get_ref().get(key).and_then(|value| value.get_ref().as_str());
        found.filter(|text| !text.is_empty()).unwrap_or_else(|| panic!("a survivor without {key}")).to_owned()
    };
    let list = list.get_ref().as_array().expect("a list of survivors");
    list.iter().map(|entry| (text(entry, "name"), text(entry, "reason"))).collect()
}
