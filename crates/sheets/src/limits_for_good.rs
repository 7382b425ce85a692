//! From when something may be done for good: a first day that a hold or a go-back takes away again is none.

use exercise::{Entry, SlingDuring};
use plan::{Prescription, ReturnLine, SpanOfDays, Wear};
use prescription::{Answer, May};
use quantity::PostoperativeDay;

use crate::desk::Desk;
use crate::letter_strip::allows;

/// The first day from which something holds until the end of the dated plan.
pub(crate) fn for_good(of: &Prescription, holds: impl Fn(&SpanOfDays) -> bool) -> Option<&SpanOfDays> {
    of.spans.iter().rev().take_while(|span| holds(span)).last()
}

/// The first day from which the limits and the sling allow an activity for good.
pub(crate) fn of_activity<'p>(of: &'p Prescription, entry: &Entry) -> Option<&'p SpanOfDays> {
    for_good(of, |span| leaves_the_arm(span, entry) && allows(entry, &span.limits))
}

/// Whether the sling does not stand in the way.
fn leaves_the_arm(span: &SpanOfDays, entry: &Entry) -> bool {
    // It comes off for washing, dressing and rest even while it is worn at all times.
    span.sling.wear != Wear::Always || entry.sling != SlingDuring::Off || entry.resting.is_some()
}

/// The day from which a return to an activity stays: by its date, by the limits and by the sling.
///
/// # Method
/// The later of the line's own day, of the first day from which limits and sling allow it until the
/// end of the dated plan, and, after each go-back later than the line's day, of the day on which the
/// plan has come as far again. `None` where no dated day is left.
pub(crate) fn of_return(desk: &Desk<'_>, line: &ReturnLine) -> Option<PostoperativeDay> {
    let of = desk.prescription;
    let first = line.day?;
    let by_limits = of_activity(of, desk.catalogue.get(&line.activity)?)?.from_day;
    let day = first.max(by_limits).max(after_backs(desk, first));
    of.spans.last().is_some_and(|last| day < last.until_day).then_some(day)
}

/// The day on which a plan that goes back has come again to where it was on a day.
///
/// # Method
/// From the first day of the stage it goes back to, so many days were lived until the day; as many
/// follow the go-back, and days on which the whole arm is held count for none. Days held before the day
/// are counted as lived, so what comes out may be late and is never early.
fn after_backs(desk: &Desk<'_>, day: PostoperativeDay) -> PostoperativeDay {
    let (of, settings) = (desk.prescription, desk.settings);
    let is_held = |day: u16| {
        let of_the_arm = settings.holds.iter().filter(|hold| hold.joint.is_none());
        of_the_arm.map(|hold| (hold.from_day, hold.from_day.saturating_add(hold.days))).any(|(from, until)| {
            // There is no day before the day of surgery to hold.
            (from.max(1)..until).contains(&day)
        })
    };
    let again = settings.backs.iter().filter(|back| back.day > day.count()).filter_map(|back| {
        let start = of.spans.iter().find(|span| span.stage == back.stage.value)?.from_day;
        // A plan that goes back to the very day has not left it.
        let mut left = day.count().checked_sub(start.count()).filter(|left| *left > 0)?;
        let mut reached = back.day;
        while left > 0 {
            reached = reached.checked_add(1)?;
            if !is_held(reached) {
                left -= 1;
            }
        }
        Some(PostoperativeDay::new(reached))
    });
    again.max().unwrap_or(day)
}

/// Whether the day of issue itself allows an activity, as `may` answers it; what is not answered is not allowed.
pub(crate) fn is_allowed_now(desk: &Desk<'_>, activity: &str) -> bool {
    let answers = desk.answers.first().into_iter().flatten();
    let mut of_activity = answers.filter(|may: &&May| may.activity == activity);
    of_activity.next().is_some_and(|may| may.answer == Answer::Yes)
}
