//! The search from every three points.

use std::collections::HashSet;

use super::points::{Points, Workspace};
use super::shape::Shape;

/// The most points from which all starts are tried: one bit each.
pub(super) const MOST: usize = 64;

/// The shape whose `h` nearest points have the least determinant that any three points lead to; `None` where `h` points lie on a
/// line.
///
/// Starts that meet a set that was met before go where it went, and end there.
pub(super) fn search(points: &Points, h: usize) -> Option<Shape> {
    let (mut seen, mut work) = (HashSet::new(), Workspace::default());
    let mut best: Option<(f64, Shape)> = None;
    for triple in triples(points.n()) {
        let mut shape = points.shape_of(&triple);
        if shape.determinant().is_none() {
            if points.on_line(&shape) >= h {
                return None;
            }
            continue;
        }
        loop {
            let (next, mask) = points.concentrated_mask(&shape, h, &mut work);
            if !seen.insert(mask) {
                break;
            }
            let Some(determinant) = next.determinant() else {
                if points.on_line(&next) >= h {
                    return None;
                }
                break;
            };
            if best.is_none_or(|(least, _)| determinant < least) {
                best = Some((determinant, next));
            }
            shape = next;
        }
    }
    best.map(|(_, shape)| shape)
}

fn triples(n: usize) -> impl Iterator<Item = [usize; 3]> {
    (0..n).flat_map(move |i| (i + 1..n).flat_map(move |j| (j + 1..n).map(move |k| [i, j, k])))
}
