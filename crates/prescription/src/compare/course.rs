//! One side of a comparison, laid out by postoperative day.

use std::collections::BTreeMap;

use body::{Key, Position};
use plan::{Cell, ExerciseLine, SlingPosition, Wear};

use super::runs::Runs;

/// Everything of a plan that is compared.
///
/// # Units and shape
/// Days are postoperative days and half open. A key without a row has the value
/// of its row for any position, and without that the value `unlisted`.
#[derive(Debug, Clone)]
pub struct Course {
    /// The first day after the dated plan.
    pub horizon: u16,
    /// What a key has that no row names: `no` in a plan, `free` in a rule, which only caps.
    pub unlisted: Cell,
    /// The limits.
    pub limits: BTreeMap<Key, Runs<Value>>,
    /// The sling.
    pub sling: Runs<Sling>,
    /// The exercises, by their ids.
    pub exercises: BTreeMap<String, Runs<Exercise>>,
    /// Stages, goals, visits and returns.
    pub lines: Vec<Line>,
    /// What is said beside the plan.
    pub beside: Vec<Beside>,
}

/// The value of a limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Value {
    /// How far.
    pub cell: Cell,
    /// Whether only lying on the back.
    pub only_lying: bool,
}

impl Value {
    /// A value that holds in every posture.
    pub const fn of(cell: Cell) -> Self {
        Self { cell, only_lying: false }
    }

    /// Whether everything that `other` allows is allowed here too.
    pub fn allows_as_much_as(self, other: Self) -> bool {
        !other.cell.is_open() || (self.cell >= other.cell && (!self.only_lying || other.only_lying))
    }
}

/// How the sling is worn.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sling {
    /// How much.
    pub wear: Wear,
    /// How it holds the arm.
    pub position: SlingPosition,
    /// What it comes off for.
    pub except: Vec<String>,
}

/// An exercise on some days.
#[derive(Debug, Clone, PartialEq)]
pub struct Exercise {
    /// What to do; without its reasons.
    pub line: ExerciseLine,
    /// What a protocol's file says beside it, such as "only while another exercise is not possible".
    pub remarks: Vec<String>,
}

/// What a line of a plan is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum LineKind {
    /// A stage with its gate.
    Stage,
    /// A goal with the day it is due.
    Goal,
    /// A visit with the day it is due.
    Visit,
    /// The return to an activity.
    Return,
}

/// A line with one day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Line {
    /// What it is.
    pub kind: LineKind,
    /// Its id; for a visit, what it is for.
    pub id: String,
    /// Its title, where it has one.
    pub title: String,
    /// Its day; `None` where no dated day has it.
    pub day: Option<u16>,
    /// What else it says.
    pub says: String,
}

/// Something said beside the plan.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Beside {
    /// What kind of remark.
    pub what: &'static str,
    /// The remark.
    pub text: String,
}

/// The kinds of remarks beside a plan.
pub mod beside {
    /// The protocol in force, with those that cap it.
    pub const PROTOCOL: &str = "protocol";
    /// Stages the surgeon has opened.
    pub const OPENED: &str = "opened stage";
    /// Loosenings by the surgeon.
    pub const LOOSENED: &str = "loosened by the surgeon";
    /// Holds and go-backs.
    pub const MOVED: &str = "moved";
    /// Open questions.
    pub const QUESTION: &str = "question";
    /// Indices of healing.
    pub const INDEX: &str = "index";
    /// Cautions.
    pub const CAUTION: &str = "caution";
    /// How far the dated plan reaches.
    pub const HORIZON: &str = "last dated day";
    /// The latest day on which movements are open passively.
    pub const PASSIVE_BY: &str = "open passively";
    /// Limits whose last bound stays until the surgeon names another.
    pub const SURGEON: &str = "until the surgeon names another bound";
    /// When a rule fires, and what it does beside its limits.
    pub const RULE: &str = "rule";
    /// How a family selects, refuses and asks.
    pub const FAMILY: &str = "family";
}

impl Course {
    /// A course without anything in it.
    pub fn empty(horizon: u16, unlisted: Cell) -> Self {
        Self {
            horizon,
            unlisted,
            limits: BTreeMap::new(),
            sling: Runs::default(),
            exercises: BTreeMap::new(),
            lines: Vec::new(),
            beside: Vec::new(),
        }
    }

    /// The value of a key on a day.
    pub fn value(&self, key: Key, day: u16) -> Value {
        let row = |key: Key| self.limits.get(&key).and_then(|runs| runs.at(day)).copied();
        row(key).or_else(|| row(key.in_position(Position::Any))).unwrap_or(Value::of(self.unlisted))
    }

    /// The first day on which a key is not `no`, in any position; `None` where it never is.
    pub(super) fn first_open(&self, any: Key) -> Option<u16> {
        let of_movement = |key: &Key| key.in_position(Position::Any) == any;
        let rows = self.limits.iter().filter(|(key, _)| of_movement(key));
        rows.flat_map(|(_, runs)| runs.iter().find(|run| run.value.cell.is_open() && run.from < self.horizon))
            .map(|run| run.from)
            .min()
    }

    /// Says something beside the plan.
    pub fn say(&mut self, what: &'static str, text: impl Into<String>) {
        self.beside.push(Beside { what, text: text.into() });
    }
}
