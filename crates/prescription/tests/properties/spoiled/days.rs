//! Runs of days, the sling, and what stays still.

use body::{Joint, Key, Mode};
use jiff::ToSpan;
use plan::{SlingPosition, Wear};
use quantity::PostoperativeDay;

use super::{BEHIND, SMALL, at, days_earlier, each};
use crate::plans::Texts;

#[test]
fn days_sling_and_stillness() {
    each(
        Texts { record: SMALL, ..Texts::default() },
        &[
            (
                "a run of days left out",
                |p| {
                    let place = at(p, 120);
                    p.spans.remove(place);
                },
                &["days-left-out"],
                "says nothing about these days",
            ),
            (
                "days told twice",
                |p| {
                    let place = at(p, 100);
                    let span = &mut p.spans[place];
                    span.until_day = PostoperativeDay::new(span.until_day.count() + 1);
                    span.until = span.until.saturating_add(1.day());
                },
                &["days-left-out"],
                "says two things about these days",
            ),
            (
                "a plan that ends a day early",
                |p| {
                    let last = p.spans.last_mut().expect("a run of days");
                    last.until_day = days_earlier(last.until_day, 1);
                    last.until = last.until.saturating_sub(1.day());
                },
                &["days-left-out"],
                "ends here and not with day 364",
            ),
            (
                "a date that is another day",
                |p| p.spans[3].from = p.spans[3].from.saturating_sub(1.day()),
                &["date-not-counted"],
                "after surgery",
            ),
            (
                "a stage whose days have not come",
                |p| {
                    let place = at(p, 35);
                    p.spans[place].stage = "active".into();
                },
                &["stage-too-early"],
                "counted to the stage `active`, which has not opened",
            ),
            (
                "weaning too early",
                |p| {
                    let place = at(p, 41);
                    p.spans[place].sling.wear = Wear::Weaning;
                },
                &["sling-worn-less"],
                "the sling is worn \"weaning\" where it is to be worn \"always\"",
            ),
            (
                "no sling for exercises to take off",
                |p| {
                    let place = at(p, 20);
                    p.spans[place].sling.except.retain(|what| what != "exercises");
                },
                &["exercise-with-the-sling-on"],
                "comes off for no exercise",
            ),
            (
                "the sling a fortnight longer",
                |p| {
                    let longer = p.spans.iter_mut().filter(|span| (56..70).contains(&span.from_day.count()));
                    longer.for_each(|span| span.sling.wear = Wear::Weaning);
                },
                &["too-long-in-the-sling"],
                "more than the cap of 56",
            ),
            (
                "the elbow not moved",
                |p| {
                    let elbow = |key: Key| key.joint == Joint::Elbow && key.mode != Mode::Passive;
                    for span in p.spans.iter_mut().filter(|span| span.from_day.count() < 35) {
                        span.limits.retain(|row| !elbow(row.key));
                        span.exercises.retain(|line| !elbow(line.key));
                    }
                    let opens = p.spans.iter().find(|span| span.from_day.count() >= 35).expect("a run").clone();
                    for first in p.first_allowed.iter_mut().filter(|first| elbow(first.key)) {
                        first.day = first.day.max(opens.from_day);
                        first.date = first.day.date(p.operated_on);
                    }
                },
                &["too-long-without-elbow-motion"],
                "no active motion of the elbow",
            ),
            (
                "a movement later than promised",
                |p| {
                    let reaches = |key: Key| key.movement == BEHIND.movement && key.mode != Mode::Isometric;
                    for span in p.spans.iter_mut().filter(|span| span.from_day.count() < 84) {
                        span.limits.retain(|row| !reaches(row.key));
                        span.exercises
                            .retain(|line| line.id != "hand-behind-back-slide" && line.id != "towel-behind-back");
                    }
                    for first in p.first_allowed.iter_mut().filter(|first| reaches(first.key)) {
                        first.day = first.day.max(PostoperativeDay::new(84));
                        first.date = first.day.date(p.operated_on);
                    }
                },
                &["passive-too-late"],
                "passive hand behind back has to be open from day 42 at the latest",
            ),
        ],
    );
}

/// Outward rotation stays 10 degrees below neutral until day 42: the forearm belongs on the belly.
#[test]
fn the_sling_under_a_safe_arc() {
    let arc = |movement: &str, up_to: i32| {
        format!(
            "{SMALL}\n[[operation.safe_arc]]\nmovement = \"{movement}\"\nup_to = \"{up_to} deg\"\nuntil = \"day 42\"\n"
        )
    };
    let outward = arc("external rotation", -10);
    each(
        Texts { record: &outward, ..Texts::default() },
        &[(
            "the forearm straight ahead",
            |p| p.spans[0].sling.position = SlingPosition::Neutral,
            &["sling-turned-out", "sling-outside-its-rest"],
            "the sling holds the forearm straight ahead where turning outward stays below that",
        )],
    );
    let inward = arc("internal rotation", 50);
    each(
        Texts { record: &inward, ..Texts::default() },
        &[(
            "the forearm on the belly",
            |p| p.spans[0].sling.position = SlingPosition::InternalRotation,
            &["sling-outside-its-rest"],
            "the sling's own position (\"internal rotation\") lies outside",
        )],
    );
}
