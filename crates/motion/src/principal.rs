//! Principal directions of a cloud of vectors.

use glam::{DMat3, DVec3};

/// Directions and their variances, greatest first.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Principal {
    /// Of length one, at right angles to each other.
    pub axes: [DVec3; 3],
    /// Mean square along each.
    pub power: [f64; 3],
}

impl Principal {
    /// Of vectors about zero; `None` of none.
    ///
    /// # Method
    /// Jacobi's rotations on the matrix of second moments.
    pub fn of(vectors: impl IntoIterator<Item = DVec3>) -> Option<Self> {
        let mut count = 0.0;
        let mut moments = DMat3::ZERO;
        for v in vectors {
            moments += DMat3::from_cols(v * v.x, v * v.y, v * v.z);
            count += 1.0;
        }
        if count == 0.0 || !moments.is_finite() {
            return None;
        }
        let mean = moments * (1.0 / count);
        Some(Self::of_moments([mean.x_axis, mean.y_axis, mean.z_axis]))
    }

    /// Of a matrix of second moments, given by its columns.
    pub fn of_moments(columns: [DVec3; 3]) -> Self {
        let mut m = columns.map(|column| column.to_array());
        let mut axes = DMat3::IDENTITY.to_cols_array_2d();
        for _ in 0..SWEEPS {
            for (p, q) in [(0, 1), (0, 2), (1, 2)] {
                if m[p][q].abs() <= f64::MIN_POSITIVE {
                    continue;
                }
                let theta = (m[q][q] - m[p][p]) / (2.0 * m[p][q]);
                let t = theta.signum() / (theta.abs() + (theta * theta + 1.0).sqrt());
                let c = 1.0 / (t * t + 1.0).sqrt();
                let s = t * c;
                for column in &mut m {
                    let [a, b] = [column[p], column[q]];
                    column[p] = c * a - s * b;
                    column[q] = s * a + c * b;
                }
                let [first, second] = [m[p], m[q]];
                m[p] = [0, 1, 2].map(|k: usize| c * first[k] - s * second[k]);
                m[q] = [0, 1, 2].map(|k: usize| s * first[k] + c * second[k]);
                let [first, second] = [axes[p], axes[q]];
                for k in 0..3 {
                    axes[p][k] = c * first[k] - s * second[k];
                    axes[q][k] = s * first[k] + c * second[k];
                }
            }
        }
        let mut order = [0, 1, 2];
        order.sort_by(|a, b| m[*b][*b].total_cmp(&m[*a][*a]));
        Self {
            axes: order.map(|at| DVec3::from_array(axes[at]).normalize_or(DVec3::X)),
            power: order.map(|at| m[at][at].max(0.0)),
        }
    }
}

/// Three by three converges in fewer.
const SWEEPS: usize = 12;

/// The two principal mean squares of points in a plane about their mean, greatest first, and the direction of the first.
pub fn in_plane(points: &[(f64, f64)]) -> ([f64; 2], f64) {
    let count = (points.len() as f64).max(1.0);
    let (sx, sy) = points.iter().fold((0.0, 0.0), |(x, y), p| (x + p.0, y + p.1));
    let (mx, my) = (sx / count, sy / count);
    let (mut xx, mut xy, mut yy) = (0.0, 0.0, 0.0);
    for (x, y) in points {
        xx += (x - mx) * (x - mx);
        xy += (x - mx) * (y - my);
        yy += (y - my) * (y - my);
    }
    let [xx, xy, yy] = [xx / count, xy / count, yy / count];
    let half = (xx + yy) / 2.0;
    let root = ((xx - yy) / 2.0).hypot(xy);
    ([half + root, (half - root).max(0.0)], 0.5 * (2.0 * xy).atan2(xx - yy))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_stretched_cloud_has_its_own_directions() {
        let turn = glam::DQuat::from_euler(glam::EulerRot::XYZ, 0.3, -0.8, 1.1);
        let cloud = (0..600).map(|at| {
            let at = f64::from(at);
            turn * DVec3::new(5.0 * at.sin(), 2.0 * (1.7 * at).sin(), 0.5 * (0.37 * at).cos())
        });
        let principal = Principal::of(cloud).expect("a cloud");
        for (axis, is) in principal.axes.iter().zip([DVec3::X, DVec3::Y, DVec3::Z]) {
            // Sums of sines over six hundred points are not quite independent.
            assert!((axis.dot(turn * is).abs() - 1.0).abs() < 0.01, "{axis}");
        }
        for (power, is) in principal.power.iter().zip([12.5, 2.0, 0.125]) {
            assert!((power / is - 1.0).abs() < 0.05, "{power} {is}");
        }
        assert!(Principal::of([]).is_none());
    }

    #[test]
    fn an_ellipse_has_its_half_axes() {
        let points: Vec<(f64, f64)> = (0..360)
            .map(|at| {
                let at = f64::from(at).to_radians();
                let [x, y] = [3.0 * at.cos(), at.sin()];
                (x * 0.8 - y * 0.6 + 7.0, x * 0.6 + y * 0.8 - 2.0)
            })
            .collect();
        let ([greater, lesser], direction) = in_plane(&points);
        // The mean square of a sine is half the square of its height.
        assert!((greater - 4.5).abs() < 1e-9 && (lesser - 0.5).abs() < 1e-9, "{greater} {lesser}");
        assert!((direction - 0.6_f64.atan2(0.8)).abs() < 1e-9);
    }
}
