//! Which shafts are shot next, at which index, in which order.

use rand::SeedableRng;
use rand::seq::SliceRandom;
use rand_pcg::Pcg64;

use crate::judge::{Candidate, Judge, MOST_SHOTS};
use crate::look_ahead::Prospect;
use crate::{Aim, OpenReason, PlannedShot, Purpose, Verdict};

/// After so many shots of the references their mean is known better than one more end tells.
const REFERENCES_TO_KNOW_THEM: usize = 12;

/// So many shots of a shaft that too few of its own speak for are worth shooting: as many as of any other.
const WORTH_SHOOTING: usize = 8;

impl Judge<'_> {
    /// The next end, the reference first, the bare shafts shuffled; `None` when nothing is worth a shot.
    pub fn next_end(&self, judged: &[(Candidate<'_>, Verdict)]) -> Option<Vec<PlannedShot>> {
        let mut open: Vec<(&Candidate<'_>, Prospect)> = judged
            .iter()
            .filter(
                |(_, verdict)| matches!(verdict, Verdict::Open(why) if *why != OpenReason::BowOff),
            )
            .filter_map(|(one, _)| Some((one, self.prospect(one)?)))
            .filter(|(one, prospect)| self.is_worth_a_shot(one, prospect.gain_per_shot))
            .collect();
        // A first look tells of the bow and of the set as well: it comes before any second one.
        let looked_at = |one: &Candidate<'_>| !one.standing.counted.is_empty();
        open.sort_by(|(one, gain), (other, more)| {
            let first_looks = looked_at(one).cmp(&looked_at(other));
            first_looks.then(more.gain_per_shot.total_cmp(&gain.gain_per_shot))
        });
        open.truncate(self.setup.arrows_per_end.saturating_sub(1).max(1));
        let reference = self.reference_to_shoot(open.len());
        self.is_worth_an_end(&open, reference.iter().len()).then(|| {
            open.shuffle(&mut Pcg64::seed_from_u64(self.seed));
            let bare = open.into_iter().map(|(one, prospect)| self.bare_shot(one, prospect));
            reference.into_iter().chain(bare).collect()
        })
    }

    /// Every shaft is worth a first look, and a new state of the bow a few shots: each tells of the others as well.
    fn is_worth_a_shot(&self, candidate: &Candidate<'_>, gain_per_shot: f64) -> bool {
        candidate.standing.counted.is_empty()
            || !self.knows_the_bow()
            || match self.shots_lacking(candidate) {
                Some(shots) if shots <= WORTH_SHOOTING => true,
                // Nobody shoots so many, whatever they would be worth.
                Some(shots) if shots > MOST_SHOTS => false,
                _ => gain_per_shot >= self.policy.shot_cost,
            }
    }

    /// Whether the bare shots of an end are worth those of its references as well.
    fn is_worth_an_end(&self, bare: &[(&Candidate<'_>, Prospect)], references: usize) -> bool {
        let gain = bare.iter().map(|(_, prospect)| prospect.gain_per_shot).sum::<f64>();
        let gain_per_shot = gain / (bare.len() + references) as f64;
        bare.iter().any(|(one, _)| self.is_worth_a_shot(one, gain_per_shot))
    }

    /// The reference in use that was shot least, for their mean is what the bare shafts are measured from; in the same air
    /// and with the same hand.
    /// Beside a single bare shaft it is half of the shots: once the references are known, every second end does.
    fn reference_to_shoot(&self, bare: usize) -> Option<PlannedShot> {
        let known = self.references_shot >= REFERENCES_TO_KNOW_THEM;
        if bare == 1 && known && self.seed % 2 == 1 {
            return None;
        }
        let standing = self.roster.references_in_use().min_by_key(|one| one.counted.len())?;
        Some(PlannedShot { shaft: standing.name.clone(), purpose: Purpose::Reference })
    }

    fn bare_shot(&self, candidate: &Candidate<'_>, prospect: Prospect) -> PlannedShot {
        let standing = candidate.standing;
        let promise = candidate.promise().within;
        let aim = match () {
            () if standing.counted.is_empty() => Aim::FirstLook,
            () if self.bow > 0 && !self.knows_the_bow() => Aim::NewBow,
            () if promise < self.policy.retire_at * 2.0 => Aim::Doubt,
            () if standing.shots_at(prospect.index, self.setup.positions) > 0 => Aim::Confirm,
            () => Aim::Try,
        };
        let purpose = Purpose::Bare { index: prospect.index, from: standing.index_now, aim };
        PlannedShot { shaft: standing.name.clone(), purpose }
    }
}
