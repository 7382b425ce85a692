//! Gates, visits, goals and returns.

use jiff::ToSpan;
use quantity::{Degrees, PostoperativeDay};

use super::{OUTWARD, SMALL, at, days_earlier, each};
use crate::plans::Texts;

#[test]
fn gates_visits_goals_and_returns() {
    each(
        Texts { record: SMALL, ..Texts::default() },
        &[
            (
                "a gate a day early",
                |p| {
                    p.stages[2].from_day = days_earlier(p.stages[2].from_day, 1);
                    p.stages[2].from = p.stages[2].from.saturating_sub(1.day());
                },
                &["gate-too-early"],
                "the stage `assisted` opens 1 days before day 28",
            ),
            ("gates in another order", |p| p.stages.swap(2, 3), &["gates-out-of-order"], "before it on day 42"),
            (
                "a stage left out",
                |p| {
                    p.stages.remove(3);
                },
                &["stage-left-out"],
                "the stage `active` is left out",
            ),
            (
                "a criterion left out",
                |p| {
                    p.stages[3].criteria.pop();
                },
                &["criterion-left-out"],
                "not every criterion of the stage `active`",
            ),
            (
                "a visit before it is due",
                |p| {
                    p.visits[0].day = days_earlier(p.visits[0].due_day, 1);
                    p.visits[0].date = p.visits[0].day.date(p.operated_on);
                },
                &["visit-too-early"],
                "1 days before it is due",
            ),
            (
                "a gate's visit due before the gate",
                |p| {
                    let visit = p.visits.iter_mut().find(|visit| visit.purpose == "gate: active").expect("a visit");
                    visit.due_day = days_earlier(visit.due_day, 2);
                },
                &["visit-too-early"],
                "is due 2 days before day 42",
            ),
            (
                "a goal half a degree too far",
                |p| {
                    let place = at(p, 20);
                    let goal = &mut p.spans[place].goals.iter_mut().find(|goal| goal.key == OUTWARD).expect("a goal");
                    goal.to = goal.to.map(|to| Degrees::from_steps(to.steps() + 5));
                },
                &["goal-above-its-limit", "goal-not-as-written"],
                "0.5 degrees too far",
            ),
            (
                "a goal shown after it was due",
                |p| {
                    let (from, to) = (at(p, 20), at(p, 60));
                    let goal = p.spans[from].goals[0].clone();
                    p.spans[to].goals.push(goal);
                },
                &["goal-after-it-was-due"],
                "when it was due",
            ),
            (
                "a goal due before its gate",
                |p| {
                    let place = at(p, 20);
                    let goal = p.spans[place].goals.iter_mut().find(|goal| goal.due.count() == 28).expect("a goal");
                    goal.due = PostoperativeDay::new(28 - 1);
                },
                &["goal-not-as-written", "goal-after-it-was-due"],
                "it is due 1 days before day 28",
            ),
            (
                "driving a day early",
                |p| {
                    let line = p.returns.iter_mut().find(|line| line.activity.contains("driv")).expect("driving");
                    line.day = line.day.map(|day| days_earlier(day, 1));
                    line.date = line.date.map(|date| date.saturating_sub(1.day()));
                },
                &["return-too-early"],
                "1 days too early",
            ),
            (
                "a sport that the surgeon opens",
                |p| {
                    let line = p.returns.iter_mut().find(|line| line.opened_by_surgeon).expect("a sport");
                    line.opened_by_surgeon = false;
                },
                &["return-too-early"],
                "the surgeon opens it",
            ),
            (
                "a return the catalogue does not know",
                |p| p.returns[0].activity = "flying".into(),
                &["return-too-early"],
                "no such activity",
            ),
        ],
    );
}
