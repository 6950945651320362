//! The points in the layout that the search runs over.

use nalgebra::Vector2;

use super::shape::Shape;
use crate::order_statistics::of_rank;

/// Coordinates in two columns, about the median of each, in units of the radius about it that holds h points.
///
/// Points farther than [`FAR`] from there are left out: with one of them the determinant cannot be least, and beside it the
/// others have no digits left.
#[derive(Clone, Debug, Default)]
pub(super) struct Points {
    x: Vec<f64>,
    y: Vec<f64>,
    /// Where the points stand in the sample.
    positions: Vec<usize>,
}

const FAR: f64 = 1e6;

/// As near to a line a point lies on it.
const ON_LINE: f64 = 1e-7;

/// What a concentration step works in.
#[derive(Clone, Debug, Default)]
pub(super) struct Workspace {
    distances: Vec<f64>,
    scratch: Vec<f64>,
}

impl Points {
    /// The points of a sample; `None` where `h` of them coincide.
    pub(super) fn of(sample: &[Vector2<f64>], h: usize) -> Option<Self> {
        let median = |of: fn(&Vector2<f64>) -> f64| {
            of_rank(sample.len(), |at| of(&sample[at]), sample.len() / 2, &mut Vec::new())
        };
        let middle = Vector2::new(median(|p| p.x), median(|p| p.y));
        let away: Vec<f64> = sample.iter().map(|p| (p - middle).norm()).collect();
        let reach = of_rank(away.len(), |at| away[at], h - 1, &mut Vec::new());
        let near = |&at: &usize| away[at] <= FAR * reach;
        let positions: Vec<usize> = (0..sample.len()).filter(near).collect();
        let column = |of: fn(Vector2<f64>) -> f64| {
            positions.iter().map(|&at| of(sample[at] - middle) / reach).collect()
        };
        let (x, y) = (column(|p| p.x), column(|p| p.y));
        (reach > 0.0).then_some(Self { x, y, positions })
    }

    pub(super) fn n(&self) -> usize {
        self.x.len()
    }

    /// Those at `places`.
    pub(super) fn picked(&self, places: &[usize]) -> Self {
        let of = |column: &[f64]| places.iter().map(|&at| column[at]).collect();
        let positions = places.iter().map(|&at| self.positions[at]).collect();
        Self { x: of(&self.x), y: of(&self.y), positions }
    }

    /// How many points lie on the line along a shape without width.
    pub(super) fn on_line(&self, shape: &Shape) -> usize {
        let beside = self.x.iter().zip(&self.y).map(|(&x, &y)| shape.beside_line(x, y));
        beside.filter(|beside| *beside <= ON_LINE).count()
    }

    /// The shape of those at `places`.
    pub(super) fn shape_of(&self, places: &[usize]) -> Shape {
        let mut sums = [0.0; 6];
        for &at in places {
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

    /// Where the `h` points nearest by `shape` stand in the sample.
    pub(super) fn nearest(&self, shape: &Shape, h: usize) -> Vec<usize> {
        let mut work = Workspace::default();
        let (_, within) = self.measure(shape, h, &mut work);
        let distances = work.distances.iter().zip(&self.positions);
        distances.filter(|(d, _)| **d <= within).map(|(_, position)| *position).collect()
    }

    /// The shape of the `h` points nearest by `shape`, and the distance of the last of them. Of several at that distance
    /// the first are taken, and the others are moved away in `work`.
    fn measure(&self, shape: &Shape, h: usize, work: &mut Workspace) -> (Shape, f64) {
        let Workspace { distances, scratch } = work;
        distances.clear();
        distances.extend(self.x.iter().zip(&self.y).map(|(&x, &y)| shape.distance(x, y)));
        let within = of_rank(distances.len(), |at| distances[at], h - 1, scratch);
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
