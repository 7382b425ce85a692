//! Writing an SVG: whole tenths of a millimeter, a title and a description in every picture, no scripts.

use std::fmt::Write as _;

use crate::color::Color;

/// A picture being written.
///
/// # Units and shape
/// One unit of the picture is a tenth of a millimeter; coordinates are whole units. Y grows downward.
#[derive(Debug, Clone)]
pub struct Svg {
    width: i32,
    height: i32,
    title: String,
    description: String,
    body: String,
}

/// How an area or a line is painted.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Paint {
    /// The inside.
    pub fill: Option<Color>,
    /// How much of the inside's color covers what lies below, from 0 to 1; 1 where nothing is said.
    pub fill_opacity: Option<f64>,
    /// The line.
    pub stroke: Option<Stroke>,
}

/// A line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stroke {
    /// Its color.
    pub color: Color,
    /// Its width in millimeters.
    pub width_mm: f64,
    /// Dash and gap in millimeters; `None` for a line without gaps.
    pub dash_mm: Option<(f64, f64)>,
    /// Whether its ends are round or cut off.
    pub ends: Ends,
}

/// How a line ends.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Ends {
    /// Half a disk beyond the end.
    #[default]
    Round,
    /// Cut off at the end.
    Cut,
}

/// Where a text stands against its place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Anchor {
    /// It begins there.
    Start,
    /// It is centered there.
    Middle,
    /// It ends there.
    End,
}

/// How a text is set.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lettering {
    /// Height of the type in millimeters.
    pub size_mm: f64,
    /// Its color.
    pub color: Color,
    /// How heavy it is.
    pub weight: Weight,
    /// Where it stands against its place.
    pub anchor: Anchor,
    /// Width in millimeters of a white rim behind it, so that it reads on lines.
    pub halo_mm: Option<f64>,
}

/// How heavy a type is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Weight {
    /// As text.
    Regular,
    /// As a heading.
    Bold,
}

/// Units of a picture in a millimeter.
pub(crate) const UNITS_PER_MM: f64 = 10.0;

impl Svg {
    /// An empty picture of a size in millimeters.
    pub fn new(width_mm: f64, height_mm: f64, title: &str, description: &str) -> Self {
        Self {
            width: units(width_mm),
            height: units(height_mm),
            title: title.to_owned(),
            description: description.to_owned(),
            body: String::new(),
        }
    }

    /// A path, its commands written as SVG writes them, in units.
    pub fn path(&mut self, commands: &str, paint: &Paint) {
        let _ = write!(self.body, "<path d=\"{commands}\"");
        self.painted(paint);
        self.body.push_str("/>");
    }

    /// A circle; place and radius in units.
    pub fn circle(&mut self, x: i32, y: i32, radius: i32, paint: &Paint) {
        let _ = write!(self.body, "<circle cx=\"{x}\" cy=\"{y}\" r=\"{radius}\"");
        self.painted(paint);
        self.body.push_str("/>");
    }

    /// A line of text; its place in units, on the base line.
    pub fn text(&mut self, x: i32, y: i32, text: &str, lettering: &Lettering) {
        if let Some(halo) = lettering.halo_mm {
            let rim = format!(
                " stroke=\"#ffffff\" stroke-width=\"{}\" stroke-linejoin=\"round\"",
                decimal(halo * 2.0 * UNITS_PER_MM)
            );
            self.letters(x, y, text, lettering, Color::WHITE, &rim);
        }
        self.letters(x, y, text, lettering, lettering.color, "");
    }

    fn letters(&mut self, x: i32, y: i32, text: &str, lettering: &Lettering, color: Color, rim: &str) {
        let size = decimal(lettering.size_mm * UNITS_PER_MM);
        let anchor = match lettering.anchor {
            Anchor::Start => "",
            Anchor::Middle => " text-anchor=\"middle\"",
            Anchor::End => " text-anchor=\"end\"",
        };
        let weight = if lettering.weight == Weight::Bold { " font-weight=\"700\"" } else { "" };
        let hidden = if rim.is_empty() { "" } else { " aria-hidden=\"true\"" };
        let _ = write!(
            self.body,
            "<text x=\"{x}\" y=\"{y}\" font-size=\"{size}\"{weight}{anchor} fill=\"{color}\"{rim}{hidden}>{}</text>",
            escaped(text)
        );
    }

