//! The shafts that go together best on several measures at once.

use crate::BenchError;

/// What is wanted of a measure.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wanted {
    /// That the shafts are alike in it, as in mass or spine.
    Alike,
    /// That it is small in all of them, as a crookedness.
    Small,
}

/// One measure of every shaft of a set.
#[derive(Clone, Debug, PartialEq)]
pub struct Measure {
    /// What is wanted of it.
    pub wanted: Wanted,
    /// Its value for each shaft, in the order of the set.
    pub values: Vec<f64>,
}

/// A choice of shafts.
#[derive(Clone, Debug, PartialEq)]
pub struct BestSubset {
    /// The places of the chosen shafts in the set, ascending.
    pub members: Vec<usize>,
    /// The largest of the standardised spreads, which no other choice undercuts.
    pub largest_spread: f64,
}

/// The `size` shafts whose largest standardised spread is least.
///
/// # Formula
/// The spread of a measure in a choice is its largest less its smallest value there (wanted alike), or its largest there
/// less the smallest of the whole set (wanted small); each in standard deviations of the whole set. A measure in which
/// all shafts are the same has none.
///
/// Exact: the least spread t is the difference of two values of some measure, and a choice exists for it just where a box
/// of side t holds `size` shafts; t is found by bisection over the differences, the box by trying every shaft as its lower
/// edge in each measure. Where the box holds more shafts, those nearest to its middle are taken.
/// # Errors
/// [`BenchError::TooFew`], [`BenchError::NoMeasure`], [`BenchError::NotOneEach`].
/// # Source
/// Elementary; checked against every subset.
pub fn best_subset(measures: &[Measure], size: usize) -> Result<BestSubset, BenchError> {
    let first = measures.first().ok_or(BenchError::NoMeasure)?;
    let available = first.values.len();
    let one_each = |measure: &Measure| {
        measure.values.len() == available && measure.values.iter().all(|value| value.is_finite())
    };
    if !measures.iter().all(one_each) {
        return Err(BenchError::NotOneEach);
    }
    let too_few = BenchError::TooFew { wanted: size, available };
    if size == 0 || size > available {
        return Err(too_few);
    }
    let axes: Vec<Axis> = measures.iter().map(Axis::of).collect();
    let all: Vec<usize> = (0..available).collect();
    let sides = sides(&axes);
    let least = sides.partition_point(|side| held(&axes, all.clone(), *side, size).is_none());
    let largest_spread = *sides.get(least).ok_or(too_few)?;
    let held = held(&axes, all, largest_spread, size).ok_or(too_few)?;
    Ok(BestSubset { members: nearest(&axes, held, size), largest_spread })
}

/// A measure in standard deviations above its smallest value.
struct Axis {
    wanted: Wanted,
    values: Vec<f64>,
}

impl Axis {
    fn of(measure: &Measure) -> Self {
        let values = &measure.values;
        let least = values.iter().copied().fold(f64::INFINITY, f64::min);
        let (n, above) = (values.len() as f64, values.iter().map(|value| value - least));
        let mean = above.clone().sum::<f64>() / n;
        let sum: f64 = above.clone().map(|value| (value - mean).powi(2)).sum();
        let deviation = (sum / (n - 1.0)).sqrt();
        let scale = if deviation > 0.0 { 1.0 / deviation } else { 0.0 };
        Self { wanted: measure.wanted, values: above.map(|value| value * scale).collect() }
    }

    /// The lower edges that a box can have to hold some of these.
    fn edges(&self, members: &[usize]) -> Vec<f64> {
        match self.wanted {
            Wanted::Alike => members.iter().map(|at| self.values[*at]).collect(),
            Wanted::Small => vec![0.0],
        }
    }
}

/// Every side that the least box can have, ascending.
fn sides(axes: &[Axis]) -> Vec<f64> {
    let all = |axis: &Axis| -> Vec<usize> { (0..axis.values.len()).collect() };
    let of_axis = |axis: &Axis| -> Vec<f64> {
        let edges = axis.edges(&all(axis));
        edges.iter().flat_map(|edge| axis.values.iter().map(move |value| value - edge)).collect()
    };
    let mut sides: Vec<f64> = axes.iter().flat_map(of_axis).filter(|side| *side >= 0.0).collect();
    sides.sort_by(f64::total_cmp);
    sides.dedup();
    sides
}

/// The members that a box of this side holds, where one holds `size` of them.
fn held(axes: &[Axis], members: Vec<usize>, side: f64, size: usize) -> Option<Vec<usize>> {
    let Some((axis, rest)) = axes.split_first() else { return Some(members) };
    axis.edges(&members).into_iter().find_map(|edge| {
        // Written as the sides are computed, so that a box of its own side holds its own corners.
        let inside = |at: &usize| (0.0..=side).contains(&(axis.values[*at] - edge));
        let inside: Vec<usize> = members.iter().copied().filter(inside).collect();
        if inside.len() < size { None } else { held(rest, inside, side, size) }
    })
}

/// The `size` of `members` that lie nearest to their middle.
fn nearest(axes: &[Axis], mut members: Vec<usize>, size: usize) -> Vec<usize> {
    let middles: Vec<f64> = axes.iter().map(|axis| middle(axis, &members)).collect();
    let off = |at: usize| {
        let off = axes.iter().zip(&middles).map(|(axis, middle)| (axis.values[at] - middle).abs());
        off.fold(0.0, f64::max)
    };
    members.sort_by(|a, b| off(*a).total_cmp(&off(*b)));
    members.truncate(size);
    members.sort_unstable();
    members
}

/// Half way from the least to the greatest of the members; the best where small is wanted.
fn middle(axis: &Axis, members: &[usize]) -> f64 {
    let values = || members.iter().map(|at| axis.values[*at]);
    match axis.wanted {
        Wanted::Alike => {
            0.5 * (values().fold(f64::INFINITY, f64::min) + values().fold(0.0, f64::max))
        }
        Wanted::Small => 0.0,
    }
}
