//! Protocol files as they are written: a family, its protocols, and the rules
//! that single findings add.

mod evidence_of;
mod family;
mod keys;
mod passive_by;
mod protocol;
mod rules;
mod steps;

use body::{Key, Mode};
use diagnostic::Span;
use evidence::Entry;
use operative::DimensionId;
use plan::{Cell, SlingPosition, Wear};
use quantity::{Degrees, PostoperativeDay};

pub use family::read as read_family;
pub use passive_by::PassiveBy;
pub use protocol::{read, read_part};
pub use rules::read as read_rules;

/// The family: which protocol is the default, and what has to be asked.
#[derive(Debug, Clone)]
pub struct FamilyFile {
    /// Its id.
    pub id: String,
    /// Its title.
    pub title: String,
    /// The class of the dimension `procedure` it is for.
    pub procedure: Condition,
    /// The protocol taken where no selection fires.
    pub default: String,
    /// The ids of its protocols.
    pub protocols: Vec<String>,
    /// The stage whose gate ends a safe arc that names no day.
    pub safe_arc_until_stage: String,
    /// Selections, in order; the last that fires counts.
    pub selects: Vec<Select>,
    /// Protocols that are only ever chosen by the surgeon.
    pub on_request: Vec<OnRequest>,
    /// What has to be asked before anybody signs.
    pub questions: Vec<FamilyQuestion>,
    /// What of a record the family sets aside on purpose.
    pub not_read: Vec<NotRead>,
    /// Where it was written.
    pub span: Span,
}

/// A fact that no rule of the family asks for, on purpose.
#[derive(Debug, Clone)]
pub struct NotRead {
    /// The dimension.
    pub dimension: DimensionId,
    /// Why it changes nothing here.
    pub because: String,
    /// Where it was written.
    pub span: Span,
}

/// A rule that takes another protocol than the default.
#[derive(Debug, Clone)]
pub struct Select {
    /// Its id.
    pub id: String,
    /// What it says.
    pub title: String,
    /// The protocol it takes.
    pub protocol: String,
    /// When it fires.
    pub when: When,
    /// Where it comes from.
    pub evidence: Vec<&'static Entry>,
    /// Where it was written.
    pub span: Span,
}

/// A protocol that only the surgeon's own choice takes.
#[derive(Debug, Clone)]
pub struct OnRequest {
    /// The protocol.
    pub protocol: String,
    /// The class that needs a second confirmation, and the words of it.
    pub confirm_large: Option<(Condition, String)>,
}

/// A question to the surgeon that blocks signing.
#[derive(Debug, Clone)]
pub struct FamilyQuestion {
    /// Its id.
    pub id: String,
    /// Where the answer is written in the record.
    pub path: String,
    /// The question.
    pub text: String,
    /// The dimension that holds the answer; its class 0 means not answered.
    pub answered_by: DimensionId,
    /// Not asked where this protocol is chosen or caps the plan.
    pub unless_capped_by: Option<String>,
    /// The day from which passive motion would be opened by the loosening that the question offers.
    pub offers_passive_from: Option<PostoperativeDay>,
    /// Asked only where this protocol is the one chosen.
    pub only_when_chosen: Option<String>,
    /// When it is asked.
    pub when: When,
    /// Where it comes from.
    pub evidence: Vec<&'static Entry>,
    /// Where it was written.
    pub span: Span,
}

