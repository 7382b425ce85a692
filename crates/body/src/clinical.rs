//! What a therapist calls a position of the upper arm, and the way back.

use evidence::ids;

use crate::angle::Angle;
use crate::arm::Shoulder;
use crate::rotation::Rotation;
use crate::thoracohumeral::Thoracohumeral;
use crate::words::{Movement, Position};

impl Shoulder {
    /// Raised straight ahead, not turned: a turn about the axis that points right.
    ///
    /// # Example
    /// ```
    /// use body::{Angle, ClinicalReading, Movement, Shoulder, Thoracohumeral};
    /// let ahead = Shoulder::raised_ahead(Angle::from_degrees(60.0)).turned_outward(Angle::from_degrees(25.0));
    /// let reading = ClinicalReading::of(&Thoracohumeral::of(ahead.humerus()));
    /// let (movement, angle) = reading.movement().expect("well away from the side");
    /// assert_eq!((movement, angle.degrees().round()), (Movement::ForwardElevation, 60.0));
    /// assert_eq!(reading.outward.map(|angle| angle.degrees().round()), Some(25.0));
    /// ```
    pub const fn raised_ahead(elevation: Angle) -> Self {
        Self::raised(STRAIGHT_AHEAD, elevation)
    }

    /// Raised to the side, not turned.
    pub const fn raised_to_the_side(elevation: Angle) -> Self {
        Self::raised(Angle::ZERO, elevation)
    }

    /// Raised in the plane of the shoulder blade, not turned.
    ///
    /// # Source
    /// `scapular-plane-forward`: common practice, no source.
    pub fn raised_in_the_scapular_plane(elevation: Angle) -> Self {
        Self::raised(ids::SCAPULAR_PLANE_FORWARD.degrees().into(), elevation)
    }

    /// Raised in any plane, not turned: the shortest swing from the side.
    pub const fn raised(plane: Angle, elevation: Angle) -> Self {
        Self { plane, elevation, outward: Angle::ZERO }
    }

    /// The same, turned about the humerus by so much more; inward is negative.
    #[must_use]
    pub fn turned_outward(self, by: Angle) -> Self {
        Self { outward: self.outward + by, ..self }
    }

    /// How a humerus is held.
    ///
    /// # Method
    /// Where plane and axial rotation have no value the plane is zero, and the outward turn holds all there is.
    pub fn of(humerus: Rotation) -> Self {
        let angles = Thoracohumeral::of(humerus);
        match angles.plane_of_elevation() {
            Some(plane) => Self { plane, elevation: angles.elevation(), outward: -angles.y_sum() },
            // No plane is as good as any other: the turn is what the shortest swing in this one leaves over.
            None => {
                let swing = Self::raised(Angle::ZERO, angles.elevation());
                let twist = Thoracohumeral::of(swing.humerus().inverse() * humerus).y_sum();
                Self { outward: -twist, ..swing }
            }
        }
    }
}

const STRAIGHT_AHEAD: Angle = Angle::from_degrees(90.0); // not medical: a right angle
const LEVEL: Angle = Angle::from_degrees(90.0); // not medical: a right angle

crate::words! {
    /// The plane in which an arm is raised, in a clinician's words.
    PlaneName {
        /// Straight to the side.
        Side = "to the side",
        /// Between the side and the plane of the shoulder blade.
        NearSide = "between the side and the scapular plane",
        /// In the plane of the shoulder blade.
        Scapular = "in the scapular plane",
        /// Between the plane of the shoulder blade and straight ahead.
        NearAhead = "between the scapular plane and straight ahead",
        /// Straight ahead.
        Ahead = "straight ahead",
        /// Past straight ahead, across the chest.
        Across = "across the chest",
        /// Between the side and straight back.
        BehindSide = "between the side and straight back",
        /// Straight back.
        Back = "straight back",
        /// Past straight back, toward the other side.
        BehindBack = "behind the back",
    }
}

crate::words! {
    /// What can't be told of a position, and why.
    NotTold {
        /// The arm is so near the side that its plane is noise.
        PlaneNearSide = "the plane, because the arm is near the side",
        /// The arm is so near straight up that its plane is noise.
        PlaneNearTop = "the plane, because the arm is nearly straight up",
        /// The arm is so near straight up that its turn is noise.
        TurnNearTop = "the turn, because the arm is nearly straight up",
    }
}

/// What a therapist calls the position of an upper arm.
///
/// # Units and shape
/// Angles in the sense of a goniometer: elevation against the trunk, the outward turn counted from the forearm pointing
/// ahead. What is left out is named in [`ClinicalReading::not_told`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ClinicalReading {
    /// How far the arm is raised.
    pub elevation: Angle,
    /// In which plane, where that is more than noise.
    pub plane: Option<(PlaneName, Angle)>,
    /// Turned outward; inward is negative. The sum of the standard's two turns, with the other sign.
    pub outward: Option<Angle>,
}

