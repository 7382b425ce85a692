//! The closed space of what a family can be asked: every fact its rules read, every class of each.

use body::Movement;
use diagnostic::{Diagnostic, Sink, Span};
use operative::{DIMENSION_COUNT, DIMENSIONS, DimensionId, Facts, Order, SafeArc, SafeArcs, Unknown, dim};
use protocol::{Choices, Family, Requested};
use quantity::Degrees;

use crate::witness::{EXCLUSIONS, excluded_by};

/// One thing that varies.
#[derive(Debug, Clone)]
pub struct Axis {
    /// Its name.
    pub name: String,
    /// Its classes.
    pub classes: Vec<AxisClass>,
    /// Pairs of classes of which the second is the next worse: a plan may only get stricter from the first to the second.
    pub covers: Vec<(u8, u8)>,
    /// What it varies.
    pub what: What,
}

/// A class of an axis.
#[derive(Debug, Clone)]
pub struct AxisClass {
    /// Its name.
    pub name: String,
    /// Why it is a class of its own.
    pub because: String,
}

/// What an axis varies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum What {
    /// The surgeon's options, one at a time.
    Options,
    /// The protocol that is asked for.
    Protocol,
    /// A dimension of the record.
    Fact(DimensionId),
    /// A safe arc of the record.
    SafeArc(Movement),
}

/// A dimension that changes no plan of the family.
#[derive(Debug, Clone)]
pub struct Beside {
    /// The dimension.
    pub dimension: DimensionId,
    /// How many classes it has.
    pub classes: usize,
    /// What reads it, or why nothing does.
    pub because: String,
}

/// Everything a family can be asked.
#[derive(Debug)]
pub struct Space<'f> {
    /// The family.
    pub family: &'f Family,
    /// What varies; a point of the space has one class index for each.
    pub axes: Vec<Axis>,
    /// What of the record changes no plan.
    pub beside: Vec<Beside>,
    /// The options of each class of the axis of options.
    pub options: Vec<Choices>,
    /// The mildest facts of the procedure; what is no axis stays as it is here.
    mildest: Facts,
}

/// Angles that stand for a safe arc that binds a little and for one that binds hard.
///
/// Own choice: below and far below what the shipped protocols open first. A safe arc is
/// one more minimum, so that any other angle gives values between those of these two.
const ELEVATION_ARCS: [i32; 2] = [80, 20]; // not medical: two points of a scale
const OUTWARD_ARCS: [i32; 2] = [10, -10]; // not medical: two points of a scale, one below neutral

impl<'f> Space<'f> {
    /// The space of a family.
    ///
    /// # Method
    /// A dimension is an axis where a rule or a selection asks for it; the tendons
    /// and how many were repaired are axes in any case, since they exclude one
    /// another. Options stand one at a time beside the defaults: rules under
    /// different options share no condition, and each only lowers.
    pub fn new(family: &'f Family) -> Self {
        Self::over(family, family)
    }

    /// The same, with what the rules of another edition of the family ask for as well.
    pub fn over(family: &'f Family, other: &Family) -> Self {
        let defaults = Choices::of(family);
        let procedure = (0..u8::MAX).find(|class| family.file.procedure.mask & (1 << class) != 0).unwrap_or(0);
        let mut axes = Vec::new();
        let mut options = vec![defaults];
        let mut classes = vec![class("the defaults", "what holds where the surgeon names no option")];
        for choice in family.choices() {
            for option in choice.options.iter().skip(1) {
                let mut choices = Choices::of(family);
                choices.take(&choice.id, option);
                options.push(choices);
                classes.push(class(&format!("{}: {option}", choice.id), &choice.title));
            }
        }
        axes.push(Axis { name: "the surgeon's options".into(), classes, covers: Vec::new(), what: What::Options });
        axes.push(protocols(family));
        // Safe arcs and tendons change slowest, since what follows from them is the costliest to look up.
        axes.push(arcs(family, "safe arc of elevation", Movement::ForwardElevation, ELEVATION_ARCS));
        axes.push(arcs(family, "safe arc of external rotation", Movement::ExternalRotation, OUTWARD_ARCS));
        let tendons = [dim::REPAIRED_TENDONS, dim::INFRASPINATUS, dim::TERES_MINOR, dim::SUBSCAPULARIS];
        let is_repair = family.rules.rules.iter().any(|rule| {
            rule.when.all.iter().chain(&rule.when.any).any(|condition| tendons.contains(&condition.dimension))
        });
        let mut beside = Vec::new();
        for (place, dimension) in (0_u8..).zip(DIMENSIONS) {
            let id = DimensionId(place);
            if id == dim::PROCEDURE {
                continue;
            }
            let read = asked(family, id) || asked(other, id) || (is_repair && tendons.contains(&id));
            if read {
                axes.push(of_dimension(id));
            } else {
                beside.push(Beside {
                    dimension: id,
                    classes: dimension.classes.len(),
                    because: read_beside(family, id),
                });
            }
        }
        Self { family, axes, beside, options, mildest: mildest(procedure) }
    }

