//! A contact sheet of drawings, to be looked at: `sheet FILE SIDE SHARE [ID …]`. What goes to the limit is drawn at a share
//! of the way.

use drawing::{Request, Words, contact_sheet, draw};
use exercise::Demand;
use quantity::Degrees;

fn main() {
    let mut arguments = std::env::args().skip(1);
    let out = arguments.next().expect("a file");
    let side = if arguments.next().as_deref() == Some("left") { body::Side::Left } else { body::Side::Right };
    let share: f64 = arguments.next().and_then(|share| share.parse().ok()).unwrap_or(1.0);
    let only: Vec<String> = arguments.collect();
    let mut sources = diagnostic::Sources::new();
    let catalogue = exercise::shipped(&mut diagnostic::Sink::new(), |name, text| sources.add(name, text));
    let wanted = |id: &String| only.is_empty() || only.contains(id);
    let started = std::time::Instant::now();
    let mut pictures = Vec::new();
    for entry in catalogue.entries().iter().filter(|entry| wanted(&entry.id)) {
        let reach = |demand: &Demand| {
            let most = demand.amount.greatest_angle().unwrap_or_default();
            let least = demand.amount.start_angle().unwrap_or_default();
            let steps = f64::from(least.steps()) + f64::from(most.steps() - least.steps()) * share;
            if demand.amount.follows_the_limit() { Degrees::from_steps(steps.round() as i32) } else { most }
        };
        let words = Words {
            title: &entry.id,
            description: "",
            side: if side == body::Side::Left { "LEFT" } else { "RIGHT" },
            degrees: &|degrees| format!("{degrees}°"),
            stop: "stop",
            seen_from: &|from| format!("seen from {}", from.name()),
        };
        let limit = entry.target().filter(|target| target.amount.follows_the_limit()).map(reach);
        let room_mm = (58.0, 66.0);
        let request =
            Request { entry, reach: &reach, limit, side, look: body::Look::default(), words: &words, room_mm };
        match draw(&request) {
            Ok(picture) => pictures.push((entry.id.clone(), picture)),
            Err(why) => eprintln!("{}: {why:?}", entry.id),
        }
    }
    let spent = started.elapsed().as_secs_f64() * 1000.0;
    let mut bytes: Vec<_> = pictures.iter().map(|(id, picture)| (picture.svg.len(), id)).collect();
    bytes.sort();
    eprintln!(
        "{} drawings, {:.1} ms each, median {:?}, largest {:?}",
        bytes.len(),
        spent / bytes.len() as f64,
        bytes.get(bytes.len() / 2),
        bytes.last()
    );
    std::fs::write(out, contact_sheet(&pictures, (60.0, 68.0))).expect("written");
}