impl ClinicalReading {
    /// The words for angles of the standard.
    ///
    /// # Method
    /// The plane is told between `plane-told-from` and the same short of straight up, and has a movement's name within
    /// `plane-named-within` of that movement's own plane. The turn is told up to `turn-told-until`.
    ///
    /// # Source
    /// `plane-told-from`, `plane-named-within`, `turn-told-until`: own choices, from the growth of noise;
    /// `scapular-plane-forward`: common practice.
    pub fn of(angles: &Thoracohumeral) -> Self {
        let elevation = angles.elevation();
        let plane = angles
            .plane_of_elevation()
            .filter(|_| elevation >= PLANE_TOLD_FROM && STRAIGHT_UP - elevation >= PLANE_TOLD_FROM);
        let outward = (elevation <= TURN_TOLD_UNTIL).then(|| Angle::ZERO - angles.y_sum());
        Self { elevation, plane: plane.map(|plane| (PlaneName::of(plane), plane)), outward }
    }

    /// The movement whose name this position has, and the angle that movement is measured by.
    ///
    /// # Units and shape
    /// Across the chest it is the angle past straight ahead, told only of an arm held about level; otherwise it is the
    /// elevation.
    ///
    /// # Source
    /// `across-named-within`: own choice.
    pub fn movement(&self) -> Option<(Movement, Angle)> {
        let (name, plane) = self.plane?;
        let movement = match name {
            PlaneName::Side => Movement::Abduction,
            PlaneName::Scapular => Movement::ScapularPlaneElevation,
            PlaneName::Ahead => Movement::ForwardElevation,
            PlaneName::Back => Movement::Extension,
            PlaneName::Across if (self.elevation - LEVEL).abs() > ACROSS_NAMED_WITHIN => return None,
            PlaneName::Across => {
                // Past the far side of the chest the plane goes on from 180 and does not come back.
                let onward = if plane < Angle::ZERO { plane + FULL_TURN } else { plane };
                return Some((Movement::HorizontalAdduction, onward - STRAIGHT_AHEAD));
            }
            PlaneName::NearSide | PlaneName::NearAhead | PlaneName::BehindSide | PlaneName::BehindBack => return None,
        };
        Some((movement, self.elevation))
    }

    /// The position in which the outward turn is measured, where it is one that has a name.
    pub fn position(&self) -> Option<Position> {
        let Some((name, _)) = self.plane else {
            return (self.elevation <= POSITION_NAMED_WITHIN).then_some(Position::AtSide);
        };
        match name {
            PlaneName::Scapular => Some(Position::ScapularPlane),
            PlaneName::Side => {
                let within = |out: Angle| (self.elevation - out).abs() <= POSITION_NAMED_WITHIN;
                OUT.into_iter().find(|(out, _)| within(*out)).map(|(_, position)| position)
            }
            _ => None,
        }
    }

    /// What is left out, and why.
    pub fn not_told(&self) -> impl Iterator<Item = NotTold> + use<> {
        let low = self.elevation < STRAIGHT_AHEAD;
        let plane = self.plane.is_none().then_some(if low { NotTold::PlaneNearSide } else { NotTold::PlaneNearTop });
        let turn = self.outward.is_none().then_some(NotTold::TurnNearTop);
        plane.into_iter().chain(turn)
    }
}

const FULL_TURN: Angle = Angle::from_degrees(360.0); // not medical: a full turn
const STRAIGHT_UP: Angle = Angle::from_degrees(180.0); // not medical: half a turn

/// Positions that are so far out to the side.
const OUT: [(Angle, Position); 3] = [
    (Angle::from_degrees(20.0), Position::Abduction20), // not medical: what the position is called by
    (Angle::from_degrees(45.0), Position::Abduction45), // not medical: what the position is called by
    (Angle::from_degrees(90.0), Position::Abduction90), // not medical: what the position is called by
];

