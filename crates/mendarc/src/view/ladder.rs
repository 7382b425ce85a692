//! Exercises in the order of their weight, as a page.

use std::fmt::Write as _;

use body::{HangingArm, Moments, SegmentTable, Spread};
use exercise::Whose;
use plan::Prescription;
use prescription::ladder::{Agreement, Muscle, Rung, Step, agreement};
use quantity::Kilograms;

use crate::shelf::Shelf;
use crate::view::ladder_rows::{Ladder, range};
use crate::view::paint::{FAINT, HEADING, paint, wrapped};
use crate::view::{dates, ladder_steps};

/// What a ladder tells.
#[derive(Debug)]
pub struct Told<'t> {
    /// Whose arm.
    pub whose: Whose<'t>,
    /// The prescription, where a record was given.
    pub prescription: Option<&'t Prescription>,
    /// The muscles whose activity stands beside the load.
    pub muscles: &'t [Muscle],
    /// Why these.
    pub shown: Shown,
    /// The exercises.
    pub rungs: &'t [Rung<'t>],
    /// Where the heaviest becomes much heavier.
    pub steps: &'t [Step],
}

/// Why a muscle's activity is shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shown {
    /// Its tendon was repaired.
    Repaired,
    /// What was repaired is not among the measured muscles.
    InsteadOfTheRepaired,
    /// No record was given.
    ForAnybody,
}

const WIDTH: usize = 104;

/// The page.
pub fn page(told: &Told<'_>, shelf: &Shelf) -> String {
    let mut page = head(told);
    let ladder = Ladder::of(told, shelf);
    match told.prescription {
        None => ladder.print(&mut page, |_| true),
        Some(prescription) => stages(&mut page, told, prescription, &ladder, shelf),
    }
    ladder_steps::print(&mut page, told, shelf);
    order(&mut page, told, shelf);
    let caution = shelf.messages.text(wording::cautions::LINE, &[]);
    let _ = writeln!(page, "\n{}", paint(FAINT, &wrapped(&caution, WIDTH, "")));
    page
}

/// Stage by stage; what goes on as it was is only named.
fn stages(page: &mut String, told: &Told<'_>, prescription: &Prescription, ladder: &Ladder<'_>, shelf: &Shelf) {
    let mut known: Vec<&Rung<'_>> = Vec::new();
    for stage in &prescription.stages {
        let title = format!("{}, planned from {}", stage.title, dates::with_weekday(stage.from));
        let _ = writeln!(page, "\n{}", paint(HEADING, &title));
        let rungs = || told.rungs.iter().filter(|rung| rung.stage == Some(stage.id.as_str()));
        let (as_before, fresh): (Vec<_>, Vec<_>) = rungs().partition(|rung| {
            known
                .iter()
                .any(|before| before.entry.id == rung.entry.id && before.load == rung.load && before.held == rung.held)
        });
        ladder.print(page, |rung| fresh.iter().any(|fresh| std::ptr::eq(*fresh, rung)));
        if !as_before.is_empty() {
            let names: Vec<String> = as_before.iter().map(|rung| shelf.title(&rung.entry.id)).collect();
            let text = format!("as before: {}", names.join("; "));
            let _ = writeln!(page, "  {}", paint(FAINT, &wrapped(&text, WIDTH - 2, "    ")));
        }
        known.retain(|before| !fresh.iter().any(|rung| rung.entry.id == before.entry.id));
        known.extend(fresh);
    }
    if !prescription.go_backs.is_empty() {
        let days: Vec<String> = prescription
            .go_backs
            .iter()
            .map(|back| format!("on {} (day {})", dates::short(back.date), back.day.count()))
            .collect();
        let text = format!("The plan goes back {}; each load is dated as it is first reached.", days.join(" and "));
        let _ = writeln!(page, "\n  {}", wrapped(&text, WIDTH - 2, "  "));
    }
}

