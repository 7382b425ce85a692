//! A drawing that moves: no script, and still for readers who asked for less motion.

use std::fmt::Write as _;

use body::{Angle, Pose};

use crate::movement::Shown;

/// How long the parts of one repetition take, in seconds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tempo {
    /// There, and as long back.
    pub way_s: f64,
    /// Held at the end.
    pub hold_s: f64,
    /// Rest before the next.
    pub rest_s: f64,
}

impl Tempo {
    /// Slow enough to be copied, with the hold of a dose.
    pub const fn with_hold(hold_s: f64) -> Self {
        Self { way_s: WAY_S, hold_s, rest_s: REST_S }
    }

    fn whole(&self) -> f64 {
        2.0 * self.way_s + self.hold_s + self.rest_s
    }
}

/// Pictures of one way there.
pub(crate) const FRAMES: u8 = 11;

/// The pose at each picture of the way.
pub(crate) fn poses(start: &Pose, end: &Pose, shown: &Shown) -> Vec<Pose> {
    let share = |frame: u8, of: u8| f64::from(frame) / f64::from(of);
    match shown {
        Shown::Circles { radius, .. } => {
            // Once around; the last comes back to the first.
            let around = |frame| Angle::from_degrees(FULL_TURN * share(frame, FRAMES));
            (0..FRAMES).map(|frame| circling(start, end, around(frame), *radius)).collect()
        }
        _ => (0..FRAMES)
            .map(|frame| {
                // Starts and stops gently, as a hand does: minimum jerk.
                let t = share(frame, FRAMES - 1);
                Pose::between(start, end, t * t * t * (10.0 + t * (6.0 * t - 15.0)))
            })
            .collect(),
    }
}

/// A place on a circle around the middle of two poses: of a hanging arm by its direction, of a blade by its own turns.
fn circling(start: &Pose, end: &Pose, at: Angle, radius: f64) -> Pose {
    let mut pose = Pose::between(start, end, 0.5);
    let blade_moves = start.operated.blade != end.operated.blade;
    if blade_moves {
        let forward = (start.operated.blade.forward - end.operated.blade.forward) * 0.5;
        pose.operated.blade.forward = forward * at.cos();
        pose.operated.blade.raised = forward.abs() * at.sin();
        return pose;
    }
    let joints = body::Skeleton::of(&pose).operated;
    let cone = Angle::from_radians(radius / joints.shoulder.distance(joints.fingertip));
    let shoulder = &mut pose.operated.shoulder;
    let across = shoulder.elevation.sin().max(0.2);
    shoulder.elevation = shoulder.elevation + cone * at.cos();
    shoulder.plane = shoulder.plane + cone * (at.sin() / across);
    pose
}

/// The style sheet that shows one picture after the other; `name` is unlike that of any other drawing of a page.
///
/// # Method
/// Every picture is there all the time and visible in its own part of the cycle: on the way there, and again on the way
/// back. Where less motion is asked for, only the last is visible.
pub(crate) fn style(name: &str, tempo: &Tempo, goes_around: bool) -> String {
    let count = usize::from(FRAMES);
    let whole = if goes_around { 2.0 * tempo.way_s } else { tempo.whole() };
    let mut css = format!(".{name}{{visibility:hidden;animation:{whole:.1}s step-end infinite}}");
    for frame in 0..count {
        let mut spans: Vec<[f64; 2]> = Vec::new();
        if goes_around {
            spans.push([frame as f64, frame as f64 + 1.0].map(|at| at / count as f64));
        } else {
            let step = tempo.way_s / (count - 1) as f64;
            let there = frame as f64 * step;
            let back = tempo.way_s + tempo.hold_s + (count - 1 - frame) as f64 * step;
            match frame {
                0 => spans.extend([[0.0, step], [back, whole]]),
                last if last == count - 1 => spans.push([there, tempo.way_s + tempo.hold_s + step]),
                _ => spans.extend([[there, there + step], [back, back + step]]),
            }
            spans.iter_mut().for_each(|span| *span = span.map(|at| at / whole));
        }
        let _ = write!(css, "#{name}{frame}{{animation-name:{name}k{frame}}}@keyframes {name}k{frame}{{");
        let visible_first = spans.first().is_some_and(|span| span[0] <= 0.0);
        if !visible_first {
            css.push_str("0%{visibility:hidden}");
        }
        for [from, until] in spans {
            let _ = write!(css, "{}%{{visibility:visible}}", percent(from));
            if until < 1.0 {
                let _ = write!(css, "{}%{{visibility:hidden}}", percent(until));
            }
        }
        css.push('}');
    }
    let last = if goes_around { 0 } else { count - 1 };
    let _ = write!(
        css,
        "@media (prefers-reduced-motion:reduce){{.{name}{{animation:none}}#{name}{last}{{visibility:visible}}}}"
    );
    css
}

fn percent(share: f64) -> String {
    crate::svg::decimal(share * 100.0)
}

const FULL_TURN: f64 = 360.0;
/// Own choice: slow enough to be copied.
const WAY_S: f64 = 2.5;
const REST_S: f64 = 1.2;

#[cfg(test)]
mod tests {
    use super::*;

    /// At every moment of the cycle exactly one picture is visible.
    #[test]
    fn one_picture_is_visible_at_a_time() {
        for (tempo, goes_around) in
            [(Tempo::with_hold(0.0), false), (Tempo::with_hold(5.0), false), (Tempo::with_hold(0.0), true)]
        {
            let css = style("m", &tempo, goes_around);
            for moment in 0..=99 {
                let at = f64::from(moment) + 0.37;
                let visible = (0..FRAMES).filter(|frame| is_visible(&css, *frame, at)).count();
                assert_eq!(visible, 1, "{at} % of {tempo:?}");
            }
        }
    }

    fn is_visible(css: &str, frame: u8, at: f64) -> bool {
        let head = format!("@keyframes mk{frame}{{");
        let from = css.find(&head).expect("keyframes") + head.len();
        let until = from + css[from..].find("}}").expect("an end") + 1;
        let mut visible = false;
        for step in css[from..until].split_terminator('}') {
            let (percent, what) = step.split_once("%{visibility:").expect("a step");
            if percent.parse::<f64>().expect("a number") <= at {
                visible = what == "visible";
            }
        }
        visible
    }

    #[test]
    fn who_asks_for_less_motion_sees_the_end() {
        let css = style("m", &Tempo::with_hold(2.0), false);
        assert!(css.contains("@media (prefers-reduced-motion:reduce){.m{animation:none}#m10{visibility:visible}}"));
    }
}