impl PlaneName {
    /// The words for a plane.
    ///
    /// # Units and shape
    /// From over −180 to 180 degrees; 0 to the side, 90 straight ahead.
    pub fn of(plane: Angle) -> Self {
        let within = PLANE_NAMED_WITHIN;
        let straight_back = -STRAIGHT_AHEAD;
        match () {
            () if plane.abs() <= within => Self::Side,
            () if plane > Angle::ZERO && plane < SCAPULAR_PLANE.0 - within => Self::NearSide,
            () if plane > Angle::ZERO && plane <= SCAPULAR_PLANE.1 + within => Self::Scapular,
            () if plane > Angle::ZERO && plane < STRAIGHT_AHEAD - within => Self::NearAhead,
            () if plane > Angle::ZERO && plane <= STRAIGHT_AHEAD + within => Self::Ahead,
            // Just past the far side of the chest the sign of the plane is noise.
            () if plane > Angle::ZERO || plane <= within - STRAIGHT_UP => Self::Across,
            () if plane > straight_back + within => Self::BehindSide,
            () if plane >= straight_back - within => Self::Back,
            () => Self::BehindBack,
        }
    }
}

// Asked for every row of a file: read from the table when the program is built.
const PLANE_TOLD_FROM: Angle = Angle::from_degrees(ids::PLANE_TOLD_FROM.number());
const PLANE_NAMED_WITHIN: Angle = Angle::from_degrees(ids::PLANE_NAMED_WITHIN.number());
const ACROSS_NAMED_WITHIN: Angle = Angle::from_degrees(ids::ACROSS_NAMED_WITHIN.number());
const TURN_TOLD_UNTIL: Angle = Angle::from_degrees(ids::TURN_TOLD_UNTIL.number());
const POSITION_NAMED_WITHIN: Angle = Angle::from_degrees(ids::POSITION_NAMED_WITHIN.number());
const SCAPULAR_PLANE: (Angle, Angle) = match (ids::SCAPULAR_PLANE_FORWARD.low, ids::SCAPULAR_PLANE_FORWARD.high) {
    (Some(from), Some(until)) => (Angle::from_degrees(from), Angle::from_degrees(until)),
    _ => panic!("the table gives both ends of the scapular plane"),
};

#[cfg(test)]
mod tests {
    use super::*;

    const DEGREES: fn(f64) -> Angle = Angle::from_degrees;

    fn reading(shoulder: Shoulder) -> ClinicalReading {
        ClinicalReading::of(&Thoracohumeral::of(shoulder.humerus()))
    }

    fn whole(angle: Option<Angle>) -> Option<i64> {
        angle.map(|angle| angle.degrees().round() as i64)
    }

    fn movement(shoulder: Shoulder) -> Option<(Movement, i64)> {
        reading(shoulder).movement().map(|(movement, angle)| (movement, angle.degrees().round() as i64))
    }

    #[test]
    fn pure_movements_are_turns_about_one_axis() {
        // The rows of clinical terms in the evidence: pure flexion about +Z, pure abduction about −X.
        for degrees in [0.0, 15.0, 60.0, 90.0, 150.0, 180.0] {
            let ahead = Shoulder::raised_ahead(DEGREES(degrees)).humerus();
            assert!(ahead.distance(Rotation::about_z(DEGREES(degrees))) < DEGREES(1e-9));
            let side = Shoulder::raised_to_the_side(DEGREES(degrees)).humerus();
            assert!(side.distance(Rotation::about_x(DEGREES(-degrees))) < DEGREES(1e-9));
        }
    }

    #[test]
    fn each_movement_has_its_name_and_its_angle() {
        let sixty = DEGREES(60.0);
        assert_eq!(movement(Shoulder::raised_ahead(sixty)), Some((Movement::ForwardElevation, 60)));
        assert_eq!(movement(Shoulder::raised_to_the_side(sixty)), Some((Movement::Abduction, 60)));
        let blade = Shoulder::raised_in_the_scapular_plane(sixty);
        assert_eq!(movement(blade), Some((Movement::ScapularPlaneElevation, 60)));
        assert_eq!(movement(Shoulder::raised(DEGREES(-90.0), DEGREES(40.0))), Some((Movement::Extension, 40)));
        let across = Shoulder::raised(DEGREES(125.0), DEGREES(90.0));
        assert_eq!(movement(across), Some((Movement::HorizontalAdduction, 35)));
        let far_across = Shoulder::raised(DEGREES(189.0), DEGREES(90.0));
        assert_eq!(movement(far_across), Some((Movement::HorizontalAdduction, 99)));
        // A low arm that points inward is no movement across the chest.
        assert_eq!(movement(Shoulder::raised(DEGREES(130.0), DEGREES(25.0))), None);
        assert_eq!(movement(Shoulder::raised(DEGREES(130.0), DEGREES(140.0))), None);
        assert_eq!(movement(Shoulder::raised(DEGREES(65.0), sixty)), None);
        assert_eq!(movement(Shoulder::raised(DEGREES(-45.0), sixty)), None);
    }

