//! The frames of thorax and humerus from places on the body.

use std::fmt;

use crate::rotation::{Rotation, Vector};
use crate::words::Side;

/// Places on the chest.
///
/// # Units and shape
/// All in one frame of a laboratory, in one unit of length; which frame and which unit does not matter.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ThoraxLandmarks {
    /// The deepest point of the notch above the breastbone (IJ).
    pub jugular_notch: Vector,
    /// The lowest point of the breastbone (PX).
    pub xiphoid: Vector,
    /// The spinous process of the seventh cervical vertebra (C7).
    pub seventh_cervical: Vector,
    /// The spinous process of the eighth thoracic vertebra (T8).
    pub eighth_thoracic: Vector,
}

/// Places on the arm.
///
/// # Units and shape
/// As [`ThoraxLandmarks`]; the center of the humeral head is no place that can be touched, it is estimated.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ArmLandmarks {
    /// The center of the humeral head (GH).
    pub humeral_head: Vector,
    /// The lateral epicondyle (EL).
    pub lateral_epicondyle: Vector,
    /// The medial epicondyle (EM).
    pub medial_epicondyle: Vector,
}

crate::words! {
    /// A frame that landmarks did not make.
    LandmarkFrame {
        /// The chest.
        Thorax = "thorax",
        /// The upper arm.
        Humerus = "humerus",
    }
}

/// Why landmarks make no frame.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LandmarkError {
    /// A coordinate is missing or infinite.
    NotFinite(LandmarkFrame),
    /// Two places that make an axis are one place.
    Coincident(LandmarkFrame),
    /// The places lie on one line: every turn about it would do.
    Collinear(LandmarkFrame),
}

impl fmt::Display for LandmarkError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotFinite(frame) => write!(f, "a landmark of the {frame} has a coordinate that is no number"),
            Self::Coincident(frame) => write!(f, "landmarks of the {frame} that make an axis are at one place"),
            Self::Collinear(frame) => write!(f, "the landmarks of the {frame} lie on one line"),
        }
    }
}

impl std::error::Error for LandmarkError {}

impl ThoraxLandmarks {
    /// The frame of the thorax in that of the laboratory; of a left arm, of the body in a mirror.
    ///
    /// # Method
    /// Y from the middle of xiphoid and T8 to the middle of notch and C7, up; Z at right angles to the plane of notch,
    /// C7 and the middle of xiphoid and T8, to the right; X forward. For a left arm the raw places are mirrored first
    /// (z becomes −z), and everything after is a right arm's.
    ///
    /// # Errors
    /// A coordinate that is no number; both middles at one place; notch and C7 in line with the middle below.
    ///
    /// # Source
    /// Recommendation of the International Society of Biomechanics of 2005, read in a paper's table that gives it.
    pub fn frame(&self, side: Side) -> Result<Rotation, LandmarkError> {
        let of_side = mirror(side);
        let above = (of_side(self.jugular_notch) + of_side(self.seventh_cervical)) * HALF;
        let below = (of_side(self.xiphoid) + of_side(self.eighth_thoracic)) * HALF;
        let forward = of_side(self.jugular_notch) - of_side(self.seventh_cervical);
        let frame = LandmarkFrame::Thorax;
        let up = direction(above - below, frame)?;
        let right = perpendicular(direction(forward, frame)?, up, frame)?;
        Ok(Rotation::from_axes(up.cross(right), up, right))
    }
}

impl ArmLandmarks {
    /// The frame of the humerus from its own landmarks: the standard's first option.
    ///
    /// # Method
    /// Y from the middle of the epicondyles to the head; X at right angles to the plane of the epicondyles and the
    /// head, forward; Z to the right. Left as [`ThoraxLandmarks::frame`].
    ///
    /// # Errors
    /// A coordinate that is no number; the head at the epicondyles, or the epicondyles at one place; all on one line.
    ///
    /// # Source
    /// As [`ThoraxLandmarks::frame`].
    pub fn humerus(&self, side: Side) -> Result<Rotation, LandmarkError> {
        let of_side = mirror(side);
        let up = self.long_axis(side)?;
        let outward = of_side(self.lateral_epicondyle) - of_side(self.medial_epicondyle);
        let forward = perpendicular(up, direction(outward, LandmarkFrame::Humerus)?, LandmarkFrame::Humerus)?;
        Ok(Rotation::from_axes(forward, up, forward.cross(up)))
    }

