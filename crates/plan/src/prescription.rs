//! The prescription as people and programs read it.

use body::{Key, Side};
use evidence::Entry;
use jiff::civil::Date;
use quantity::{Degrees, Kilograms, PostoperativeDay};

use crate::{Allowed, Reason, SlingPosition, Wear};

/// A dated prescription for one shoulder, every line with its reason.
#[derive(Debug, Clone)]
pub struct Prescription {
    /// The practice's label of the patient.
    pub patient: Option<String>,
    /// Day 0.
    pub operated_on: Date,
    /// The operated side.
    pub side: Side,
    /// The protocol and why it was chosen.
    pub protocol: ProtocolUsed,
    /// The stages, in order of their gates.
    pub stages: Vec<StageLine>,
    /// Runs of days within which nothing changes, from day 0 to the horizon without a gap.
    pub spans: Vec<SpanOfDays>,
    /// The first day of each movement and mode.
    pub first_allowed: Vec<FirstAllowed>,
    /// Indices of healing; for clinicians only.
    pub indices: Vec<Index>,
    /// What to ask.
    pub questions: Vec<Question>,
    /// Over how many completions of the record the plan was compared.
    pub completions: u64,
    /// When to be seen.
    pub visits: Vec<VisitLine>,
    /// Return to activities.
    pub returns: Vec<ReturnLine>,
    /// What the clinician should know.
    pub cautions: Vec<String>,
    /// Loosenings of the surgeon's, in words; printed wherever the plan is.
    pub loosened: Vec<String>,
    /// The surgeon's own choices that loosen: what is proved of the files does not speak of them.
    pub outside_the_proof: Vec<String>,
    /// Holds and go-backs, in words.
    pub moved: Vec<String>,
    /// Go-backs, in order of their days.
    pub go_backs: Vec<GoBack>,
    /// The day that was asked for.
    pub today: Option<Today>,
}

/// The protocol a prescription was made from.
#[derive(Debug, Clone)]
pub struct ProtocolUsed {
    /// Its id.
    pub id: String,
    /// Its title.
    pub title: String,
    /// Its edition.
    pub edition: String,
    /// Protocols that cap it.
    pub capped_by: Vec<String>,
    /// Why it was chosen, and what caps it.
    pub why: Vec<Reason>,
}

/// A stage and what stands before it.
#[derive(Debug, Clone)]
pub struct StageLine {
    /// Its id.
    pub id: String,
    /// Its title.
    pub title: String,
    /// Its gate: the first day it may be opened for.
    pub from_day: PostoperativeDay,
    /// The gate as a date.
    pub from: Date,
    /// Whether the surgeon has opened it for that gate: an opening counts only up to the next go-back that closes it.
    pub opened: bool,
    /// Where it is opened now and a go-back ahead closes it again: the day of that go-back.
    pub closes_again: Option<(PostoperativeDay, Date)>,
    /// What is looked at before it is opened.
    pub criteria: Vec<Criterion>,
    /// Why the gate is where it is.
    pub reasons: Vec<Reason>,
}

/// A day from which the plan goes back to a stage.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct GoBack {
    /// The stage.
    pub stage: String,
    /// The day.
    pub day: PostoperativeDay,
    /// The day as a date.
    pub date: Date,
}

impl StageLine {
    /// Whether what the surgeon has signed opens it on a day, go-backs that lie ahead included.
    pub fn is_open_on(&self, day: PostoperativeDay) -> bool {
        self.opened || self.closes_again.is_some_and(|(closes, _)| day < closes)
    }
}

impl Prescription {
    /// Whether the stage of a run of days, and each before it, is open on its first day as far as is signed.
    pub fn is_open(&self, span: &SpanOfDays) -> bool {
        let place = self.stages.iter().position(|stage| stage.id == span.stage);
        place.is_some_and(|place| self.stages[..=place].iter().all(|stage| stage.is_open_on(span.from_day)))
    }

    /// The first go-back after a day.
    pub fn next_go_back(&self, after: Date) -> Option<&GoBack> {
        self.go_backs.iter().find(|back| back.date > after)
    }
}

/// Something looked at before a stage is opened.
#[derive(Debug, Clone)]
pub struct Criterion {
    /// Its id.
    pub id: String,
    /// What has to be so.
    pub text: String,
    /// Where it comes from.
    pub reasons: Vec<Reason>,
}

/// A run of days within which nothing changes.
#[derive(Debug, Clone)]
pub struct SpanOfDays {
    /// First day.
    pub from_day: PostoperativeDay,
    /// First day after.
    pub until_day: PostoperativeDay,
    /// First day as a date.
    pub from: Date,
    /// First day after, as a date.
    pub until: Date,
    /// The stage these days belong to.
    pub stage: String,
    /// The sling.
    pub sling: SlingLine,
    /// What is allowed, key by key.
    pub limits: Vec<LimitRow>,
    /// What to aim for.
    pub goals: Vec<GoalLine>,
    /// What to do.
    pub exercises: Vec<ExerciseLine>,
    /// Exercises of the protocol that these days do not allow, and why.
    pub dropped: Vec<Dropped>,
    /// Exercises taken from the catalogue in place of dropped ones.
    pub replaced: Vec<Replacement>,
}

/// The sling on a run of days.
#[derive(Debug, Clone, PartialEq)]
pub struct SlingLine {
    /// How much it is worn.
    pub wear: Wear,
    /// How it holds the arm.
    pub position: SlingPosition,
    /// What it comes off for.
    pub except: Vec<String>,
    /// Why.
    pub reasons: Vec<Reason>,
}

/// One limit.
#[derive(Debug, Clone, PartialEq)]
pub struct LimitRow {
    /// What it is about.
    pub key: Key,
    /// How far.
    pub allowed: Allowed,
    /// Whether the movement is allowed only lying on the back.
    pub only_lying: bool,
    /// Why.
    pub reasons: Vec<Reason>,
}