    /// The facts of the record alone: the defaults, the protocol that the family selects, no safe arc.
    pub fn of_facts(family: &'f Family) -> Self {
        let mut space = Self::new(family);
        for axis in space.axes.iter_mut().filter(|axis| !matches!(axis.what, What::Fact(_))) {
            axis.classes.truncate(1);
            axis.covers.clear();
        }
        space.options.truncate(1);
        space
    }

    /// How many points the space has, those that no record can be included.
    pub fn product(&self) -> u128 {
        self.axes.iter().map(|axis| axis.classes.len() as u128).product()
    }

    /// The facts of a point.
    pub fn facts(&self, point: &[u8]) -> Facts {
        let of_record = self.axes.iter().zip(point).filter_map(|(axis, class)| match axis.what {
            What::Fact(id) => Some((id, *class)),
            What::Options | What::Protocol | What::SafeArc(_) => None,
        });
        let facts = of_record.fold(self.mildest, |facts, (id, class)| facts.with(id, class));
        Facts { safe_arcs: self.safe_arcs(point), ..facts }
    }

    /// The safe arcs of a point.
    pub(crate) fn safe_arcs(&self, point: &[u8]) -> SafeArcs {
        let written = self.axes.iter().zip(point).filter_map(|(axis, class)| match axis.what {
            What::SafeArc(movement) => Some((movement, arc_angle(movement, *class)?)),
            What::Options | What::Protocol | What::Fact(_) => None,
        });
        (0..).zip(written).map(|(index, (movement, up_to))| SafeArc { movement, up_to, until: None, index }).collect()
    }

    /// The protocol that a point asks for.
    pub fn requested(&self, point: &[u8]) -> Requested {
        let class = self.class_of(point, What::Protocol);
        Requested(class.checked_sub(1))
    }

    /// The options of a point.
    pub fn choices(&self, point: &[u8]) -> &Choices {
        &self.options[usize::from(self.class_of(point, What::Options))]
    }

    /// Whether a record can have these facts; the rule that says no where it cannot.
    pub fn excluded(&self, point: &[u8]) -> Option<&'static str> {
        excluded_by(&self.facts(point)).map(|exclusion| exclusion.rule)
    }

    /// Whether a rule that says what no record can be looks at an axis.
    pub(crate) fn is_looked_at(&self, axis: &Axis) -> bool {
        let What::Fact(id) = axis.what else { return false };
        let is_repair = self.mildest.class(dim::PROCEDURE) == 0;
        // What names the procedure is about operations without a repair.
        let about = EXCLUSIONS.iter().filter(|rule| !is_repair || !rule.reads.contains(&dim::PROCEDURE));
        about.into_iter().any(|rule| rule.reads.contains(&id))
    }

    /// The class of a point on the axis of something.
    pub fn class_of(&self, point: &[u8], what: What) -> u8 {
        self.axes.iter().zip(point).find(|(axis, _)| axis.what == what).map_or(0, |(_, class)| *class)
    }

    /// Checks that the family asks for every fact of a record, or sets it aside with a reason.
    ///
    /// # Errors
    /// - `fact-not-read`: nothing asks for it, and it is not set aside
    /// - `fact-read-after-all`: it is set aside, and a rule or a selection asks for it
    pub fn check(&self, sink: &mut Sink) {
        let file = &self.family.file;
        let name = |id: DimensionId| id.get().map_or("", |dimension| dimension.name);
        for beside in self.unread() {
            sink.push(
                Diagnostic::error(
                    "fact-not-read",
                    format!("no line of `{}` asks for \"{}\"", file.id, name(beside.dimension)),
                )
                .at(Span { end: file.span.start + 1, ..file.span })
                .help("add the rule, question, refusal or caution that reads it, or a [[not_read]] with the reason"),
            );
        }
        for set_aside in &file.not_read {
            if self.axes.iter().any(|axis| axis.what == What::Fact(set_aside.dimension)) {
                let name = name(set_aside.dimension);
                sink.push(
                    Diagnostic::error(
                        "fact-read-after-all",
                        format!("\"{name}\" is set aside, and a rule asks for it"),
                    )
                    .at(set_aside.span)
                    .help("take it out of [[not_read]]"),
                );
            }
        }
    }

    /// Dimensions of the record that nothing in the family reads and the family does not set aside.
    pub fn unread(&self) -> impl Iterator<Item = &Beside> {
        self.beside.iter().filter(|beside| beside.because.is_empty())
    }
}

/// The mildest facts of a procedure.
fn mildest(procedure: u8) -> Facts {
    let facts = Facts { classes: [0; DIMENSION_COUNT], safe_arcs: SafeArcs::default() }.with(dim::PROCEDURE, procedure);
    if procedure == 0 {
        return facts;
    }
    // Nothing was fixed: there is no tissue, tension or construct to record.
    let unknown = |facts: Facts, id: DimensionId| facts.with(id, id.get().and_then(|d| d.unknown_class()).unwrap_or(0));
    [dim::TISSUE, dim::TENSION, dim::REPAIR_CONSTRUCT].into_iter().fold(facts, unknown).with(dim::CAPSULAR_RELEASE, 1)
}

