//! A measurement as a page, with the angle as a small plot.

use std::fmt::Write as _;

use motion::{Measurement, PendulumPath};

use crate::json::measurement::Told;
use crate::view::paint::{HEADING, LOUD, VALUE, paint, wrapped};

const WIDTH: usize = 96;
const PLOT_WIDTH: usize = 88;
const PLOT_HEIGHT: usize = 10;

/// The page.
pub fn page(told: &Told<'_>, name: &str) -> String {
    let Told { measured, task, .. } = told;
    let mut page = String::new();
    let _ = writeln!(
        page,
        "{}  {name}, {} arm, phone at the {}",
        paint(HEADING, task.exercise.name()),
        task.side,
        task.worn
    );
    if !measured.is_usable() {
        let _ = writeln!(page, "\n{}", paint(LOUD, "This recording can't be measured."));
        for why in &measured.why_not {
            let _ = writeln!(page, "  {}", wrapped(why.means(), WIDTH, "  "));
        }
    } else {
        count(&mut page, measured);
        angles(&mut page, told);
        plot(&mut page, measured);
        events(&mut page, measured);
        let checked = if told.checked {
            "Exercise and day were looked up in the record."
        } else {
            "Exercise and pose were not checked against a day's limits: no record was given."
        };
        let _ = writeln!(page, "\n{checked}");
    }
    let caution = wording::Messages::english().text(wording::cautions::LINE, &[]);
    let _ = writeln!(page, "\n{}", wrapped(&caution, WIDTH, ""));
    page
}

fn count(page: &mut String, measured: &Measurement) {
    let Some(count) = measured.repetitions else { return };
    let sure = if measured.uncertain { ", uncertain" } else { "" };
    let what = match measured.path {
        Some(PendulumPath::Circle) => "Turns",
        Some(PendulumPath::Swing) => "Swings to and fro",
        None => "Repetitions",
    };
    let _ = writeln!(page, "\n{what}: {}{sure}", paint(VALUE, &count.to_string()));
    if let Some((clockwise, anticlockwise)) = measured.by_direction {
        let _ = writeln!(page, "Seen from above: {clockwise} clockwise, {anticlockwise} anticlockwise.");
    }
    if let Some(diameter) = measured.circle_diameter_cm {
        let sigma = measured.circle_diameter_sigma_cm.unwrap_or(0.0);
        let _ = writeln!(page, "Diameter at the hand: {diameter:.1} cm (one standard deviation {sigma:.1}).");
    }
    if let Some(period) = measured.period_s {
        let _ = writeln!(page, "Each takes {period:.2} s.");
    }
    if let Some(effort) = measured.effort {
        let moment = effort.moment_nm.map_or_else(String::new, |moment| format!(", {moment:.1} Nm at the shoulder"));
        let _ = writeln!(page, "Force across the limb: {:.2} m/s²{moment} (experimental).", effort.across_m_s2);
    }
}

fn angles(page: &mut String, told: &Told<'_>) {
    let measured = told.measured;
    let Some(peaks) = measured.peaks_deg() else { return };
    let sigma = measured.sigma_deg.unwrap_or(0.0);
    let list: Vec<String> = peaks.iter().map(|peak| format!("{peak:.0}")).collect();
    let _ = writeln!(
        page,
        "{}",
        wrapped(
            &format!(
                "Peaks in degrees from the pose, each with a standard deviation of {sigma:.1}: {}",
                list.join(" ")
            ),
            WIDTH,
            "  "
        )
    );
    if let Some(holds) = measured.holds_s() {
        let list: Vec<String> = holds.iter().map(|hold| format!("{hold:.1}")).collect();
        let _ = writeln!(page, "{}", wrapped(&format!("Held for, in seconds: {}", list.join(" ")), WIDTH, "  "));
    }
    if let Some(tempo) = measured.tempo {
        let _ = writeln!(page, "Out {:.1} s, back {:.1} s on the mean.", tempo.out_s, tempo.back_s);
    }
    if let Some(limit) = told.task.limit_deg {
        let from = if told.limit_from_record.is_some() { " (from the record)" } else { "" };
        let _ = writeln!(
            page,
            "Limit: {limit} degrees{from}. Within two standard deviations of it nothing says \"below\"."
        );
    }
}

/// Columns of the angle, an eighth of a line fine.
fn plot(page: &mut String, measured: &Measurement) {
    let Some(curve) = measured.curve.as_ref().filter(|curve| curve.angle_deg.len() > PLOT_WIDTH) else { return };
    let most = curve.angle_deg.iter().copied().fold(1.0, f64::max);
    let columns: Vec<f64> = (0..PLOT_WIDTH)
        .map(|column| {
            let [from, until] = [column, column + 1].map(|at| at * curve.angle_deg.len() / PLOT_WIDTH);
            curve.angle_deg[from..until.max(from + 1)].iter().copied().fold(f64::NEG_INFINITY, f64::max)
        })
        .collect();
    let blocks: Vec<char> = " ▁▂▃▄▅▆▇█".chars().collect();
    page.push('\n');
    for line in (0..PLOT_HEIGHT).rev() {
        let label = if line + 1 == PLOT_HEIGHT { format!("{most:>5.0}°") } else { "      ".into() };
        let row: String = columns
            .iter()
            .map(|value| {
                let eighths = value / most * (PLOT_HEIGHT * 8) as f64 - (line * 8) as f64;
                blocks[(eighths.round().clamp(0.0, 8.0)) as usize]
            })
            .collect();
        let _ = writeln!(page, "{label} {}", row.trim_end());
    }
    let seconds = curve.step_s * curve.angle_deg.len() as f64;
    let _ = writeln!(page, "       {seconds:.0} s of set; {}", curve.of);
}

fn events(page: &mut String, measured: &Measurement) {
    if measured.events.is_empty() {
        return;
    }
    let _ = writeln!(page, "\n{}", paint(HEADING, "What happened"));
    for event in measured.events.iter().take(20) {
        let unit = match event.kind {
            motion::EventKind::TooFast => "degrees a second",
            motion::EventKind::WideCircle => "cm",
            motion::EventKind::Gap => "s",
            _ => "degrees",
        };
        let _ = writeln!(page, "  {:>8.1} s  {}  {:.1} {unit}", event.t_s, event.kind, event.value);
    }
    if measured.events.len() > 20 {
        let _ = writeln!(page, "  and {} more", measured.events.len() - 20);
    }
}