    #[test]
    fn planes_have_names_all_the_way_round() {
        let named = |plane: f64| PlaneName::of(DEGREES(plane));
        // 30 to 40 degrees is the scapular plane of the table, 10 degrees either way keep a name.
        assert_eq!([named(-10.0), named(10.0)], [PlaneName::Side; 2]);
        assert_eq!([named(10.1), named(19.9)], [PlaneName::NearSide; 2]);
        assert_eq!([named(20.0), named(30.0), named(40.0), named(50.0)], [PlaneName::Scapular; 4]);
        assert_eq!([named(50.1), named(79.9)], [PlaneName::NearAhead; 2]);
        assert_eq!([named(80.0), named(100.0)], [PlaneName::Ahead; 2]);
        assert_eq!([named(100.1), named(180.0), named(-179.9), named(-170.0)], [PlaneName::Across; 4]);
        assert_eq!([named(-169.9), named(-100.1)], [PlaneName::BehindBack; 2]);
        assert_eq!([named(-100.0), named(-80.0)], [PlaneName::Back; 2]);
        assert_eq!([named(-79.9), named(-10.1)], [PlaneName::BehindSide; 2]);
    }

    #[test]
    fn an_outward_turn_is_one_number_at_every_elevation() {
        for (elevation, outward) in [(0.0, 30.0), (0.0, -40.0), (5.0, 30.0), (90.0, 90.0), (90.0, -70.0), (150.0, 20.0)]
        {
            for plane in [0.0, 35.0, 90.0, -90.0] {
                let held = Shoulder::raised(DEGREES(plane), DEGREES(elevation)).turned_outward(DEGREES(outward));
                assert_eq!(whole(reading(held).outward), Some(outward as i64), "{plane} {elevation}");
            }
        }
        // Abduction 90, outward 90: the forearm of a bent elbow points up, by the row of the evidence.
        let up = Shoulder::raised_to_the_side(DEGREES(90.0)).turned_outward(DEGREES(90.0)).humerus();
        assert!((up.x() - crate::Vector::Y).length() < 1e-12, "{:?}", up.x());
        let angles = Thoracohumeral::of(up);
        assert_eq!((whole(angles.plane_of_elevation()), whole(angles.axial_rotation())), (Some(0), Some(-90)));
    }

    #[test]
    fn what_is_noise_is_left_out_with_its_reason() {
        let told = |elevation: f64| {
            let reading = reading(Shoulder::raised_ahead(DEGREES(elevation)));
            (reading.plane.is_some(), reading.outward.is_some(), reading.not_told().collect::<Vec<_>>())
        };
        assert_eq!(told(19.9), (false, true, vec![NotTold::PlaneNearSide]));
        assert_eq!(told(20.1), (true, true, vec![]));
        assert_eq!(told(159.9), (true, true, vec![]));
        assert_eq!(told(160.1), (false, false, vec![NotTold::PlaneNearTop, NotTold::TurnNearTop]));
    }

    #[test]
    fn the_position_of_a_turn_has_its_name() {
        let at = |shoulder: Shoulder| reading(shoulder).position();
        let side = Shoulder::raised_to_the_side;
        assert_eq!(at(side(DEGREES(5.0))), Some(Position::AtSide));
        assert_eq!(at(side(DEGREES(15.0))), None);
        assert_eq!(at(side(DEGREES(21.0))), Some(Position::Abduction20));
        assert_eq!(at(side(DEGREES(45.0))), Some(Position::Abduction45));
        assert_eq!(at(side(DEGREES(92.0))), Some(Position::Abduction90));
        assert_eq!(at(side(DEGREES(130.0))), None);
        assert_eq!(at(Shoulder::raised_ahead(DEGREES(90.0))), None);
        assert_eq!(at(Shoulder::raised_in_the_scapular_plane(DEGREES(90.0))), Some(Position::ScapularPlane));
    }

    #[test]
    fn the_way_back_gives_the_same_humerus() {
        for elevation in [0.0, 1e-4, 0.2, 30.0, 90.0, 179.0, 179.99, 180.0] {
            for (plane, outward) in [(0.0, 0.0), (90.0, 30.0), (-60.0, -80.0), (170.0, 150.0)] {
                let held = Shoulder::raised(DEGREES(plane), DEGREES(elevation)).turned_outward(DEGREES(outward));
                let back = Shoulder::of(held.humerus());
                let off = back.humerus().distance(held.humerus());
                assert!(off < DEGREES(0.12), "{elevation} {plane} {outward}: {off}");
                if (1e-3..=1.0).contains(&held.elevation.sin()) {
                    assert!(off < DEGREES(1e-6), "{elevation} {plane} {outward}: {off}");
                }
            }
        }
    }
}
