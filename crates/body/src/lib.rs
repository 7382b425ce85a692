//! The body: its words, its angles, its weight.
//!
//! A [`Key`] names one thing that a plan may limit. A [`Pose`] says how a body holds its arms; from it come the
//! places of the joints ([`Skeleton`]), the gravitational moments ([`Moments`]) and what the hand reaches in the
//! words of a household ([`Landmark`]).
//!
//! # Conventions
//! Axes by the recommendation of the International Society of Biomechanics of 2005: X forward, Y up, Z to the right.
//! Everything is told of a right arm; a left one is the mirror image. No number of a body stands here: each comes
//! from the table of evidence.
#![deny(missing_docs)]

mod angle;
mod arctangent;
mod arm;
mod batch;
mod clinical;
mod household;
mod key;
mod landmarks;
mod load;
mod look;
mod matrix;
pub mod noise;
mod normal_range;
mod person;
mod pose;
mod posture;
mod rotation;
mod segment;
mod skeleton;
mod table;
mod thoracohumeral;
mod words;

pub use angle::Angle;
pub use arm::{Arm, Blade, Fingers, Shoulder};
pub use batch::{Reading, read_all};
pub use clinical::{ClinicalReading, NotTold, PlaneName};
pub use household::{Height, Landmark};
pub use key::{ALL_KEYS, Key, KeyError};
pub use landmarks::{ArmLandmarks, LandmarkError, LandmarkFrame, ThoraxLandmarks};
pub use load::{HangingArm, Moment, Moments, Peak, Spread};
pub use look::{Build, Hair, Look};
pub use matrix::{Frame, FrameCheck, Matrix};
pub use normal_range::UsualMotion;
pub use person::{Person, PersonError, accepted_mass, accepted_stature};
pub use pose::Pose;
pub use posture::Posture;
pub use rotation::{Rotation, Vector};
pub use segment::SegmentTable;
pub use skeleton::{ArmJoints, LegJoints, Skeleton};
pub use table::{elbow_on_table, lean_over_table};
pub use thoracohumeral::{ForwardRightAxial, Thoracohumeral};
pub use words::{Joint, Mode, Movement, Position, Side};

#[cfg(test)]
mod load_tests;
