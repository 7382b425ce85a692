//! Invented recordings of a phone's motion sensors, with the truth beside them.
//!
//! Everything here is made up: no person, no phone, no patient stands behind a recording. A person's joints move by
//! forward kinematics, or the arm swings by the equations of a spherical pendulum; a phone is strapped to the limb;
//! what a perfect sensor would feel is computed, the truth is taken from it, and only then do a phone's errors come on
//! top. Used by tests, benchmarks and `cargo xtask recordings`; it shares nothing with the code that measures.
//!
//! # Sources
//! Lengths and masses come from the table of evidence. What is drawn is a `Parameter` with a source that the
//! truth file repeats; every other number of a movement is own choice, made to look like what people do.
//!
//! # Conventions
//! Axes of the world: X ahead, Y to the left, Z up. Directions of a revolution are as seen from above. The same
//! [`Scenario`] gives the same recording.
#![deny(missing_docs)]

mod arm;
mod exercise;
mod movement;
mod negative;
mod parameter;
mod pendulum;
mod person;
mod phone;
mod random;
mod recording;
mod repetitions;
mod scenario;
mod scene;
mod signal;
mod smooth;
mod strap;
mod truth;

pub use exercise::{Axis, Exercise, Negative, Side, Subject, Worn};
pub use pendulum::{Figure, Way};
pub use person::Person;
pub use phone::{Gravity, RateUnit, Rounding, Sample, Sensors};
pub use random::Random;
pub use recording::{Known, Recording, record};
pub use scenario::{Gap, Scenario};
pub use scene::{Elbow, Ending, Opening, Phase};
pub use strap::{Fit, Grip};
pub use truth::{Revolution, Truth};
