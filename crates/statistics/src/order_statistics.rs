//! The k-th smallest of many numbers, without sorting them.

/// Up to so many numbers are selected from as they are.
const FEW: usize = 4096;
/// So many numbers are looked at together.
const BLOCK: usize = 64;

/// The value of `rank`, counted from 0 and from the smallest, among `n` values that `value` gives by their places.
///
/// `scratch` is only there to be used again. Of many numbers a sorted sample tells between which two bounds the rank lies,
/// and only the few between them are looked at; a sample that misleads costs time and nothing else.
pub(crate) fn of_rank(
    n: usize,
    value: impl Fn(usize) -> f64,
    rank: usize,
    scratch: &mut Vec<f64>,
) -> f64 {
    select(n, value, rank, scratch).0
}

/// The same, and the next larger value (the same at the end).
pub(crate) fn neighbours(n: usize, value: impl Fn(usize) -> f64, rank: usize) -> (f64, f64) {
    let mut scratch = Vec::new();
    let (found, place) = select(n, value, rank, &mut scratch);
    (found, scratch[place + 1..].iter().copied().reduce(f64::min).unwrap_or(found))
}

/// The value of `rank` and its place in `scratch`, with no smaller one behind it.
fn select(
    n: usize,
    value: impl Fn(usize) -> f64,
    rank: usize,
    scratch: &mut Vec<f64>,
) -> (f64, usize) {
    let place = rank
        - bracket(n, &value, rank, scratch).unwrap_or_else(|| {
            scratch.clear();
            scratch.extend((0..n).map(value));
            0
        });
    let (_, found, _) = scratch.select_nth_unstable_by(place, f64::total_cmp);
    (*found, place)
}

/// Fills `scratch` with the values between two bounds that hold those of `rank` and `rank` + 1, and says how many lie below them;
/// `None` where the bounds do not hold them, or the values are few.
fn bracket(
    n: usize,
    value: &impl Fn(usize) -> f64,
    rank: usize,
    scratch: &mut Vec<f64>,
) -> Option<usize> {
    if n <= FEW {
        return None;
    }
    scratch.clear();
    let size = 4 * n.isqrt();
    scratch.extend((0..size).map(|i| value(i * (n - 1) / (size - 1))));
    scratch.sort_unstable_by(f64::total_cmp);
    let place = rank * size / n;
    // Four standard deviations of a rank, and a little.
    let margin = 2 * size.isqrt() + 2;
    let lower = scratch[place.saturating_sub(margin)];
    let upper = scratch[(place + margin).min(size - 1)];
    scratch.clear();
    let mut below = 0;
    for start in (0..n).step_by(BLOCK) {
        // No branch depends on a value: each is written, and the next over it where it does not belong.
        let (mut between, mut count) = ([0.0; BLOCK], 0);
        for value in (start..n.min(start + BLOCK)).map(value) {
            below += usize::from(value < lower);
            between[count % BLOCK] = value;
            count += usize::from(lower <= value) * usize::from(value <= upper);
        }
        scratch.extend_from_slice(&between[..count]);
    }
    (below <= rank && rank + 1 < below + scratch.len()).then_some(below)
}
