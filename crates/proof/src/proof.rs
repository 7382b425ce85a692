//! The proof of one family.

use std::sync::atomic::Ordering;

use exercise::Catalogue;
use protocol::{Family, Library};

use crate::edition::{EDITION_CHANGED, differences, is_newer, name_of};
use crate::finding::{About, Finding, findings};
use crate::lines;
use crate::space::Space;
use crate::walk::{Manner, Walked, Watch, points, walk};
use crate::whole::issue;

/// What came of going through every record of a family.
#[derive(Debug)]
pub struct Proof<'f> {
    /// What the family can be asked.
    pub space: Space<'f>,
    /// How its records were gone through.
    pub manner: Manner,
    /// How far, and how many.
    pub walked: Walked,
    /// Everything found, the worst first.
    pub findings: Vec<Finding>,
    /// How many whole prescriptions were issued and checked.
    pub prescriptions: u64,
    /// The edition it was compared with; `None` where none comes with the program.
    pub compared_with: Option<String>,
    /// The lines that are not those of that edition, by their place.
    pub changed_lines: Vec<String>,
    /// Whether the family calls itself newer than that edition.
    pub is_newer: bool,
    /// What the family says otherwise than the edition that comes with the program, where it calls itself a new one.
    pub new_edition: Vec<Finding>,
}

/// A family whose records are too many to go through.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TooMany {
    /// How many points there are.
    pub points: u128,
    /// What varies, and in how many classes.
    pub dimensions: Vec<(String, usize)>,
}

/// More points than this are not gone through: hours of work, or more memory than a desk has.
const MOST_POINTS: u128 = 2_000_000_000; // not medical: bounds the time
/// The same where records share their plans.
const MOST_SHARED: u128 = 400_000_000; // not medical: bounds the memory

/// Proves a family: every record composed, checked, and compared with the next worse ones.
///
/// `shipped` is the edition of the family that comes with the program, where there is one.
///
/// # Errors
/// [`TooMany`] where going through them would not end.
pub fn prove<'f>(
    family: &'f Family,
    shipped: Option<&Family>,
    manner: Manner,
    watch: &Watch,
) -> Result<Proof<'f>, TooMany> {
    let space = Space::new(family);
    let points = points(&space, manner);
    let most = if manner == Manner::Singly { MOST_POINTS } else { MOST_SHARED };
    if points > most {
        let dimensions = space.axes.iter().map(|axis| (axis.name.clone(), axis.classes.len())).collect();
        return Err(TooMany { points, dimensions });
    }
    let walked = walk(&space, manner, watch);
    let mut found = findings(&space, &walked);
    let mut new_edition = Vec::new();
    let newer = shipped.is_some_and(|shipped| is_newer(family, shipped));
    let changed_lines = shipped.map(|shipped| lines::changed(family, shipped)).unwrap_or_default();
    if let Some(shipped) = shipped {
        let differences = differences(family, shipped);
        if newer { new_edition = differences } else { found.extend(differences) }
    }
    sort(&mut found);
    if !newer && !changed_lines.is_empty() && !found.iter().any(Finding::is_of_edition) {
        found.push(unnamed(&changed_lines));
    }
    Ok(Proof {
        space,
        manner,
        walked,
        findings: found,
        prescriptions: 0,
        compared_with: shipped.map(|shipped| name_of(shipped).to_owned()),
        changed_lines,
        is_newer: newer,
        new_edition,
    })
}

/// Lines differ, and none of the ways to tell what follows from it has a word for it.
fn unnamed(changed_lines: &[String]) -> Finding {
    Finding {
        about: About::Unsafe,
        kind: EDITION_CHANGED.into(),
        message: format!("these lines are not those of the edition: {}", changed_lines.join("; ")),
        key: None,
        from_day: 0,
        until_day: 0,
        rule: None,
        records: 0,
        who: "every record they are about".into(),
        record: String::new(),
        compared_with: None,
    }
}

/// By harm; what is wrong by itself before what only differs from the edition; what is about most records first.
fn sort(findings: &mut [Finding]) {
    findings.sort_by_key(|finding| {
        (finding.about, finding.is_of_edition(), std::cmp::Reverse(finding.records), finding.from_day)
    });
}

impl Proof<'_> {
    /// Issues the whole prescription of each distinct plan, and adds what is wrong with them.
    pub fn issue(&mut self, library: &Library, catalogue: &Catalogue, watch: &Watch) {
        let issued = issue(&self.space, &self.walked, library, catalogue, watch);
        self.prescriptions = issued.prescriptions;
        self.walked.partial |= watch.stop.load(Ordering::Relaxed);
        self.findings.extend(issued.findings);
        sort(&mut self.findings);
    }

    /// The findings about one harm.
    pub fn about(&self, about: About) -> impl Iterator<Item = &Finding> {
        self.findings.iter().filter(move |finding| finding.about == about)
    }

    /// Whether every record was gone through and nothing was found.
    pub fn holds(&self) -> bool {
        self.findings.is_empty()
            && self.walked.unsound.is_empty()
            && self.walked.looser.is_empty()
            && !self.walked.partial
            && self.walked.off_grid.is_empty()
            && self.walked.not_shared == 0
    }
}

/// How many threads a proof runs on.
pub fn threads() -> usize {
    rayon::current_num_threads()
}
