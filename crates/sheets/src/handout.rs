//! The patient's handout: opened stages only.

use body::{Joint, Key, Mode, Movement};
use plan::{Allowed, Bound};
use prescription::May;
use quantity::Degrees;
use wording::Argument;
use wording::first_days::SECTIONS;

use crate::activities;
use crate::calls::{self, NoNumber, Numbers, Numbness};
use crate::desk::Desk;
use crate::document::{Block, Document, ListMark, Reader, Size, Tone};
use crate::exercises;
use crate::first_days;
use crate::fridge;
use crate::household;
use crate::parts::{Begins, Lost, OnPaper, Part, Period, on_paper};
use crate::points::{Point, Points};
use crate::sling;
use crate::texts::{Texts, list};

/// Sections of the first days at home that a signed plan repeats; its own rules stand for the others.
const FIRST_NIGHTS: &[&str] = &[
    "first-days-numb-title",
    "first-days-tablets-title",
    "first-days-ice-title",
    "first-days-wash-title",
    "first-days-sleep-title",
];

/// For somebody who lives alone.
const ALONE: &[&str] = &[
    "handout-alone-bed",
    "handout-alone-rise",
    "handout-alone-stairs",
    "handout-alone-toilet",
    "handout-alone-kitchen",
    "handout-alone-shoes",
];

/// What the protocols call the visit at which the wound is looked at.
const WOUND: &str = "wound";

/// The handout.
///
/// # Errors
/// The number that is missing: no handout goes out without both.
pub fn handout(desk: &Desk<'_>) -> Result<Document, NoNumber> {
    let numbers = Numbers::of(desk.settings)?;
    let texts = Texts::of_patient(desk);
    let all = desk.parts();
    let paper = on_paper(&all, desk.issued_on);
    let parts = paper.printed;
    let first_day = parts.first().map_or(0, |part| part.from_day().count());
    let numbness = numbness(first_day);
    let mut blocks = first_page(desk, &texts, &paper);
    blocks.push(texts.heading(1, "handout-call-title"));
    blocks.extend(calls::frames(&texts, desk.settings, numbness));
    if first_day < evidence::ids::WOUND_VISIT_FROM.day().count() {
        blocks.extend(first_nights(desk, &texts, parts, numbers));
    }
    let mut answers = desk.answers;
    let mut before_answers: &[Vec<May>] = &[];
    let mut ends: Vec<Vec<String>> = Vec::new();
    for (order, part) in parts.iter().enumerate() {
        let (own, rest) = answers.split_at(part.periods.len().min(answers.len()));
        answers = rest;
        // The first step goes on from the first page; each later one begins on its own.
        if order > 0 {
            blocks.push(Block::PageBreak);
        }
        let before = order.checked_sub(1).map(|before| (&parts[before], before_answers));
        let place = before.map_or(Place::First(numbness), |(part, answers)| Place::After(part, answers));
        let step = step(desk, &texts, &parts[..=order], own, place);
        ends.push(ends_of(&step));
        blocks.extend(step);
        before_answers = own;
    }
    blocks.extend(visits(desk, &texts));
    blocks.push(texts.paragraph(Tone::Plain, "handout-care", &[]));
    blocks.push(signature(&texts));
    let following = all.iter().skip(1).map(Some).chain([None]);
    for ((part, following), ends) in parts.iter().zip(following).zip(&ends) {
        blocks.push(Block::PageBreak);
        blocks.extend(fridge::sheet(desk, &texts, (part, following), ends));
    }
    Ok(Document {
        title: format!("{} – {}", texts.get("handout-title"), texts.side_word().shown),
        language: desk.messages.language().code(),
        reader: Reader::Patient,
        size: Size::of(desk.settings),
        side: Some(texts.side_word()),
        running_head: texts.get("handout-running-head"),
        foot: calls::foot(&texts, numbers),
        page_of: texts.get("handout-page"),
        blocks,
    })
}

/// Where each exercise of a step ends, in their order; empty where it ends nowhere.
fn ends_of(step: &[Block]) -> Vec<String> {
    let bands = step.iter().filter_map(|block| match block {
        Block::Bands { bands } => Some(bands),
        _ => None,
    });
    bands.flatten().map(|band| band.end.as_ref().map_or_else(String::new, |end| end.text.clone())).collect()
}

/// Whether a step is the one that is open first; its rules stand on the first page.
#[derive(Debug, Clone, Copy)]
enum Place<'p> {
    First(Numbness),
    /// After a step that stands before it in full, with its answers.
    After(&'p Part<'p>, &'p [Vec<May>]),
}

