//! Between which ranks of a sorted sample a quantile of the population lies.

use std::iter::successors;

use crate::Level;

/// Probabilities below this share of the largest are left out.
const NEGLIGIBLE: f64 = 1e-18;

/// The narrowest ranks `(lower, upper)`, counted from 1, of `n` sorted values whose quantile at `share` lies between them with
/// at least probability `level`, half of the rest on either side; 0 and n + 1 stand for no bound.
///
/// # Formula
/// With B binomial of n and `share` the quantile lies below the k-th value with P(B < k) and above it with P(B ≥ k).
///
/// # Source
/// Order statistics: H. A. David, H. N. Nagaraja, 2003, Order Statistics, section 7.1 (from memory).
pub fn ranks(n: usize, share: Level, level: Level) -> (usize, usize) {
    let tail = level.lower_end().probability();
    let (first, weights) = binomial(n, share);
    let whole: f64 = weights.iter().sum();
    let beyond = |weights: &mut dyn Iterator<Item = &f64>| {
        let mut sum = 0.0;
        let adds = weights.take_while(|&&weight| {
            sum += weight / whole;
            sum <= tail
        });
        adds.count()
    };
    let below = first + beyond(&mut weights.iter());
    let above = first + weights.len() - beyond(&mut weights.iter().rev());
    (below, above)
}

/// The first number of successes that counts, and the probabilities from there on, in units of the largest.
fn binomial(n: usize, share: Level) -> (usize, Vec<f64>) {
    let (n, p) = (n as f64, share.probability());
    let odds = p / (1.0 - p);
    let mode = ((n + 1.0) * p).floor().min(n);
    let counts = |term: &(f64, f64)| term.1 > NEGLIGIBLE;
    let down = |&(k, weight): &(f64, f64)| Some((k - 1.0, weight * k / ((n - k + 1.0) * odds)));
    let up = |&(k, weight): &(f64, f64)| Some((k + 1.0, weight * (n - k) * odds / (k + 1.0)));
    let lower = successors(Some((mode, 1.0)), down).take_while(counts).map(|term| term.1);
    let mut weights: Vec<f64> = lower.collect();
    let first = mode + 1.0 - weights.len() as f64;
    weights.reverse();
    let upper = successors(Some((mode, 1.0)), up).take_while(counts).map(|term| term.1);
    weights.extend(upper.skip(1));
    // A whole number from 0 to n.
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "see above")]
    let first = first as usize;
    (first, weights)
}
