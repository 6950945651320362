//! The search among many points: from random starts, in parts first.

use rand::seq::index;
use rand::{RngExt, SeedableRng};
use rand_pcg::Pcg64;

use super::points::{Points, Workspace};
use super::shape::Shape;

/// Random starts in all.
const STARTS: usize = 500;
/// Steps from each of them before the best are chosen.
const FIRST_STEPS: usize = 2;
/// How many are kept of each part.
const KEPT: usize = 50;
/// The points of a part, and the most parts.
const PART: usize = 300;
const PARTS: usize = 5;
/// How many are followed among all points.
const FINALISTS: usize = 1;
/// A step that makes the determinant smaller by a lesser share is the last.
const SETTLED: f64 = 1e-11;
/// Steps after which a search ends that has not settled.
const STEPS: usize = 500;

/// The shape whose `h` nearest points have the least determinant that was found; `None` where `h` points lie on a line.
///
/// # Method
/// Up to five parts of 300 points are drawn; from random triples each is concentrated two steps, the fifty best of each part two
/// steps among the points of all parts, the fifty best of these until they settle, and the best of these among all points.
///
/// # Source
/// P. J. Rousseeuw, K. Van Driessen, 1999, A fast algorithm for the minimum covariance determinant estimator, Technometrics 41,
/// 212 (from memory).
pub(super) fn search(points: &Points, h: usize, seed: u64) -> Option<Shape> {
    let n = points.n();
    let mut random = Pcg64::seed_from_u64(seed);
    let parts = (n / PART).clamp(1, PARTS);
    let drawn = index::sample(&mut random, n, if parts > 1 { n.min(PARTS * PART) } else { n });
    let drawn = drawn.into_vec();
    let mut work = Workspace::default();
    let mut kept = Vec::new();
    for part in drawn.chunks(drawn.len().div_ceil(parts)) {
        let part = points.picked(part);
        let starts = (0..STARTS / parts).filter_map(|_| start(&part, &mut random));
        kept.extend(stepped(&part, share(h, part.n(), n), starts, FIRST_STEPS, KEPT, &mut work));
    }
    let merged = points.picked(&drawn);
    let merged_h = share(h, merged.n(), n);
    let kept = stepped(&merged, merged_h, kept.into_iter(), FIRST_STEPS, KEPT, &mut work);
    let kept = stepped(&merged, merged_h, kept.into_iter(), STEPS, FINALISTS, &mut work);
    stepped(points, h, kept.into_iter(), STEPS, 1, &mut work).first().copied()
}

/// As many of `part` points as `h` are of `n`, rounded up.
fn share(h: usize, part: usize, n: usize) -> usize {
    (h * part).div_ceil(n)
}

/// Three random points that do not lie on a line, more of them where they do.
fn start(points: &Points, random: &mut Pcg64) -> Option<Shape> {
    let mut positions = index::sample(random, points.n(), 3).into_vec();
    loop {
        let shape = points.shape_of(&positions);
        if shape.determinant().is_some() {
            return Some(shape);
        }
        if positions.len() >= points.n() {
            return None;
        }
        positions.push(random.random_range(0..points.n()));
    }
}

/// Where `steps` steps, or as many as it takes, lead from `starts`: the `best` with the least determinants.
fn stepped(
    points: &Points,
    h: usize,
    starts: impl Iterator<Item = Shape>,
    steps: usize,
    best: usize,
    work: &mut Workspace,
) -> Vec<Shape> {
    let mut ends: Vec<(f64, Shape)> = Vec::new();
    for mut shape in starts {
        let mut determinant = f64::INFINITY;
        for _ in 0..steps {
            let next = points.concentrated(&shape, h, work);
            // Points on a line have the least determinant of all.
            let smaller = next.determinant().unwrap_or(0.0);
            let settled = smaller >= determinant * (1.0 - SETTLED);
            (shape, determinant) = (next, smaller);
            if settled || smaller <= 0.0 {
                break;
            }
        }
        ends.push((determinant, shape));
    }
    ends.sort_by(|a, b| a.0.total_cmp(&b.0));
    ends.dedup_by(|a, b| a.0.total_cmp(&b.0).is_eq());
    ends.truncate(best);
    ends.into_iter().map(|(_, shape)| shape).collect()
}
