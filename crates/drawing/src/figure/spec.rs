//! What a figure shows.

use body::Pose;

use super::joints::OtherHand;
use super::things::Thing;
use body::{Build, Hair};

/// What a figure shows.
#[derive(Debug, Clone, PartialEq)]
pub struct FigureSpec {
    /// The pose, the operated arm being the right one.
    pub pose: Pose,
    /// Where the movement starts: drawn as a dashed outline of the arm.
    pub ghost: Option<Pose>,
    /// How the person is built.
    pub build: Build,
    /// What is on the head.
    pub hair: Hair,
    /// What the other arm does.
    pub other_hand: OtherHand,
    /// What the person holds, leans on, sits on or lies on.
    pub things: Vec<Thing>,
    /// Whether the operated arm is told apart by tone and hatching.
    pub mark: Mark,
    /// Whether legs are drawn.
    pub legs: Legs,
}

/// Whether legs are drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Legs {
    /// They are.
    #[default]
    Drawn,
    /// Left out, where they would hide what a small picture is about.
    LeftOut,
}

/// What is told apart by tone and hatching.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Mark {
    /// The operated arm.
    #[default]
    OperatedArm,
    /// Nothing.
    Nothing,
}

impl FigureSpec {
    /// A pose, everything else plain.
    pub fn new(pose: Pose) -> Self {
        Self {
            pose,
            ghost: None,
            build: Build::default(),
            hair: Hair::default(),
            other_hand: OtherHand::default(),
            things: Vec::new(),
            mark: Mark::default(),
            legs: Legs::default(),
        }
    }
}
