//! `mendarc draw`.

use std::path::Path;

use body::{Look, Side};
use diagnostic::Diagnostic;
use drawing::{NoPicture, Picture};
use exercise::{Demand, Entry};
use quantity::Degrees;
use sheets::{Angle, Drawn};
use wording::Messages;

use crate::arguments::Draw;
use crate::command::inputs::Inputs;
use crate::command::papers;
use crate::folder::Folder;
use crate::outcome::{Outcome, tell};
use crate::shelf::Shelf;

/// Room for one drawing, in millimeters.
const ROOM_MM: (f64, f64) = (90.0, 100.0); // not medical: a third of a page

pub fn run(arguments: &Draw) -> Outcome {
    let mut inputs = Inputs::default();
    let language = inputs.language(&arguments.language);
    let shelf = Shelf::new(&mut inputs.sources, &mut inputs.sink);
    let (Some(language), false) = (language, inputs.sink.has_errors()) else {
        return inputs.fail(None, false);
    };
    let messages = Messages::of(language);
    let drawn = match &arguments.exercise {
        Some(id) => one(arguments, id, &shelf, &messages),
        None => all(arguments, &shelf, &messages),
    };
    let written = drawn.and_then(|svg| write(&svg, &arguments.out));
    match written {
        Ok(()) => {
            tell(&format!("wrote {}", arguments.out.display()));
            inputs.finish(Outcome::Done)
        }
        Err(fault) => {
            inputs.sink.push(fault);
            inputs.fail(None, false)
        }
    }
}

fn one(arguments: &Draw, id: &str, shelf: &Shelf, messages: &Messages) -> Result<String, Diagnostic> {
    let entry = shelf.catalogue.get(id).ok_or_else(|| unknown(id, shelf))?;
    let angle = arguments.angle.as_deref().map(|written| self::angle("--angle", written)).transpose()?;
    let limit = arguments.limit.as_deref().map(|written| self::angle("--limit", written)).transpose()?;
    if let Some(angle) = angle {
        fits(entry, angle)?;
    }
    let most = |demand: &Demand| demand.amount.greatest_angle().unwrap_or_default();
    let reach = |demand: &Demand| {
        let is_target = entry.target().is_some_and(|target| target.key == demand.key);
        angle.filter(|_| is_target).unwrap_or_else(|| most(demand))
    };
    picture(entry, &reach, limit, arguments, messages).map(|picture| picture.svg)
}

/// Every entry of the catalogue on one sheet.
fn all(arguments: &Draw, shelf: &Shelf, messages: &Messages) -> Result<String, Diagnostic> {
    let most = |demand: &Demand| demand.amount.greatest_angle().unwrap_or_default();
    let mut pictures = Vec::new();
    for entry in shelf.catalogue.entries() {
        let limit = entry.target().filter(|target| target.amount.follows_the_limit()).map(most);
        pictures.push((shelf.title(&entry.id), picture(entry, &most, limit, arguments, messages)?));
    }
    Ok(drawing::contact_sheet(&pictures, ROOM_MM))
}

fn picture(
    entry: &Entry,
    reach: &dyn Fn(&Demand) -> Degrees,
    limit: Option<Degrees>,
    arguments: &Draw,
    messages: &Messages,
) -> Result<Picture, Diagnostic> {
    let side = Side::from(arguments.side);
    let look = Look { build: arguments.build, hair: arguments.hair };
    let drawn = Drawn { entry, reach, angle: Angle::Asked, limit, side, look, room_mm: ROOM_MM };
    let made =
        if arguments.animated { sheets::moving_picture(&drawn, messages) } else { sheets::picture(&drawn, messages) };
    made.map_err(|why| no_picture(entry, why))
}

fn write(svg: &str, path: &Path) -> Result<(), Diagnostic> {
    let is_png = match path.extension().and_then(|ending| ending.to_str()).map(str::to_ascii_lowercase).as_deref() {
        Some("svg") => false,
        Some("png") => true,
        _ => {
            return Err(Diagnostic::error(
                "unknown-picture-format",
                format!("{} ends neither in .svg nor in .png", path.display()),
            )
            .help("name the file picture.svg or picture.png"));
        }
    };
    let bytes = if is_png { papers::png(svg)? } else { svg.as_bytes().to_vec() };
    let Some(name) = path.file_name().and_then(|name| name.to_str()) else {
        return Err(Diagnostic::error("cannot-write", format!("{} names no file", path.display())));
    };
    let folder = path.parent().filter(|parent| !parent.as_os_str().is_empty()).unwrap_or(Path::new("."));
    let mut folder = Folder::open(folder)?;
    folder.put(name, &bytes)?;
    folder.finish().map(|_| ())
}

/// Degrees of the command line.
fn angle(option: &str, written: &str) -> Result<Degrees, Diagnostic> {
    let number = if written.trim().ends_with("deg") { written.to_owned() } else { format!("{written} deg") };
    Degrees::parse(&number).map_err(|error| {
        Diagnostic::error("impossible-angle", format!("`{option} {written}` is no angle: {error}"))
            .help("write degrees, such as 40")
    })
}

/// Whether an exercise goes to an angle.
fn fits(entry: &Entry, angle: Degrees) -> Result<(), Diagnostic> {
    let target = entry.target().filter(|target| target.amount.greatest_angle().is_some());
    let Some(target) = target else {
        return Err(Diagnostic::error("angle-without-movement", format!("`{}` has no angle to set", entry.id))
            .help("leave `--angle` out"));
    };
    let least = target.amount.start_angle().unwrap_or_default();
    let most = target.amount.greatest_angle().unwrap_or_default();
    if (least..=most).contains(&angle) {
        return Ok(());
    }
    Err(Diagnostic::error(
        "angle-beyond-exercise",
        format!("`{}` goes from {least} to {most} degrees, and not to {angle}", entry.id),
    )
    .help("give an angle in that range"))
}

fn unknown(id: &str, shelf: &Shelf) -> Diagnostic {
    let fault = Diagnostic::error("unknown-exercise", format!("`{id}` is not in the catalogue"));
    let ids = shelf.catalogue.entries().iter().map(|entry| entry.id.as_str());
    match document::nearest(id, ids) {
        Some(near) => fault.help(format!("did you mean `{near}`?")),
        None => fault.help("`mendarc draw --all --out sheet.svg` draws everything there is"),
    }
}

fn no_picture(entry: &Entry, why: NoPicture) -> Diagnostic {
    let id = &entry.id;
    match why {
        NoPicture::NoPoses => Diagnostic::error("no-drawing", format!("`{id}` has no poses to draw")),
        NoPicture::NoRoom => Diagnostic::error("no-drawing", "there is no room for a drawing".to_owned()),
        NoPicture::BeyondTheJoint(angle) => {
            Diagnostic::error("impossible-angle", format!("no joint goes to {angle} degrees"))
        }
        NoPicture::BeyondTheLimit => Diagnostic::error(
            "angle-beyond-limit",
            format!("the movement of `{id}` would be drawn beyond the limit it must stop at"),
        )
        .help("give an `--angle` no greater than the `--limit`"),
    }
}
