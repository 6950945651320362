//! P-values that allow for how many hypotheses were tested.

use thiserror::Error;

/// P-values adjusted so that rejecting those up to α rejects any true hypothesis at all with probability α at most (Holm).
///
/// # Formula
/// Sorted, p̃₍ᵢ₎ = max over j ≤ i of min(1, (m − j + 1) p₍ⱼ₎); given back in the order of `p_values`.
///
/// # Assumptions
/// None about how the tests depend on each other.
///
/// # Errors
/// [`PValueError`] for a number outside [0, 1].
///
/// # Source
/// S. Holm, 1979, A simple sequentially rejective multiple test procedure, Scandinavian Journal of Statistics 6, 65 (from
/// memory).
pub fn holm(p_values: &[f64]) -> Result<Vec<f64>, PValueError> {
    let order = ascending(p_values)?;
    let (mut adjusted, mut largest) = (vec![0.0; order.len()], 0.0_f64);
    for (rank, &at) in order.iter().enumerate() {
        largest = largest.max((order.len() - rank) as f64 * p_values[at]).min(1.0);
        adjusted[at] = largest;
    }
    Ok(adjusted)
}

/// P-values adjusted so that of those up to α a share of α at most is true hypotheses, on average (Benjamini and Hochberg).
///
/// # Formula
/// Sorted, p̃₍ᵢ₎ = min over j ≥ i of min(1, m p₍ⱼ₎/j); given back in the order of `p_values`.
///
/// # Assumptions
/// Tests independent of each other, or depending positively.
///
/// # Errors
/// [`PValueError`] for a number outside [0, 1].
///
/// # Source
/// Y. Benjamini, Y. Hochberg, 1995, Controlling the false discovery rate, Journal of the Royal Statistical Society B 57, 289
/// (from memory).
pub fn benjamini_hochberg(p_values: &[f64]) -> Result<Vec<f64>, PValueError> {
    let order = ascending(p_values)?;
    let (mut adjusted, mut smallest) = (vec![0.0; order.len()], 1.0_f64);
    for (rank, &at) in order.iter().enumerate().rev() {
        smallest = smallest.min(order.len() as f64 * p_values[at] / (rank + 1) as f64);
        adjusted[at] = smallest;
    }
    Ok(adjusted)
}

/// The positions of the p-values, the smallest first.
fn ascending(p_values: &[f64]) -> Result<Vec<usize>, PValueError> {
    let outside = |&(_, p): &(usize, f64)| !(0.0..=1.0).contains(&p);
    if let Some((position, value)) = p_values.iter().copied().enumerate().find(outside) {
        return Err(PValueError { position, value });
    }
    let mut order: Vec<usize> = (0..p_values.len()).collect();
    order.sort_by(|&a, &b| p_values[a].total_cmp(&p_values[b]));
    Ok(order)
}

/// A number that is no p-value.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[error("p-value {} is {value}; a p-value lies between 0 and 1", position + 1)]
pub struct PValueError {
    /// Where it stands, counted from 0.
    pub position: usize,
    /// What stands there.
    pub value: f64,
}
