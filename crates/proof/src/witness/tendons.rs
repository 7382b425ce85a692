//! The torn tendons of a record and the way to them.

use operative::{Facts, dim};

use super::Edge;
use super::page::{Page, quoted};

const TENDON: &str = "[[operation.tendon]]";

/// How the tendons were reached; only a repair of the upper subscapularis depends on it.
pub(super) fn approach(facts: &Facts, edge: Edge) -> &'static str {
    match facts.class(dim::SUBSCAPULARIS) {
        0 => edge.of("arthroscopic", "arthroscopic", "mini-open"),
        1 => "arthroscopic",
        _ => edge.of("mini-open", "arthroscopic", "open"),
    }
}

/// The part of the subscapularis; through an incision the upper part counts as the whole tendon.
fn part(facts: &Facts, edge: Edge) -> &'static str {
    match facts.class(dim::SUBSCAPULARIS) {
        0 | 1 => "upper part",
        _ => edge.of("upper part", "complete", "complete"),
    }
}

/// Writes one entry for each torn tendon.
pub(super) fn write(page: &mut Page, facts: &Facts, edge: Edge) {
    let repaired = repaired(facts, edge);
    let count = repaired.len();
    let tissue = marked(facts.class(dim::TISSUE), count, edge);
    let tension = marked(facts.class(dim::TENSION), count, edge);
    let mut construct = marked(facts.class(dim::REPAIR_CONSTRUCT), count, edge);
    if let Some(last) = construct.last_mut().filter(|_| count > 1 && edge == Edge::Highest)
        && *last == Mark::NotRecorded
    {
        // The reader asks for one entry at least that says how the tendon was fixed.
        *last = Mark::Mild;
    }
    for (place, name) in repaired.iter().enumerate() {
        let entry = page.push(TENDON);
        entry.set("name", quoted(name));
        entry.set("thickness", quoted("full"));
        if *name == "subscapularis" {
            entry.set("part", quoted(part(facts, edge)));
        }
        let sound = edge.of("single row", "double row", "transosseous equivalent");
        let mut set = |key, mark: Mark, mild: &str, bad: &str| match mark {
            Mark::Mild => entry.set(key, quoted(mild)),
            Mark::Bad => entry.set(key, quoted(bad)),
            Mark::NotRecorded => {}
        };
        set("repair", construct[place], sound, "partial repair");
        set("tissue", tissue[place], edge.of("good", "good", "fair"), "poor");
        set("tension", tension[place], edge.of("low", "low", "moderate"), "high");
    }
    let none_is_complete = construct.iter().all(|mark| *mark == Mark::NotRecorded);
    let seen_at_a_release = repaired.is_empty() && page.has("[operation.tear]");
    if (!repaired.is_empty() && none_is_complete) || seen_at_a_release {
        left_unrepaired(page, &repaired);
    }
}

/// The tendons that were repaired, in the order of the cuff.
///
/// The supraspinatus has no dimension of its own: it is the tendon that fills
/// the count up. Where two others are repaired it may stand beside them or not.
fn repaired(facts: &Facts, edge: Edge) -> Vec<&'static str> {
    if facts.class(dim::PROCEDURE) > 0 {
        return Vec::new();
    }
    let named = [
        (dim::INFRASPINATUS, "infraspinatus"),
        (dim::TERES_MINOR, "teres minor"),
        (dim::SUBSCAPULARIS, "subscapularis"),
    ];
    let mut found: Vec<_> = named.into_iter().filter(|(of, _)| facts.class(*of) > 0).map(|(_, name)| name).collect();
    let is_one = facts.class(dim::REPAIRED_TENDONS) == 0;
    let needed = if is_one { found.is_empty() } else { found.len() < 2 || edge != Edge::Lowest };
    if needed {
        found.insert(0, "supraspinatus");
    }
    found
}

/// A torn tendon that was not repaired.
///
/// It says what was done, which the reader asks of one entry at least, also
/// where the fixing of the one repaired tendon is not recorded.
fn left_unrepaired(page: &mut Page, repaired: &[&str]) {
    let name = if repaired.contains(&"supraspinatus") { "infraspinatus" } else { "supraspinatus" };
    let entry = page.push(TENDON);
    entry.set("name", quoted(name));
    entry.set("thickness", quoted("full"));
    entry.set("repair", quoted("not repaired"));
}

/// How one tendon stands in a dimension that takes the worst over all of them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Mark {
    Mild,
    Bad,
    NotRecorded,
}

/// A mark for each tendon that comes to a class: the last, the first, or every one of them.
fn marked(class: u8, count: usize, edge: Edge) -> Vec<Mark> {
    let mark = match class {
        0 => Mark::Mild,
        1 => Mark::Bad,
        _ => Mark::NotRecorded,
    };
    let last = count.saturating_sub(1);
    let marked = edge.of(last..count, 0..1, 0..count);
    (0..count).map(|place| if marked.contains(&place) { mark } else { Mark::Mild }).collect()
}
