//! A sound prescription with one thing spoiled: the checker names exactly that.

mod composition;
mod day;
mod days;
mod exercises;
mod gates;
mod limits;

use body::{Joint, Key, Mode, Movement};
use plan::{Allowed, Bound, Prescription};
use protocol::checker::Harm;
use quantity::{Degrees, PostoperativeDay};

use crate::judged::Told;
use crate::plans::{Texts, prescribe};

const SMALL: &str = include_str!("../../../../examples/small-cuff.toml");
const LARGE: &str = include_str!("../../../../examples/large-cuff.toml");

const OUTWARD: Key = Key::any(Joint::Shoulder, Movement::ExternalRotation, Mode::Passive);
const OUTWARD_ASSISTED: Key = Key::any(Joint::Shoulder, Movement::ExternalRotation, Mode::ActiveAssisted);
const ELEVATION: Key = Key::any(Joint::Shoulder, Movement::ForwardElevation, Mode::Passive);
const BEHIND: Key = Key::any(Joint::Shoulder, Movement::HandBehindBack, Mode::Passive);
const HAND_LOAD: Key = Key::any(Joint::WholeArm, Movement::HandLoad, Mode::Resisted);

fn degrees(degrees: i32) -> Allowed {
    Allowed::UpTo(Bound::Angle(Degrees::whole(degrees)))
}

/// The place of the run of days that a day lies in.
fn at(p: &Prescription, day: u16) -> usize {
    p.spans.iter().rposition(|span| span.from_day.count() <= day).expect("a day of the plan")
}

fn row(p: &mut Prescription, day: u16, key: Key) -> &mut plan::LimitRow {
    let place = at(p, day);
    p.spans[place].limits.iter_mut().find(|row| row.key == key).expect("a row")
}

fn line<'p>(p: &'p mut Prescription, day: u16, id: &str) -> &'p mut plan::ExerciseLine {
    let place = at(p, day);
    let lines = &mut p.spans[place].exercises;
    let ids: Vec<String> = lines.iter().map(|line| line.id.clone()).collect();
    lines.iter_mut().find(|line| line.id == id).unwrap_or_else(|| panic!("{id} is not among {ids:?}"))
}

/// An exercise of one day put among those of another.
fn moved(p: &mut Prescription, id: &str, from: u16, to: u16) {
    let line = line(p, from, id).clone();
    let place = at(p, to);
    p.spans[place].exercises.push(line);
}

fn days_earlier(day: PostoperativeDay, by: u16) -> PostoperativeDay {
    PostoperativeDay::new(day.count() - by)
}

/// What is spoiled, the kinds that must be found and no others, and words of the sentence.
type Spoiling = (&'static str, fn(&mut Prescription), &'static [&'static str], &'static str);

#[track_caller]
fn each(texts: Texts<'_>, spoilings: &[Spoiling]) {
    let told = Told::of(texts);
    let sound = prescribe(texts);
    assert_eq!(told.faults(&sound), vec![]);
    for (what, spoil, kinds, words) in spoilings {
        let mut p = sound.clone();
        spoil(&mut p);
        let faults = told.faults(&p);
        for kind in *kinds {
            assert!(faults.iter().any(|fault| fault.kind == *kind), "{what}: no {kind} in {faults:#?}");
        }
        let other = faults.iter().find(|fault| !kinds.contains(&fault.kind));
        assert!(other.is_none(), "{what}: also {other:#?}");
        let said = faults.iter().any(|fault| fault.message.contains(words));
        assert!(said, "{what}: no \"{words}\" in {faults:#?}");
        assert!(faults.iter().all(|fault| fault.message.starts_with("day") || fault.harm == Harm::Stiffness));
    }
}
