//! Which facts a record can have at all, and what rules the others out.

use body::Movement;
use evidence::ids;
use operative::{DIMENSIONS, DimensionId, Facts, SafeArc, dim};
use quantity::{Degrees, PostoperativeDay};

/// A combination of classes that no record has.
#[derive(Debug)]
pub struct Exclusion {
    /// A short name, in readable words joined by hyphens.
    pub id: &'static str,
    /// The rule, for a person.
    pub rule: &'static str,
    /// Why no record has it: which check of the reader, or which step from record to classes.
    pub because: &'static str,
    /// The dimensions whose classes it looks at; none where it looks at safe arcs alone.
    pub reads: &'static [DimensionId],
    excludes: fn(&Facts) -> bool,
}

impl Exclusion {
    /// Whether it rules these facts out.
    pub fn excludes(&self, facts: &Facts) -> bool {
        (self.excludes)(facts)
    }
}

/// Whether some record has these facts.
///
/// # Method
/// No [exclusion](EXCLUSIONS) applies. Both directions hold:
///
/// *What is not excluded can be written*: [`witness`](crate::witness) writes it.
///
/// *What is excluded cannot be written.* Each dimension that no exclusion names
/// rests on keys of its own, which the reader takes in any combination. For the
/// others, by the procedure:
///
/// - A rotator cuff repair. Its repaired tendons are a set: the reader refuses
///   a tendon that is listed twice, an empty list, and a list in which nothing
///   was repaired, so the set has one to four members, and the cuff has only
///   four tendons. Three of the four have a dimension. With one member at most
///   one of the three is repaired (`one-tendon-is-one`); with more members at
///   least one of the three is, as the supraspinatus alone is one
///   (`more-than-one-has-another`). Every one of the other 16 combinations is
///   such a set. Tissue, tension and construct are the worst over the set,
///   and each entry may have any of the marks or lack it; that one entry has to
///   say how its tendon was fixed does not bind the construct, since a tendon
///   that was left alone is such an entry too.
/// - A capsular release. The reader refuses any tendon that counts as repaired,
///   so the set is empty: the count reads as one or fewer, no tendon is
///   repaired (`release-repairs-no-tendon`), and the worst over nothing is
///   `unknown` (`release-describes-no-repair`). The release is what was done;
///   the reader refuses the denial, and its absence reads as done
///   (`release-releases`). The size of a tear that was seen and left alone, its
///   grades and its layers may be written and then have their classes, so they
///   are *not* excluded, though no rule has a use for them.
///
/// Safe arcs stand in a list: their places count from 0
/// (`arc-out-of-place`), and the reader takes only movements of the shoulder
/// that are told in degrees (`arc-of-another-movement`), angles that a shoulder
/// has (`arc-beyond-the-joint`) and days from 1 on (`arc-never-binds`).
///
/// # Example
/// ```
/// use operative::{DIMENSION_COUNT, Facts, SafeArcs, dim};
/// use proof::is_believable;
///
/// let supraspinatus = Facts { classes: [0; DIMENSION_COUNT], safe_arcs: SafeArcs::default() };
/// assert!(is_believable(&supraspinatus));
/// assert!(is_believable(&supraspinatus.with(dim::INFRASPINATUS, 1)));
/// assert!(!is_believable(&supraspinatus.with(dim::REPAIRED_TENDONS, 1)));
/// ```
pub fn is_believable(facts: &Facts) -> bool {
    excluded_by(facts).is_none()
}

/// The first exclusion that rules these facts out, so that each combination is counted once.
pub fn excluded_by(facts: &Facts) -> Option<&'static Exclusion> {
    EXCLUSIONS.iter().find(|exclusion| exclusion.excludes(facts))
}

