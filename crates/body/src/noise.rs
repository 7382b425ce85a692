//! How unsure an angle is, for the noise of the orientation it was computed from.

use crate::angle::Angle;

/// By how much noise is larger in the plane of elevation and in the axial rotation than in the orientation.
///
/// # Units and shape
/// A factor of standard deviations: degrees of these angles for each degree of random turn about any axis. 1 at 90
/// degrees of elevation, without a bound toward 0 and 180.
///
/// # Method
/// A small turn w changes the plane by w·(Y − cos(e) h) / sin²(e), where h is the axis of the humerus and e the
/// elevation; that vector has the length sin(e), so the factor is 1 / sin(e). The same holds for the axial rotation. It
/// is the first order: with noise as large as a third of the elevation it says too little ([`plane_spread`]).
///
/// # Example
/// ```
/// use body::{Angle, noise};
/// assert!((noise::plane_gain(Angle::from_degrees(5.0)) - 11.47).abs() < 0.01);
/// ```
pub fn plane_gain(elevation: Angle) -> f64 {
    1.0 / elevation.sin().abs()
}

/// By how much noise is larger in the sum of both turns than in the orientation.
///
/// # Method
/// A small turn w changes the sum by w·(Y + h) / (1 + cos(e)), and Y + h has the length 2 cos(e/2): the factor is
/// 1 / cos(e/2). 1 at the side, 1.41 at 90 degrees, without a bound toward straight up.
pub fn sum_gain(elevation: Angle) -> f64 {
    1.0 / (elevation * HALF).cos().abs()
}

/// The standard deviation of the plane of elevation for a noise of the orientation, also where that is large.
///
/// # Units and shape
/// `noise` is the standard deviation about each axis. Toward the side the first part goes to the 104 degrees of a plane
/// about which nothing is known, and the noise itself comes on top.
///
/// # Method
/// Below a right angle the direction of the arm is seen from above as a point at distance tan(e) with noise on both
/// coordinates, its angle counted from the true plane; above one, from below. The density of that angle is
/// integrated, and the noise of the turn about the axis itself is added. [`plane_gain`] is its limit for little noise.
pub fn plane_spread(elevation: Angle, noise: Angle) -> Angle {
    if noise <= Angle::ZERO {
        return Angle::ZERO;
    }
    let signal = elevation.sin().abs() / (noise.radians() * elevation.cos().abs()).max(f64::MIN_POSITIVE);
    let own = noise.radians() * noise.radians();
    if signal > FAR {
        // So far out the angle is the tangent up to a few parts of a thousand.
        return Angle::from_radians((1.0 / (signal * signal) + own).sqrt());
    }
    let step = std::f64::consts::PI / f64::from(PIECES);
    let (mut weight, mut squares) = (0.0, 0.0);
    for piece in 0..PIECES {
        let off = (f64::from(piece) + HALF) * step;
        let density = phase_density(signal, off);
        weight += density;
        squares += density * off * off;
    }
    Angle::from_radians((squares / weight + own).sqrt())
}

/// The density of the angle of a point at distance `signal` under unit noise, up to a factor.
fn phase_density(signal: f64, off: f64) -> f64 {
    let (sine, cosine) = off.sin_cos();
    let along = signal * cosine;
    // The integral of r·exp(−(r² − 2 r along + signal²) / 2) over r from 0, by its closed form.
    let across = signal * sine;
    (-signal * signal * HALF).exp() + along * ROOT_OF_TAU * normal_share(along) * (-across * across * HALF).exp()
}

/// The share of a normal distribution below `x`.
///
/// # Method
/// By parts of the density with Simpson's rule: no function of the standard library gives it, and nothing here is
/// fast or exact beyond what a standard deviation needs.
fn normal_share(x: f64) -> f64 {
    let step = x / f64::from(PIECES);
    let density = |at: f64| (-at * at * HALF).exp();
    let sum: f64 = (0..PIECES)
        .map(|piece| {
            let start = f64::from(piece) * step;
            density(start) + SIMPSON * density(start + step * HALF) + density(start + step)
        })
        .sum();
    HALF + sum * step / (SIMPSON + 2.0) / ROOT_OF_TAU
}

