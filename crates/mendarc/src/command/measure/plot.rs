//! The angle over time as SVG, repetitions marked.

use std::fmt::Write as _;

use motion::{EventKind, Measurement, Task};

const WIDTH: f64 = 960.0;
const HEIGHT: f64 = 320.0;
const LEFT: f64 = 56.0;
const RIGHT: f64 = 16.0;
const TOP: f64 = 40.0;
const BOTTOM: f64 = 44.0;
/// More points than this are not seen.
const MOST_POINTS: usize = 2400;

/// The drawing; `None` where there is no angle.
pub fn svg(measured: &Measurement, task: &Task) -> Option<String> {
    let curve = measured.curve.as_ref().filter(|curve| curve.angle_deg.len() > 1)?;
    let last = curve.step_s * (curve.angle_deg.len() - 1) as f64;
    let least = curve.angle_deg.iter().copied().fold(0.0, f64::min);
    let most = curve.angle_deg.iter().copied().chain(task.limit_deg).fold(10.0, f64::max);
    let [low, high] = [(least / 10.0).floor() * 10.0, (most / 10.0).ceil() * 10.0];
    let x = |seconds: f64| LEFT + (WIDTH - LEFT - RIGHT) * seconds / last;
    let y = |degrees: f64| TOP + (HEIGHT - TOP - BOTTOM) * (high - degrees) / (high - low);
    let mut svg = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {WIDTH} {HEIGHT}\" role=\"img\" \
         font-family=\"sans-serif\" font-size=\"12\">\n<title>{}: {}</title>\n\
         <rect width=\"{WIDTH}\" height=\"{HEIGHT}\" fill=\"#fff\"/>\n",
        task.exercise,
        count_in_words(measured)
    );
    let _ = writeln!(
        svg,
        "<text x=\"{LEFT}\" y=\"20\" font-size=\"14\">{}: {}</text>",
        task.exercise,
        count_in_words(measured)
    );
    let _ = writeln!(svg, "<text x=\"{LEFT}\" y=\"34\" fill=\"#555\">{}</text>", curve.of);
    for one in &measured.each {
        let [from, until] = [one.from_s, one.until_s].map(|t| x((t - curve.start_s).clamp(0.0, last)));
        let _ = writeln!(
            svg,
            "<rect x=\"{from:.1}\" y=\"{TOP}\" width=\"{:.1}\" height=\"{:.1}\" fill=\"#e8eef4\"/>",
            (until - from).max(0.0),
            HEIGHT - TOP - BOTTOM
        );
    }
    let step = if high - low > 90.0 { 30.0 } else { 10.0 };
    let mut line = low;
    while line <= high {
        let at = y(line);
        let _ = writeln!(
            svg,
            "<path d=\"M{LEFT} {at:.1}H{:.1}\" stroke=\"#ccc\" stroke-width=\"0.6\"/><text x=\"{:.1}\" y=\"{:.1}\" text-anchor=\"end\">{line:.0}°</text>",
            WIDTH - RIGHT,
            LEFT - 6.0,
            at + 4.0
        );
        line += step;
    }
    let every = [1.0, 2.0, 5.0, 10.0, 20.0, 60.0, 300.0, 1800.0]
        .into_iter()
        .find(|every| last / every <= 12.0)
        .unwrap_or(3600.0);
    let mut time = 0.0;
    while time <= last {
        let _ = writeln!(
            svg,
            "<text x=\"{:.1}\" y=\"{:.1}\" text-anchor=\"middle\">{time:.0} s</text>",
            x(time),
            HEIGHT - BOTTOM + 18.0
        );
        time += every;
    }
    if let Some(limit) = task.limit_deg {
        let at = y(limit);
        let _ = writeln!(
            svg,
            "<path d=\"M{LEFT} {at:.1}H{:.1}\" stroke=\"#a00\" stroke-dasharray=\"6 4\"/>",
            WIDTH - RIGHT
        );
    }
    let stride = curve.angle_deg.len().div_ceil(MOST_POINTS);
    let points: Vec<String> = curve
        .angle_deg
        .iter()
        .enumerate()
        .step_by(stride)
        .map(|(at, angle)| format!("{:.1},{:.1}", x(at as f64 * curve.step_s), y(*angle)))
        .collect();
    let _ = writeln!(
        svg,
        "<polyline fill=\"none\" stroke=\"#1d4f7c\" stroke-width=\"1.4\" points=\"{}\"/>",
        points.join(" ")
    );
    for (number, one) in measured.each.iter().enumerate() {
        if let Some(peak) = one.peak_deg {
            let at = x((one.top_s - curve.start_s).clamp(0.0, last));
            let _ = writeln!(
                svg,
                "<circle cx=\"{at:.1}\" cy=\"{:.1}\" r=\"3\" fill=\"#1d4f7c\"/><text x=\"{at:.1}\" y=\"{:.1}\" text-anchor=\"middle\">{}</text>",
                y(peak),
                y(peak) - 6.0,
                number + 1
            );
        }
    }
    for event in measured.events.iter().filter(|event| event.kind != EventKind::TooFast) {
        let at = x((event.t_s - curve.start_s).clamp(0.0, last));
        let _ = writeln!(
            svg,
            "<path d=\"M{at:.1} {:.1}v8\" stroke=\"#a00\" stroke-width=\"2\"><title>{}</title></path>",
            HEIGHT - BOTTOM,
            event.kind
        );
    }
    svg.push_str("</svg>\n");
    Some(svg)
}

fn count_in_words(measured: &Measurement) -> String {
    match (measured.repetitions, measured.uncertain) {
        (None, _) => "nothing could be counted".into(),
        (Some(count), false) => format!("{count} counted"),
        (Some(count), true) => format!("about {count}, uncertain"),
    }
}
