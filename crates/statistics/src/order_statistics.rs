//! The k-th smallest of many numbers, without sorting them.

/// Up to so many numbers are selected from as they are.
const FEW: usize = 4096;

/// The value of `rank` among `values`, counted from 0 and from the smallest.
///
/// `scratch` is only there to be used again; it is left with some of the values, the one found at its place among them. Of many
/// numbers a sorted sample tells between which two bounds the rank lies, and only the few between them are looked at; a
/// sample that misleads costs time and nothing else.
pub(crate) fn of_rank(values: &[f64], rank: usize, scratch: &mut Vec<f64>) -> f64 {
    select(values, rank, scratch).0
}

/// The same, and the next larger value (the same at the end).
pub(crate) fn neighbours(values: &[f64], rank: usize) -> (f64, f64) {
    let mut scratch = Vec::new();
    let (found, place) = select(values, rank, &mut scratch);
    (found, scratch[place + 1..].iter().copied().reduce(f64::min).unwrap_or(found))
}

/// The value of `rank` and its place in `scratch`, with no smaller one behind it.
fn select(values: &[f64], rank: usize, scratch: &mut Vec<f64>) -> (f64, usize) {
    let place = rank
        - bracket(values, rank, scratch).unwrap_or_else(|| {
            scratch.clear();
            scratch.extend_from_slice(values);
            0
        });
    let (_, found, _) = scratch.select_nth_unstable_by(place, f64::total_cmp);
    (*found, place)
}

/// Fills `scratch` with the values between two bounds that hold those of `rank` and `rank` + 1, and says how many lie below them;
/// `None` where the bounds do not hold them, or the values are few.
fn bracket(values: &[f64], rank: usize, scratch: &mut Vec<f64>) -> Option<usize> {
    if values.len() <= FEW {
        return None;
    }
    scratch.clear();
    let size = 4 * values.len().isqrt();
    scratch.extend((0..size).map(|i| values[i * (values.len() - 1) / (size - 1)]));
    scratch.sort_unstable_by(f64::total_cmp);
    let place = rank * size / values.len();
    // Four standard deviations of a rank, and a little.
    let margin = 2 * size.isqrt() + 2;
    let lower = scratch[place.saturating_sub(margin)];
    let upper = scratch[(place + margin).min(size - 1)];
    scratch.clear();
    scratch.extend(values.iter().copied().filter(|value| (lower..=upper).contains(value)));
    let below = values.iter().map(|&value| usize::from(value < lower)).sum::<usize>();
    (below <= rank && rank + 1 < below + scratch.len()).then_some(below)
}
