//! The head as solids and marks: skull and face, nose, ears, and a friendly, ageless face.
//!
//! # Source
//! Length and breadth from the measured ratios of young adults (ANSUR II), six percent larger, as a friendly figure has
//! it; everything else is own choice, drawn by eye.

use body::{Rotation, Vector};

use super::loft::{Bead, Cap, FINE, Loft, Ring, Solid};
use super::stations::between;

/// Height above the middle of the head, how far forward, how far backward, half breadth.
pub(crate) const SKULL: [[f64; 4]; 11] = [
    [-0.0640, 0.0430, -0.0010, 0.0165],
    [-0.0580, 0.0485, -0.0120, 0.0235],
    [-0.0480, 0.0510, -0.0250, 0.0320],
    [-0.0350, 0.0520, -0.0400, 0.0385],
    [-0.0200, 0.0525, -0.0520, 0.0430],
    [-0.0050, 0.0520, -0.0595, 0.0458],
    [0.0100, 0.0535, -0.0625, 0.0470],
    [0.0300, 0.0525, -0.0620, 0.0460],
    [0.0480, 0.0440, -0.0550, 0.0405],
    [0.0600, 0.0300, -0.0425, 0.0295],
    [0.0650, 0.0180, -0.0320, 0.0190],
];

/// A head in the room.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Head {
    pub(crate) middle: Vector,
    pub(crate) frame: Rotation,
}

/// A line on the surface, and where the surface looks at its middle.
#[derive(Debug, Clone)]
pub(crate) struct Mark {
    pub(crate) line: Vec<Vector>,
    pub(crate) outward: Vector,
    pub(crate) kind: MarkKind,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum MarkKind {
    /// A short thick stroke.
    Eye,
    /// A fine line.
    Line,
}

impl Head {
    /// A place of the head: forward, up, right.
    pub(crate) fn at(&self, ahead: f64, up: f64, right: f64) -> Vector {
        self.middle + self.frame * (Vector::new(ahead, up, right) * SIZE)
    }

    /// A cross-section by a table like that of the skull.
    pub(crate) fn ring(&self, table: &[[f64; 4]], up: f64) -> Ring {
        let [_, front, back, broad] = between(table, up);
        Ring {
            center: self.at((front + back) / 2.0, up, 0.0),
            a: self.frame.x() * ((front - back) / 2.0 * SIZE),
            b: self.frame.z() * (broad * SIZE),
            power: 2.12,
        }
    }

    /// A place on the surface, an angle in degrees away from straight ahead toward the right, and where it looks.
    pub(crate) fn surface(&self, table: &[[f64; 4]], up: f64, degrees: f64) -> (Vector, Vector) {
        let ring = self.ring(table, up);
        let (sine, cosine) = degrees.to_radians().sin_cos();
        let (a, b) = (ring.a.length(), ring.b.length());
        let level = self.frame * Vector::new(cosine / a, 0.0, sine / b);
        // As of an ellipsoid: level at the middle, upward at the crown.
        let rise = self.frame.y() * (up / HALF_HEIGHT.powi(2));
        (ring.center + ring.a * cosine + ring.b * sine, (level + rise).normalize_or(self.frame.x()))
    }

    /// Skull and face.
    pub(crate) fn skull(&self) -> Solid {
        let rings: Vec<Ring> =
            (0..=14).map(|step| self.ring(&SKULL, -0.064 + 0.129 * f64::from(step) / 14.0)).collect();
        Solid::Loft(Loft::new(&rings, FINE + 4, [Cap::Round(0.003), Cap::Round(0.003)]))
    }

    /// The nose.
    pub(crate) fn nose(&self) -> Solid {
        let bead = |ahead, up, radius| Bead { center: self.at(ahead, up, 0.0), radius: radius * SIZE };
        Solid::Chain(vec![bead(0.0470, 0.0060, 0.0050), bead(0.0590, -0.0150, 0.0066), bead(0.0540, -0.0185, 0.0062)])
    }

    /// An ear, that of the right side first.
    pub(crate) fn ears(&self) -> [Solid; 2] {
        [1.0, -1.0].map(|right| {
            let tilt = self.frame * Vector::new(-0.18, 1.0, 0.0).normalize();
            let wide = self.frame * Vector::new(1.0, 0.18, -0.30 * right).normalize();
            let ring = |out: f64, factor: f64| {
                let center = self.at(-0.006 - out * 0.4, -0.006, right * (0.0440 + out));
                Ring::ellipse(center, wide * (0.0092 * SIZE * factor), tilt * (0.0160 * SIZE * factor))
            };
            Solid::Loft(Loft::new(
                &[ring(0.000, 0.80), ring(0.004, 1.0), ring(0.0065, 0.92)],
                FINE + 4,
                [Cap::Closed; 2],
            ))
        })
    }

    /// Eyes, brows, mouth and the line of the nose.
    pub(crate) fn marks(&self, nose_seen_from: Vector) -> Vec<Mark> {
        let mut marks = Vec::with_capacity(8);
        for right in [1.0, -1.0] {
            let on = |up: f64, degrees: f64| self.surface(&SKULL, up, right * degrees);
            let (eye, outward) = on(0.0, 23.5);
            let line = vec![eye + self.frame.y() * 0.0016, eye - self.frame.y() * 0.0016];
            marks.push(Mark { line, outward, kind: MarkKind::Eye });
            let brow = (0..=6).map(|step| {
                let share = f64::from(step) / 6.0;
                // Highest past its middle.
                on(0.0122 + 0.0032 * (std::f64::consts::PI * (0.12 + 0.78 * share)).sin(), 13.5 + 22.5 * share).0
            });
            let line = brow.collect();
            marks.push(Mark { line, outward: on(0.0144, 27.0).1, kind: MarkKind::Line });
        }
        let mouth = (-4..=4).map(|step| {
            let share = f64::from(step) / 4.0;
            self.surface(&SKULL, -0.0375 + 0.0046 * share * share, 17.5 * share).0
        });
        marks.push(Mark { line: mouth.collect(), outward: self.frame.x(), kind: MarkKind::Line });
        marks.push(self.nose_line(nose_seen_from));
        marks
    }

    /// Under the tip of the nose seen from the front, along its far side seen from aside.
    fn nose_line(&self, toward_viewer: Vector) -> Mark {
        let seen = self.frame.inverse() * toward_viewer;
        let aside = seen.z.atan2(seen.x.max(1e-9));
        let outward = self.frame.x();
        let line = if aside.abs() < 0.20 {
            vec![self.at(0.0590, -0.0185, 0.0052), self.at(0.0620, -0.0216, 0.0), self.at(0.0590, -0.0185, -0.0052)]
        } else {
            let far = -aside.signum();
            vec![
                self.at(0.0570, -0.0030, far * 0.0044),
                self.at(0.0605, -0.0085, far * 0.0052),
                self.at(0.0640, -0.0160, far * 0.0056),
                self.at(0.0620, -0.0212, far * 0.0030),
                self.at(0.0570, -0.0222, -far * 0.0030),
            ]
        };
        Mark { line, outward, kind: MarkKind::Line }
    }
}

/// How much larger the drawn head is than the table, for a friendly figure.
pub(crate) const SIZE: f64 = 1.05;

/// Half the height of the head, as far as the surface's tilt is concerned.
const HALF_HEIGHT: f64 = 0.070;
