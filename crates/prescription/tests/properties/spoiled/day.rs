//! The day asked about.

use jiff::ToSpan;
use plan::{TodayBasis, Wear};

use super::{OUTWARD, SMALL, at, each, line, row};
use crate::plans::{Texts, prescribe};

/// On day 30 of `staged` with nothing opened the gate of day 14 holds the plan: what day 13 allowed, and no more.
#[test]
fn the_day_asked_about() {
    let on = Some(prescribe(Texts { record: SMALL, ..Texts::default() }).operated_on.saturating_add(30.days()));
    each(
        Texts { record: SMALL, on, ..Texts::default() },
        &[
            (
                "a limit of the dated plan",
                |p| {
                    let dated = row(p, 30, OUTWARD).clone();
                    let rows = &mut p.today.as_mut().expect("a day").limits;
                    *rows.iter_mut().find(|row| row.key == OUTWARD).expect("a row") = dated;
                },
                &["day-above-the-plan"],
                "allowed up to 20 degrees on the day asked about, and not allowed in the plan from day",
            ),
            (
                "the dated plan in spite of the gate",
                |p| p.today.as_mut().expect("a day").basis = TodayBasis::Opened,
                &["stage-not-opened"],
                "the gate of `passive` was due on day 14 and is not opened",
            ),
            (
                "a stage that nobody opened",
                |p| p.today.as_mut().expect("a day").stage = "passive".into(),
                &["stage-not-opened"],
                "`protection` is the last that is opened",
            ),
            (
                "an exercise of the dated plan",
                |p| {
                    let line = line(p, 30, "pendulum").clone();
                    p.today.as_mut().expect("a day").exercises.push(line);
                },
                &["day-above-the-plan", "exercise-beyond-its-limit"],
                "exercise pendulum: the plan does not hold it on the day it stands still on",
            ),
            (
                "no sling",
                |p| p.today.as_mut().expect("a day").sling.wear = Wear::None,
                &["sling-worn-less"],
                "on the day asked about",
            ),
            (
                "a goal of the dated plan",
                |p| {
                    let place = at(p, 30);
                    let goal = p.spans[place].goals[0].clone();
                    p.today.as_mut().expect("a day").goals.push(goal);
                },
                &["day-above-the-plan"],
                "goal ",
            ),
        ],
    );
}