fn head(told: &Told<'_>) -> String {
    let mut page = format!("{}\n", paint(HEADING, "What each exercise asks the shoulder to hold against gravity"));
    let mut say = |text: &str| {
        let _ = writeln!(page, "{}", wrapped(text, WIDTH, ""));
    };
    match told.whose {
        Whose::Known { person, tables } => {
            let level = |person: body::Person| Moments::straight_level_arm(person).shoulder.newton_meters();
            let own = Spread::of(tables.iter().map(|table| level(person.by(*table))))
                .map_or_else(String::new, |level| range(level, 1));
            say(&format!(
                "{} cm, {} kg. The straight arm held level: {own} N·m, by the table of {}; by the table of cadavers, as a \
                 check, {:.1}. It grows in step with both: 1 % more of stature or of body mass is 1 % more. That arm counts \
                 as 1.",
                person.stature().number() / 10.0,
                person.mass(),
                names(tables),
                level(person.by(SegmentTable::Cadavers))
            ));
            let arms = || tables.iter().map(|table| HangingArm::of(person.by(*table), Kilograms::whole(0)));
            let told = |of: &dyn Fn(HangingArm) -> f64, places: usize| {
                Spread::of(arms().map(of)).map_or_else(String::new, |spread| range(spread, places))
            };
            say(&format!(
                "Hanging loose it swings to and fro in {} s, as a weight {} cm below the shoulder would.",
                told(&HangingArm::natural_period_s, 2),
                told(&|arm| arm.center_of_oscillation_m() * 100.0, 0)
            ));
        }
        Whose::OfMass { mass, tables } => {
            say(&format!(
                "{mass} kg; the stature is not known, so there are no newton meters. The own straight arm held level counts \
                 as 1, by the table of {}.",
                names(tables)
            ));
        }
        Whose::Anybody(tables) => {
            say(&format!(
                "Stature and body mass are not known: no newton meters, and no number where a weight is held. The own \
                 straight arm held level counts as 1, by the table of {}.",
                names(tables)
            ));
            say("Give them in the record (stature, mass under [patient]) or with --stature-cm and --mass-kg.");
        }
    }
    say(
        "This is an outer moment, not the tension of a tendon, and it sets no limit. Read the muscle's activity beside \
         it. A carried or hanging arm counts as 0; a helped one holds between nothing and all of its weight, and a half \
         is taken (own choice); where the upper arm rests, the forearm's weight counts, as far as it turns the arm. \
         \"Peak at\" is how far up from the body the arm is where it is heaviest. What does not work against gravity has no \
         number and no place in the order.",
    );
    if told.shown == Shown::InsteadOfTheRepaired {
        say(
            "No muscle whose tendon was repaired is among the measured ones. Supraspinatus is shown only because most \
             was measured of it; it does not stand for the repaired tendon.",
        );
    }
    page
}

fn names(tables: &[SegmentTable]) -> String {
    tables.iter().map(|table| table.name()).collect::<Vec<_>>().join(" and of ")
}

fn order(page: &mut String, told: &Told<'_>, shelf: &Shelf) {
    let _ = writeln!(page, "\n{}", paint(HEADING, "Does this order agree with muscle activity?"));
    for found in agreement(told.rungs) {
        let _ = writeln!(page, "  {}: {}", found.muscle, verdict(&found));
        for misplaced in &found.out_of_order {
            let text = format!(
                "{} ({:.2}) is {}, {} ({:.2}) only {}: {}",
                shelf.title(&misplaced.exercise),
                misplaced.ratio,
                misplaced.class.name(),
                shelf.title(&misplaced.heavier),
                misplaced.heavier_ratio,
                misplaced.heavier_class.name(),
                misplaced.why.iter().map(|why| why.name()).collect::<Vec<_>>().join("; ")
            );
            let _ = writeln!(page, "    {}", wrapped(&text, WIDTH - 4, "      "));
        }
    }
}

fn verdict(found: &Agreement) -> String {
    if found.agree + found.disagree == 0 {
        return format!("{} measured exercises, and no pair that could tell", found.measured);
    }
    format!(
        "{} measured exercises; of the pairs that differ in both, {} agree and {} do not",
        found.measured, found.agree, found.disagree
    )
}
