//! The person: areas and lines computed from a pose.
//!
//! A person is built from joints and cross-sections ([`Joints`]), seen by a [`Camera`], and taken apart into areas that
//! do not overlap and lines that end where something lies over them ([`Composition`]). The drawn angle of the operated
//! arm is the pose's angle: nothing between the pose and the picture bends it.
//!
//! # Method
//! Every part of the body is a chain of cross-sections. Its outline is the union of the convex outlines of neighboring
//! sections, so it is always closed. Parts that meet at a joint flow into each other: inside a disk around the joint
//! the outline is open. Which part hides which is decided for each place where two overlap, by depth.
//!
//! # Units and shape
//! Parts of stature; in the picture x to the right and y up, from the middle between the hips.

mod arm;
mod build;
mod composition;
mod faults;
mod grip;
mod hair;
mod hand;
mod hatch;
mod head;
mod hollow;
mod joints;
mod layers;
mod leg;
mod lines;
mod loft;
mod merge;
mod nearer;
mod outline;
mod paint;
mod part;
mod path;
mod person;
mod reach;
mod region;
mod rest;
mod spec;
mod stations;
mod support;
pub mod things;
mod trace;
mod trunk;

pub use crate::camera::{Camera, Projected};
pub use body::{Build, Hair};
pub use composition::{Composition, Figure, Role};
pub use faults::Fault;
pub use joints::{Joints, OtherHand};
pub use paint::{Fade, Placing};
pub use region::Region;
pub use spec::{FigureSpec, Legs, Mark};

#[cfg(test)]
mod tests;