    /// Opens a group; `attributes` are written as they are.
    pub fn open_group(&mut self, attributes: &str) {
        self.body.push_str("<g");
        if !attributes.is_empty() {
            self.body.push(' ');
            self.body.push_str(attributes);
        }
        self.body.push('>');
    }

    /// Closes the group opened last.
    pub fn close_group(&mut self) {
        self.body.push_str("</g>");
    }

    /// Anything else, written as it is: definitions, animation.
    pub fn raw(&mut self, markup: &str) {
        self.body.push_str(markup);
    }

    /// The whole picture.
    pub fn finish(self) -> String {
        let Self { width, height, title, description, body } = self;
        let [width_mm, height_mm] = [width, height].map(|units| decimal(f64::from(units) / UNITS_PER_MM));
        format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width_mm}mm\" height=\"{height_mm}mm\" \
             viewBox=\"0 0 {width} {height}\" role=\"img\" font-family=\"{FONTS}\" fill=\"none\" \
             stroke-linecap=\"round\" stroke-linejoin=\"round\"><title>{}</title><desc>{}</desc>{body}</svg>\n",
            escaped(&title),
            escaped(&description)
        )
    }

    fn painted(&mut self, paint: &Paint) {
        if let Some(fill) = paint.fill {
            let _ = write!(self.body, " fill=\"{fill}\"");
            if let Some(opacity) = paint.fill_opacity {
                let _ = write!(self.body, " fill-opacity=\"{}\"", decimal(opacity));
            }
        }
        let Some(stroke) = paint.stroke else { return };
        let width = decimal(stroke.width_mm * UNITS_PER_MM);
        let _ = write!(self.body, " stroke=\"{}\" stroke-width=\"{width}\"", stroke.color);
        if let Some((dash, gap)) = stroke.dash_mm {
            let [dash, gap] = [dash, gap].map(|length| decimal(length * UNITS_PER_MM));
            let _ = write!(self.body, " stroke-dasharray=\"{dash} {gap}\"");
        }
        if stroke.ends == Ends::Cut {
            self.body.push_str(" stroke-linecap=\"butt\"");
        }
    }
}

impl Stroke {
    /// A line without gaps and with round ends.
    pub const fn new(color: Color, width_mm: f64) -> Self {
        Self { color, width_mm, dash_mm: None, ends: Ends::Round }
    }
}

impl Paint {
    /// Only an inside.
    pub const fn filled(color: Color) -> Self {
        Self { fill: Some(color), fill_opacity: None, stroke: None }
    }

    /// Only a line.
    pub const fn line(color: Color, width_mm: f64) -> Self {
        Self { fill: None, fill_opacity: None, stroke: Some(Stroke::new(color, width_mm)) }
    }
}

/// The typeface of the paper first, then what a browser has.
const FONTS: &str = "Source Sans 3, Source Sans Pro, Noto Sans, Helvetica, Arial, sans-serif";

/// Millimeters as whole units.
pub(crate) fn units(mm: f64) -> i32 {
    // A picture is a few hundred millimeters wide; what lies outside an i32 stops at its border.
    #[expect(clippy::cast_possible_truncation, reason = "stops at the border")]
    let units = (mm * UNITS_PER_MM).round() as i32;
    units
}

/// A number with at most two places, without needless zeros.
pub(crate) fn decimal(number: f64) -> String {
    let text = format!("{number:.2}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// A text as XML writes it.
pub(crate) fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            // XML 1.0 has no place for other control characters, not even as references.
            c if c.is_control() => out.push(' '),
            c => out.push(c),
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_picture_names_itself_and_its_size() {
        let mut svg = Svg::new(70.0, 52.5, "Left & right", "a < b");
        svg.path("M0 0L10 10", &Paint::line(Color::INK, 0.44));
        let text = svg.finish();
        assert!(text.contains("width=\"70mm\" height=\"52.5mm\" viewBox=\"0 0 700 525\""), "{text}");
        assert!(text.contains("<title>Left &amp; right</title><desc>a &lt; b</desc>"), "{text}");
        assert!(text.contains("stroke-width=\"4.4\""), "{text}");
    }

    #[test]
    fn a_text_can_not_break_out() {
        assert_eq!(escaped("\u{0}<script>\"&"), " &lt;script&gt;&quot;&amp;");
    }

    #[test]
    fn numbers_are_short() {
        assert_eq!([decimal(4.4), decimal(10.0), decimal(0.125), decimal(-0.5)], ["4.4", "10", "0.12", "-0.5"]);
    }
}
