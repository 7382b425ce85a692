//! Pieces of the picture before it is known which hides which.

use kurbo::Point;

use super::joints::Flank;
use super::lines::Line;
use super::loft::Shell;
use super::region::Region;

/// What a piece is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub(crate) enum Kind {
    Skull,
    Ear(Flank),
    Hair,
    Bun,
    Neck,
    Shirt,
    Hips,
    Shorts(Flank),
    Thigh(Flank),
    Shank(Flank),
    Shoe(Flank),
    UpperArm(Flank),
    Forearm(Flank),
    Palm(Flank),
    /// A finger; the thumb is the last.
    Finger(Flank, usize),
    /// A thing, by its place in the list.
    Thing(usize),
    Ghost,
}

impl Kind {
    /// Whose arm it belongs to.
    pub(crate) const fn arm(self) -> Option<Flank> {
        match self {
            Self::UpperArm(flank) | Self::Forearm(flank) | Self::Palm(flank) | Self::Finger(flank, _) => Some(flank),
            _ => None,
        }
    }

    pub(crate) const fn is_hand(self) -> bool {
        matches!(self, Self::Palm(_) | Self::Finger(..))
    }

    pub(crate) const fn is_head(self) -> bool {
        matches!(self, Self::Skull | Self::Ear(_) | Self::Hair | Self::Bun)
    }
}

/// The color of an area.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub(crate) enum Tone {
    Skin,
    Operated,
    Shirt,
    Shorts,
    Shoes,
    Hair,
    Wood,
    Top,
    Side,
    /// Nothing: only its line is drawn.
    None,
}

/// What a line is drawn with.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub(crate) enum Ink {
    Furniture,
    Thing,
    Hair,
    Seam,
    Fine,
    Hand,
    Body,
    Face,
    Eye,
    Ghost,
}

/// Whether a piece hides others.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Order {
    /// Where it is nearer to the viewer.
    ByDepth,
    /// Never: behind everything.
    Behind,
}

/// A piece of the picture.
#[derive(Debug, Clone)]
pub(crate) struct Part {
    /// What it is; several after limbs were joined.
    pub(crate) kinds: Vec<Kind>,
    pub(crate) shells: Vec<Shell>,
    pub(crate) region: Region,
    /// Its areas; usually one.
    pub(crate) areas: Vec<(Region, Tone)>,
    pub(crate) ink: Ink,
    /// Lines besides the outline.
    pub(crate) extra: Vec<(Line, Ink)>,
    pub(crate) order: Order,
}

impl Part {
    /// A piece made of solids.
    pub(crate) fn of(kind: Kind, tone: Tone, ink: Ink, shells: Vec<Shell>) -> Self {
        let hulls: Vec<Vec<Point>> = shells.iter().flat_map(Shell::hulls).collect();
        let region = Region::union_of(hulls.iter().map(Vec::as_slice));
        Self::with_region(kind, tone, ink, shells, region)
    }

    /// A piece of a known outline.
    pub(crate) fn with_region(kind: Kind, tone: Tone, ink: Ink, shells: Vec<Shell>, region: Region) -> Self {
        let areas = vec![(region.clone(), tone)];
        Self { kinds: vec![kind], shells, region, areas, ink, extra: Vec::new(), order: Order::ByDepth }
    }

    /// Gives it another outline.
    pub(crate) fn reshape(&mut self, region: Region) {
        self.areas = vec![(region.clone(), self.tone())];
        self.region = region;
    }

    pub(crate) fn is(&self, kind: Kind) -> bool {
        self.kinds.contains(&kind)
    }

    pub(crate) fn tone(&self) -> Tone {
        self.areas.first().map_or(Tone::None, |area| area.1)
    }

    /// The depth of its surface that is nearest to the viewer.
    pub(crate) fn front(&self, point: Point) -> Option<f64> {
        self.shells.iter().filter_map(|shell| shell.front(point)).max_by(f64::total_cmp)
    }
}

/// Where two pieces of a body are joined.
#[derive(Debug, Clone, Copy)]
pub(crate) struct JointDisk {
    pub(crate) outer: Kind,
    pub(crate) inner: Kind,
    pub(crate) center: Point,
    pub(crate) radius: f64,
    /// Whether the outer piece lies over the inner one inside the disk, whatever else is known.
    pub(crate) outer_wins: bool,
}

/// The open end of a garment, out of which a limb comes.
#[derive(Debug, Clone)]
pub(crate) struct Rim {
    pub(crate) garment: Kind,
    pub(crate) limb: Kind,
    /// Its edge, and whether it is the half of it that is nearer to the viewer.
    pub(crate) edge: Vec<(Point, bool)>,
    pub(crate) faces_viewer: bool,
    /// Whether one looks far into it.
    pub(crate) is_wide_open: bool,
    /// The first cross-section of the limb, inside the garment.
    pub(crate) limb_start: Vec<Point>,
}

/// All pieces of a picture.
#[derive(Debug, Default)]
pub(crate) struct Scene {
    pub(crate) parts: Vec<Part>,
    pub(crate) joints: Vec<JointDisk>,
    pub(crate) rims: Vec<Rim>,
    /// Pairs of which the first always hides the second.
    pub(crate) over: Vec<(Kind, Kind)>,
}
