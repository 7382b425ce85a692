//! From an angle of the movement to a place.

use std::fmt::Write as _;

use body::Angle;

use super::super::pen::Place;
use super::{Arc, Turning};
use crate::svg::units;

impl Arc {
    /// Where in the picture the limb points at an angle: from the picture's right, growing upward.
    pub(super) fn direction(&self, angle: Angle) -> Angle {
        match self.turn {
            Turning::Counterclockwise => self.zero + angle,
            Turning::Clockwise => self.zero - angle,
        }
    }

    /// The place at an angle, so far from the joint.
    pub(super) fn place(&self, angle: Angle, radius: f64) -> Place {
        let direction = self.direction(angle);
        [self.center_mm[0] + radius * direction.cos(), self.center_mm[1] - radius * direction.sin()]
    }

    /// The angle of the movement at which a place lies, the one nearest to `near`.
    pub(super) fn angle_at(&self, [x, y]: Place, near: Angle) -> Angle {
        let direction = Angle::from_radians((self.center_mm[1] - y).atan2(x - self.center_mm[0]));
        let angle = match self.turn {
            Turning::Counterclockwise => direction - self.zero,
            Turning::Clockwise => self.zero - direction,
        };
        near + (angle - near).wrapped()
    }

    /// The commands of an arc from one angle to another, without the one that goes to its beginning.
    ///
    /// # Method
    /// In pieces of at most 60 degrees: the middle of a longer one would move by much more than its rounded ends.
    pub(super) fn bend(&self, [from, to]: [Angle; 2], radius: f64) -> String {
        // In a picture whose Y grows downward, 1 is the way of the clock.
        let is_clockwise = u8::from((to > from) == (self.turn == Turning::Clockwise));
        let steps = Self::steps([from, to], radius, radius * std::f64::consts::FRAC_PI_3);
        let mut commands = String::new();
        for at in steps.skip(1) {
            let [x, y] = self.place(at, radius).map(units);
            let radius = units(radius);
            let _ = write!(commands, "A{radius} {radius} 0 0 {is_clockwise} {x} {y}");
        }
        commands
    }

    /// An arc by itself.
    pub(super) fn arc(&self, [from, to]: [Angle; 2], radius: f64) -> String {
        let [x, y] = self.place(from, radius).map(units);
        format!("M{x} {y}{}", self.bend([from, to], radius))
    }

    /// A sector from the joint.
    pub(super) fn sector(&self, [from, to]: [Angle; 2], radius: f64) -> String {
        let [x, y] = self.center_mm.map(units);
        let [a, b] = self.place(from, radius).map(units);
        format!("M{x} {y}L{a} {b}{}Z", self.bend([from, to], radius))
    }

    /// A band between two radii.
    pub(super) fn band(&self, [from, to]: [Angle; 2], [inner, outer]: [f64; 2]) -> String {
        let mut path = self.arc([from, to], outer);
        let [x, y] = self.place(to, inner).map(units);
        let _ = write!(path, "L{x} {y}{}Z", self.bend([to, from], inner));
        path
    }

    /// Angles from one end to another, close enough together for a length along a radius.
    pub(super) fn steps([from, to]: [Angle; 2], radius: f64, length: f64) -> impl Iterator<Item = Angle> {
        let turn = (to - from).radians();
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a turn is at most a full one")]
        let count = ((turn.abs() * radius / length).ceil() as u16).max(1);
        (0..=count).map(move |index| from + Angle::from_radians(turn * f64::from(index) / f64::from(count)))
    }
}
