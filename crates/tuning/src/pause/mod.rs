//! When it is enough for tonight.

mod drifting;
mod evening;
mod tiring;

use self::drifting::drifting;
use self::evening::Evening;
use self::tiring::tiring;
use crate::evidence::Evidence;
use crate::{History, Pause, Policy};

/// Advice to stop for tonight: as many bare shots as one evening bears, an archer who tires, a reference that drifts.
pub fn pause(history: &History, evidence: &Evidence<'_>, policy: &Policy) -> Option<Pause> {
    let evening = Evening::of(history, evidence.seen)?;
    let enough = evening.bare_shots >= policy.evening_shots;
    enough
        .then_some(Pause::EnoughShots { bare_shots: evening.bare_shots })
        .or_else(|| tiring(evidence, &evening.shots))
        .or_else(|| drifting(evidence, &evening.shots))
}