/// Whether the block may still work on a day.
fn numbness(day: u16) -> Numbness {
    const HOURS_A_DAY: f64 = 24.0; // not medical: a day has 24 hours
    if f64::from(day) * HOURS_A_DAY < evidence::ids::BLOCK_CALL_AFTER.number() {
        Numbness::Expected
    } else {
        Numbness::Unexpected
    }
}

fn first_page(desk: &Desk<'_>, texts: &Texts<'_>, paper: &OnPaper<'_, '_>) -> Vec<Block> {
    let parts = paper.printed;
    let operated_on = texts.date(desk.prescription.operated_on);
    let mut blocks = vec![
        Block::Head {
            title: texts.get("handout-title"),
            subtitle: texts.with("handout-surgery", &[("date", operated_on.into())]),
        },
        Block::Fields { columns: 2, fields: vec![texts.blank("handout-name"), texts.blank("handout-birth")] },
        texts.paragraph(Tone::Strong, "handout-not-signed", &[]),
    ];
    if desk.prescription.questions.iter().any(|question| question.changes.is_empty()) {
        blocks.push(texts.paragraph(Tone::Stop, "handout-not-yet-signed", &[]));
    }
    if !desk.prescription.moved.is_empty() {
        blocks.push(texts.paragraph(Tone::Strong, "handout-moved", &[]));
    }
    if let Some(part) = parts.first() {
        blocks.push(Block::Heading { level: 1, text: step_title(texts, part) });
        blocks.push(days(desk, texts, part));
        blocks.extend(next(desk, texts, part, parts.get(1).or(paper.later.first())));
        blocks.extend(later(texts, paper));
        blocks.extend(sling::bar(desk, texts, parts));
        blocks.extend(rules(desk, texts, part));
    }
    blocks
}

/// From when a step is open; until when is told by [`next`], because its rules go on.
fn days(desk: &Desk<'_>, texts: &Texts<'_>, part: &Part<'_>) -> Block {
    let is_frozen = desk.prescription.today.as_ref().is_some_and(|today| today.basis == plan::TodayBasis::Frozen);
    let id = if is_frozen { "handout-now-frozen" } else { "handout-now" };
    texts.paragraph(Tone::Lead, id, &[("from", texts.date(part.from()).into())])
}

/// "Step 2: The arm is moved"; a stage without words of its own is the next step.
pub(crate) fn step_title(texts: &Texts<'_>, part: &Part<'_>) -> String {
    let own = format!("handout-stage-{}", part.stage.id);
    let id = if texts.messages.has(&own) { own } else { "handout-stage-other".to_owned() };
    let number = u16::try_from(part.number).unwrap_or(u16::MAX);
    texts.with("handout-step", &[("number", number.into()), ("title", texts.get(&id).into())])
}

/// What comes next: the next step that is open, a step back, or else the first that is not open.
fn next(desk: &Desk<'_>, texts: &Texts<'_>, part: &Part<'_>, opened: Option<&Part<'_>>) -> Vec<Block> {
    let line = |text| Block::Callout { tone: Tone::Strong, title: String::new(), text: vec![text], items: Vec::new() };
    if let Some(next) = opened.filter(|next| next.begins == Begins::InOrder) {
        return vec![line(texts.with("handout-next-opened", &[("date", texts.date(next.from()).into())]))];
    }
    let today = desk.prescription.today.as_ref();
    let not_before = today.and_then(|today| today.not_before.as_ref().map(|next| (today.basis, next)));
    if let Some(back) = opened {
        // What waits for its gate before the step back is told as well.
        let waits = not_before.filter(|(_, next)| next.date <= back.from());
        let waits = waits.map(|(basis, next)| line(not_open(texts, basis, next.date)));
        return [back_box(texts, part, back)].into_iter().chain(waits).collect();
    }
    let is_opened = |id: &str| desk.prescription.stages.iter().any(|stage| stage.id == id && stage.opened);
    vec![match not_before {
        None => texts.paragraph(Tone::Plain, "handout-last", &[]),
        Some((plan::TodayBasis::Opened, next)) if is_opened(&next.stage) => {
            line(texts.with("handout-next-opened", &[("date", texts.date(next.date).into())]))
        }
        Some((basis, next)) => line(not_open(texts, basis, next.date)),
    }]
}