    /// The frame of the humerus from the forearm, with the elbow bent: the standard's second option.
    ///
    /// # Units and shape
    /// `ulnar_styloid` is the tip at the wrist (US). The standard asks for an elbow at 90 degrees; the straighter it
    /// is, the more an error of a place turns the frame.
    ///
    /// # Method
    /// Y as in [`ArmLandmarks::humerus`]; Z at right angles to the plane of Y and the forearm, to the right; X forward.
    ///
    /// # Errors
    /// As [`ArmLandmarks::humerus`]; a straight elbow is all on one line.
    ///
    /// # Source
    /// The same recommendation, from memory in this part.
    pub fn humerus_by_forearm(&self, ulnar_styloid: Vector, side: Side) -> Result<Rotation, LandmarkError> {
        let of_side = mirror(side);
        let up = self.long_axis(side)?;
        let elbow = (of_side(self.lateral_epicondyle) + of_side(self.medial_epicondyle)) * HALF;
        let toward_elbow = direction(elbow - of_side(ulnar_styloid), LandmarkFrame::Humerus)?;
        let right = perpendicular(up, toward_elbow, LandmarkFrame::Humerus)?;
        Ok(Rotation::from_axes(up.cross(right), up, right))
    }

    fn long_axis(&self, side: Side) -> Result<Vector, LandmarkError> {
        let of_side = mirror(side);
        let elbow = (of_side(self.lateral_epicondyle) + of_side(self.medial_epicondyle)) * HALF;
        direction(of_side(self.humeral_head) - elbow, LandmarkFrame::Humerus)
    }
}

fn mirror(side: Side) -> impl Fn(Vector) -> Vector {
    move |place: Vector| match side {
        Side::Right => place,
        Side::Left => Vector::new(place.x, place.y, -place.z),
    }
}

fn direction(way: Vector, frame: LandmarkFrame) -> Result<Vector, LandmarkError> {
    if !way.is_finite() {
        return Err(LandmarkError::NotFinite(frame));
    }
    // Places are in millimeters or in meters; what is closer than rounding of either leaves no direction.
    if way.length() < ONE_PLACE {
        return Err(LandmarkError::Coincident(frame));
    }
    way.try_normalize().ok_or(LandmarkError::Coincident(frame))
}

/// At right angles to two directions, by the rule of the right hand.
fn perpendicular(first: Vector, second: Vector, frame: LandmarkFrame) -> Result<Vector, LandmarkError> {
    let across = first.cross(second);
    if across.length() < ONE_LINE { Err(LandmarkError::Collinear(frame)) } else { Ok(across.normalize()) }
}

const HALF: f64 = 0.5; // not medical: the middle of two places

/// Two places closer than this are one, whatever the unit they are in.
const ONE_PLACE: f64 = 1e-9; // not medical: a millionth of a millimeter, were they in meters

