//! How verdicts came about.

use crate::advise::from;
use crate::assessment::Assessment;
use crate::{Advice, History, Policy, Verdict};

/// What is advised now, and the verdicts on all shafts, in their order, as they stood after each of so many events.
///
/// The sizes are learned once, from the whole history: how widely the archer scatters and aims, how large the parts of
/// shafts are, how leans go with misses. Which shafts and shots are out of the ordinary, and where shafts land, is told
/// from nothing but what had happened by then. So a verdict may differ from the one that was given at the time, when the sizes
/// were known from less.
pub fn advise_with_course(
    history: &History,
    policy: &Policy,
    after: &[usize],
) -> (Advice, Vec<Vec<Verdict>>) {
    let assessment = Assessment::of(history);
    let mut told = None;
    let mut stood = Vec::new();
    for &events in after {
        let so_far = history.after(events);
        let earlier = assessment.earlier(&so_far, told);
        stood.push(earlier.verdicts(policy));
        told = Some(earlier.told());
    }
    (from(&assessment, history, policy), stood)
}