/// That the next step waits for the surgeon's office.
fn not_open(texts: &Texts<'_>, basis: plan::TodayBasis, from: jiff::civil::Date) -> String {
    match basis {
        plan::TodayBasis::Frozen => texts.get("handout-frozen"),
        plan::TodayBasis::Opened => {
            let next = texts.with("handout-next", &[("date", texts.date(from).into())]);
            format!("{next} {}", texts.get("handout-after"))
        }
    }
}

/// A step back ahead: what stops from its day on, and that nobody has to wait for it.
fn back_box(texts: &Texts<'_>, part: &Part<'_>, back: &Part<'_>) -> Block {
    let lost = match (part.periods.last(), back.periods.first()) {
        (Some(before), Some(after)) => after.lost_since(before),
        _ => Vec::new(),
    };
    let lost = lost.into_iter().map(|lost| match lost {
        Lost::OwnStrength => "handout-back-own-strength",
        Lost::Bands => "handout-back-bands",
        Lost::Holding => "handout-back-holding",
        Lost::SlingOff => "handout-back-sling-always",
        Lost::SlingGone => "handout-back-sling-again",
    });
    let told = [("step", step_title(texts, back).into())];
    let text = lost.map(|id| texts.get(id));
    let text = text.chain([texts.with("handout-back-step", &told), texts.get("handout-back-earlier")]);
    Block::Callout {
        tone: Tone::Stop,
        title: texts.with("handout-back-title", &[("date", texts.date(back.from()).into())]),
        text: text.collect(),
        items: Vec::new(),
    }
}

/// The steps that are opened and get paper of their own; what to do should that not come in time.
fn later(texts: &Texts<'_>, paper: &OnPaper<'_, '_>) -> Vec<Block> {
    let Some(first) = paper.later.first() else { return Vec::new() };
    let items: Vec<String> = paper
        .later
        .iter()
        .map(|part| {
            let from = ("from", texts.date(part.from()).into());
            let id = match part.begins {
                Begins::InOrder => "handout-later-step",
                Begins::GoesBack => "handout-later-step-back",
            };
            texts.with(id, &[("step", step_title(texts, part).into()), from])
        })
        .collect();
    let stricter = paper.stricter_from();
    let date = |date| [("date", texts.date(date).into())];
    let mut blocks = vec![texts.paragraph(Tone::Plain, "handout-later-paper", &[])];
    blocks.extend(list(ListMark::Dot, items));
    if stricter.is_none_or(|stricter| first.from() < stricter) {
        blocks.push(texts.paragraph(Tone::Plain, "handout-later-go-on", &date(first.from())));
    }
    blocks.extend(stricter.map(|from| texts.paragraph(Tone::Stop, "handout-later-stricter", &date(from))));
    vec![Block::Together { blocks }]
}

/// What may be done and what not, and what changes inside the step.
fn rules(desk: &Desk<'_>, texts: &Texts<'_>, part: &Part<'_>) -> Vec<Block> {
    let of = |period: &Period<'_>| Points::of(period, desk.messages, desk.other_arm());
    let mut before = of(&part.periods[0]);
    let mut blocks = lists(texts, &before, "handout-may-title", "handout-not-title");
    for period in part.periods.iter().skip(1) {
        let now = of(period);
        let fresh = now.against(&before);
        if !fresh.may.is_empty() || !fresh.not.is_empty() {
            let mut change = vec![Block::Heading {
                level: 3,
                text: texts.with("handout-rules-from", &[("date", texts.date(period.from).into())]),
            }];
            change.extend(lists(texts, &fresh, "handout-may-more-title", "handout-not-more-title"));
            blocks.push(Block::Together { blocks: change });
        }
        before = now;
    }
    let raised = raised_to(&part.periods[0]);
    if raised.is_some() {
        blocks.push(texts.paragraph(Tone::Plain, "handout-how-high-else", &[]));
    }
    blocks.extend(raised.and_then(|angle| hand_height(desk, texts, &part.periods[0], angle)));
    blocks.push(texts.paragraph(Tone::Strong, "handout-not-listed", &[]));
    blocks
}

/// How far the arm may be raised, where that is an angle.
pub(crate) fn raised_to(period: &Period<'_>) -> Option<Degrees> {
    [Mode::Passive, Mode::ActiveAssisted, Mode::Active].into_iter().find_map(|mode| {
        match period.allowed(Key::any(Joint::Shoulder, Movement::ForwardElevation, mode)) {
            Allowed::UpTo(Bound::Angle(angle)) => Some(angle),
            _ => None,
        }
    })
}