const HALF: f64 = 0.5; // not medical: a half
const PIECES: u32 = 400; // not medical: of half a turn; the spread is right to four digits
const FAR: f64 = 12.0; // not medical: standard deviations; the first order is within four parts of a thousand
const SIMPSON: f64 = 4.0; // not medical: the weight of the middle in Simpson's rule
const ROOT_OF_TAU: f64 = 2.506_628_274_631_000_5; // not medical: the square root of a whole turn

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Rotation, Thoracohumeral};

    /// Standard deviations for one degree about each axis, plane 30, simulated with SciPy.
    const SIMULATED: [(f64, f64); 6] = [(2.0, 34.7), (5.0, 11.5), (10.0, 5.8), (20.0, 2.9), (45.0, 1.4), (90.0, 1.0)];

    #[test]
    fn the_spread_is_what_was_simulated() {
        for (elevation, simulated) in SIMULATED {
            let spread = plane_spread(Angle::from_degrees(elevation), Angle::from_degrees(1.0)).degrees();
            assert!((spread / simulated - 1.0).abs() < 0.03, "{elevation}: {spread} and {simulated}");
        }
    }

    #[test]
    fn the_gain_is_its_first_order() {
        for (elevation, simulated) in SIMULATED.into_iter().filter(|(elevation, _)| *elevation >= 5.0) {
            let gain = plane_gain(Angle::from_degrees(elevation));
            assert!((gain / simulated - 1.0).abs() < 0.03, "{elevation}: {gain} and {simulated}");
        }
        for elevation in [1.0, 30.0, 89.0, 90.0, 150.0, 179.0].map(Angle::from_degrees) {
            let little = Angle::from_degrees(1e-3);
            let ratio = plane_spread(elevation, little).radians() / little.radians() / plane_gain(elevation);
            assert!((ratio - 1.0).abs() < 0.01, "{elevation}: {ratio}");
        }
        // Where the plane can't be told at all it is any of them.
        let any = plane_spread(Angle::ZERO, Angle::from_degrees(1.0)).degrees();
        assert!((any - 180.0 / 3.0_f64.sqrt()).abs() < 0.1, "{any}");
    }

    #[test]
    fn small_turns_about_every_axis_move_the_angles_by_the_gains() {
        let small = Angle::from_radians(1e-6);
        for elevation in [15.0, 60.0, 100.0, 165.0].map(Angle::from_degrees) {
            let humerus = Thoracohumeral::rotation(Angle::from_degrees(30.0), elevation, Angle::from_degrees(-70.0));
            let at = Thoracohumeral::of(humerus);
            let turns = [Rotation::about_x(small), Rotation::about_y(small), Rotation::about_z(small)];
            let moved = turns.map(|turn| Thoracohumeral::of(turn * humerus));
            let size = |of: &dyn Fn(&Thoracohumeral) -> Angle| {
                moved
                    .iter()
                    .map(|moved| ((of(moved) - of(&at)).radians() / small.radians()).powi(2))
                    .sum::<f64>()
                    .sqrt()
            };
            let defined = |angle: Option<Angle>| angle.expect("away from both ends");
            let plane = size(&|of| defined(of.plane_of_elevation()));
            let axial = size(&|of| defined(of.axial_rotation()));
            let sum = size(&|of| of.y_sum());
            let gain = at.noise_gain().expect("away from both ends");
            assert!((plane / gain - 1.0).abs() < 1e-4 && (axial / gain - 1.0).abs() < 1e-4, "{plane} {axial} {gain}");
            assert!((sum / at.sum_noise_gain() - 1.0).abs() < 1e-4, "{sum} {}", at.sum_noise_gain());
        }
    }
}
