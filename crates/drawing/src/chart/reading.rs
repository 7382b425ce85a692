//! Reading a picture back, for tests: what was drawn, in millimeters.

use super::text_width::width_mm;
use super::tones::{ABOVE, BELOW};
use crate::color::Color;
use crate::label::Space;
use crate::svg::{Svg, Weight};

/// A picture as it was written.
#[derive(Debug)]
pub(super) struct Seen {
    pub(super) size: [f64; 2],
    pub(super) texts: Vec<Text>,
    pub(super) shapes: Vec<Shape>,
}

/// A line of text.
#[derive(Debug, Clone)]
pub(super) struct Text {
    pub(super) text: String,
    pub(super) size: f64,
    pub(super) color: Color,
    pub(super) space: Space,
    /// How many shapes lie below it.
    pub(super) above: usize,
    pub(super) has_halo: bool,
}

/// A path or a circle.
#[derive(Debug, Clone)]
pub(super) struct Shape {
    /// The ends of its pieces; for a circle its middle.
    pub(super) places: Vec<[f64; 2]>,
    pub(super) radius: Option<f64>,
    /// The middles of its bent pieces.
    pub(super) middles: Vec<[f64; 2]>,
    pub(super) fill: Option<(Color, f64)>,
    pub(super) stroke: Option<(Color, f64)>,
    pub(super) dash: Option<String>,
}

impl Shape {
    pub(super) fn has_stroke(&self, color: Color, width: f64) -> bool {
        self.stroke.is_some_and(|(own, wide)| own == color && (wide - width).abs() < 0.006)
    }

    fn holds(&self, [x, y]: [f64; 2]) -> bool {
        if let Some(radius) = self.radius {
            return (x - self.places[0][0]).hypot(y - self.places[0][1]) < radius;
        }
        let next = self.places.iter().cycle().skip(1);
        let crossings = self
            .places
            .iter()
            .zip(next)
            .filter(|(a, b)| (a[1] > y) != (b[1] > y) && x < (b[0] - a[0]) * (y - a[1]) / (b[1] - a[1]) + a[0]);
        crossings.count() % 2 == 1
    }
}

pub(super) fn read(svg: Svg) -> Seen {
    let text = svg.finish();
    assert!(text.contains("<title>") && text.contains("<desc>"), "{text}");
    let view = attribute(&text, "viewBox").expect("a view");
    let view: Vec<f64> = view.split(' ').map(|number| number.parse().expect("a number")).collect();
    let mut seen = Seen { size: [view[2] / 10.0, view[3] / 10.0], texts: Vec::new(), shapes: Vec::new() };
    let mut halo = false;
    for tag in text.split('<').skip(1) {
        let (tag, content) = tag.split_once('>').expect("a whole tag");
        if tag.starts_with("text ") {
            if tag.contains("aria-hidden") {
                halo = true;
                continue;
            }
            seen.texts.push(read_text(tag, content, seen.shapes.len(), halo));
            halo = false;
        } else if tag.starts_with("path ") || tag.starts_with("circle ") {
            seen.shapes.push(read_shape(tag));
        }
    }
    seen
}

fn read_text(tag: &str, content: &str, above: usize, has_halo: bool) -> Text {
    let number = |name| attribute(tag, name).and_then(|text| text.parse::<f64>().ok()).expect("a number") / 10.0;
    let text = content.replace("&lt;", "<").replace("&gt;", ">").replace("&quot;", "\"").replace("&amp;", "&");
    let weight = if tag.contains("font-weight") { Weight::Bold } else { Weight::Regular };
    let (x, y, size) = (number("x"), number("y"), number("font-size"));
    let width = width_mm(&text, size, weight);
    let left = match attribute(tag, "text-anchor").as_deref() {
        None => x,
        Some("middle") => x - width / 2.0,
        Some("end") => x - width,
        Some(other) => panic!("{other}"),
    };
    let space = Space { left, top: y - size * ABOVE, right: left + width, bottom: y + size * BELOW };
    Text { text, size, color: color(tag, "fill").expect("a color"), space, above, has_halo }
}

fn read_shape(tag: &str) -> Shape {
    let number = |name| attribute(tag, name).and_then(|text| text.parse::<f64>().ok());
    let mut middles = Vec::new();
    let (places, radius) = match attribute(tag, "d") {
        Some(commands) => (read_path(&commands, &mut middles), None),
        None => {
            let at = [number("cx").expect("x") / 10.0, number("cy").expect("y") / 10.0];
            (vec![at], number("r").map(|radius| radius / 10.0))
        }
    };
    let fill = color(tag, "fill").map(|fill| (fill, number("fill-opacity").unwrap_or(1.0)));
    let stroke = color(tag, "stroke").zip(number("stroke-width").map(|width| width / 10.0));
    Shape { places, radius, middles, fill, stroke, dash: attribute(tag, "stroke-dasharray") }
}

/// The ends of the pieces of a path, and the middles of the bent ones.
fn read_path(commands: &str, middles: &mut Vec<[f64; 2]>) -> Vec<[f64; 2]> {
    let mut places: Vec<[f64; 2]> = Vec::new();
    let starts = commands.char_indices().filter(|(_, letter)| letter.is_ascii_alphabetic()).map(|(index, _)| index);
    let starts: Vec<usize> = starts.chain([commands.len()]).collect();
    for pair in starts.windows(2) {
        let piece = &commands[pair[0]..pair[1]];
        let numbers: Vec<f64> =
            piece[1..].split(' ').filter_map(|number| number.parse::<f64>().ok()).map(|units| units / 10.0).collect();
        let last = places.last().copied().unwrap_or_default();
        match &piece[..1] {
            "H" => places.push([numbers[0], last[1]]),
            "V" => places.push([last[0], numbers[0]]),
            "Z" => {}
            "A" => {
                let to = [numbers[5], numbers[6]];
                middles.push(bent_middle(last, to, numbers[0], numbers[4] > 0.0));
                places.push(to);
            }
            _ => places.push([numbers[numbers.len() - 2], numbers[numbers.len() - 1]]),
        }
    }
    places
}

