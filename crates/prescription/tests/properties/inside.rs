//! Whatever is issued lies inside the limits of its day; judged here, apart from the code that issued it.

use body::{Joint, Mode};
use exercise::{Amount, Demand, Entry, Posture, Supervision};
use plan::{Allowed, Bound, Cell, ExerciseLine, LimitRow, Prescription};
use proptest::prelude::*;

use crate::plans::{SHIPPED, Texts, governing, prescribe};
use crate::records::{choice, record};

/// Tenths of a degree.
const MARGIN: i32 = 50;
const LEAST_ARC: i32 = 150;

/// What is wrong with an exercise under rows.
pub fn fault(line: &ExerciseLine, rows: &[LimitRow]) -> Option<String> {
    let entry = SHIPPED.1.get(&line.id)?;
    let wrong = entry.demands.iter().enumerate().find_map(|(place, demand)| {
        let margin = if place == 0 && entry.supervision == Supervision::Home { MARGIN } else { 0 };
        let limit = governing(rows, demand.key).allowed(demand.key);
        let holds = fits(demand, limit, margin, (place == 0).then_some(line));
        (!holds).then(|| format!("{} asks for {} {:?} under {limit:?}", line.id, demand.key, demand.amount))
    });
    wrong.or_else(|| not_lying(entry, rows))
}

fn fits(demand: &Demand, limit: Allowed, margin: i32, of: Option<&ExerciseLine>) -> bool {
    let target = of.and_then(|line| line.target);
    match (demand.amount, limit) {
        (_, Allowed::No) => false,
        (Amount::AngleToLimit { from, most }, Allowed::UpTo(Bound::Angle(limit))) => match of {
            Some(_) => target.is_some_and(|target| {
                target.steps() <= limit.steps() - margin && target <= most && target.steps() - from.steps() >= LEAST_ARC
            }),
            None => limit.steps() - from.steps() >= LEAST_ARC,
        },
        // Free: nothing to aim for but comfort.
        (_, Allowed::Free) => target.is_none(),
        (Amount::Movement, _) => true,
        (Amount::Angle { to, .. }, Allowed::UpTo(Bound::Angle(limit))) => to.steps() <= limit.steps() - margin,
        (Amount::Load(load), Allowed::UpTo(Bound::Load(limit))) => load <= limit,
        (Amount::LoadToLimit { .. }, Allowed::UpTo(Bound::Load(_))) => true,
        (Amount::Effort(effort), Allowed::UpTo(Bound::Effort(limit))) => effort <= limit,
        _ => false,
    }
}

/// A mode that is allowed only lying on the back, in another posture.
fn not_lying(entry: &Entry, rows: &[LimitRow]) -> Option<String> {
    let demand = entry.demands.iter().find(|demand| {
        rows.iter().any(|row| row.only_lying && row.key.joint == demand.key.joint && row.key.mode == demand.key.mode)
    })?;
    (entry.posture != Posture::LyingOnTheBack).then(|| format!("{} is not done lying: {}", entry.id, demand.key))
}

/// What is wrong with the loads of an exercise.
fn overloaded(line: &ExerciseLine, rows: &[LimitRow]) -> bool {
    let load = line.load.map(|load| Cell::up_to(Bound::Load(load)));
    let entry = SHIPPED.1.get(&line.id);
    let loads = entry.into_iter().flat_map(|entry| &entry.demands).filter(|demand| demand.key.is_load());
    loads.into_iter().any(|demand| load.is_some_and(|load| load > governing(rows, demand.key)))
}

