//! The shot of a shaft that all other shots make least likely.

use quarterturn_statistics::distributions::ChiSquared;

use super::place::{Place, counted_places};
use crate::evidence::Evidence;
use crate::hints::LeftOut;
use crate::{History, ShaftName};

/// A shot farther off than one in so many is doubtful; the others make a verdict, and are no reason to doubt it.
const ONE_IN: f64 = 20.0;

/// The least likely shot of a shaft's present life, where it is unlikely enough to be doubted.
pub fn most_unlikely(
    history: &History,
    evidence: &Evidence<'_>,
    shaft: &ShaftName,
) -> Option<Place> {
    let life = evidence.seen.life_of(shaft)?;
    let shots = (0..evidence.seen.shots.len()).filter(|&at| evidence.seen.shots[at].life == life);
    let chances = shots.filter_map(|at| Some((at, chance(evidence, at)?)));
    let (at, chance) = chances.min_by(|one, other| one.1.total_cmp(&other.1))?;
    let place = || counted_places(history, evidence.seen).get(at).copied();
    (chance < 1.0 / ONE_IN).then(place).flatten()
}

/// The probability that a shot lies as far as this one from what all others say of it.
fn chance(evidence: &Evidence<'_>, at: usize) -> Option<f64> {
    let shots = [at];
    let left_out = LeftOut::of(evidence, &shots)?;
    let (squared, degrees_of_freedom) = left_out.distance_squared(&[evidence.as_entered(at)])?;
    Some(ChiSquared::new(degrees_of_freedom as f64).ok()?.upper_tail(squared))
}