/// One goal.
#[derive(Debug, Clone, PartialEq)]
pub struct GoalLine {
    /// Its id.
    pub id: String,
    /// What it is about.
    pub key: Key,
    /// Lower end.
    pub from: Degrees,
    /// Upper end; `None` where the source says within normal limits.
    pub to: Option<Degrees>,
    /// When it is due.
    pub due: PostoperativeDay,
    /// Whether a limit keeps it lower than its source.
    pub held_by_limit: bool,
    /// Whether the other shoulder is the goal where it moves less.
    pub or_other_shoulder: bool,
    /// Whether the surgeon adopted it, where it is known from memory only.
    pub adopted: bool,
    /// Why.
    pub reasons: Vec<Reason>,
}

/// One exercise with its dose.
#[derive(Debug, Clone, PartialEq)]
pub struct ExerciseLine {
    /// Its id in the catalogue.
    pub id: String,
    /// What it moves, and how.
    pub key: Key,
    /// Sets at a time.
    pub sets: u16,
    /// Repetitions in a set.
    pub repetitions: u16,
    /// Repetitions to rise to.
    pub repetitions_to: Option<u16>,
    /// How long each is held, in seconds.
    pub hold_s: u16,
    /// Times a day.
    pub times_per_day: u16,
    /// Days a week, where it is not every day.
    pub days_per_week: Option<u16>,
    /// How far, for an exercise that goes toward a limit.
    pub target: Option<Degrees>,
    /// Whether nothing bounds how far it goes, so that comfort does.
    pub as_far_as_comfortable: bool,
    /// How heavy.
    pub load: Option<Kilograms>,
    /// Whether somebody has to be there.
    pub supervised: bool,
    /// Why.
    pub reasons: Vec<Reason>,
}

/// An exercise of the protocol that is left out on some days.
#[derive(Debug, Clone, PartialEq)]
pub struct Dropped {
    /// Its id.
    pub id: String,
    /// Why, in a line.
    pub because: String,
    /// The rules behind it.
    pub reasons: Vec<Reason>,
}

/// An exercise that stands in for another.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Replacement {
    /// The one left out.
    pub dropped: String,
    /// The one taken.
    pub taken: String,
}

/// The first day of a movement in a mode.
#[derive(Debug, Clone)]
pub struct FirstAllowed {
    /// Joint, movement and mode; any position.
    pub key: Key,
    /// The day.
    pub day: PostoperativeDay,
    /// The date.
    pub date: Date,
    /// Why not before.
    pub reasons: Vec<Reason>,
}

/// An index of healing.
#[derive(Debug, Clone)]
pub struct Index {
    /// Its id.
    pub id: &'static str,
    /// The score, where nothing is missing.
    pub score: Option<u8>,
    /// The lowest it can be.
    pub low: u8,
    /// The highest it can be.
    pub high: u8,
    /// What is missing.
    pub missing: Vec<String>,
    /// The highest there is.
    pub of: u8,
    /// What it means.
    pub meaning: String,
    /// Where it comes from.
    pub evidence: Vec<&'static Entry>,
}

/// Something only the surgeon can answer.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Question {
    /// Where the answer is written.
    pub path: String,
    /// The question.
    pub text: String,
    /// What the answer could change; empty where the question blocks signing.
    pub changes: Vec<QuestionChange>,
}

/// What an answer could change.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct QuestionChange {
    /// The key, or `sling`.
    pub key: String,
    /// First day.
    pub from_day: PostoperativeDay,
    /// First day after.
    pub until_day: PostoperativeDay,
    /// By how many degrees at most; `None` where the key has none.
    pub degrees: Option<Degrees>,
}

/// A visit.
#[derive(Debug, Clone)]
pub struct VisitLine {
    /// The day it is due.
    pub due_day: PostoperativeDay,
    /// The clinic day.
    pub day: PostoperativeDay,
    /// The date of the clinic day.
    pub date: Date,
    /// What it is for.
    pub purpose: String,
}

/// Return to an activity.
#[derive(Debug, Clone)]
pub struct ReturnLine {
    /// The activity in the catalogue.
    pub activity: String,
    /// The first day, by date and by limits; `None` where no dated day allows it.
    pub day: Option<PostoperativeDay>,
    /// The first day as a date.
    pub date: Option<Date>,
    /// Whether the surgeon has to open it even then.
    pub opened_by_surgeon: bool,
    /// A remark of the protocol's.
    pub note: Option<String>,
    /// Why not before.
    pub reasons: Vec<Reason>,
}

/// One day of the prescription, with what is opened.
#[derive(Debug, Clone)]
pub struct Today {
    /// The day.
    pub day: PostoperativeDay,
    /// The date.
    pub date: Date,
    /// The last opened stage.
    pub stage: String,
    /// Whether an unopened gate holds the plan.
    pub basis: TodayBasis,
    /// The sling.
    pub sling: SlingLine,
    /// What is allowed.
    pub limits: Vec<LimitRow>,
    /// What to do.
    pub exercises: Vec<ExerciseLine>,
    /// What to aim for.
    pub goals: Vec<GoalLine>,
    /// What comes next.
    pub not_before: Option<NotBefore>,
}

/// Whether the dated plan of an opened stage is in force, or an unopened gate holds it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TodayBasis {
    /// The dated plan.
    Opened,
    /// The lowest each limit has had since the last day before the unopened gate.
    Frozen,
}

/// The next stage, and its gate.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NotBefore {
    /// Its id.
    pub stage: String,
    /// Its gate.
    pub day: PostoperativeDay,
    /// Its gate as a date.
    pub date: Date,
}