fn class(name: &str, because: &str) -> AxisClass {
    AxisClass { name: name.into(), because: because.into() }
}

fn protocols(family: &Family) -> Axis {
    let mut classes = vec![class("as the family selects", "nobody asks for another protocol")];
    if family.protocols.len() > 1 {
        classes.extend(family.protocols.iter().map(|protocol| class(&protocol.id, "asked for by the surgeon")));
    }
    Axis { name: "the protocol asked for".into(), classes, covers: Vec::new(), what: What::Protocol }
}

fn of_dimension(id: DimensionId) -> Axis {
    let dimension = &DIMENSIONS[usize::from(id.0)];
    Axis {
        name: dimension.name.into(),
        classes: dimension.classes.iter().map(|known| class(known.name, known.because)).collect(),
        covers: covers(id),
        what: What::Fact(id),
    }
}

/// Pairs of classes of which the second is the next worse.
///
/// # Method
/// By rank, what is not recorded above every known class. Of classes of one rank
/// neither is worse. The surgeon's "yes" to going slower stands above both other
/// answers.
pub fn covers(of: DimensionId) -> Vec<(u8, u8)> {
    let dimension = &DIMENSIONS[usize::from(of.0)];
    if of == dim::SLOWER {
        let yes = dimension.class("yes").unwrap_or(0);
        return (0..yes).map(|other| (other, yes)).collect();
    }
    if dimension.order == Order::Unordered {
        return Vec::new();
    }
    let unknown = match dimension.unknown {
        Unknown::Never => None,
        Unknown::CountsAs(_) | Unknown::OnItsOwn => dimension.unknown_class(),
    };
    // Rank, with what is not recorded above everything.
    let rank = |class: u8| {
        if Some(class) == unknown { u16::MAX } else { u16::from(dimension.classes[usize::from(class)].rank) }
    };
    let all = || 0..dimension.classes.len() as u8;
    let below = |a: u8, b: u8| rank(a) < rank(b);
    all()
        .flat_map(|a| all().map(move |b| (a, b)))
        .filter(|&(a, b)| below(a, b) && !all().any(|between| below(a, between) && below(between, b)))
        .collect()
}

fn arcs(family: &Family, name: &str, movement: Movement, angles: [i32; 2]) -> Axis {
    let mut classes = vec![class("none", "none is written")];
    for (degrees, what) in angles.iter().zip(["higher", "lower"]) {
        let until = format!("binds until the stage `{}` opens", family.file.safe_arc_until_stage);
        classes.push(class(&format!("{what}: {degrees} deg"), &until));
    }
    Axis { name: name.into(), classes, covers: vec![(0, 1), (1, 2)], what: What::SafeArc(movement) }
}

fn arc_angle(movement: Movement, class: u8) -> Option<Degrees> {
    let angles = if movement == Movement::ExternalRotation { OUTWARD_ARCS } else { ELEVATION_ARCS };
    Some(Degrees::whole(angles[usize::from(class.checked_sub(1)?)]))
}

/// Whether a rule or a selection of the family asks for a dimension.
fn asked(family: &Family, id: DimensionId) -> bool {
    let of_rules = family.rules().map(|(_, rule)| &rule.when);
    let of_selects = family.file.selects.iter().map(|select| &select.when);
    of_rules.chain(of_selects).any(|when| when.all.iter().chain(&when.any).any(|condition| condition.dimension == id))
}

/// What beside rules and selections reads a dimension; empty where nothing does.
fn read_beside(family: &Family, id: DimensionId) -> String {
    let reads = |when: &protocol::file::When| when.all.iter().chain(&when.any).any(|c| c.dimension == id);
    let mut readers = Vec::new();
    for question in &family.file.questions {
        if question.answered_by == id {
            readers.push(format!("answers the question `{}`", question.id));
        } else if reads(&question.when) {
            readers.push(format!("raises the question `{}`", question.id));
        }
    }
    let own = family.protocols.iter().map(|protocol| &protocol.rules);
    for rules in std::iter::once(&family.rules).chain(own) {
        readers.extend(rules.refusals.iter().filter(|r| reads(&r.when)).map(|r| format!("refused: {}", r.title)));
        readers.extend(rules.cautions.iter().filter(|r| reads(&r.when)).map(|r| format!("a caution: {}", r.id)));
    }
    readers.extend(
        family.file.not_read.iter().filter(|set| set.dimension == id).map(|set| format!("set aside: {}", set.because)),
    );
    if id == dim::OTHER_SHOULDER {
        readers.push("decides which exercises the other arm may help with; changes no limit".into());
    }
    readers.join("; ")
}
