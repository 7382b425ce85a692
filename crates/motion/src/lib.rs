//! Measuring a movement from the sensors of a phone on the arm.
//!
//! In go samples of an accelerometer and a gyroscope; out come repetitions, angles with their error, directions, and
//! first of all whether any of it can be told. Nothing here reads a clock or a file, and nothing decides about a
//! patient: events and angles are told, never acted on.
//!
//! # Conventions
//! The phone's axes are x to the right of the screen, y to its top, z out of it; the room's are z up, heading arbitrary.
//! Specific force is positive on the axis that points up. Thresholds stand where they are used, each with where it
//! comes from; "evidence notes" are the project's notes on sensing with a phone.
#![deny(missing_docs)]

mod events;
mod measure;
mod measurement;
pub mod orientation;
mod pendulum;
mod principal;
mod repetition;
mod sample;
mod set;
mod setup;
mod signal;
mod smooth;
mod smoothness;
mod steps;
mod stream;
mod task;
mod tilt;
mod uncertainty;
mod verdict;

pub use events::{Event, Kind as EventKind};
pub use measure::measure;
pub use measurement::{Curve, Direction, DropOff, Effort, Measurement, Repeated, Tempo};
pub use pendulum::Path as PendulumPath;
pub use sample::{Gap, LeftOut, Recording, Sample};
pub use setup::Layout;
pub use stream::{Stage, State, Stream};
pub use task::{Axis, Exercise, Task, Worn};
pub use tilt::{Estimate, Tilt, tilt};
pub use verdict::WhyNot;
