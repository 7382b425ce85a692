//! One sample at a time.

use motion::{EventKind, Exercise, Recording, Stage, State, Stream, Task};

use crate::made::{How, circles, raises, task};

fn streamed(recording: &Recording, task: Task) -> (State, Vec<(f64, EventKind)>) {
    let step_s = recording.step_s().expect("more than one sample");
    let mut stream = Stream::new(task, step_s);
    let events = recording.samples().iter().filter_map(|sample| stream.push(*sample));
    let events = events.map(|event| (event.t_s, event.kind)).collect();
    (stream.finish(), events)
}

#[test]
fn repetitions_are_counted_as_they_come() {
    for sign in [1.0, -1.0] {
        let how = How { sign, ..How::default() };
        let (state, _) = streamed(&raises(&[60.0, 62.0, 20.0, 58.0, 61.0], how), task(Exercise::Abduction));
        // Twenty is a third of the usual and no repetition.
        assert_eq!((state.count, state.stage, state.sign_turned), (4, Stage::Set, sign < 0.0));
    }
}

#[test]
fn turns_have_their_direction_live_as_well() {
    for (sign, turns) in [(1.0, 10.0), (1.0, -10.0), (-1.0, 10.0), (-1.0, -10.0)] {
        let recording = circles(9.0, 1.4, turns, How { sign, ..How::default() });
        let (state, _) = streamed(&recording, task(Exercise::Pendulum));
        let (clockwise, anticlockwise) = state.by_direction.expect("circles");
        let [with, against] = if turns > 0.0 { [anticlockwise, clockwise] } else { [clockwise, anticlockwise] };
        assert!((9..=11).contains(&with) && against == 0, "{sign} {turns}: {clockwise} {anticlockwise}");
    }
}

#[test]
fn the_limit_warns_within_half_a_second() {
    // The first raise begins at 11 s and is at its peak of 60 at 12.5 s; with twice 2.5 degrees it is near 50 before.
    let recording = raises(&[60.0; 4], How::default());
    let limited = Task { limit_deg: Some(57.0), ..task(Exercise::Abduction) };
    let (state, events) = streamed(&recording, limited);
    let warned: Vec<f64> = events.iter().filter(|(_, kind)| *kind == EventKind::Limit).map(|(t, _)| *t).collect();
    assert_eq!((state.count, warned.len()), (4, 4));
    for (at, t) in warned.iter().enumerate() {
        let begins = 11.0 + 5.0 * at as f64;
        assert!((begins + 0.7..begins + 1.5).contains(t), "{t} {begins}");
    }
    let free = Task { limit_deg: Some(68.0), ..limited };
    assert!(streamed(&recording, free).1.iter().all(|(_, kind)| *kind != EventKind::Limit));
}

#[test]
fn a_gap_is_told_and_makes_a_pendulum_uncertain() {
    let whole = circles(9.0, 1.4, 10.0, How::default());
    let kept = whole.samples().iter().filter(|sample| !(15.0..15.6).contains(&sample.t_s)).map(|sample| Some(*sample));
    let (state, events) = streamed(&Recording::of(kept), task(Exercise::Pendulum));
    assert!(state.uncertain && state.gaps == 1);
    assert!(events.iter().any(|(_, kind)| *kind == EventKind::Gap));
}

#[test]
fn a_stream_is_small_and_stays_so() {
    // A few kilobytes, whatever comes: nothing in it can grow.
    assert!(size_of::<Stream>() < 4096, "{}", size_of::<Stream>());
}