/// How high above the floor the hand may come, for somebody whose height is recorded.
fn hand_height(desk: &Desk<'_>, texts: &Texts<'_>, period: &Period<'_>, angle: Degrees) -> Option<Block> {
    let stature = desk.record.patient.stature?.value;
    // A height above the floor says nothing to somebody who lies.
    let raised = |mode| Key::any(Joint::Shoulder, Movement::ForwardElevation, mode);
    let is_upright = |mode| period.allowed(raised(mode)) != Allowed::No && !period.only_lying(raised(mode));
    if ![Mode::Passive, Mode::ActiveAssisted, Mode::Active].into_iter().any(is_upright) {
        return None;
    }
    let [centimeters, inches] = household::above_floor(angle, stature)?;
    let told = [("landmark", household::hand_height(angle).into()), centimeters, inches];
    Some(texts.paragraph(Tone::Plain, "handout-hand-height", &told))
}

fn lists(texts: &Texts<'_>, points: &Points, may: &str, not: &str) -> Vec<Block> {
    let of = |title: &str, mark: ListMark, points: &[Point]| -> Vec<Block> {
        let items: Vec<String> = points.iter().map(|point| point.text.clone()).collect();
        match list(mark, items) {
            Some(list) => vec![texts.heading(3, title), list],
            None => Vec::new(),
        }
    };
    of(may, ListMark::Do, &points.may).into_iter().chain(of(not, ListMark::Dont, &points.not)).collect()
}

