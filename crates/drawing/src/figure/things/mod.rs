//! Things a person holds, leans on, sits on or lies on.
//!
//! Sizes are own choice, drawn by eye, of things as they stand in a home; nothing but drawings rests on them.

mod furniture;
mod pieces;
mod sling;

use body::Vector;

pub use furniture::{bed, chair, door_frame, ground, pillow_under_head, stool, table, wall};
pub(crate) use pieces::{STICK, add, stick_ends};

/// A thing in the picture.
///
/// # Units and shape
/// Places in the room and lengths in parts of stature, as in [`super::Joints`].
#[derive(Debug, Clone, PartialEq)]
pub enum Thing {
    /// A stick from one spot to another and beyond both.
    Stick {
        /// What it goes through.
        ends: [Spot; 2],
        /// How far it goes on beyond each.
        beyond: [f64; 2],
    },
    /// An elastic band along some spots.
    Band(Vec<Spot>),
    /// A thin cord along some spots, as of a pulley.
    Cord(Vec<Spot>),
    /// A small weight in a hand.
    Weight(Spot),
    /// A ball; one in a hand lies in the palm.
    Ball {
        /// Where it is.
        at: Spot,
        /// How large.
        radius: f64,
    },
    /// A folded cloth under or in a hand.
    Cloth(Spot),
    /// A rolled towel from one place to another.
    Roll {
        /// The middles of its ends.
        ends: [Vector; 2],
        /// How thick.
        radius: f64,
    },
    /// A post or a leg of furniture.
    Post {
        /// The middles of its ends.
        ends: [Vector; 2],
        /// How thick.
        radius: f64,
    },
    /// A block: a table top, a seat, a bed, a step, a slab of wall.
    Block(Block),
    /// A soft cushion.
    Cushion(Block),
    /// The line of the ground under a place, this long.
    Ground {
        /// Its middle.
        at: Vector,
        /// Half its length.
        half: f64,
    },
    /// A sling on the operated arm.
    Sling,
}

/// Where something is held or fixed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Spot {
    /// In the operated hand.
    OperatedHand,
    /// In the other hand.
    OtherHand,
    /// Here.
    At(Vector),
}

/// A block with its sides along three directions.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Block {
    /// Its middle.
    pub middle: Vector,
    /// Half its length, height and breadth, as directions; the second points up.
    pub half: [Vector; 3],
    /// Whether it takes part in hiding and being hidden.
    pub place: BlockPlace,
}

/// Whether a block can lie before something.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BlockPlace {
    /// Always behind the person, as a bed under it.
    Behind,
    /// Where it is.
    Among,
}

impl Block {
    /// An upright block in the room: its middle, and half its size forward, up and to the right.
    pub fn upright(middle: Vector, ahead: f64, up: f64, right: f64, place: BlockPlace) -> Self {
        Self { middle, half: [Vector::X * ahead, Vector::Y * up, Vector::Z * right], place }
    }
}
