//! Hatching: parallel lines inside an area.

use kurbo::{Point, Vec2};

use super::region::Region;

/// The stretches of parallel lines that lie inside an area.
///
/// # Units and shape
/// `direction` is where the lines run, `pitch` from one to the next. The lines are fixed to the picture's origin, so
/// that they run on from one area to another; they end `inset` before the edge.
pub(crate) fn hatch(region: &Region, direction: Vec2, pitch: f64, inset: f64) -> Vec<(Point, Point)> {
    let along = direction.normalize();
    let across = Vec2::new(-along.y, along.x);
    let edges: Vec<(Vec2, Vec2)> = region
        .edges()
        .map(|(a, b)| {
            let [a, b] = [a, b].map(|point| point.to_vec2());
            (Vec2::new(a.dot(along), a.dot(across)), Vec2::new(b.dot(along), b.dot(across)))
        })
        .collect();
    let low = edges.iter().map(|edge| edge.0.y).fold(f64::INFINITY, f64::min);
    let high = edges.iter().map(|edge| edge.0.y).fold(f64::NEG_INFINITY, f64::max);
    let mut lines = Vec::new();
    if low > high || pitch <= 0.0 {
        return lines;
    }
    let mut step = (low / pitch).ceil();
    while step * pitch < high {
        let level = step * pitch;
        let mut crossings: Vec<f64> = edges
            .iter()
            .filter(|(a, b)| (a.y > level) != (b.y > level))
            .map(|(a, b)| a.x + (level - a.y) / (b.y - a.y) * (b.x - a.x))
            .collect();
        crossings.sort_unstable_by(f64::total_cmp);
        for pair in crossings.chunks_exact(2) {
            let [from, to] = [pair[0] + inset, pair[1] - inset];
            if to - from < inset {
                continue;
            }
            let place = |x: f64| (along * x + across * level).to_point();
            lines.push((place(from), place(to)));
        }
        step += 1.0;
    }
    lines
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_square_gets_one_line_a_pitch() {
        let square = Region::polygon(&[(0.0, 0.0), (0.1, 0.0), (0.1, 0.1), (0.0, 0.1)].map(Point::from));
        let lines = hatch(&square, Vec2::new(1.0, 0.0), 0.03, 0.01);
        let levels: Vec<f64> = lines.iter().map(|line| line.0.y).collect();
        assert_eq!(lines.len(), 4);
        assert!(levels.iter().zip([0.0, 0.03, 0.06, 0.09]).all(|(found, level)| (found - level).abs() < 1e-9));
        assert!(lines.iter().all(|(a, b)| (b.x - a.x - 0.08).abs() < 1e-9));
    }
}