/// Every combination that no record has.
pub static EXCLUSIONS: &[Exclusion] = &[
    Exclusion {
        id: "no-such-class",
        rule: "a class is one of its dimension",
        because: "the step from record to classes gives no other number",
        reads: &[],
        excludes: |facts| {
            DIMENSIONS.iter().zip(facts.classes).any(|(dimension, class)| usize::from(class) >= dimension.classes.len())
        },
    },
    Exclusion {
        id: "release-repairs-no-tendon",
        rule: "a capsular release has no repaired tendon",
        because: "the reader calls a repaired tendon beside it a contradiction",
        reads: &[dim::PROCEDURE, dim::REPAIRED_TENDONS, dim::INFRASPINATUS, dim::TERES_MINOR, dim::SUBSCAPULARIS],
        excludes: |facts| is_release(facts) && (more_than_one(facts) || beside_supraspinatus(facts) > 0),
    },
    Exclusion {
        id: "release-describes-no-repair",
        rule: "a capsular release has no tissue, tension or construct of a repair",
        because: "the worst over no tendon is unknown",
        reads: &[dim::PROCEDURE, dim::TISSUE, dim::TENSION, dim::REPAIR_CONSTRUCT],
        excludes: |facts| {
            is_release(facts)
                && [dim::TISSUE, dim::TENSION, dim::REPAIR_CONSTRUCT].iter().any(|of| !facts.is_unknown(*of))
        },
    },
    Exclusion {
        id: "release-releases",
        rule: "a capsular release counts as one",
        because: "the reader calls its denial a contradiction, and where the key is left out it reads as done",
        reads: &[dim::PROCEDURE, dim::CAPSULAR_RELEASE],
        excludes: |facts| is_release(facts) && facts.class_name(dim::CAPSULAR_RELEASE) != "yes",
    },
    Exclusion {
        id: "one-tendon-is-one",
        rule: "one repaired tendon is at most one of infraspinatus, teres minor and subscapularis",
        because: "two repaired tendons count as more than one",
        reads: &[dim::REPAIRED_TENDONS, dim::INFRASPINATUS, dim::TERES_MINOR, dim::SUBSCAPULARIS],
        excludes: |facts| !more_than_one(facts) && beside_supraspinatus(facts) > 1,
    },
    Exclusion {
        id: "more-than-one-has-another",
        rule: "more than one repaired tendon is one at least of infraspinatus, teres minor and subscapularis",
        because: "the supraspinatus alone is one tendon, and a tendon is listed once",
        reads: &[dim::REPAIRED_TENDONS, dim::INFRASPINATUS, dim::TERES_MINOR, dim::SUBSCAPULARIS],
        excludes: |facts| more_than_one(facts) && beside_supraspinatus(facts) == 0,
    },
    Exclusion {
        id: "arc-out-of-place",
        rule: "safe arcs are numbered from 0 in the order of the record",
        because: "the reader numbers them so",
        reads: &[],
        excludes: |facts| (0..).zip(facts.safe_arcs.iter()).any(|(place, arc): (u8, _)| arc.index != place),
    },
    Exclusion {
        id: "arc-of-another-movement",
        rule: "a safe arc is of a movement of the shoulder that is told in degrees",
        because: "the reader takes no other word",
        reads: &[],
        excludes: |facts| facts.safe_arcs.iter().any(|arc| bounds(arc.movement).is_none()),
    },
    Exclusion {
        id: "arc-beyond-the-joint",
        rule: "a safe arc ends where a shoulder can be",
        because: "the reader refuses an angle beyond the joint",
        reads: &[],
        excludes: |facts| facts.safe_arcs.iter().any(|arc| is_beyond(&arc)),
    },
    Exclusion {
        id: "arc-never-binds",
        rule: "a safe arc binds on one day at least and ends on a day that can be written",
        because: "the reader refuses day 0 and days it cannot read",
        reads: &[],
        excludes: |facts| facts.safe_arcs.iter().filter_map(|arc| arc.until).any(|until| !is_a_day(until)),
    },
];

fn is_release(facts: &Facts) -> bool {
    facts.class(dim::PROCEDURE) > 0
}

fn more_than_one(facts: &Facts) -> bool {
    facts.class(dim::REPAIRED_TENDONS) > 0
}

/// How many repaired tendons beside the supraspinatus.
fn beside_supraspinatus(facts: &Facts) -> usize {
    [dim::INFRASPINATUS, dim::TERES_MINOR, dim::SUBSCAPULARIS].iter().filter(|of| facts.class(**of) > 0).count()
}

/// The angles the reader believes of a movement; `None` where it is none of a safe arc.
fn bounds(movement: Movement) -> Option<(Degrees, Degrees)> {
    let none = Degrees::whole(0);
    let rotation = ids::RECORD_ROTATION_GREATEST.degrees();
    match movement {
        Movement::ForwardElevation
        | Movement::ScapularPlaneElevation
        | Movement::Abduction
        | Movement::AbductionWithExternalRotation => Some((none, ids::RECORD_ELEVATION_GREATEST.degrees())),
        Movement::Extension => Some((none, ids::RECORD_EXTENSION_GREATEST.degrees())),
        Movement::HorizontalAdduction => Some((none, ids::RECORD_HORIZONTAL_ADDUCTION_GREATEST.degrees())),
        Movement::ExternalRotation | Movement::InternalRotation => {
            Some((Degrees::from_steps(-rotation.steps()), rotation))
        }
        _ => None,
    }
}

fn is_beyond(arc: &SafeArc) -> bool {
    bounds(arc.movement).is_some_and(|(least, greatest)| arc.up_to < least || arc.up_to > greatest)
}

fn is_a_day(until: PostoperativeDay) -> bool {
    until > PostoperativeDay::SURGERY && PostoperativeDay::parse(&until.to_string()) == Ok(until)
}
