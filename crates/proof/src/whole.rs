//! Whole prescriptions, issued from a record for each distinct plan: limits, exercises, goals, visits, activities.
//!
//! The walk holds every plan against every rule. What hangs on a plan, its
//! exercises above all, is composed where prescriptions are issued, and is
//! checked there by the checker before anything is printed. Here each distinct
//! plan is issued once from its own record, as a surgeon would get it.

use std::fmt::Write as _;
use std::sync::atomic::Ordering;

use diagnostic::{FileId, Severity, Sink};
use exercise::Catalogue;
use operative::dim;
use plan::{GoalLine, Prescription};
use prescription::{Case, prescribe};
use protocol::Library;
use rayon::prelude::*;

use crate::finding::{About, Finding, who};
use crate::space::{Space, What};
use crate::walk::{Walked, Watch};
use crate::witness::{Edge, witness};

/// What came of issuing whole prescriptions.
#[derive(Debug, Default)]
pub struct Whole {
    /// How many were issued and checked.
    pub prescriptions: u64,
    /// What is wrong with them.
    pub findings: Vec<Finding>,
}

/// Issues the prescription of every distinct plan without safe arcs, with a sound and with an unknown other arm.
///
/// # Method
/// Through the same `prescribe` as the command, with the settings that the point
/// asks for, a reason and every confirmation. Whatever it refuses is a finding;
/// so is a goal that neither an exercise of its days nor a remark answers.
pub fn issue(space: &Space<'_>, walked: &Walked, library: &Library, catalogue: &Catalogue, watch: &Watch) -> Whole {
    let arcs: Vec<usize> =
        (0..space.axes.len()).filter(|axis| matches!(space.axes[*axis].what, What::SafeArc(_))).collect();
    let without_arcs = walked.representatives.iter().filter(|(point, _)| arcs.iter().all(|axis| point[*axis] == 0));
    let points: Vec<(&[u8], u64)> = without_arcs.map(|(point, records)| (point.as_slice(), *records)).collect();
    let unknown = dim::OTHER_SHOULDER.get().and_then(|dimension| dimension.unknown_class()).unwrap_or(0);
    let one = |(point, records): (&[u8], u64)| {
        let mut issued = Whole::default();
        if watch.stop.load(Ordering::Relaxed) {
            return issued;
        }
        for other in [0, unknown] {
            let text = witness(&space.facts(point).with(dim::OTHER_SHOULDER, other), Edge::Middle);
            let settings = settings(space, point);
            issued.prescriptions += 1;
            watch.done.fetch_add(1, Ordering::Relaxed);
            let told = match made(&text, &settings, library, catalogue) {
                Ok(prescription) => without_exercise(&prescription, catalogue),
                Err(message) => vec![(About::Unsafe, message)],
            };
            issued.findings.extend(told.into_iter().map(|(about, message)| Finding {
                about,
                kind: if about == About::Unsafe { "not-issued" } else { "goal-without-exercise" }.into(),
                message,
                key: None,
                from_day: 0,
                until_day: 0,
                rule: None,
                records,
                who: who(space, point),
                record: format!("{settings}{text}"),
                compared_with: None,
            }));
        }
        issued
    };
    points.into_par_iter().map(one).reduce(Whole::default, |mut all, one| {
        all.prescriptions += one.prescriptions;
        for finding in one.findings {
            match all.findings.iter_mut().find(|known| known.message == finding.message) {
                Some(known) => known.records += finding.records,
                None => all.findings.push(finding),
            }
        }
        all
    })
}

/// The settings that a point asks for, each choice with a reason and written twice.
fn settings(space: &Space<'_>, point: &[u8]) -> String {
    let mut text = String::new();
    for (axis, class) in space.axes.iter().zip(point).filter(|(_, class)| **class > 0) {
        let name = &axis.classes[usize::from(*class)].name;
        match axis.what {
            What::Protocol => {
                let _ = write!(
                    text,
                    "[choice]\nprotocol = \"{name}\"\nreason = \"gone through by the proof\"\nconfirm = \"{name}\"\n"
                );
                let large = space.family.file.on_request.iter().find(|request| request.protocol == *name);
                if let Some((_, says)) = large.and_then(|request| request.confirm_large.as_ref()) {
                    let _ = writeln!(text, "confirm_large = \"{says}\"");
                }
            }
            What::Options => {
                let Some((choice, option)) = name.split_once(": ") else { continue };
                let _ = write!(
                    text,
                    "[[prefer]]\nchoice = \"{choice}\"\noption = \"{option}\"\nreason = \"gone through by the proof\"\nconfirm = \"{option}\"\n"
                );
            }
            What::Fact(_) | What::SafeArc(_) => {}
        }
    }
    text
}

/// The prescription, or the first error.
fn made(text: &str, settings: &str, library: &Library, catalogue: &Catalogue) -> Result<Prescription, String> {
    let mut sink = Sink::new();
    let record = operative::read(FileId(0), text, &mut sink);
    let settings = prescription::read_settings(FileId(1), settings, &mut sink);
    let issued = record.zip(settings).and_then(|(record, settings)| {
        let case = Case::new(library, catalogue, &record, &settings);
        prescribe(&case, &mut sink)
    });
    issued.ok_or_else(|| {
        let fault = sink.found().iter().find(|found| found.severity == Severity::Error);
        fault.map_or_else(|| "nothing was issued".into(), |fault| format!("{}: {}", fault.code, fault.message))
    })
}

/// Goals that no exercise of their days works toward, where nothing says so.
fn without_exercise(prescription: &Prescription, catalogue: &Catalogue) -> Vec<(About, String)> {
    let mut told: Vec<&str> = Vec::new();
    let mut found = Vec::new();
    for goal in prescription.spans.iter().flat_map(|span| &span.goals) {
        if told.contains(&goal.id.as_str()) {
            continue;
        }
        told.push(&goal.id);
        let shown = || prescription.spans.iter().filter(|span| span.goals.iter().any(|shown| shown.id == goal.id));
        let worked = shown().flat_map(|span| &span.exercises).any(|line| {
            let entry = catalogue.get(&line.id);
            entry.is_some_and(|entry| entry.demands.iter().any(|demand| works_toward(goal, demand.key)))
        });
        // Left out on one of these days, with its reason, is said beside the plan.
        let said = shown().flat_map(|span| &span.dropped).any(|dropped| {
            let entry = catalogue.get(&dropped.id);
            entry.is_some_and(|entry| entry.demands.iter().any(|demand| works_toward(goal, demand.key)))
        });
        if !worked && !said {
            found.push((About::Stiffening, format!("the goal {} has no exercise that works toward it", goal.id)));
        }
    }
    found
}

fn works_toward(goal: &GoalLine, key: body::Key) -> bool {
    use body::Movement as M;
    let group = |movement| match movement {
        M::ScapularPlaneElevation | M::Abduction => M::ForwardElevation,
        M::AbductionWithExternalRotation => M::ExternalRotation,
        other => other,
    };
    key.joint == goal.key.joint && group(key.movement) == group(goal.key.movement)
}
