//! What foretells a hit is everything but that hit.

use super::journal::Journal;
use crate::evidence::Evidence;
use crate::learn::{Foretold, Learned, learn};
use crate::observation::Observations;
use crate::tolerance::{TAKEN_OUT, assert_within};
use crate::{Scales, World};

/// What foretells hits that were taken out is what is expected of them where they never counted; their leans did.
#[test]
fn hits_are_foretold_as_if_they_had_not_been_read() {
    let mut journal = Journal::of(6);
    let mut archer = journal.archer(World::ORDINARY, 3);
    journal.follow(&mut archer, 6);
    let seen = Observations::of(&journal.history);
    let scales = Scales::at(journal.history.setup.distance);
    let learned = learn(&seen, &scales);
    let evidence = Evidence::of(&learned.reader(&seen));
    for shots in [vec![seen.shots.len() - 1], vec![9, 10], vec![13, 17, 21]] {
        let foretold = Foretold::of(&evidence, &shots).unwrap();
        let mut weights = learned.weights.clone();
        for &at in &shots {
            weights[at].hit = 1e-12;
        }
        let without = Learned { weights, ..learn(&seen, &scales) };
        let refitted = Evidence::of(&without.reader(&seen));
        let rows = refitted.hits(&shots);
        let known = refitted.covariance(&[&rows]);
        for at in 0..rows.off.len() {
            let sd = known[(at, at)].sqrt();
            assert_within(foretold.off[at], rows.off[at], TAKEN_OUT * sd);
            for other in 0..rows.off.len() {
                let apart = TAKEN_OUT * sd * known[(other, other)].sqrt();
                assert_within(foretold.known[(at, other)], known[(at, other)], apart);
            }
        }
    }
}