/// Directions with a smaller sine between them are one line.
const ONE_LINE: f64 = 0.01; // not medical: under 0.6 degrees a millimeter of the places turns the frame by any angle

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Angle, Thoracohumeral};

    /// A person who stands along the axes of the laboratory, in millimeters: X forward, Y up, Z right.
    const CHEST: ThoraxLandmarks = ThoraxLandmarks {
        jugular_notch: Vector::new(60.0, 1400.0, 0.0),
        xiphoid: Vector::new(80.0, 1230.0, 0.0),
        seventh_cervical: Vector::new(-60.0, 1450.0, 0.0),
        eighth_thoracic: Vector::new(-80.0, 1250.0, 0.0),
    };
    const HANGING: ArmLandmarks = ArmLandmarks {
        humeral_head: Vector::new(0.0, 1400.0, 180.0),
        lateral_epicondyle: Vector::new(0.0, 1090.0, 215.0),
        medial_epicondyle: Vector::new(0.0, 1090.0, 145.0),
    };

    fn turned(arm: &ArmLandmarks, turn: Rotation) -> ArmLandmarks {
        let about_head = |place: Vector| arm.humeral_head + turn * (place - arm.humeral_head);
        ArmLandmarks {
            humeral_head: arm.humeral_head,
            lateral_epicondyle: about_head(arm.lateral_epicondyle),
            medial_epicondyle: about_head(arm.medial_epicondyle),
        }
    }

    fn mirrored(place: Vector) -> Vector {
        Vector::new(place.x, place.y, -place.z)
    }

    #[test]
    fn a_person_who_stands_along_the_axes_has_those_axes() {
        let right = Side::Right;
        let close = |turn: Rotation| turn.distance(Rotation::NONE) < Angle::from_degrees(1e-6);
        // Both middles lie above each other here, so the thorax is upright.
        assert!(close(CHEST.frame(right).expect("a frame")));
        assert!(close(HANGING.humerus(right).expect("a frame")));
        let hand_ahead = Vector::new(250.0, 1090.0, 180.0);
        assert!(close(HANGING.humerus_by_forearm(hand_ahead, right).expect("a frame")));
    }

    #[test]
    fn an_arm_that_was_turned_reads_as_it_was_turned() {
        let degrees = Angle::from_degrees;
        let turn = Thoracohumeral::rotation(degrees(40.0), degrees(70.0), degrees(-25.0));
        let arm = turned(&HANGING, turn);
        let hand = arm.humeral_head + turn * (Vector::new(250.0, 1090.0, 180.0) - arm.humeral_head);
        // The person turned and leaning in the laboratory: the arm against the chest stays what it is.
        let room = Rotation::about_y(degrees(130.0)) * Rotation::about_x(degrees(20.0));
        let chest = ThoraxLandmarks {
            jugular_notch: room * CHEST.jugular_notch,
            xiphoid: room * CHEST.xiphoid,
            seventh_cervical: room * CHEST.seventh_cervical,
            eighth_thoracic: room * CHEST.eighth_thoracic,
        };
        let arm = ArmLandmarks {
            humeral_head: room * arm.humeral_head,
            lateral_epicondyle: room * arm.lateral_epicondyle,
            medial_epicondyle: room * arm.medial_epicondyle,
        };
        let right = Side::Right;
        let thorax = chest.frame(right).expect("a frame");
        let own = thorax.inverse() * arm.humerus(right).expect("a frame");
        let by_forearm = thorax.inverse() * arm.humerus_by_forearm(room * hand, right).expect("a frame");
        for humerus in [own, by_forearm] {
            assert!(humerus.distance(turn) < degrees(1e-6), "{}", humerus.distance(turn));
        }
        // The same person in a mirror, read as a left arm, in any place of the laboratory.
        let chest = ThoraxLandmarks {
            jugular_notch: mirrored(chest.jugular_notch),
            xiphoid: mirrored(chest.xiphoid),
            seventh_cervical: mirrored(chest.seventh_cervical),
            eighth_thoracic: mirrored(chest.eighth_thoracic),
        };
        let arm = ArmLandmarks {
            humeral_head: mirrored(arm.humeral_head),
            lateral_epicondyle: mirrored(arm.lateral_epicondyle),
            medial_epicondyle: mirrored(arm.medial_epicondyle),
        };
        let left = Side::Left;
        let humerus = chest.frame(left).expect("a frame").inverse() * arm.humerus(left).expect("a frame");
        assert!(humerus.distance(turn) < degrees(1e-6), "{}", humerus.distance(turn));
    }

    #[test]
    fn places_that_make_no_frame_are_told_by_what_is_wrong() {
        let right = Side::Right;
        let humerus = LandmarkFrame::Humerus;
        let one_place = ArmLandmarks { medial_epicondyle: HANGING.lateral_epicondyle, ..HANGING };
        assert_eq!(one_place.humerus(right), Err(LandmarkError::Coincident(humerus)));
        let head_at_elbow = ArmLandmarks { humeral_head: Vector::new(0.0, 1090.0, 180.0), ..HANGING };
        assert_eq!(head_at_elbow.humerus(right), Err(LandmarkError::Coincident(humerus)));
        let in_line = ArmLandmarks { medial_epicondyle: Vector::new(0.0, 1000.0, 215.0), ..HANGING };
        let in_line = ArmLandmarks { humeral_head: Vector::new(0.0, 1400.0, 215.0), ..in_line };
        assert_eq!(in_line.humerus(right), Err(LandmarkError::Collinear(humerus)));
        let straight_elbow = Vector::new(0.0, 850.0, 180.0);
        assert_eq!(HANGING.humerus_by_forearm(straight_elbow, right), Err(LandmarkError::Collinear(humerus)));
        let missing = ArmLandmarks { humeral_head: Vector::new(f64::NAN, 0.0, 0.0), ..HANGING };
        assert_eq!(missing.humerus(right), Err(LandmarkError::NotFinite(humerus)));
        let thorax = LandmarkFrame::Thorax;
        let flat = ThoraxLandmarks { seventh_cervical: CHEST.jugular_notch, ..CHEST };
        assert_eq!(flat.frame(right), Err(LandmarkError::Coincident(thorax)));
        let flat = ThoraxLandmarks {
            seventh_cervical: Vector::new(0.0, 1500.0, 0.0),
            jugular_notch: Vector::new(0.0, 1400.0, 0.0),
            ..CHEST
        };
        assert_eq!(flat.frame(right), Err(LandmarkError::Collinear(thorax)));
    }
}