/// Before any active motion of the shoulder nothing measured above the low class, in any repaired muscle.
fn too_loud(p: &Prescription, behind: bool) -> Option<String> {
    let opens =
        p.first_allowed.iter().filter(|first| first.key.joint == Joint::Shoulder && first.key.mode == Mode::Active);
    let first = opens.map(|first| first.day.count()).min().unwrap_or(u16::MAX);
    let top = evidence::ids::EMG_CLASS_LOW_TOP.percent().number();
    p.spans.iter().filter(|span| span.from_day.count() < first).find_map(|span| {
        span.exercises.iter().find_map(|line| {
            let muscle = SHIPPED.1.get(&line.id)?.muscle;
            let measured = [muscle.supraspinatus, muscle.infraspinatus.filter(|_| behind)].into_iter().flatten();
            let loud = measured.filter_map(|measured| measured.evidence.value).find(|percent| *percent > top)?;
            Some(format!("{} at {loud} % on {}", line.id, span.from_day))
        })
    })
}

proptest! {
    #![proptest_config(crate::config())]

    #[test]
    fn every_exercise_lies_inside_the_limits_of_its_days(written in record(), settings in choice()) {
        let text = written.text();
        let p = prescribe(Texts { record: &text, settings, ..Texts::default() });
        let mut looked_at = 0;
        for span in &p.spans {
            let mut seen = std::collections::BTreeSet::new();
            for line in &span.exercises {
                prop_assert!(SHIPPED.1.get(&line.id).is_some(), "{}", line.id);
                prop_assert!(seen.insert(&line.id), "{} twice from {}", line.id, span.from_day);
                prop_assert_eq!(fault(line, &span.limits), None, "from {}\n{}{}", span.from_day, text, settings);
                prop_assert!(!overloaded(line, &span.limits), "{} from {}\n{}", line.id, span.from_day, text);
                prop_assert!(!line.reasons.is_empty(), "{}", line.id);
                looked_at += 1;
            }
        }
        prop_assert!(looked_at > 40, "only {} lines", looked_at);
        let behind = written.tendons.iter().any(|tendon| tendon.name == "infraspinatus");
        prop_assert_eq!(too_loud(&p, behind), None, "{}{}", text, settings);
    }

    #[test]
    fn every_goal_lies_under_the_limits_of_the_day_it_is_due_and_the_day_before(written in record(), settings in choice()) {
        let text = written.text();
        let p = prescribe(Texts { record: &text, settings, ..Texts::default() });
        for goal in p.spans.iter().flat_map(|span| span.goals.iter().map(move |goal| (span, goal))) {
            let (span, goal) = goal;
            prop_assert!(span.until_day <= goal.due, "{} is shown after it is due", goal.id);
            let due = goal.due.count().min(364);
            for day in [due, due.saturating_sub(1)] {
                let limit = governing(&crate::plans::span(&p, day).limits, goal.key);
                prop_assert!(limit.is_open(), "{} on day {}\n{}", goal.id, day, text);
                let ends = [Some(goal.from), goal.to].into_iter().flatten();
                for end in ends {
                    prop_assert!(Cell::up_to(Bound::Angle(end)) <= limit, "{} on day {}\n{}", goal.id, day, text);
                }
                prop_assert!(goal.to.is_some() || limit == Cell::FREE, "{} has no end on day {}", goal.id, day);
            }
        }
    }
}

/// The judge itself: a target half a degree too far, and an exercise under the limits of another day.
#[test]
fn a_fault_is_seen() {
    let record = include_str!("../../../../examples/small-cuff.toml");
    let p = prescribe(Texts { record, ..Texts::default() });
    let passive = crate::plans::span(&p, 20);
    let line = |id: &str| passive.exercises.iter().find(|line| line.id == id).cloned().expect("it is prescribed");
    let mut stick = line("stick-external-rotation");
    assert_eq!(fault(&stick, &passive.limits), None);
    stick.target = stick.target.map(|target| quantity::Degrees::from_steps(target.steps() + 5));
    assert!(fault(&stick, &passive.limits).is_some());
    let early = crate::plans::span(&p, 10);
    assert!(fault(&line("pendulum"), &early.limits).is_some());
    assert_eq!(fault(&line("pendulum"), &passive.limits), None);
    assert!(
        crate::plans::looser_day(
            &p,
            &prescribe(Texts { record: &record.replace("\"good\"", "\"poor\""), ..Texts::default() })
        )
        .is_some()
    );
}
