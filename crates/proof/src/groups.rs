//! Classes that no rule of the family tells apart, taken together.

use protocol::Compiled;

use crate::space::{Space, What};

/// For each axis its classes in groups, and how groups follow one another.
#[derive(Debug, Clone)]
pub struct Groups {
    /// For each axis its groups.
    pub of_axis: Vec<Vec<Group>>,
    /// For each axis the pairs of groups that covers join, and how many covers each stands for.
    pub links: Vec<Vec<Link>>,
}

/// Classes of one axis that every rule answers alike.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Group {
    /// The class that stands for them.
    pub class: u8,
    /// How many there are.
    pub size: u64,
}

/// Two groups of one axis, of which the second holds the next worse class.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Link {
    /// The group of the milder class.
    pub from: usize,
    /// The group of the worse one.
    pub to: usize,
    /// How many covers join them.
    pub covers: u64,
}

impl Groups {
    /// Each class for itself.
    pub fn singly(space: &Space<'_>) -> Self {
        Self::new(space, |_, class| class.into())
    }

    /// Classes together that satisfy the same conditions of every rule and selection.
    ///
    /// # Method
    /// A plan is composed from which conditions hold and from nothing else of the
    /// facts, so that two classes of one group give the same plan. Axes that say
    /// what no record can be are kept apart, class by class.
    pub fn by_rule(space: &Space<'_>, compiled: &[&Compiled<'_>]) -> Self {
        Self::new(space, |axis, class| match space.axes[axis].what {
            What::Fact(id) if !space.is_looked_at(&space.axes[axis]) => {
                let masks: Vec<u16> = compiled.iter().flat_map(|compiled| compiled.masks_on(id)).collect();
                masks.iter().fold(1, |answers, mask| answers << 1 | u128::from(mask >> class & 1))
            }
            _ => u128::from(class),
        })
    }

    fn new(space: &Space<'_>, answers: impl Fn(usize, u8) -> u128) -> Self {
        let mut of_axis = Vec::new();
        let mut links = Vec::new();
        for (place, axis) in space.axes.iter().enumerate() {
            let mut groups: Vec<(u128, Group)> = Vec::new();
            let mut group_of = Vec::new();
            for class in 0..axis.classes.len() as u8 {
                let answer = answers(place, class);
                let known = groups.iter().position(|(known, _)| *known == answer);
                group_of.push(known.unwrap_or(groups.len()));
                match known {
                    Some(known) => groups[known].1.size += 1,
                    None => groups.push((answer, Group { class, size: 1 })),
                }
            }
            let mut joined: Vec<Link> = Vec::new();
            for &(a, b) in &axis.covers {
                let (from, to) = (group_of[usize::from(a)], group_of[usize::from(b)]);
                match joined.iter_mut().find(|link| (link.from, link.to) == (from, to)) {
                    Some(link) => link.covers += 1,
                    None => joined.push(Link { from, to, covers: 1 }),
                }
            }
            of_axis.push(groups.into_iter().map(|(_, group)| group).collect());
            links.push(joined);
        }
        Self { of_axis, links }
    }

    /// How many points there are to walk.
    pub fn product(&self) -> u128 {
        self.of_axis.iter().map(|groups| groups.len() as u128).product()
    }
}
