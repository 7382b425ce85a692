//! Drawings with their words.

use std::collections::HashMap;
use std::sync::{LazyLock, Mutex};

use body::{Look, Side};
use drawing::{NoPicture, Picture, Request, SeenFrom, Tempo, Words};
use exercise::{Catalogue, Demand, Entry};
use plan::{Allowed, Bound, LimitRow};
use quantity::Degrees;
use wording::{Argument, Language, Messages};

use crate::document::{Block, Captioned, Drawing};
use crate::household;

/// What is to be drawn of an entry of the catalogue.
#[derive(Clone, Copy)]
#[expect(missing_debug_implementations, reason = "holds closures")]
pub struct Drawn<'a> {
    /// The exercise, activity, care pose or test.
    pub entry: &'a Entry,
    /// How far each of its demands goes.
    pub reach: &'a dyn Fn(&Demand) -> Degrees,
    /// Where its angle comes from.
    pub angle: Angle,
    /// Beyond which the movement must not go.
    pub limit: Option<Degrees>,
    /// The operated side.
    pub side: Side,
    /// Whom the figure looks like.
    pub look: Look,
    /// Room on the page, in millimeters.
    pub room_mm: (f64, f64),
}

/// Where the angle of a drawing comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Angle {
    /// Somebody asked for it or prescribed it: its degrees are written.
    Asked,
    /// The exercise goes as far as is easy: the drawing shows how, and tells no degrees.
    Free,
}

/// A drawing with its words in the language of the reader.
///
/// # Errors
/// [`NoPicture`]: what is asked for can't be drawn truly.
pub fn picture(drawn: &Drawn<'_>, messages: &Messages) -> Result<Picture, NoPicture> {
    let key = Key::of(drawn, messages);
    if let Some(known) = DRAWN.lock().ok().and_then(|drawn| drawn.get(&key).cloned()) {
        return Ok(known);
    }
    let picture = with_words(drawn, messages, drawing::draw)?;
    if let Ok(mut known) = DRAWN.lock() {
        if known.len() >= REMEMBERED {
            known.clear();
        }
        known.insert(key, picture.clone());
    }
    Ok(picture)
}

/// What was drawn already: most exercises of a stage look the same on every sheet, and drawing is slower than looking up.
static DRAWN: LazyLock<Mutex<HashMap<Key, Picture>>> = LazyLock::new(Mutex::default);

/// A drawing takes about ten kilobytes.
const REMEMBERED: usize = 512; // not medical: five megabytes

/// Everything a drawing depends on.
#[derive(Debug, PartialEq, Eq, Hash)]
struct Key {
    entry: Entered,
    reaches: Vec<Degrees>,
    angle: Angle,
    limit: Option<Degrees>,
    side: Side,
    look: Look,
    language: Language,
    room_tenths: [i64; 2],
}

/// An entry by its name and where it was read: the same name may stand in another catalogue.
#[derive(Debug, PartialEq, Eq, Hash)]
struct Entered {
    id: String,
    place: (u32, u32),
    kind: exercise::Kind,
}

impl Key {
    fn of(drawn: &Drawn<'_>, messages: &Messages) -> Self {
        let entry = drawn.entry;
        let has_angle = |demand: &&Demand| demand.amount.greatest_angle().is_some();
        #[expect(clippy::cast_possible_truncation, reason = "a cast stops at the border, far beyond any page")]
        let tenths = |mm: f64| (mm * 10.0).round() as i64; // not medical: tenths
        Self {
            entry: Entered { id: entry.id.clone(), place: (entry.span.start, entry.span.end), kind: entry.kind },
            reaches: entry.demands.iter().filter(has_angle).map(drawn.reach).collect(),
            angle: drawn.angle,
            limit: drawn.limit,
            side: drawn.side,
            look: drawn.look,
            language: messages.language(),
            room_tenths: [tenths(drawn.room_mm.0), tenths(drawn.room_mm.1)],
        }
    }
}

/// The same, moving: once there, held as long as the dose says, and back.
///
/// # Errors
/// As [`picture`].
pub fn moving_picture(drawn: &Drawn<'_>, messages: &Messages) -> Result<Picture, NoPicture> {
    let hold = drawn.entry.dose.as_ref().map_or(0, |dose| dose.hold_s);
    with_words(drawn, messages, |request| drawing::draw_moving(request, &Tempo::with_hold(f64::from(hold))))
}

