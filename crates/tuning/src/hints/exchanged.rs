//! Two shafts whose numbers were exchanged in one end.

use super::hint::Hint;
use super::left_out::LeftOut;
use super::suspicion::Suspicion;
use crate::evidence::Evidence;

/// In one end of so many two numbers are exchanged (common practice, from memory).
const ENDS_FOR_AN_EXCHANGE: f64 = 50.0;

/// The exchanges that could be suspected in an end with these bare shots.
pub fn exchanged(evidence: &Evidence<'_>, bare: &[usize], end: usize) -> Vec<Suspicion> {
    let pairs = bare
        .iter()
        .enumerate()
        .flat_map(|(place, &one)| bare[place + 1..].iter().map(move |&other| [one, other]));
    let count = bare.len() * bare.len().saturating_sub(1) / 2;
    let log_prior = -(ENDS_FOR_AN_EXCHANGE * count as f64).ln();
    pairs.filter_map(|pair| suspicion(evidence, pair, log_prior, end)).collect()
}

fn suspicion(
    evidence: &Evidence<'_>,
    pair: [usize; 2],
    log_prior: f64,
    end: usize,
) -> Option<Suspicion> {
    let left_out = LeftOut::of(evidence, &pair)?;
    let [one, other] = pair.map(|shot| evidence.as_entered(shot));
    let log_odds =
        log_prior + left_out.log_likelihood(&[other, one]) - left_out.log_likelihood(&[one, other]);
    let name = |life: usize| evidence.seen.lives[life].name.clone();
    let hint = Hint::Exchanged { shafts: [name(one.life), name(other.life)], end };
    Some(Suspicion { hint, log_odds, shots: pair.to_vec() })
}
