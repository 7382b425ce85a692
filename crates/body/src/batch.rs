//! Many matrices at once.

use std::f64::consts::{PI, TAU};

use crate::arctangent::arctangent;
use crate::matrix::{Frame, FrameCheck, Matrix};
use crate::rotation::Rotation;
use crate::thoracohumeral::{SINGULAR, Thoracohumeral};
use crate::words::Side;

/// What one matrix of an arm says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    /// What the nine numbers are.
    pub frame: FrameCheck,
    /// The angles of the nearest turn; none where no turn is near.
    pub angles: Option<Thoracohumeral>,
}

impl Reading {
    /// Reads one matrix of an arm of `side`.
    ///
    /// # Method
    /// The angles are always those of the nearest turn ([`Matrix::nearest`]). Entries of a matrix that is not quite
    /// orthonormal contradict each other; with the nearest turn plane, axial rotation and their sum still fit, no
    /// cosine is over one, and the result does not depend on which entries a formula happens to use. For a matrix
    /// that is a turn it is the matrix itself.
    pub fn of(matrix: &Matrix, side: Side) -> Self {
        let matrix = matrix.as_right_arm(side);
        Self { frame: matrix.check(), angles: matrix.nearest().map(Thoracohumeral::of) }
    }

    /// The turn the angles are of, for callers that need more than angles.
    pub fn nearest(matrix: &Matrix, side: Side) -> Option<Rotation> {
        matrix.as_right_arm(side).nearest()
    }
}

/// Reads matrices of one arm into `readings`, which is emptied first; order is kept.
///
/// # Method
/// As [`Reading::of`], several at once and without a branch for the usual case: a turn up to rounding, not at the side
/// and not straight up. All others are read one by one. Both ways agree to 1e-9 degrees, as a test holds.
///
/// # Example
/// ```
/// use body::{Angle, Matrix, Rotation, Side, read_all};
/// let matrices = [10.0, 20.0].map(|raised| Matrix::from(Rotation::about_z(Angle::from_degrees(raised))));
/// let mut readings = Vec::new();
/// read_all(&matrices, Side::Right, &mut readings);
/// let second = readings[1].angles.expect("a turn").elevation();
/// assert!((second.degrees() - 20.0).abs() < 1e-9);
/// ```
pub fn read_all(matrices: &[Matrix], side: Side, readings: &mut Vec<Reading>) {
    readings.clear();
    readings.reserve(matrices.len());
    let mut block = Block::new();
    for some in matrices.chunks(LANES) {
        block.load(some);
        block.read(side);
        for (lane, matrix) in some.iter().enumerate() {
            readings.push(block.reading(lane).unwrap_or_else(|| Reading::of(matrix, side)));
        }
    }
}

/// Matrices looked at together; more than a register holds, so that the compiler chooses.
const LANES: usize = 32; // not medical: fits the first cache with its results

/// Up to this off orthonormal three terms are as good as the iteration: what is left is the fourth power.
const IN_SERIES: f64 = 2e-4; // not medical: what four written decimals leave; its fourth power is rounding

/// Entry by entry, result by result: lane after lane.
#[derive(Debug)]
struct Block {
    entries: [[f64; LANES]; 9],
    plane: [f64; LANES],
    elevation: [f64; LANES],
    axial: [f64; LANES],
    y_sum: [f64; LANES],
    sine: [f64; LANES],
    defect: [f64; LANES],
    determinant: [f64; LANES],
}

impl Block {
    const fn new() -> Self {
        let none = [0.0; LANES];
        Self {
            entries: [none; 9],
            plane: none,
            elevation: none,
            axial: none,
            y_sum: none,
            sine: none,
            defect: none,
            determinant: none,
        }
    }

    fn load(&mut self, matrices: &[Matrix]) {
        for (lane, matrix) in matrices.iter().enumerate() {
            for (entries, entry) in self.entries.iter_mut().zip(matrix.entries()) {
                entries[lane] = *entry;
            }
        }
    }

