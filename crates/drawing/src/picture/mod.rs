//! One drawing of an exercise: the figure, what moves, how far, and where it stops.

mod layout;
mod scene;
mod words;

use body::{Look, Side};
use exercise::{Demand, Entry};
use quantity::Degrees;

use crate::animation::{self, Tempo};
use crate::figure::{Composition, Figure};
use crate::movement::Shown;
use crate::setting::Setting;
use crate::view::SeenFrom;
use layout::Layout;
use scene::{Scene, spec};

/// What is drawn.
#[derive(Clone, Copy)]
#[expect(missing_debug_implementations, reason = "holds closures")]
pub struct Request<'a> {
    /// The exercise, activity, care pose or test.
    pub entry: &'a Entry,
    /// How far each demand goes.
    pub reach: &'a dyn Fn(&Demand) -> Degrees,
    /// Where the movement must stop.
    pub limit: Option<Degrees>,
    /// The operated side.
    pub side: Side,
    /// Whom the figure looks like.
    pub look: Look,
    /// What is written, in the reader's language.
    pub words: &'a Words<'a>,
    /// Room on the page, in millimeters.
    pub room_mm: (f64, f64),
}

/// What is written in and beside a drawing.
#[derive(Clone, Copy)]
#[expect(missing_debug_implementations, reason = "holds closures")]
pub struct Words<'a> {
    /// The title, for those who can't see it.
    pub title: &'a str,
    /// What it shows, for those who can't see it.
    pub description: &'a str,
    /// The operated side, as a word.
    pub side: &'a str,
    /// The degrees of an angle.
    pub degrees: &'a dyn Fn(Degrees) -> String,
    /// At the line that must not be crossed.
    pub stop: &'a str,
    /// From where a small picture is seen.
    pub seen_from: &'a dyn Fn(SeenFrom) -> String,
}

/// A drawing.
#[derive(Debug, Clone, PartialEq)]
pub struct Picture {
    /// The SVG.
    pub svg: String,
    /// Its width in millimeters.
    pub width_mm: f64,
    /// Its height in millimeters.
    pub height_mm: f64,
}

/// Why there is no drawing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NoPicture {
    /// The entry has no poses.
    NoPoses,
    /// The room is less than a drawing can be read in, or no number.
    NoRoom,
    /// An angle is none that a joint can have.
    BeyondTheJoint(Degrees),
    /// The movement goes beyond the limit that is to be drawn.
    BeyondTheLimit,
}

/// Draws.
///
/// # Method
/// The view is chosen once for an entry, at a usual angle, so that it stays the same from week to week. The picture is
/// built of a right arm and every place turned over for a left one, so that both are exact mirror images but for the words.
///
/// # Errors
/// [`NoPicture`]; never a wrong picture.
pub fn draw(request: &Request<'_>) -> Result<Picture, NoPicture> {
    let (scene, layout) = laid_out(request)?;
    Ok(layout.paint(&scene, request))
}

fn laid_out(request: &Request<'_>) -> Result<(Scene, Layout), NoPicture> {
    let (width, height) = request.room_mm;
    if !(width >= LEAST_ROOM && height >= LEAST_ROOM && width <= MOST_ROOM && height <= MOST_ROOM) {
        return Err(NoPicture::NoRoom);
    }
    let scene = Scene::of(request)?;
    let layout = Layout::of(&scene, [width, height]);
    Ok((scene, layout))
}

/// Draws a movement that is seen moving, at a tempo; an entry that stands still is drawn as [`draw`] does.
///
/// # Errors
/// As [`draw`].
pub fn draw_moving(request: &Request<'_>, tempo: &Tempo) -> Result<Picture, NoPicture> {
    let (scene, layout) = laid_out(request)?;
    let moves = matches!(scene.shown, Shown::Turn { .. } | Shown::Way(_) | Shown::Circles { .. } | Shown::Twist(_));
    if !moves || scene.start == scene.end && !matches!(scene.shown, Shown::Circles { .. }) {
        return Ok(layout.paint(&scene, request));
    }
    let poses = animation::poses(&scene.start, &scene.end, &scene.shown);
    let figures: Vec<Composition> = poses
        .iter()
        .map(|pose| {
            let setting = Setting::of(request.entry, &scene.start, pose, &scene.shown);
            Figure::compose(&spec(request, setting, *pose, None), &scene.view.camera)
        })
        .collect();
    Ok(layout.paint_moving(&scene, request, &figures, tempo))
}

// Millimeters.
const LEAST_ROOM: f64 = 20.0;
const MOST_ROOM: f64 = 400.0;
