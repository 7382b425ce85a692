//! Counting through the points of a space, the last axis fastest.

use operative::{DIMENSION_COUNT, DimensionId, Facts};
use protocol::{Answers, Decider};

use crate::groups::{Group, Groups};
use crate::space::{Space, What};
use crate::witness::{Exclusion, excluded_by};

/// The axes that vary while others are held at a class.
pub(crate) struct Axes<'s> {
    pub space: &'s Space<'s>,
    groups: Groups,
    /// The axes that are held, each with its class.
    fixed: Vec<(usize, u8)>,
    /// The axes that vary, the slowest first.
    pub varying: Vec<Varying>,
    /// How many points there are.
    pub total: usize,
}

/// An axis that varies.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Varying {
    /// Its place among the axes of the space.
    pub axis: usize,
    /// How far apart two neighbors on it are.
    pub stride: usize,
    /// How many groups it has.
    pub groups: usize,
    /// Whether it may make a point one that no record can be.
    looked_at: bool,
}

/// Where the count is.
pub(crate) struct Count {
    /// The group on each varying axis.
    pub digits: Vec<usize>,
    /// The records that the groups up to an axis stand for.
    weights: Vec<u64>,
}

/// The point that a count stands for.
pub(crate) struct Place {
    pub point: Vec<u8>,
    pub facts: Facts,
    /// What says that no record is there.
    pub excluded: Option<&'static Exclusion>,
}

/// What the classes of a count answer to the conditions of a family, axis by axis.
pub(crate) struct Answered {
    of_axis: Vec<Vec<Answers>>,
    /// The answers of the axes up to each one.
    joined: Vec<Answers>,
}

impl<'s> Axes<'s> {
    pub(crate) fn new(space: &'s Space<'s>, groups: Groups, fixed: Vec<(usize, u8)>) -> Self {
        let mut varying = Vec::new();
        let mut total = 1;
        for axis in (0..space.axes.len()).rev().filter(|axis| fixed.iter().all(|(fixed, _)| fixed != axis)) {
            let groups = groups.of_axis[axis].len();
            let looked_at = space.is_looked_at(&space.axes[axis]);
            varying.push(Varying { axis, stride: total, groups, looked_at });
            total *= groups;
        }
        varying.reverse();
        Self { space, groups, fixed, varying, total }
    }

    /// What a varying axis varies.
    pub(crate) fn what(&self, at: usize) -> What {
        self.space.axes[self.varying[at].axis].what
    }

    /// The groups of a varying axis.
    pub(crate) fn groups(&self, at: usize) -> &[Group] {
        &self.groups.of_axis[self.varying[at].axis]
    }

    /// How the groups of a varying axis follow one another, by the group they start from.
    pub(crate) fn links(&self, at: usize) -> Vec<Vec<crate::groups::Link>> {
        let links = &self.groups.links[self.varying[at].axis];
        let from = |group| links.iter().filter(move |link| link.from == group).copied().collect();
        (0..self.varying[at].groups).map(from).collect()
    }

    /// The first point.
    pub(crate) fn start(&self) -> Count {
        let mut count = Count { digits: vec![0; self.varying.len()], weights: vec![1; self.varying.len() + 1] };
        self.weigh(&mut count, 0);
        count
    }

    /// Goes one point further; gives the slowest axis that changed. After the last point comes the first.
    pub(crate) fn advance(&self, count: &mut Count) -> usize {
        let mut at = self.varying.len();
        while at > 0 {
            at -= 1;
            count.digits[at] += 1;
            if count.digits[at] < self.varying[at].groups {
                break;
            }
            count.digits[at] = 0;
        }
        self.weigh(count, at);
        at
    }

    fn weigh(&self, count: &mut Count, from: usize) {
        for at in from..self.varying.len() {
            count.weights[at + 1] = count.weights[at] * self.groups(at)[count.digits[at]].size;
        }
    }

    /// The point that some groups stand for.
    pub(crate) fn point(&self, digits: &[usize]) -> Vec<u8> {
        let mut point = vec![0; self.space.axes.len()];
        for &(axis, class) in &self.fixed {
            point[axis] = class;
        }
        for (at, varying) in self.varying.iter().enumerate() {
            point[varying.axis] = self.groups(at)[digits[at]].class;
        }
        point
    }

    /// The point that a count stands for, with its facts.
    pub(crate) fn place(&self, count: &Count) -> Place {
        let point = self.point(&count.digits);
        let facts = self.space.facts(&point);
        Place { point, facts, excluded: excluded_by(&facts) }
    }

    /// Brings a place up to a count that changed from an axis on.
    pub(crate) fn follow(&self, place: &mut Place, count: &Count, from: usize) {
        let mut looked_at = false;
        for at in from..self.varying.len() {
            let varying = self.varying[at];
            let class = self.groups(at)[count.digits[at]].class;
            place.point[varying.axis] = class;
            match self.what(at) {
                What::Fact(id) => place.facts = place.facts.with(id, class),
                What::SafeArc(_) => place.facts.safe_arcs = self.space.safe_arcs(&place.point),
                What::Options | What::Protocol => {}
            }
            looked_at |= varying.looked_at;
        }
        if looked_at {
            place.excluded = excluded_by(&place.facts);
        }
    }
}

impl Count {
    /// How many records the point stands for.
    pub(crate) fn weight(&self) -> u64 {
        self.weights.last().copied().unwrap_or(1)
    }
}

impl Answered {
    pub(crate) fn new(axes: &Axes<'_>, decider: &Decider<'_>, facts: &Facts, count: &Count) -> Self {
        let answers = |at: usize, class: u8| match axes.what(at) {
            What::Fact(id) => decider.answers(id, class),
            What::Options | What::Protocol | What::SafeArc(_) => Answers::NOTHING_ASKED,
        };
        let of_axis: Vec<Vec<Answers>> = (0..axes.varying.len())
            .map(|at| axes.groups(at).iter().map(|group| answers(at, group.class)).collect())
            .collect();
        // The dimensions that do not vary answer once.
        let varies = |id| (0..axes.varying.len()).any(|at| axes.what(at) == What::Fact(id));
        let rest = (0..DIMENSION_COUNT as u8).map(DimensionId).filter(|id| !varies(*id));
        let rest = rest.map(|id| decider.answers(id, facts.class(id))).fold(Answers::NOTHING_ASKED, Answers::and);
        let mut answered = Self { joined: vec![rest; of_axis.len() + 1], of_axis };
        answered.follow(count, 0);
        answered
    }

    /// Brings the answers up to a count that changed from an axis on.
    pub(crate) fn follow(&mut self, count: &Count, from: usize) {
        for at in from..self.of_axis.len() {
            self.joined[at + 1] = self.joined[at].and(self.of_axis[at][count.digits[at]]);
        }
    }

    /// The answers of the point.
    pub(crate) fn all(&self) -> Answers {
        self.joined[self.of_axis.len()]
    }
}