/// A protocol: a closed world of what is allowed from which day.
#[derive(Debug, Clone)]
pub struct ProtocolFile {
    /// Its id.
    pub id: String,
    /// Its edition.
    pub edition: String,
    /// Its title.
    pub title: String,
    /// What it is in a line.
    pub summary: String,
    /// Parts it takes in from other files.
    pub parts: Vec<String>,
    /// The last day of the dated plan.
    pub horizon: PostoperativeDay,
    /// Stages in order of their gates.
    pub stages: Vec<Stage>,
    /// The sling.
    pub slings: Vec<SlingStep>,
    /// What is allowed.
    pub limits: Vec<Limit>,
    /// The latest day on which each movement is open passively.
    pub passive_by: Vec<PassiveBy>,
    /// What to aim for.
    pub goals: Vec<Goal>,
    /// What to do.
    pub exercises: Vec<ExerciseUse>,
    /// When to be seen.
    pub visits: Vec<Visit>,
    /// Return to activities.
    pub returns: Vec<Return>,
    /// Modes that are allowed only lying on the back at first.
    pub postures: Vec<PostureGate>,
    /// Rules of this protocol alone.
    pub rules: RulesFile,
    /// Where it was written.
    pub span: Span,
}

/// Rules that findings add, and the choices of the surgeon they hold.
#[derive(Debug, Clone, Default)]
pub struct RulesFile {
    /// Where sources disagree.
    pub choices: Vec<Choice>,
    /// Rules that tighten.
    pub rules: Vec<Rule>,
    /// What no protocol covers.
    pub refusals: Vec<Remark>,
    /// What the clinician should know.
    pub cautions: Vec<Remark>,
}

/// A stage: a gate in days and criteria beside it.
#[derive(Debug, Clone)]
pub struct Stage {
    /// Its id.
    pub id: String,
    /// Its title.
    pub title: String,
    /// The first day it may be opened for.
    pub gate: PostoperativeDay,
    /// What is looked at before it is opened.
    pub criteria: Vec<StageCriterion>,
    /// Where it comes from.
    pub evidence: Vec<&'static Entry>,
    /// Where it was written.
    pub span: Span,
}

/// Something looked at before a stage is opened.
#[derive(Debug, Clone)]
pub struct StageCriterion {
    /// Its id.
    pub id: String,
    /// What has to be so.
    pub text: String,
    /// A measurement that has to reach an angle, or be stopped at the limit.
    pub measure: Option<(Key, Degrees)>,
    /// Where it comes from.
    pub evidence: Vec<&'static Entry>,
    /// Where it was written.
    pub span: Span,
}

/// Sling wear on a run of days.
#[derive(Debug, Clone)]
pub struct SlingStep {
    /// First day.
    pub from: u16,
    /// First day after; `None` to the end.
    pub until: Option<u16>,
    /// How much it is worn.
    pub wear: Wear,
    /// How it holds the arm.
    pub position: SlingPosition,
    /// What it comes off for.
    pub except: Vec<String>,
    /// Only under this choice.
    pub choice: Option<ChoiceIs>,
    /// Where it comes from.
    pub evidence: Vec<&'static Entry>,
    /// Where it was written.
    pub span: Span,
}

/// A limit: for some keys, a value on each run of days.
#[derive(Debug, Clone)]
pub struct Limit {
    /// Its id.
    pub id: String,
    /// What it says.
    pub title: String,
    /// The keys it is about.
    pub keys: Vec<Key>,
    /// The values. In a protocol the days outside are `no`; in a rule they are untouched.
    pub steps: Vec<Step>,
    /// Only under this choice.
    pub choice: Option<ChoiceIs>,
    /// Whether its last bound stays until the surgeon names another.
    pub opened_by_surgeon: bool,
    /// Where it comes from.
    pub evidence: Vec<&'static Entry>,
    /// Where it was written.
    pub span: Span,
}

/// One value on one run of days.
#[derive(Debug, Clone, Copy)]
pub struct Step {
    /// First day.
    pub from: u16,
    /// First day after; `None` to the end.
    pub until: Option<u16>,
    /// The value.
    pub cell: Cell,
    /// What the value counts, so that a bound in degrees never lands on a load.
    pub counts: Counts,
    /// Where it was written.
    pub span: Span,
}

/// What a written bound counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Counts {
    /// `no` or `free`.
    Nothing,
    /// Degrees.
    Degrees,
    /// Kilograms.
    Kilograms,
    /// Percent of maximal effort.
    Percent,
}

