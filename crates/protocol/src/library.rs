//! All families of protocols, read and joined.

use diagnostic::{Diagnostic, FileId, Sink, Span};
use document::nearest;
use exercise::Catalogue;
use operative::Facts;

use crate::file::{self, ChoiceIs, FamilyFile, ProtocolFile, RulesFile};
use crate::{SHIPPED, lint};

/// The families a record may belong to.
#[derive(Debug, Clone, Default)]
pub struct Library {
    /// The families, in the order of their folders.
    pub families: Vec<Family>,
}

/// One family: its file, its protocols with their parts, and its rules.
#[derive(Debug, Clone)]
pub struct Family {
    /// The file of the family.
    pub file: FamilyFile,
    /// The protocols, in the order the family names them.
    pub protocols: Vec<ProtocolFile>,
    /// What single findings add.
    pub rules: RulesFile,
}

impl Library {
    /// Reads families from their files, each named `folder/file.toml`.
    ///
    /// # Errors
    /// Every fault is a diagnostic; a family whose files cannot be used is left out.
    pub fn read(files: &[(&str, FileId, &str)], sink: &mut Sink) -> Self {
        let mut folders: Vec<&str> =
            files.iter().filter_map(|(name, ..)| name.split_once('/')).map(|(f, _)| f).collect();
        folders.dedup();
        let families = folders.into_iter().filter_map(|folder| read_family(folder, files, sink)).collect();
        Self { families }
    }

    /// The families that come with the program; `add` gives each text a file id.
    pub fn shipped(mut add: impl FnMut(&str, &str) -> FileId, sink: &mut Sink) -> Self {
        let files: Vec<_> = SHIPPED.iter().map(|(name, text)| (*name, add(name, text), *text)).collect();
        Self::read(&files, sink)
    }

    /// The family for these facts.
    pub fn family(&self, facts: &Facts) -> Option<&Family> {
        self.families.iter().find(|family| family.file.procedure.holds(facts))
    }

    /// Checks every family against the catalogue: what no single file can show.
    pub fn check(&self, catalogue: &Catalogue, sink: &mut Sink) {
        for family in &self.families {
            lint::family(family, catalogue, sink);
        }
    }
}

impl Family {
    /// Whether the tables of a plan hold the family; what is too much is a diagnostic.
    ///
    /// # Errors
    /// `family-too-large`
    pub fn fits(&self, sink: &mut Sink) -> bool {
        lint::fits(self, sink)
    }

    /// The place of a protocol.
    pub fn protocol(&self, id: &str) -> Option<usize> {
        self.protocols.iter().position(|protocol| protocol.id == id)
    }

    /// Every choice of the surgeon's in the family.
    pub fn choices(&self) -> impl Iterator<Item = &file::Choice> {
        self.rules.choices.iter().chain(self.protocols.iter().flat_map(|protocol| &protocol.rules.choices))
    }

    /// Every rule, those of the family first, then each protocol's own with its place.
    pub fn rules(&self) -> impl Iterator<Item = (Option<usize>, &file::Rule)> {
        let own = self
            .protocols
            .iter()
            .enumerate()
            .flat_map(|(place, protocol)| protocol.rules.rules.iter().map(move |rule| (Some(place), rule)));
        self.rules.rules.iter().map(|rule| (None, rule)).chain(own)
    }

    /// The ids of all stages of the family, in the order of their earliest gate.
    pub fn stage_ids(&self) -> Vec<&str> {
        let mut stages: Vec<(u16, usize, &str)> = Vec::new();
        for protocol in &self.protocols {
            for (place, stage) in protocol.stages.iter().enumerate() {
                match stages.iter_mut().find(|(_, _, id)| *id == stage.id) {
                    Some(known) => *known = (known.0.min(stage.gate.count()), known.1.max(place), known.2),
                    None => stages.push((stage.gate.count(), place, &stage.id)),
                }
            }
        }
        // The place within a protocol decides; the earliest gate breaks ties between protocols.
        stages.sort_by_key(|(gate, place, _)| (*place, *gate));
        stages.into_iter().map(|(_, _, id)| id).collect()
    }
}

fn read_family(folder: &str, files: &[(&str, FileId, &str)], sink: &mut Sink) -> Option<Family> {
    let find =
        |name: &str| files.iter().find(|(path, ..)| path.split_once('/') == Some((folder, &format!("{name}.toml"))));
    let Some(&(_, id, text)) = find("family") else {
        sink.push(Diagnostic::error("no-family", format!("the folder `{folder}` has no family.toml")));
        return None;
    };
    let family = file::read_family(id, text, sink)?;
    let mut protocols = Vec::new();
    for name in &family.protocols {
        let Some(&(_, id, text)) = find(name) else {
            sink.push(missing_file(name, folder, files, family.span));
            continue;
        };
        let Some(mut protocol) = file::read(id, text, sink) else { continue };
        for part in protocol.parts.clone() {
            let Some(&(_, id, text)) = find(&part) else {
                sink.push(missing_file(&part, folder, files, protocol.span));
                continue;
            };
            if let Some(part) = file::read_part(id, text, sink) {
                join(&mut protocol, part);
            }
        }
        protocols.push(protocol);
    }
    let rules = find("rules").and_then(|&(_, id, text)| file::read_rules(id, text, sink)).unwrap_or_default();
    (protocols.len() == family.protocols.len()).then_some(Family { file: family, protocols, rules })
}

fn missing_file(name: &str, folder: &str, files: &[(&str, FileId, &str)], span: Span) -> Diagnostic {
    let fault = Diagnostic::error("no-such-file", format!("`{folder}/{name}.toml` is not there")).at(span);
    let names =
        files.iter().filter_map(|(path, ..)| path.strip_prefix(folder)?.strip_prefix('/')?.strip_suffix(".toml"));
    match nearest(name, names) {
        Some(near) => fault.help(format!("did you mean \"{near}\"?")),
        None => fault,
    }
}

fn join(protocol: &mut ProtocolFile, part: ProtocolFile) {
    protocol.limits.extend(part.limits);
    protocol.passive_by.extend(part.passive_by);
    // What a part adds comes first in a session: hand and elbow before the shoulder would surprise nobody,
    // but the shoulder is what the session is for, so it stays first.
    // What the protocol lists itself, with its own dose, stands.
    let own: Vec<String> = protocol.exercises.iter().map(|used| used.id.clone()).collect();
    protocol.exercises.extend(part.exercises.into_iter().filter(|used| !own.contains(&used.id)));
    protocol.goals.extend(part.goals);
    protocol.returns.extend(part.returns);
    protocol.postures.extend(part.postures);
}

/// Whether a line under a choice is in force.
pub(crate) fn chosen(choice: Option<&ChoiceIs>, choices: &crate::Choices) -> bool {
    choice.is_none_or(|choice| choices.is(&choice.id, &choice.is))
}
