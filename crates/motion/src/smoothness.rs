//! How smooth a movement is.

/// The spectral arc length of a speed profile: 0 is smoothest, more negative is more halting; `None` of no movement.
///
/// # Units and shape
/// Speeds of one repetition at even steps of `step_s` seconds, any unit.
///
/// # Method
/// The spectrum is normalized to its value at rest, cut where it stays below a twentieth, at most at 10 Hz, and the
/// length of its curve is taken with frequency normalized to the cut.
///
/// # Source
/// Evidence notes on sensing with a phone, "SPARC"; parameters from memory there.
pub fn spectral_arc_length(speed: &[f64], step_s: f64) -> Option<f64> {
    let count = speed.len();
    if count < 4 {
        return None;
    }
    let padded = count.next_power_of_two() * PADDING;
    let spacing = 1.0 / (padded as f64 * step_s);
    let bins = ((HIGHEST_HZ / spacing) as usize).min(padded / 2);
    let strength = |bin: usize| {
        let angle = -std::f64::consts::TAU * bin as f64 / padded as f64;
        let (step_sin, step_cos) = angle.sin_cos();
        let (mut c, mut s) = (1.0, 0.0);
        let (mut re, mut im) = (0.0, 0.0);
        for value in speed {
            re += value * c;
            im += value * s;
            (c, s) = (c * step_cos - s * step_sin, s * step_cos + c * step_sin);
        }
        f64::hypot(re, im)
    };
    let rest = strength(0);
    if rest <= 0.0 {
        return None;
    }
    let spectrum: Vec<f64> = (0..=bins).map(|bin| strength(bin) / rest).collect();
    let last = spectrum.iter().rposition(|value| *value >= LEAST_STRENGTH)?;
    if last == 0 {
        return Some(-1.0);
    }
    let step = 1.0 / last as f64;
    Some(-spectrum[..=last].windows(2).map(|pair| f64::hypot(step, pair[1] - pair[0])).sum::<f64>())
}

/// Zeros are added to this many times the length, so that the curve is fine.
const PADDING: usize = 4;
/// Above it a limb does not move on purpose.
const HIGHEST_HZ: f64 = 10.0;
/// What is below it is noise.
const LEAST_STRENGTH: f64 = 0.05;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_stroke_is_smoother_than_three() {
        let bell = |at: f64, center: f64| (-(at - center) * (at - center) / 0.02).exp();
        let one: Vec<f64> = (0..120).map(|at| bell(f64::from(at) / 60.0, 1.0)).collect();
        let three: Vec<f64> =
            (0..120).map(|at| [0.4, 1.0, 1.6].iter().map(|c| bell(f64::from(at) / 60.0, *c)).sum()).collect();
        let [one, three] = [one, three].map(|speed| spectral_arc_length(&speed, 1.0 / 60.0).expect("it moves"));
        assert!(three < one - 0.5 && one < -1.0, "{one} {three}");
        assert_eq!(spectral_arc_length(&[0.0; 50], 0.02), None);
        assert_eq!(spectral_arc_length(&[], 0.02), None);
    }
}
