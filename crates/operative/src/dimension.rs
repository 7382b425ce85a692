//! What a rule may ask about: a dimension, its classes, and their order.

/// A dimension by its place in [`DIMENSIONS`](crate::DIMENSIONS).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct DimensionId(pub u8);

/// One thing about the operation that rules may ask about.
#[derive(Debug)]
pub struct Dimension {
    /// The name that protocol files use.
    pub name: &'static str,
    /// The classes; `unknown`, where there is one, is the last.
    pub classes: &'static [Class],
    /// How a fact that is not recorded is read.
    pub unknown: Unknown,
    /// Which questions may be asked of the classes.
    pub order: Order,
}

/// One class of a dimension.
#[derive(Debug)]
pub struct Class {
    /// The name that protocol files use.
    pub name: &'static str,
    /// Severity: a greater rank is worse. Classes of equal rank do not compare,
    /// except that both are worse than rank 0.
    pub rank: u8,
    /// Why the class ends where it ends.
    pub because: &'static str,
}

/// How a fact that is not recorded is read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unknown {
    /// The dimension always has a class.
    Never,
    /// It satisfies every condition that one of these classes satisfies.
    CountsAs(&'static [&'static str]),
    /// It satisfies nothing but `has = "unknown"`.
    OnItsOwn,
}

/// Which questions may be asked of the classes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Order {
    /// `has` and `at least`.
    Total,
    /// `has` only; the ranks still say what is worse than nothing.
    Partial,
    /// `has` only, and no class is worse than another.
    Unordered,
}

/// The name of the class of what is not recorded.
pub(crate) const UNKNOWN: &str = "unknown";

impl Dimension {
    /// The index of a class by its name.
    pub fn class(&self, name: &str) -> Option<u8> {
        (0..).zip(self.classes).find(|(_, class)| class.name == name).map(|(index, _)| index)
    }

    /// The index of the class `unknown`, where there is one.
    pub fn unknown_class(&self) -> Option<u8> {
        match self.unknown {
            Unknown::Never => None,
            Unknown::CountsAs(_) | Unknown::OnItsOwn => self.class(UNKNOWN),
        }
    }

    /// The classes that satisfy `has = "class"`, as a bit for each class index.
    ///
    /// # Method
    /// The class itself, and `unknown` where it counts as that class.
    ///
    /// # Errors
    /// `None` where the dimension has no such class.
    pub fn has(&self, class: &str) -> Option<u16> {
        self.class(class).map(|index| self.with_unknown(1 << index))
    }

    /// The classes that satisfy `at_least = "class"`, as a bit for each class index.
    ///
    /// # Method
    /// Every recorded class of the same or a greater rank, and `unknown` where
    /// it counts as one of them.
    ///
    /// # Errors
    /// `None` where the dimension has no such class, where the class is
    /// `unknown`, or where the classes are not in a total order.
    pub fn at_least(&self, class: &str) -> Option<u16> {
        let least = self.class(class)?;
        let unknown = self.unknown_class();
        if self.order != Order::Total || unknown == Some(least) {
            return None;
        }
        let least = self.classes[usize::from(least)].rank;
        let mask = (0_u8..)
            .zip(self.classes)
            .filter(|(index, class)| Some(*index) != unknown && class.rank >= least)
            .fold(0, |mask, (index, _)| mask | 1 << index);
        Some(self.with_unknown(mask))
    }

    /// Adds the bit of `unknown` where it counts as one of the classes of `mask`.
    fn with_unknown(&self, mask: u16) -> u16 {
        let (Unknown::CountsAs(counted), Some(unknown)) = (self.unknown, self.unknown_class()) else {
            return mask;
        };
        let satisfied = counted.iter().filter_map(|name| self.class(name)).any(|index| mask & (1 << index) != 0);
        if satisfied { mask | 1 << unknown } else { mask }
    }
}
