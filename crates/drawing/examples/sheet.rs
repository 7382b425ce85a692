//! A contact sheet of drawings: entries of the catalogue at their widest, as one SVG.

use drawing::{Request, Svg, Words, draw};

fn main() {
    let mut arguments = std::env::args().skip(1);
    let out = arguments.next().expect("a file");
    let side = if arguments.next().as_deref() == Some("left") { body::Side::Left } else { body::Side::Right };
    let only: Vec<String> = arguments.collect();
    let mut sources = diagnostic::Sources::new();
    let mut sink = diagnostic::Sink::new();
    let catalogue = exercise::shipped(&mut sink, |name, text| sources.add(name, text));
    let entries: Vec<_> = catalogue.entries().iter().filter(|e| only.is_empty() || only.contains(&e.id)).collect();
    let columns = 6usize.min(entries.len());
    let rows = entries.len().div_ceil(columns);
    let (w, h) = (66.0, 72.0);
    let mut svg = Svg::new(w * columns as f64, h * rows as f64, "sheet", "sheet");
    let started = std::time::Instant::now();
    let mut bytes = Vec::new();
    for (at, entry) in entries.iter().enumerate() {
        let reach = |demand: &exercise::Demand| demand.amount.greatest_angle().unwrap_or_default();
        let words = Words {
            title: &entry.id,
            description: "",
            side: if side == body::Side::Left { "LEFT" } else { "RIGHT" },
            degrees: &|degrees| format!("{degrees}°"),
            stop: "stop",
            seen_from: &|from| format!("seen from {}", from.name()),
        };
        let limit = entry.target().and_then(|t| t.amount.follows_the_limit().then(|| reach(t)));
        let request = Request {
            entry,
            reach: &reach,
            limit,
            side,
            look: body::Look::default(),
            words: &words,
            room_mm: (62.0, 66.0),
        };
        let [x, y] = [at % columns, at / columns].map(|n| n as f64);
        match draw(&request) {
            Ok(picture) => {
                bytes.push((picture.svg.len(), entry.id.clone()));
                let inner = picture
                    .svg
                    .replacen("<svg ", &format!("<svg x=\"{}\" y=\"{}\" ", x * w * 10.0 + 20.0, y * h * 10.0 + 50.0), 1)
                    .replacen(
                        &format!("width=\"{}mm\"", picture.width_mm),
                        &format!("width=\"{}\"", picture.width_mm * 10.0),
                        1,
                    );
                let start = inner.find("height=\"").expect("height");
                let end = start + inner[start..].find("mm\"").expect("mm");
                let inner = format!(
                    "{}height=\"{}\"{}",
                    &inner[..start],
                    (picture.height_mm * 10.0).round(),
                    &inner[end + 3..]
                );
                svg.raw(&inner);
            }
            Err(why) => eprintln!("{}: {why:?}", entry.id),
        }
        let ink = drawing::Lettering {
            size_mm: 2.6,
            color: drawing::Color::INK,
            weight: drawing::Weight::Regular,
            anchor: drawing::Anchor::Start,
            halo_mm: None,
        };
        svg.text((x * w * 10.0) as i32 + 20, (y * h * 10.0) as i32 + 36, &entry.id, &ink);
    }
    bytes.sort();
    eprintln!(
        "{} drawings, {:.1} ms each, median {:?}, largest {:?}",
        bytes.len(),
        started.elapsed().as_secs_f64() * 1000.0 / bytes.len() as f64,
        bytes.get(bytes.len() / 2),
        bytes.last()
    );
    std::fs::write(out, svg.finish()).expect("written");
}
