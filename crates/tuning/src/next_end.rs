//! Which shafts are shot next, at which index, in which order.

use rand::SeedableRng;
use rand::seq::SliceRandom;
use rand_pcg::Pcg64;

use crate::judge::{Candidate, Judge};
use crate::look_ahead::Prospect;
use crate::{Aim, PlannedShot, Purpose, Verdict};

impl Judge<'_> {
    /// The next end, references first, the bare shafts shuffled; `None` when nothing is worth a shot.
    pub fn next_end(&self, judged: &[(Candidate<'_>, Verdict)]) -> Option<Vec<PlannedShot>> {
        let mut open: Vec<(&Candidate<'_>, Prospect)> = judged
            .iter()
            .filter(|(_, verdict)| matches!(verdict, Verdict::Open(_)))
            .filter_map(|(one, _)| Some((one, self.prospect(one)?)))
            .filter(|(one, prospect)| {
                // Every shaft is worth a first look: it tells of the bow as well.
                one.standing.counted.is_empty() || prospect.gain_per_shot >= self.policy.shot_cost
            })
            .collect();
        open.sort_by(|(_, one), (_, other)| other.gain_per_shot.total_cmp(&one.gain_per_shot));
        let references = self.references_to_shoot();
        open.truncate(self.setup.arrows_per_end.saturating_sub(references.len()).max(1));
        if open.is_empty() {
            return None;
        }
        open.shuffle(&mut Pcg64::seed_from_u64(self.seed));
        let bare = open.into_iter().map(|(one, prospect)| self.bare_shot(one, prospect));
        Some(references.into_iter().chain(bare).collect())
    }

    /// The first reference in use always.
    fn references_to_shoot(&self) -> Vec<PlannedShot> {
        let shot = |standing: &crate::roster::Standing| PlannedShot {
            shaft: standing.name.clone(),
            purpose: Purpose::Reference,
        };
        self.roster.references_in_use().take(1).map(shot).collect()
    }

    fn bare_shot(&self, candidate: &Candidate<'_>, prospect: Prospect) -> PlannedShot {
        let standing = candidate.standing;
        let promise = candidate.promise().within;
        let aim = match () {
            () if standing.counted.is_empty() => Aim::FirstLook,
            () if promise < self.policy.retire_at * 2.0 => Aim::Doubt,
            () if standing.shots_at(prospect.index, self.setup.positions) > 0 => Aim::Confirm,
            () => Aim::Try,
        };
        let purpose = Purpose::Bare { index: prospect.index, from: standing.index_now, aim };
        PlannedShot { shaft: standing.name.clone(), purpose }
    }
}
