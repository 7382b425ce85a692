//! What each diagnostic code means: `explanations/*.toml`.

use diagnostic::{Sink, Sources};

/// The files, by name and text.
pub const FILES: &[(&str, &str)] = &[
    ("explanations/file.toml", include_str!("../../../explanations/file.toml")),
    ("explanations/record.toml", include_str!("../../../explanations/record.toml")),
    ("explanations/settings.toml", include_str!("../../../explanations/settings.toml")),
    ("explanations/protocol.toml", include_str!("../../../explanations/protocol.toml")),
    ("explanations/exercise.toml", include_str!("../../../explanations/exercise.toml")),
    ("explanations/measure.toml", include_str!("../../../explanations/measure.toml")),
    ("explanations/command.toml", include_str!("../../../explanations/command.toml")),
];

/// What a diagnostic code means.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Explanation {
    pub code: String,
    pub means: String,
    pub matters: String,
    pub wrong: Option<String>,
    pub right: Option<String>,
    pub sources: Vec<String>,
}

/// Every explanation, in the order of the files.
pub fn all(sources: &mut Sources, sink: &mut Sink) -> Vec<Explanation> {
    let mut explanations = Vec::new();
    for (name, text) in FILES {
        let file = sources.add(*name, *text);
        let Some(mut table) = document::read(file, text, sink) else { continue };
        for mut entry in table.tables("explanation", sink) {
            let mut needed = |key, sink: &mut Sink| {
                entry.require(key, sink).and_then(|value| value.text(sink)).map(|text| text.value)
            };
            let (code, means, matters) = (needed("code", sink), needed("means", sink), needed("matters", sink));
            let mut optional = |key, sink: &mut Sink| entry.text(key, sink).map(|text| text.value);
            let (wrong, right) = (optional("wrong", sink), optional("right", sink));
            let sources = entry.texts("sources", sink).into_iter().map(|text| text.value).collect();
            entry.finish(sink);
            if let (Some(code), Some(means), Some(matters)) = (code, means, matters) {
                explanations.push(Explanation { code, means, matters, wrong, right, sources });
            }
        }
        table.finish(sink);
    }
    explanations
}
