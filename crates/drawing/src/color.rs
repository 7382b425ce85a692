//! The few colors of every picture.

use std::fmt;

/// A color, red, green and blue.
///
/// # Units and shape
/// Chosen so that each reads in black and white: what means something differs in shape or lightness, never in hue
/// alone.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Color(pub u8, pub u8, pub u8);

impl Color {
    /// Outlines and text.
    pub const INK: Self = Self(0x1d, 0x27, 0x30);
    /// Paper, and skin.
    pub const WHITE: Self = Self(0xff, 0xff, 0xff);
    /// The shirt.
    pub const SHIRT: Self = Self(0xee, 0xf1, 0xf3);
    /// The shorts.
    pub const SHORTS: Self = Self(0xd9, 0xde, 0xe2);
    /// The shoes.
    pub const SHOES: Self = Self(0xc9, 0xce, 0xd3);
    /// Hair.
    pub const HAIR: Self = Self(0x5d, 0x55, 0x50);
    /// The operated arm.
    pub const OPERATED: Self = Self(0xf6, 0xc9, 0xa0);
    /// The hatch of the operated arm.
    pub const HATCH: Self = Self(0xa0, 0x4a, 0x12);
    /// Arcs, arrows and their labels.
    pub const MOVEMENT: Self = Self(0x0b, 0x4f, 0x8a);
    /// The line that says stop.
    pub const STOP: Self = Self(0x8e, 0x1b, 0x12);
    /// Where the movement started.
    pub const GHOST: Self = Self(0x6b, 0x74, 0x7b);
    /// A stick and other wooden things.
    pub const WOOD: Self = Self(0xf4, 0xe3, 0xc4);
    /// The top of a bed or a table.
    pub const TOP: Self = Self(0xf2, 0xef, 0xe9);
    /// The side of a bed or a table, and a wall.
    pub const SIDE: Self = Self(0xdc, 0xd6, 0xcb);
}

impl fmt::Display for Color {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "#{:02x}{:02x}{:02x}", self.0, self.1, self.2)
    }
}