fn with_words(
    drawn: &Drawn<'_>,
    messages: &Messages,
    draw: impl Fn(&Request<'_>) -> Result<Picture, NoPicture>,
) -> Result<Picture, NoPicture> {
    let entry = drawn.entry;
    let side = [("side", Argument::from(drawn.side.name()))];
    let language = messages.language();
    let written = |degrees: Degrees| household::decimal(&degrees.to_string(), language);
    let told = |degrees: Degrees| messages.text("drawing-degrees", &[("degrees", written(degrees).into())]);
    let degrees = |degrees: Degrees| match drawn.angle {
        Angle::Asked => told(degrees),
        Angle::Free => String::new(),
    };
    let seen_from = |from: SeenFrom| messages.text("drawing-from", &[("from", from.name().into())]);
    let message = entry.message_id();
    let title = messages.text(&message, &[]);
    let title = messages.text("drawing-title", &[("title", title.into()), side[0].clone()]);
    let description = alt(drawn, messages);
    let words = Words {
        title: &title,
        description: &description,
        side: &messages.text("drawing-side", &side),
        degrees: &degrees,
        stop: &messages.text("drawing-stop", &[]),
        seen_from: &seen_from,
    };
    draw(&Request {
        entry,
        reach: drawn.reach,
        limit: drawn.limit,
        side: drawn.side,
        look: drawn.look,
        words: &words,
        room_mm: drawn.room_mm,
    })
}

/// A drawing for a document; `None` where it can't be drawn truly, and the words stand alone.
pub(crate) fn drawing(drawn: &Drawn<'_>, messages: &Messages) -> Option<Drawing> {
    let Picture { svg, width_mm, height_mm } = picture(drawn, messages).ok()?;
    Some(Drawing { svg, width_mm, height_mm, alt: alt(drawn, messages) })
}

/// Care poses and activities as small drawings side by side; none where nothing of them can be drawn.
pub(crate) fn of_care(
    ids: &[&str],
    catalogue: &Catalogue,
    side: Side,
    look: Look,
    messages: &Messages,
) -> Option<Block> {
    let drawings: Vec<Captioned> = ids
        .iter()
        .filter_map(|id| {
            let entry = catalogue.get(id)?;
            let reach = |demand: &Demand| demand.amount.greatest_angle().unwrap_or_default();
            let drawn =
                Drawn { entry, reach: &reach, angle: Angle::Free, limit: None, side, look, room_mm: SMALL_ROOM_MM };
            let caption = messages.text(&entry.message_id(), &[]);
            Some(Captioned { caption, drawing: drawing(&drawn, messages)? })
        })
        .collect();
    (!drawings.is_empty()).then_some(Block::Drawings { drawings })
}

/// Room for a small drawing, in millimeters.
const SMALL_ROOM_MM: (f64, f64) = (48.0, 40.0);

/// The angle at which a movement must stop on a day.
pub(crate) fn limit_in_degrees(key: body::Key, limits: &[LimitRow]) -> Option<Degrees> {
    match prescription::allowed(key, limits) {
        Allowed::UpTo(Bound::Angle(limit)) => Some(limit),
        _ => None,
    }
}

/// What a drawing shows, for those who can't see it: how the exercise starts, and how far the arc goes.
fn alt(drawn: &Drawn<'_>, messages: &Messages) -> String {
    let written = |degrees: Degrees| household::decimal(&degrees.to_string(), messages.language());
    let start = messages.attribute(&drawn.entry.message_id(), "start").unwrap_or_default();
    let start = ("start", Argument::from(start));
    let target = drawn.entry.target().filter(|target| {
        let is_turn = matches!(target.key.joint, body::Joint::Shoulder | body::Joint::Elbow);
        is_turn && target.amount.greatest_angle().is_some()
    });
    let Some(degrees) = target.filter(|_| drawn.angle == Angle::Asked).map(drawn.reach) else {
        return messages.text("drawing-description", &[start]);
    };
    let id = if drawn.limit.is_some() { "drawing-description-limit" } else { "drawing-description-angle" };
    messages.text(id, &[start, ("degrees", written(degrees).into())])
}
