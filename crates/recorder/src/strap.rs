//! From the bone to the phone: how the strap holds it, and what the soft tissue in between does.

use glam::{DMat3, DQuat, DVec3};

use crate::arm::Place;
use crate::exercise::{Axis, Worn};
use crate::parameter::{Draws, Parameter, own};
use crate::person::gravity;
use crate::signal::{STEP, specific_force};
use crate::smooth::minimum_jerk;

/// How the phone sits on a limb.
#[derive(Debug, Clone)]
pub struct Strap {
    /// Turn about the limb, radians.
    around: f64,
    /// Tilt otherwise.
    tilt: DQuat,
    /// From the sensor's axes to the limb's, before both.
    seat: DQuat,
    /// From the line of the limb to the sensor, meters.
    out: f64,
    /// A slip during the set.
    pub slip: Option<Slip>,
    tissue: Tissue,
}

/// The strap gives way once.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slip {
    /// When.
    pub at_s: f64,
    /// By how much the sensor tilts against the limb, degrees.
    pub tilt_deg: f64,
    axis: DVec3,
}

/// Skin and muscle under the phone.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Tissue {
    /// Tilt under one gravity across the limb, radians.
    give: f64,
    frequency: f64,
    damping: f64,
    /// Share of a turn of the bone about its own length that the skin does not follow.
    lag: f64,
}

/// Whether strap and tissue are as they are, or perfect.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fit {
    /// The strap may be turned and tilted, the tissue gives.
    Real,
    /// The sensor's axis is the limb's, and stiff.
    Perfect,
}

/// Whether the strap holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Grip {
    /// All the while.
    Holds,
    /// It gives way once.
    Slips,
}

const OUT_FROM_LIMB: Parameter = own("sensor_from_limb_line", "m", 0.04, 0.07);
// `motion.md`, (d): rigid strap error 5 to 15 degrees; the contract: any angle about the limb, 10 otherwise.
const AROUND: Parameter = own("strap_about_limb", "deg", -180.0, 180.0);
const TILT: Parameter = own("strap_tilt", "deg", 0.0, 10.0);
// `motion.md`, error budget: soft tissue 2 to 4 degrees, forearm low, upper arm axial high.
const GIVE_FOREARM: Parameter = own("tissue_tilt_under_one_g", "deg", 0.2, 1.5);
const GIVE_UPPER_ARM: Parameter = own("tissue_tilt_under_one_g", "deg", 0.5, 3.0);
const LAG_FOREARM: Parameter = own("tissue_axial_lag", "share", 0.0, 0.1);
const LAG_UPPER_ARM: Parameter = own("tissue_axial_lag", "share", 0.2, 0.5);
const TISSUE_HERTZ: Parameter = own("tissue_frequency", "Hz", 6.0, 11.0);
const TISSUE_DAMPING: Parameter = own("tissue_damping", "share of critical", 0.3, 0.6);
const SLIP_TILT: Parameter = own("slip_tilt", "deg", 14.0, 30.0);
const SLIP_SECONDS: f64 = 0.4;

impl Strap {
    /// The strap of a recording.
    pub fn draw(draws: &mut Draws, worn: Worn, axis: Axis, fit: Fit) -> Self {
        let toward_hand = draws.random().happens(0.5);
        let seat = seat(axis, if toward_hand { -1.0 } else { 1.0 });
        let out = draws.draw(&OUT_FROM_LIMB);
        if fit == Fit::Perfect {
            let tissue = Tissue { give: 0.0, frequency: 50.0, damping: 1.0, lag: 0.0 };
            return Self { around: 0.0, tilt: DQuat::IDENTITY, seat, out, slip: None, tissue };
        }
        let (give, lag) = match worn {
            Worn::UpperArm => (draws.draw(&GIVE_UPPER_ARM), draws.draw(&LAG_UPPER_ARM)),
            Worn::Forearm | Worn::Wrist | Worn::Hand => (draws.draw(&GIVE_FOREARM), draws.draw(&LAG_FOREARM)),
        };
        Self {
            around: draws.draw(&AROUND).to_radians(),
            tilt: DQuat::from_axis_angle(draws.random().direction(), draws.draw(&TILT).to_radians()),
            seat,
            out,
            slip: None,
            tissue: Tissue {
                give: give.to_radians(),
                frequency: draws.draw(&TISSUE_HERTZ) * std::f64::consts::TAU,
                damping: draws.draw(&TISSUE_DAMPING),
                lag,
            },
        }
    }

