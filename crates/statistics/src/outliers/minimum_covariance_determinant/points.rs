//! The points in the layout that the search runs over.

use nalgebra::Vector2;

use super::shape::Shape;
use crate::order_statistics::of_rank;

/// Coordinates in two columns, about the median of each.
#[derive(Clone, Debug, Default)]
pub(super) struct Points {
    pub(super) x: Vec<f64>,
    pub(super) y: Vec<f64>,
}

/// What a concentration step works in.
#[derive(Clone, Debug, Default)]
pub(super) struct Workspace {
    distances: Vec<f64>,
    scratch: Vec<f64>,
}

impl Points {
    pub(super) fn about_medians(points: &[Vector2<f64>]) -> Self {
        let column = |of: fn(&Vector2<f64>) -> f64| {
            let mut values: Vec<f64> = points.iter().map(of).collect();
            let median = of_rank(&values, values.len() / 2, &mut Vec::new());
            for value in &mut values {
                *value -= median;
            }
            values
        };
        Self { x: column(|p| p.x), y: column(|p| p.y) }
    }

    pub(super) fn n(&self) -> usize {
        self.x.len()
    }

    /// Those at `positions`.
    pub(super) fn picked(&self, positions: &[usize]) -> Self {
        let of = |column: &[f64]| positions.iter().map(|&at| column[at]).collect();
        Self { x: of(&self.x), y: of(&self.y) }
    }

    /// The shape of those at `positions`.
    pub(super) fn shape_of(&self, positions: &[usize]) -> Shape {
        let mut sums = [0.0; 6];
        for &at in positions {
            add(&mut sums, 1.0, self.x[at], self.y[at]);
        }
        Shape::of(sums)
    }

    /// The shape of the `h` points nearest by `shape`: a step that never makes the determinant larger.
    pub(super) fn concentrated(&self, shape: &Shape, h: usize, work: &mut Workspace) -> Shape {
        self.measure(shape, h, work).0
    }

    /// The same with the mask of the points taken, of which there are 64 at most.
    pub(super) fn concentrated_mask(
        &self,
        shape: &Shape,
        h: usize,
        work: &mut Workspace,
    ) -> (Shape, u64) {
        let (shape, within) = self.measure(shape, h, work);
        let bits = work.distances.iter().enumerate();
        (shape, bits.fold(0, |mask, (at, d)| mask | u64::from(*d <= within) << at))
    }

    /// The positions of the `h` points nearest by `shape`.
    pub(super) fn nearest(&self, shape: &Shape, h: usize) -> Vec<usize> {
        let mut work = Workspace::default();
        let (_, within) = self.measure(shape, h, &mut work);
        let distances = work.distances.iter().enumerate();
        distances.filter(|(_, d)| **d <= within).map(|(at, _)| at).collect()
    }

    /// The shape of the `h` points nearest by `shape`, and the distance of the last of them. Of several at that distance
    /// the first are taken, and the others are moved away in `work`.
    fn measure(&self, shape: &Shape, h: usize, work: &mut Workspace) -> (Shape, f64) {
        let Workspace { distances, scratch } = work;
        distances.clear();
        distances.extend(self.x.iter().zip(&self.y).map(|(&x, &y)| shape.distance(x, y)));
        let within = of_rank(distances, h - 1, scratch);
        let sums = self.sums_within(distances, within);
        if sums[0] <= h as f64 {
            return (Shape::of(sums), within);
        }
        let mut left = h - distances.iter().filter(|d| **d < within).count();
        for distance in distances.iter_mut().filter(|d| d.total_cmp(&within).is_eq()) {
            *distance = if left > 0 { within } else { f64::INFINITY };
            left = left.saturating_sub(1);
        }
        (Shape::of(self.sums_within(distances, within)), within)
    }

    fn sums_within(&self, distances: &[f64], within: f64) -> [f64; 6] {
        let (mut even, mut odd) = ([0.0; 6], [0.0; 6]);
        let (x, y) = (self.x.chunks(2), self.y.chunks(2));
        for ((x, y), d) in x.zip(y).zip(distances.chunks(2)) {
            add(&mut even, weight(d[0], within), x[0], y[0]);
            if let ([_, x], [_, y], [_, d]) = (x, y, d) {
                add(&mut odd, weight(*d, within), *x, *y);
            }
        }
        even.iter_mut().zip(odd).for_each(|(sum, other)| *sum += other);
        even
    }
}

fn weight(distance: f64, within: f64) -> f64 {
    f64::from(u8::from(distance <= within))
}

/// Adds a point to the sums that [`Shape::of`] takes.
fn add(sums: &mut [f64; 6], weight: f64, x: f64, y: f64) {
    let (wx, wy) = (weight * x, weight * y);
    let terms = [weight, wx, wy, wx * x, wx * y, wy * y];
    sums.iter_mut().zip(terms).for_each(|(sum, term)| *sum += term);
}
