//! The smallest convex polygon around points, and how far it reaches.

use nalgebra::Vector2;

/// The corners of the hull, counter-clockwise, none on a straight side; one corner where all points coincide, two where
/// they lie on a line.
///
/// # Source
/// A. M. Andrew, 1979, Another efficient algorithm for convex hulls in two dimensions, Information Processing Letters 9,
/// 216 (from memory).
pub fn convex_hull(mut points: Vec<Vector2<f64>>) -> Vec<Vector2<f64>> {
    points.sort_unstable_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
    points.dedup();
    if points.len() < 3 {
        return points;
    }
    let mut hull = chain(points.iter());
    hull.extend(chain(points.iter().rev()));
    hull
}

/// One side of the hull, without its last corner, which begins the other side.
fn chain<'a>(points: impl Iterator<Item = &'a Vector2<f64>>) -> Vec<Vector2<f64>> {
    let mut side: Vec<Vector2<f64>> = Vec::new();
    for point in points {
        while let [.., before, last] = side[..]
            && (last - before).perp(&(point - before)) <= 0.0
        {
            side.pop();
        }
        side.push(*point);
    }
    side.pop();
    side
}

/// The largest squared distance between two corners of a hull.
///
/// # Source
/// Rotating calipers: M. I. Shamos, 1978, Computational Geometry, thesis (from memory): the farthest pair touches two
/// parallel lines with the hull between them, and these go round it once.
pub fn squared_diameter(hull: &[Vector2<f64>]) -> f64 {
    let corner = |at: usize| hull[at % hull.len()];
    let mut opposite = 1;
    let mut farthest = 0.0_f64;
    for at in 0..hull.len() {
        let side = corner(at + 1) - corner(at);
        let height = |other: usize| side.perp(&(corner(other) - corner(at)));
        // Twice round is far enough, also where rounding makes heights go up and down.
        while opposite < 2 * hull.len() && height(opposite + 1) > height(opposite) {
            farthest = farthest.max((corner(opposite) - corner(at)).norm_squared());
            opposite += 1;
        }
        for end in [at, at + 1] {
            for other in [opposite, opposite + 1] {
                farthest = farthest.max((corner(other) - corner(end)).norm_squared());
            }
        }
    }
    farthest
}