    /// Lets it slip at a time, tilting about a line across the limb.
    pub fn slips(&mut self, draws: &mut Draws, at_s: f64) {
        let around = draws.random().uniform(0.0, std::f64::consts::TAU);
        let axis = DVec3::new(around.cos(), around.sin(), 0.0);
        self.slip = Some(Slip { at_s, tilt_deg: draws.draw(&SLIP_TILT), axis });
    }

    /// Where the phone is on its way with a limb.
    ///
    /// # Units and shape
    /// One place of the limb's strap and one turn of the bone about its own length in radians for every step.
    pub fn follow(&self, limb: &[Place], axial: &[f64]) -> Vec<Place> {
        let mut give = Give::new(self.tissue);
        let forces = specific_force(limb);
        let start = axial.first().copied().unwrap_or(0.0);
        limb.iter()
            .zip(forces)
            .zip(axial)
            .enumerate()
            .map(|(index, ((place, force), axial))| {
                let sag = give.step(force);
                let lag = DQuat::from_rotation_z(-self.tissue.lag * (axial - start));
                let turn = place.turn * self.slipped(index as f64 * STEP) * lag * DQuat::from_scaled_axis(sag);
                let around = turn * DQuat::from_rotation_z(self.around);
                Place { at: place.at + around * DVec3::X * self.out, turn: around * self.tilt * self.seat }
            })
            .collect()
    }

    fn slipped(&self, time: f64) -> DQuat {
        self.slip.map_or(DQuat::IDENTITY, |slip| {
            let share = minimum_jerk((time - slip.at_s) / SLIP_SECONDS);
            DQuat::from_axis_angle(slip.axis, slip.tilt_deg.to_radians() * share)
        })
    }
}

/// The sensor's axes in those of the limb: one along it (`along` says to which end), the screen or its edge outward.
fn seat(axis: Axis, along: f64) -> DQuat {
    let (limb, outward) = (DVec3::Z * along, DVec3::X);
    let columns = match axis {
        Axis::X => [limb, outward.cross(limb), outward],
        Axis::Y => [limb.cross(outward), limb, outward],
        Axis::Z => [outward, limb.cross(outward), limb],
    };
    DQuat::from_mat3(&DMat3::from_cols(columns[0], columns[1], columns[2]))
}

/// Tissue as a damped spring that the weight of the phone pulls at.
struct Give {
    tissue: Tissue,
    tilt: Option<[f64; 2]>,
    rate: [f64; 2],
}

impl Give {
    const fn new(tissue: Tissue) -> Self {
        Self { tissue, tilt: None, rate: [0.0; 2] }
    }

    /// The tilt after one step under a specific force in the limb's axes, as a turn.
    fn step(&mut self, force: DVec3) -> DVec3 {
        let wanted = [-force.y, force.x].map(|across| self.tissue.give * across / gravity());
        let tilt = self.tilt.get_or_insert(wanted);
        for ((tilt, rate), wanted) in tilt.iter_mut().zip(&mut self.rate).zip(wanted) {
            let Tissue { frequency, damping, .. } = self.tissue;
            *rate += STEP * (frequency * frequency * (wanted - *tilt) - 2.0 * damping * frequency * *rate);
            *tilt += STEP * *rate;
        }
        DVec3::new(tilt[0], tilt[1], 0.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_seat_is_a_turn_with_its_axis_along_the_limb() {
        for axis in Axis::ALL {
            for along in [1.0, -1.0] {
                let own = [DVec3::X, DVec3::Y, DVec3::Z][*axis as usize];
                let seat = seat(*axis, along);
                assert!((seat * own - DVec3::Z * along).length() < 1e-12, "{axis:?}");
                assert!((seat * own.cross(DVec3::ONE) - (seat * own).cross(seat * DVec3::ONE)).length() < 1e-12);
            }
        }
    }

    #[test]
    fn tissue_settles_where_the_weight_pulls_it() {
        let mut give = Give::new(Tissue { give: 0.03, frequency: 50.0, damping: 0.4, lag: 0.0 });
        give.step(DVec3::ZERO);
        let last = (0..2000).map(|_| give.step(DVec3::new(gravity(), 0.0, 0.0))).last();
        assert!(last.is_some_and(|tilt| (tilt - DVec3::new(0.0, 0.03, 0.0)).length() < 1e-9), "{last:?}");
    }
}
