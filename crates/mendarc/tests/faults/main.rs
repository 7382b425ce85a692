//! Seeded faults: every number and every condition of the shipped protocols, changed one at a time.
//!
//! Each change has to be caught by the checker of the files, by a story of `cases/`, or by the proof
//! over every record, asked in this order and the slowest last. What nothing catches stands in
//! `survivors.toml`, with the reason why it may. The guard that asks for evidence behind each number
//! would catch most of them; it is left aside here, because it knows where a number comes from and
//! not what it does.
//!
//! `FAULTS_TABLE=FILE cargo test -p mendarc --test faults` writes what caught each change.

#[path = "../cases/dated.rs"]
mod dated;
#[path = "../cases/days.rs"]
mod days;
#[path = "../cases/expect.rs"]
mod expect;
#[path = "../cases/found.rs"]
mod found;
#[path = "../cases/judged.rs"]
mod judged;
#[path = "../cases/lines.rs"]
mod lines;
#[path = "../cases/one_day.rs"]
mod one_day;
#[path = "../cases/story.rs"]
mod story;
#[allow(dead_code, reason = "sheets are looked at with the stories, and not for every fault")]
#[path = "../cases/world.rs"]
mod world;

mod change;
mod condition;
mod judge;
mod mutant;
mod proved;
mod survivors;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};

use judge::{Judge, Verdict};
use mutant::Mutant;

/// Fewer changes than this, and the protocols were not looked at whole.
const LEAST: usize = 500;

/// One change in so many may survive.
const ONE_IN: usize = 50;

/// The files as they are shipped are caught by nothing: what catches a change catches the change.
#[test]
fn the_shipped_files_are_caught_by_nothing() {
    let judge = Judge::new();
    let mut shelf = judge.shelf();
    assert_eq!(judge.whole(&mut shelf, protocol::SHIPPED), Verdict::Survived);
}

/// Names are what `survivors.toml` goes by.
#[test]
fn every_change_has_a_name_of_its_own() {
    let mut names = BTreeSet::new();
    for mutant in mutant::all() {
        assert_ne!(mutant.text, protocol::SHIPPED[mutant.file].1, "{} changes nothing", mutant.name);
        assert!(names.insert(mutant.name.clone()), "{} stands twice", mutant.name);
    }
}

#[test]
fn every_seeded_fault_is_caught() {
    let mutants = mutant::all();
    let verdicts = judged(&mutants);
    let (mut told, mut faults) = (BTreeMap::<&str, usize>::new(), Vec::new());
    let listed = survivors::listed();
    let mut survived = 0;
    for (mutant, (verdict, _)) in mutants.iter().zip(&verdicts) {
        *told.entry(verdict.means()).or_default() += 1;
        match (verdict, listed.contains_key(&mutant.name)) {
            (Verdict::Survived, known) => {
                survived += 1;
                if !known {
                    faults.push(format!("line {}: nothing catches {}", mutant.line, mutant.name));
                }
            }
            (_, true) => faults.push(format!("{} is listed and caught: {verdict:?}", mutant.name)),
            (_, false) => {}
        }
    }
    let names: BTreeSet<&String> = mutants.iter().map(|mutant| &mutant.name).collect();
    faults.extend(listed.keys().filter(|name| !names.contains(name)).map(|name| format!("no change is named {name}")));
    let unsourced = verdicts.iter().filter(|(_, unsourced)| *unsourced).count();
    println!("{} changes: {told:?}; without evidence for the number: {unsourced}", mutants.len());
    if let Some(file) = std::env::var_os("FAULTS_TABLE") {
        std::fs::write(file, table(&mutants, &verdicts)).expect("the table can be written");
    }
    assert!(faults.is_empty(), "{} faults:\n{}", faults.len(), faults.join("\n"));
    assert!(mutants.len() >= LEAST, "only {} changes", mutants.len());
    assert!(survived * ONE_IN <= mutants.len(), "{survived} of {} survive", mutants.len());
}

/// The verdict of each mutant, and whether the guard of evidence would have caught it.
fn judged(mutants: &[Mutant]) -> Vec<(Verdict, bool)> {
    let judge = Judge::new();
    let next = AtomicUsize::new(0);
    let found = Mutex::new(vec![(Verdict::Survived, false); mutants.len()]);
    std::thread::scope(|scope| {
        for _ in 0..std::thread::available_parallelism().map_or(1, usize::from) {
            scope.spawn(|| {
                let mut shelf = judge.shelf();
                while let Some((place, mutant)) =
                    Some(next.fetch_add(1, Ordering::Relaxed)).and_then(|place| Some((place, mutants.get(place)?)))
                {
                    let verdict = judge.judge(&mut shelf, mutant);
                    found.lock().expect("no thread panicked")[place] = verdict;
                }
            });
        }
    });
    found.into_inner().expect("no thread panicked")
}

/// A line for each mutant: what caught it, where it stands, its name.
fn table(mutants: &[Mutant], verdicts: &[(Verdict, bool)]) -> String {
    let rows = mutants.iter().zip(verdicts);
    rows.map(|(mutant, (verdict, _))| format!("{verdict:?}\t{}\t{}\n", mutant.line, mutant.name)).collect()
}