    fn read(&mut self, side: Side) {
        let mirror = match side {
            Side::Right => 1.0,
            Side::Left => -1.0,
        };
        let [aa, bb, cc, dd, ee, ff, gg, hh, ii] = &self.entries;
        for lane in 0..LANES {
            let [a, b, c] = [aa[lane], bb[lane], cc[lane] * mirror];
            let [d, e, f] = [dd[lane], ee[lane], ff[lane] * mirror];
            let [g, h, i] = [gg[lane] * mirror, hh[lane] * mirror, ii[lane]];
            // What RᵀR is more than the identity.
            let [xx, yy, zz] = [a * a + d * d + g * g - 1.0, b * b + e * e + h * h - 1.0, c * c + f * f + i * i - 1.0];
            let [xy, yz, xz] = [a * b + d * e + g * h, b * c + e * f + h * i, a * c + d * f + g * i];
            self.determinant[lane] = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
            let larger = |one: f64, other: f64| if one > other { one } else { other };
            let lengths = larger(larger(xx.abs(), yy.abs()), zz.abs());
            let between = larger(larger(xy.abs(), yz.abs()), xz.abs());
            // A comparison drops what is not a number; the sum carries it.
            self.defect[lane] = larger(lengths, between) + (xx + yy + zz + xy + yz + xz) * 0.0;
            // The nearest turn is R (1 + E)^(−1/2); of its series in E = RᵀR − 1 this is what counts.
            let square = symmetric([xx, yy, zz, xy, yz, xz], [xx, yy, zz, xy, yz, xz]);
            let cube = symmetric(square, [xx, yy, zz, xy, yz, xz]);
            let series = |first: f64, at: usize| FIRST * first + SECOND * square[at] + THIRD * cube[at];
            let [xx, yy, zz] = [series(xx, 0), series(yy, 1), series(zz, 2)];
            let [xy, yz, xz] = [series(xy, XY), series(yz, YZ), series(xz, XZ)];
            let step = |x: f64, y: f64, z: f64| {
                [x + (x * xx + y * xy + z * xz), y + (x * xy + y * yy + z * yz), z + (x * xz + y * yz + z * zz)]
            };
            let [_, b, _] = step(a, b, c);
            let [d, e, f] = step(d, e, f);
            let [_, h, _] = step(g, h, i);
            let sine = (b * b + h * h).sqrt();
            self.sine[lane] = sine;
            let (plane, axial) = (arctangent(-b, -h), arctangent(-d, f));
            self.plane[lane] = plane;
            self.axial[lane] = axial;
            self.elevation[lane] = arctangent(sine, e);
            let sum = plane + axial;
            let over = if sum > PI { TAU } else { 0.0 };
            let under = if sum <= -PI { TAU } else { 0.0 };
            self.y_sum[lane] = sum - over + under;
        }
    }

    /// The reading of a lane where it is the usual case.
    fn reading(&self, lane: usize) -> Option<Reading> {
        let (defect, determinant) = (self.defect[lane], self.determinant[lane]);
        // Not-a-number fails every comparison.
        let usual = defect <= IN_SERIES && determinant > 0.0 && self.sine[lane] > WELL_DEFINED;
        usual.then(|| Reading {
            frame: FrameCheck { frame: Frame::Turn, defect, determinant },
            angles: Some(Thoracohumeral::from_radians(
                self.plane[lane],
                self.elevation[lane],
                self.axial[lane],
                self.y_sum[lane],
            )),
        })
    }
}

/// Of E, E² and E³ in (1 + E)^(−1/2).
const FIRST: f64 = -0.5; // not medical: of the binomial series
const SECOND: f64 = 0.375; // not medical: of the binomial series
const THIRD: f64 = -0.3125; // not medical: of the binomial series

/// Places in [xx, yy, zz, xy, yz, xz].
const XY: usize = 3; // not medical: a place
const YZ: usize = 4; // not medical: a place
const XZ: usize = 5; // not medical: a place

/// The product of two powers of one symmetric matrix, which is symmetric: xx, yy, zz, xy, yz, xz.
#[inline(always)]
fn symmetric(one: [f64; 6], other: [f64; 6]) -> [f64; 6] {
    let ([a, b, c, d, e, f], [u, v, w, x, y, z]) = (one, other);
    [
        a * u + d * x + f * z,
        d * x + b * v + e * y,
        f * z + e * y + c * w,
        a * x + d * v + f * y,
        d * z + b * y + e * w,
        a * z + d * y + f * w,
    ]
}