/// Block, tablets, ice, washing and sleep: for a plan that begins on the day of surgery.
fn first_nights(desk: &Desk<'_>, texts: &Texts<'_>, parts: &[Part<'_>], numbers: Numbers<'_>) -> Vec<Block> {
    let told = first_days::told(desk.prescription.operated_on, desk.settings, numbers, desk.messages);
    let mut blocks =
        vec![texts.heading(1, "handout-nights-title"), texts.paragraph(Tone::Plain, "handout-nights-intro", &[])];
    let period = parts.first().and_then(|part| part.periods.first());
    let mut left_out: Vec<&str> = Vec::new();
    if period.is_some_and(|period| period.sling.wear != plan::Wear::Always) {
        left_out.push("first-days-sleep-sling");
    }
    // A plan that lets the arm be raised at once would be contradicted by these.
    let raise = Key::any(Joint::Shoulder, Movement::ForwardElevation, Mode::Active);
    if period.is_some_and(|period| period.allowed(raise) != Allowed::No) {
        left_out.extend(["first-days-wash-armpit", "first-days-wash-dress"]);
    }
    // Where the first gate comes before the wound is looked at, the visits do not name that day.
    let names_wound = crate::visits::of_patient(desk).any(|visit| visit.purpose == WOUND);
    let wanted = |title: &str| FIRST_NIGHTS.contains(&title) || (title == "first-days-visit-title" && !names_wound);
    for section in SECTIONS.iter().filter(|section| wanted(section.title_id)) {
        blocks.extend(first_days::section(section, texts, desk.settings, desk.catalogue, &told, &left_out));
    }
    let alone = ALONE.iter().map(|id| texts.get(id)).collect();
    blocks.push(Block::Together {
        blocks: vec![texts.heading(2, "handout-alone-title"), Block::List { mark: ListMark::Dot, items: alone }],
    });
    blocks
}

/// A step in full: the sling, the exercises, what may be done.
fn step(desk: &Desk<'_>, texts: &Texts<'_>, parts: &[Part<'_>], answers: &[Vec<May>], place: Place<'_>) -> Vec<Block> {
    let Some(part) = parts.last() else { return Vec::new() };
    let mut blocks = Vec::new();
    if let Place::After(..) = place {
        blocks.push(Block::Heading { level: 1, text: step_title(texts, part) });
        let from = [("from", texts.date(part.from()).into())];
        let id = match part.begins {
            Begins::InOrder => "handout-later",
            Begins::GoesBack => "handout-back-from",
        };
        blocks.push(texts.paragraph(Tone::Lead, id, &from));
        blocks.extend(rules(desk, texts, part));
    }
    blocks.push(texts.heading(1, "handout-sling-title"));
    blocks.extend(sling::sentences(texts, part));
    let begins_without = part.periods[0].sling.wear != plan::Wear::Always;
    let is_numb = matches!(place, Place::First(Numbness::Expected));
    if is_numb && begins_without {
        blocks.push(texts.paragraph(Tone::Strong, "handout-sling-numb", &[]));
    }
    let position = part.periods[0].sling.position;
    let is_as_before = |before: &Part<'_>| wears(before) && before.periods[0].sling.position == position;
    if let Place::After(before, _) = place
        && wears(part)
        && is_as_before(before)
    {
        blocks.push(texts.paragraph(Tone::Plain, "handout-sling-same", &[step_number(before)]));
    } else if wears(part) {
        blocks.push(texts.heading(3, "handout-sling-off-title"));
        blocks.push(Block::List { mark: ListMark::Number, items: care_steps(texts, "care-sling-off-hang") });
        blocks.push(texts.heading(3, "handout-sling-on-title"));
        blocks.push(Block::List { mark: ListMark::Number, items: care_steps(texts, sling::care_pose(position)) });
        if position == plan::SlingPosition::Neutral {
            blocks.push(texts.paragraph(Tone::Plain, "handout-sling-no-pillow", &[]));
        }
        let ids =
            ["first-days-sling-fit", "first-days-sling-wedge", "first-days-sling-skin", "first-days-sling-balance"];
        blocks.extend(ids.map(|id| texts.paragraph(Tone::Plain, id, &[])));
    }
    blocks.push(texts.heading(1, "handout-exercises-title"));
    let bands = exercises::bands(desk, texts, parts);
    if bands.is_empty() {
        blocks.push(texts.paragraph(Tone::Plain, "handout-exercises-none", &[]));
    } else {
        if is_numb {
            blocks.push(texts.paragraph(Tone::Strong, "handout-exercises-numb", &[]));
        }
        let told = calls::told(desk.settings, desk.messages.language());
        blocks.push(texts.paragraph(Tone::Plain, "handout-exercises-how", &told));
        if wears(part) {
            blocks.push(texts.paragraph(Tone::Plain, "handout-exercises-sling", &[]));
        }
        if part.periods.iter().flat_map(|period| period.exercises).any(|line| line.target.is_some()) {
            blocks.push(texts.paragraph(Tone::Plain, "handout-exercises-home", &[]));
        }
        blocks.push(texts.paragraph(Tone::Strong, "handout-exercises-missed", &[]));
        blocks.push(texts.paragraph(Tone::Strong, "handout-stricter", &[]));
        blocks.push(texts.paragraph(Tone::Plain, "handout-no-pain", &[]));
        blocks.push(Block::Bands { bands });
    }
    blocks.extend(match place {
        Place::First(_) => activities::blocks(desk, texts, part, answers),
        Place::After(before, earlier) => activities::changes(desk, texts, (before, earlier), (part, answers)),
    });
    blocks
}

/// Whether the sling is worn at all times on any day of a part.
fn wears(part: &Part<'_>) -> bool {
    part.periods.iter().any(|period| period.sling.wear == plan::Wear::Always)
}

/// The number of a step, for a sentence that points to it.
pub(crate) fn step_number(part: &Part<'_>) -> (&'static str, Argument<'static>) {
    ("step", u16::try_from(part.number).unwrap_or(u16::MAX).into())
}

fn care_steps(texts: &Texts<'_>, pose: &str) -> Vec<String> {
    let names = texts.messages.attributes(pose);
    names
        .iter()
        .filter(|name| *name == "start" || name.starts_with("step-"))
        .filter_map(|name| texts.messages.attribute(pose, name))
        .collect()
}

/// Visits up to the gate of the first stage that is not open, from the day of issue on.
fn visits(desk: &Desk<'_>, texts: &Texts<'_>) -> Vec<Block> {
    let items: Vec<String> = crate::visits::of_patient(desk)
        .map(|visit| {
            let told = [("date", Argument::from(texts.date(visit.date)))];
            let id = match visit.purpose.as_str() {
                WOUND => "handout-visit-wound",
                purpose if purpose.starts_with("gate: ") => "handout-visit-gate",
                _ => "handout-visit-other",
            };
            texts.with(id, &told)
        })
        .collect();
    let mut blocks = vec![texts.heading(2, "handout-visits-title")];
    match list(ListMark::Box, items) {
        Some(list) => blocks.extend([list, texts.paragraph(Tone::Plain, "handout-visits-bring", &[])]),
        None => blocks.push(texts.paragraph(Tone::Plain, "handout-visits-none", &[])),
    }
    vec![Block::Together { blocks }]
}

fn signature(texts: &Texts<'_>) -> Block {
    Block::Signature {
        text: texts.get("handout-not-signed"),
        labels: vec![texts.get("handout-signature"), texts.get("handout-signature-date")],
    }
}