/// The middle of the smaller arc between two places, as SVG defines it: one that sweeps turns from X toward Y, which
/// grows downward, so the arc bulges to the left of its chord.
fn bent_middle(from: [f64; 2], to: [f64; 2], radius: f64, sweeps: bool) -> [f64; 2] {
    let [x, y] = [to[0] - from[0], to[1] - from[1]];
    let half = x.hypot(y) / 2.0;
    let bulge = radius - (radius * radius - half * half).max(0.0).sqrt();
    let sign = if sweeps { 1.0 } else { -1.0 };
    let middle = [f64::midpoint(from[0], to[0]), f64::midpoint(from[1], to[1])];
    if half == 0.0 {
        middle
    } else {
        [middle[0] + sign * bulge * y / half / 2.0, middle[1] - sign * bulge * x / half / 2.0]
    }
}

fn attribute(tag: &str, name: &str) -> Option<String> {
    let start = tag.find(&format!(" {name}=\""))? + name.len() + 3;
    Some(tag[start..start + tag[start..].find('"')?].to_owned())
}

fn color(tag: &str, name: &str) -> Option<Color> {
    let text = attribute(tag, name)?;
    let part = |from: usize| u8::from_str_radix(&text[from..from + 2], 16).expect("two digits");
    Some(Color(part(1), part(3), part(5)))
}

/// Asserts what holds of every picture: no word on another or over the border, type large enough, contrast enough.
pub(super) fn sound(seen: &Seen) {
    let page = Space { left: 0.0, top: 0.0, right: seen.size[0], bottom: seen.size[1] };
    for (index, text) in seen.texts.iter().enumerate() {
        assert!(page.grown(0.06).holds(&text.space), "over the border: {text:?} of {:?}", seen.size);
        // 2.8 mm is 8 points.
        assert!(text.size >= 2.8, "{text:?}");
        for other in &seen.texts[..index] {
            assert!(!text.space.grown(-0.06).meets(&other.space), "{text:?}\nlies on {other:?}");
        }
        let ratio = contrast(text.color, ground(seen, text));
        assert!(ratio >= 4.5, "contrast {ratio:.2}: {text:?} on {:?}", ground(seen, text));
    }
    for shape in &seen.shapes {
        if let Some((color, _)) = shape.stroke.filter(|(color, _)| *color != Color::WHITE) {
            let ratio = contrast(color, Color::WHITE);
            assert!(ratio >= 3.0, "contrast {ratio:.2}: {shape:?}");
        }
    }
}

/// What lies below the middle of a text.
fn ground(seen: &Seen, text: &Text) -> Color {
    let at = [f64::midpoint(text.space.left, text.space.right), f64::midpoint(text.space.top, text.space.bottom)];
    let below = seen.shapes[..text.above].iter().filter(|shape| !text.has_halo && shape.holds(at));
    below.filter_map(|shape| shape.fill).fold(Color::WHITE, |ground, (fill, opacity)| {
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "between two bytes")]
        let mix = |low: u8, top: u8| (f64::from(low) * (1.0 - opacity) + f64::from(top) * opacity).round() as u8;
        Color(mix(ground.0, fill.0), mix(ground.1, fill.1), mix(ground.2, fill.2))
    })
}

/// Contrast of two colors as WCAG 2.2 defines it: relative luminance of sRGB, from 1 to 21.
pub(super) fn contrast(one: Color, other: Color) -> f64 {
    let luminance = |Color(red, green, blue): Color| {
        let linear = |channel: u8| {
            let part = f64::from(channel) / 255.0;
            if part <= 0.04045 { part / 12.92 } else { ((part + 0.055) / 1.055).powf(2.4) }
        };
        0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue)
    };
    let (a, b) = (luminance(one), luminance(other));
    (a.max(b) + 0.05) / (a.min(b) + 0.05)
}

#[cfg(test)]
mod tests {
    use super::super::tones::TINT;
    use super::*;

    // 21 and 4.48 (#777777 on white): the two examples every contrast checker gives.
    #[test]
    fn contrast_is_that_of_the_guideline() {
        assert!((contrast(Color::WHITE, Color(0, 0, 0)) - 21.0).abs() < 1e-9);
        assert!((contrast(Color::WHITE, Color(0x77, 0x77, 0x77)) - 4.48).abs() < 0.005);
    }

    // A quarter of the clock from 12 to 3 around the origin, its middle at half past one; and the other way around.
    #[test]
    fn a_sweep_turns_as_a_clock_does() {
        let middle = bent_middle([0.0, -10.0], [10.0, 0.0], 10.0, true);
        let diagonal = 10.0 * std::f64::consts::FRAC_1_SQRT_2;
        assert!((middle[0] - diagonal).abs() < 1e-9 && (middle[1] + diagonal).abs() < 1e-9, "{middle:?}");
        let other = bent_middle([0.0, -10.0], [10.0, 0.0], 10.0, false);
        assert!(other[0] < diagonal / 2.0 && other[1] > -diagonal / 2.0, "{other:?}");
    }

    #[test]
    fn lines_are_seen_on_the_tinted_ground_too() {
        for color in [Color::INK, Color::MOVEMENT, Color::STOP, Color::GHOST, Color::HATCH] {
            assert!(contrast(color, TINT) >= 3.0, "{color}: {:.2}", contrast(color, TINT));
        }
    }
}