impl Counts {
    /// Whether a bound of this kind means something for a key.
    pub fn fits(self, key: Key) -> bool {
        match self {
            Self::Nothing => true,
            Self::Degrees => !key.is_load() && !key.is_effort(),
            Self::Kilograms => key.is_load(),
            Self::Percent => key.is_effort(),
        }
    }
}

/// A goal with the day it is due.
#[derive(Debug, Clone)]
pub struct Goal {
    /// Its id.
    pub id: String,
    /// What it is about.
    pub key: Key,
    /// Lower end.
    pub from: Degrees,
    /// Upper end.
    pub to: Option<Degrees>,
    /// When it is due.
    pub due: PostoperativeDay,
    /// Not shown before this stage.
    pub shown_from_stage: Option<String>,
    /// Whether the other shoulder is the goal where it moves less.
    pub or_other_shoulder: bool,
    /// Where it comes from.
    pub evidence: Vec<&'static Entry>,
    /// Where it was written.
    pub span: Span,
}

/// An exercise of the catalogue in a protocol.
#[derive(Debug, Clone)]
pub struct ExerciseUse {
    /// Its id in the catalogue.
    pub id: String,
    /// The stage it starts with.
    pub stage: String,
    /// The stage it ends with (not included).
    pub until_stage: Option<String>,
    /// Only while this other exercise is not possible.
    pub only_without: Option<String>,
    /// Given although no measured muscle activity stands behind it.
    pub without_measurement: bool,
    /// Repetitions in place of the catalogue's.
    pub repetitions: Option<(u16, u16)>,
    /// Where it comes from.
    pub evidence: Vec<&'static Entry>,
    /// Where it was written.
    pub span: Span,
}

/// A visit that is not a gate.
#[derive(Debug, Clone)]
pub struct Visit {
    /// What it is for.
    pub purpose: String,
    /// The first day.
    pub due: PostoperativeDay,
    /// The last day.
    pub latest: PostoperativeDay,
    /// Where it comes from.
    pub evidence: Vec<&'static Entry>,
    /// Where it was written.
    pub span: Span,
}

/// Return to an activity.
#[derive(Debug, Clone)]
pub struct Return {
    /// The activity's id in the catalogue.
    pub activity: String,
    /// The first day.
    pub from: PostoperativeDay,
    /// Whether the surgeon has to open it even then.
    pub opened_by_surgeon: bool,
    /// A remark.
    pub note: Option<String>,
    /// Where it comes from.
    pub evidence: Vec<&'static Entry>,
    /// Where it was written.
    pub span: Span,
}

/// Modes that are allowed only lying on the back until a day.
#[derive(Debug, Clone)]
pub struct PostureGate {
    /// Its id.
    pub id: String,
    /// What it says.
    pub title: String,
    /// The modes.
    pub modes: Vec<Mode>,
    /// The first day it no longer binds.
    pub until: PostoperativeDay,
    /// Where it comes from.
    pub evidence: Vec<&'static Entry>,
    /// Where it was written.
    pub span: Span,
}

/// Where sources disagree, and the surgeon may choose; the first option is the default.
#[derive(Debug, Clone)]
pub struct Choice {
    /// Its id.
    pub id: String,
    /// What it is about.
    pub title: String,
    /// The options.
    pub options: Vec<String>,
    /// Where they come from.
    pub evidence: Vec<&'static Entry>,
    /// Where it was written.
    pub span: Span,
}

/// A choice that must have been made one way.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ChoiceIs {
    /// The choice.
    pub id: String,
    /// The option.
    pub is: String,
}