/// Nearer to the side or to straight up a result is looked at by itself.
const WELL_DEFINED: f64 = 10.0 * SINGULAR; // not medical: half a degree

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Angle;

    /// A stream of numbers from 0 to 1 that is the same at every run.
    fn numbers() -> impl FnMut() -> f64 {
        let mut state = 0x9E37_79B9_7F4A_7C15_u64;
        move || {
            state ^= state << 13;
            state ^= state >> 7;
            state ^= state << 17;
            (state >> 11) as f64 / (1_u64 << 53) as f64
        }
    }

    fn turn(next: &mut impl FnMut() -> f64) -> Rotation {
        let mut angle = |most: f64| Angle::from_degrees(next() * most);
        Thoracohumeral::rotation(angle(360.0), angle(180.0), angle(360.0))
    }

    /// A turn with an even departure of every entry, up to `size`.
    fn noisy(next: &mut impl FnMut() -> f64, size: f64) -> Matrix {
        let mut entries = *Matrix::from(turn(next)).entries();
        for entry in &mut entries {
            *entry += (next() - 0.5) * 2.0 * size;
        }
        Matrix::from_array(entries)
    }

    #[test]
    fn many_at_once_read_as_one_by_one() {
        let mut next = numbers();
        let sizes = [0.0, 1e-9, 5e-7, 4e-6, 5e-5, 1e-4, 1e-3, 0.1];
        let matrices: Vec<Matrix> = (0..40_003).map(|at| noisy(&mut next, sizes[at % sizes.len()])).collect();
        for side in [Side::Right, Side::Left] {
            let mut readings = Vec::new();
            read_all(&matrices, side, &mut readings);
            assert_eq!(readings.len(), matrices.len());
            for (matrix, reading) in matrices.iter().zip(&readings) {
                agree(reading, &Reading::of(matrix, side));
            }
        }
    }

    #[track_caller]
    fn agree(one: &Reading, other: &Reading) {
        assert_eq!(one.frame.frame, other.frame.frame, "{one:?}\n{other:?}");
        assert!((one.frame.defect - other.frame.defect).abs() < 1e-15, "{one:?}\n{other:?}");
        let (Some(one), Some(other)) = (one.angles, other.angles) else {
            assert_eq!(one.angles, other.angles);
            return;
        };
        let close = |a: Angle, b: Angle, gain: f64| (a - b).wrapped().abs().degrees() < 1e-9 * gain;
        assert!(close(one.elevation(), other.elevation(), 1.0), "{one:?}\n{other:?}");
        assert!(close(one.y_sum(), other.y_sum(), other.sum_noise_gain()), "{one:?}\n{other:?}");
        assert_eq!(one.is_defined(), other.is_defined());
        let pairs = [
            one.plane_of_elevation().zip(other.plane_of_elevation()),
            one.axial_rotation().zip(other.axial_rotation()),
        ];
        for (a, b) in pairs.into_iter().flatten() {
            assert!(close(a, b, other.noise_gain().expect("defined")), "{one:?}\n{other:?}");
        }
    }

    #[test]
    fn turns_up_to_rounding_agree_to_a_billionth_of_a_degree() {
        let mut next = numbers();
        let turns: Vec<Rotation> = (0..20_000).map(|_| turn(&mut next)).collect();
        let matrices: Vec<Matrix> = turns.iter().copied().map(Matrix::from).collect();
        let mut readings = Vec::new();
        read_all(&matrices, Side::Right, &mut readings);
        for (turn, reading) in turns.iter().zip(&readings) {
            let (one, other) = (reading.angles.expect("a turn"), Thoracohumeral::of(*turn));
            let off = |a: Angle, b: Angle| (a - b).wrapped().abs().degrees();
            assert!(off(one.elevation(), other.elevation()) < 1e-9);
            if other.elevation().sin() > 1e-2 {
                let pair = one.plane_of_elevation().zip(other.plane_of_elevation()).expect("defined");
                assert!(off(pair.0, pair.1) < 1e-9, "{one:?} {other:?}");
                let pair = one.axial_rotation().zip(other.axial_rotation()).expect("defined");
                assert!(off(pair.0, pair.1) < 1e-9, "{one:?} {other:?}");
                assert!(off(one.y_sum(), other.y_sum()) < 1e-9, "{one:?} {other:?}");
            }
        }
    }

    #[test]
    fn one_that_is_no_number_does_not_touch_its_neighbors() {
        let mut next = numbers();
        let mut matrices: Vec<Matrix> = (0..LANES).map(|_| Matrix::from(turn(&mut next))).collect();
        let mut before = Vec::new();
        read_all(&matrices, Side::Right, &mut before);
        matrices[7] = Matrix::from_array([f64::NAN; 9]);
        let mut after = Vec::new();
        read_all(&matrices, Side::Right, &mut after);
        assert_eq!(after[7].frame.frame, Frame::NotFinite);
        assert_eq!(after[7].angles, None);
        for at in (0..LANES).filter(|at| *at != 7) {
            assert_eq!(before[at], after[at]);
        }
    }
}
