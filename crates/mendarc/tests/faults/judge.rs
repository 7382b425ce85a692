//! Who catches a change: the checker of the files, the proof, or a story.

use std::collections::HashMap;
use std::sync::Mutex;

use diagnostic::{FileId, Severity, Sink, Sources};
use mendarc::shelf::Shelf;
use protocol::{Library, SHIPPED};

use crate::mutant::Mutant;
use crate::story::{self, Step};
use crate::{judged, proved};

/// The guard that is left aside.
const WITHOUT_EVIDENCE: &str = "number-without-evidence";

/// What became of a change.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Verdict {
    /// The files were refused, with this code.
    Checker(&'static str),
    /// The proof found this.
    Proof(String),
    /// This story failed.
    Story(String),
    /// Nothing caught it.
    Survived,
}

impl Verdict {
    /// The means, in a word.
    pub fn means(&self) -> &'static str {
        match self {
            Self::Checker(_) => "checker",
            Self::Proof(_) => "proof",
            Self::Story(_) => "stories",
            Self::Survived => "nothing",
        }
    }
}

/// A step of a story.
#[derive(Debug)]
struct Scene {
    story: String,
    step: Step,
    /// Whether it is about a release of the capsule alone, which the protocols of the cuff never touch.
    release: bool,
}

/// The steps of every story, and which of them caught what.
#[derive(Debug)]
pub struct Judge {
    scenes: Vec<Scene>,
    caught: Mutex<HashMap<String, Vec<usize>>>,
}

impl Judge {
    pub fn new() -> Self {
        let files = judged::stories();
        let mut scenes = Vec::new();
        for path in files {
            let story = path.file_stem().unwrap_or_default().to_string_lossy().into_owned();
            let text = std::fs::read_to_string(&path).expect("a case is text");
            let steps = story::read(&text).unwrap_or_else(|fault| panic!("{story}:{}: {}", fault.line, fault.message));
            for step in steps {
                let record = step.state.record.as_deref().unwrap_or_default();
                let release = record.contains("procedure = \"capsular release\"");
                scenes.push(Scene { story: story.clone(), step, release });
            }
        }
        Self { scenes, caught: Mutex::default() }
    }

    /// A shelf to put changed protocols on.
    pub fn shelf(&self) -> Shelf {
        Shelf::new(&mut Sources::new(), &mut Sink::new())
    }

    /// What becomes of a change, and whether the guard of evidence would have caught it.
    pub fn judge(&self, shelf: &mut Shelf, mutant: &Mutant) -> (Verdict, bool) {
        let mut files = SHIPPED.to_vec();
        files[mutant.file].1 = &mutant.text;
        let (refused, unsourced) = self.put(shelf, &files);
        let verdict = refused.or_else(|| self.by_stories(shelf, Some(mutant)));
        // Last, because it takes seconds.
        let verdict = verdict.or_else(|| by_proof(shelf, Some(mutant)));
        (verdict.unwrap_or(Verdict::Survived), unsourced)
    }

    /// The same for files as they are.
    pub fn whole(&self, shelf: &mut Shelf, files: &[(&str, &str)]) -> Verdict {
        let (refused, unsourced) = self.put(shelf, files);
        assert!(!unsourced, "a number of the files has no evidence");
        let verdict = refused.or_else(|| self.by_stories(shelf, None)).or_else(|| by_proof(shelf, None));
        verdict.unwrap_or(Verdict::Survived)
    }

    /// Reads files onto the shelf: why they are refused, and whether a number lacks evidence.
    fn put(&self, shelf: &mut Shelf, files: &[(&str, &str)]) -> (Option<Verdict>, bool) {
        let read: Vec<_> = (0..).zip(files).map(|(id, (name, text))| (*name, FileId(id), *text)).collect();
        let mut sink = Sink::new();
        shelf.library = Library::read(&read, &mut sink);
        // A sink of its own: after a fault of reading the family would not be looked at.
        let mut checked = Sink::new();
        shelf.library.check(&shelf.catalogue, &mut checked);
        // A warning too: the shipped files have none.
        let found = || sink.found().iter().chain(checked.found()).filter(|fault| fault.severity != Severity::Note);
        let unsourced = found().any(|fault| fault.code == WITHOUT_EVIDENCE);
        let refused = found().find(|fault| fault.code != WITHOUT_EVIDENCE).map(|fault| Verdict::Checker(fault.code));
        (refused, unsourced)
    }

    /// The first story that fails; those that caught a neighbour go first.
    fn by_stories(&self, shelf: &Shelf, mutant: Option<&Mutant>) -> Option<Verdict> {
        let release = mutant.map(|mutant| SHIPPED[mutant.file].0.starts_with("capsular-release/"));
        let mut order: Vec<usize> = Vec::new();
        if let Some(mutant) = mutant {
            let caught = self.caught.lock().expect("no thread panicked");
            for known in [key_of_entry(mutant), key_of_file(mutant)] {
                order.extend(caught.get(&known).into_iter().flatten().rev());
            }
        }
        order.extend(0..self.scenes.len());
        let mut looked_at = vec![false; self.scenes.len()];
        for place in order {
            let scene = &self.scenes[place];
            if std::mem::replace(&mut looked_at[place], true) || release.is_some_and(|release| release != scene.release)
            {
                continue;
            }
            let faults = judged::faults(&scene.step, shelf);
            if let Some(fault) = faults.first() {
                if let Some(mutant) = mutant {
                    self.remember(mutant, place);
                }
                return Some(Verdict::Story(format!("cases/{}.md:{fault}", scene.story)));
            }
        }
        None
    }

    fn remember(&self, mutant: &Mutant, place: usize) {
        let mut caught = self.caught.lock().expect("no thread panicked");
        for key in [key_of_entry(mutant), key_of_file(mutant)] {
            let known = caught.entry(key).or_default();
            known.retain(|other| *other != place);
            known.push(place);
        }
    }
}

/// What the proof finds in the family that is changed, or in any.
fn by_proof(shelf: &Shelf, mutant: Option<&Mutant>) -> Option<Verdict> {
    let folder = mutant.and_then(|mutant| SHIPPED[mutant.file].0.split_once('/')).map(|(folder, _)| folder);
    // A family has the name of its folder.
    let families = shelf.library.families.iter().filter(|family| folder.is_none_or(|folder| family.file.id == folder));
    families.filter_map(proved::by_proof).map(Verdict::Proof).next()
}

fn key_of_entry(mutant: &Mutant) -> String {
    format!("{} {}", mutant.file, mutant.entry)
}

fn key_of_file(mutant: &Mutant) -> String {
    mutant.file.to_string()
}