/// A rule that a finding adds; it can only tighten.
#[derive(Debug, Clone)]
pub struct Rule {
    /// Its id.
    pub id: String,
    /// What it says.
    pub title: String,
    /// When it fires.
    pub when: When,
    /// Only under this choice.
    pub choice: Option<ChoiceIs>,
    /// Limits it lowers.
    pub limits: Vec<Limit>,
    /// A protocol that caps the whole plan.
    pub cap: Option<String>,
    /// Sling wear it lengthens.
    pub slings: Vec<SlingStep>,
    /// Gates it moves later.
    pub gates: Vec<(String, PostoperativeDay)>,
    /// Where it comes from.
    pub evidence: Vec<&'static Entry>,
    /// Where it was written.
    pub span: Span,
}

/// A refusal or a caution.
#[derive(Debug, Clone)]
pub struct Remark {
    /// Its id.
    pub id: String,
    /// What it says.
    pub title: String,
    /// When it is said.
    pub when: When,
    /// Whether it invites a looser plan: then it is said only where the fact is recorded and no finding asks for a
    /// slower one.
    pub invites: bool,
    /// Where it comes from.
    pub evidence: Vec<&'static Entry>,
    /// Where it was written.
    pub span: Span,
}

/// When something fires: every condition of `all`, and one of `any` where there are some.
#[derive(Debug, Clone, Default)]
pub struct When {
    /// All of these.
    pub all: Vec<Condition>,
    /// At least one of these.
    pub any: Vec<Condition>,
}

/// One condition on one dimension: the classes that satisfy it, a bit for each.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Condition {
    /// The dimension.
    pub dimension: DimensionId,
    /// The classes.
    pub mask: u16,
    /// Where it was written.
    pub span: Span,
}

impl Condition {
    /// Whether the facts satisfy it.
    pub fn holds(&self, facts: &operative::Facts) -> bool {
        self.mask & (1 << facts.class(self.dimension)) != 0
    }
}

impl ProtocolFile {
    /// Whether a mode is allowed only lying on the back on a day.
    pub fn is_only_lying(&self, mode: Mode, day: u16) -> bool {
        self.postures.iter().any(|gate| gate.modes.contains(&mode) && day < gate.until.count())
    }
}

impl ExerciseUse {
    /// The repetitions, and those to rise to, in place of the catalogue's usual ones.
    pub fn repetitions_over(&self, usual: u16) -> (u16, Option<u16>) {
        self.repetitions.map_or((usual, None), |(low, high)| (low, Some(high)))
    }
}

impl Condition {
    /// In words, such as "tissue poor/unknown".
    pub fn in_words(&self) -> String {
        let Some(dimension) = self.dimension.get() else { return String::new() };
        let classes = (0_u32..).zip(dimension.classes).filter(|(place, _)| self.mask & (1 << place) != 0);
        format!("{} {}", dimension.name, classes.map(|(_, class)| class.name).collect::<Vec<_>>().join("/"))
    }
}

impl When {
    /// In words, such as "tissue poor/unknown and (tension high or revision yes)".
    pub fn in_words(&self) -> String {
        let of =
            |list: &[Condition], between: &str| list.iter().map(Condition::in_words).collect::<Vec<_>>().join(between);
        match (self.all.is_empty(), self.any.is_empty()) {
            (true, true) => "always".into(),
            (false, true) => of(&self.all, " and "),
            (true, false) => of(&self.any, " or "),
            (false, false) => format!("{} and ({})", of(&self.all, " and "), of(&self.any, " or ")),
        }
    }

    /// Whether the facts satisfy it.
    pub fn holds(&self, facts: &operative::Facts) -> bool {
        self.all.iter().all(|condition| condition.holds(facts))
            && (self.any.is_empty() || self.any.iter().any(|condition| condition.holds(facts)))
    }

    /// The conditions that hold for the facts.
    pub fn holding<'w>(&'w self, facts: &operative::Facts) -> impl Iterator<Item = &'w Condition> {
        let facts = *facts;
        self.all.iter().chain(&self.any).filter(move |condition| condition.holds(&facts))
    }
}
