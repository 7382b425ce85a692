//! The angle of a sine and a cosine without a branch, so that a compiler does several at once.

use std::f64::consts::{FRAC_PI_2, FRAC_PI_4, PI};

/// The angle whose sine and cosine are `y` and `x`, up to a common factor; from over −π to π.
///
/// # Units and shape
/// Radians. Not a number where both are zero. Half a turn is positive, whatever the sign of zero.
///
/// # Method
/// The smaller over the larger, folded at an eighth of half a turn, goes through a series and is put back. Within 1e-15
/// radians of the standard library's, as a test holds; that one takes a branch for each case.
#[inline(always)]
pub(crate) fn arctangent(y: f64, x: f64) -> f64 {
    let y = y + 0.0;
    let (high, wide) = (y.abs(), x.abs());
    let steep = high > wide;
    let less = if steep { wide } else { high };
    let more = if steep { high } else { wide };
    let folded = less > FOLD * more;
    let over = if folded { less - more } else { less };
    let under = if folded { less + more } else { more };
    let fold_angle = if folded { FRAC_PI_4 } else { 0.0 };
    let slope = over / under;
    let angle = slope * series(slope * slope) + fold_angle;
    let angle = if steep { FRAC_PI_2 - angle } else { angle };
    let angle = if x < 0.0 { PI - angle } else { angle };
    angle.copysign(y)
}

/// The tangent of an eighth of half a turn: above it the difference from a quarter is the smaller slope.
const FOLD: f64 = std::f64::consts::SQRT_2 - 1.0;

const TERMS: usize = 10; // not medical: the next one is under the last place

#[inline(always)]
fn series(square: f64) -> f64 {
    let mut sum = 0.0;
    for coefficient in COEFFICIENTS.iter().rev() {
        sum = sum * square + coefficient;
    }
    sum
}

/// Of t, t³, t⁵, … in the arctangent for |t| up to [`FOLD`].
const COEFFICIENTS: [f64; TERMS] = coefficients();

/// The Chebyshev series of the arctangent, written in powers.
///
/// atan(FOLD s) = 2 Σ (−1)ᵏ pᵏ⁺ᵏ⁺¹ / (2k+1) T₂ₖ₊₁(s) with p = tan(π/16), because FOLD = 2p / (1 − p²).
const fn coefficients() -> [f64; TERMS] {
    const HALF_FOLD: f64 = 0.198_912_367_379_658; // not medical: the tangent of a sixteenth of half a turn
    const DEGREE: usize = 2 * TERMS;
    let (mut before, mut now) = ([0.0; DEGREE], [0.0; DEGREE]);
    before[0] = 1.0;
    now[1] = 1.0;
    let mut powers = [0.0; DEGREE];
    let (mut degree, mut factor) = (1, 2.0 * HALF_FOLD);
    while degree < DEGREE {
        let mut at = 0;
        while at < DEGREE {
            powers[at] += factor / degree as f64 * now[at];
            at += 1;
        }
        factor *= -HALF_FOLD * HALF_FOLD;
        // Two steps of T₍ₙ₊₁₎ = 2 s Tₙ − T₍ₙ₋₁₎: the series has odd terms only.
        (before, now) = next(before, now);
        (before, now) = next(before, now);
        degree += 2;
    }
    let mut coefficients = [0.0; TERMS];
    let (mut term, mut scale) = (0, 1.0 / FOLD);
    while term < TERMS {
        coefficients[term] = powers[2 * term + 1] * scale;
        scale /= FOLD * FOLD;
        term += 1;
    }
    coefficients
}

const fn next<const DEGREE: usize>(before: [f64; DEGREE], now: [f64; DEGREE]) -> ([f64; DEGREE], [f64; DEGREE]) {
    let mut after = [0.0; DEGREE];
    let mut at = 0;
    while at < DEGREE {
        after[at] = if at > 0 { 2.0 * now[at - 1] } else { 0.0 } - before[at];
        at += 1;
    }
    (now, after)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_is_the_standard_librarys_to_the_last_places() {
        let mut worst: f64 = 0.0;
        for step in -200_000_i32..=200_000 {
            let angle = f64::from(step) / 200_000.0 * PI;
            for size in [1e-3, 1.0, 7.0] {
                let (sine, cosine) = (angle.sin() * size, angle.cos() * size);
                let off = (arctangent(sine, cosine) - sine.atan2(cosine)).abs();
                // At half a turn both signs are the same direction.
                worst = worst.max(off.min((off - 2.0 * PI).abs()));
            }
        }
        assert!(worst < 1e-15, "{worst:e}");
    }

    #[test]
    fn half_a_turn_is_positive_and_axes_are_exact() {
        assert_eq!([arctangent(0.0, -1.0), arctangent(-0.0, -1.0)], [PI, PI]);
        assert_eq!([arctangent(0.0, 1.0), arctangent(-0.0, 1.0)], [0.0, 0.0]);
        assert_eq!([arctangent(1.0, 0.0), arctangent(-1.0, 0.0)], [FRAC_PI_2, -FRAC_PI_2]);
        assert!(arctangent(0.0, 0.0).is_nan());
    }
}
