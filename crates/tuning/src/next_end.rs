//! Which shafts are shot next, at which index, in which order.

use rand::SeedableRng;
use rand::seq::SliceRandom;
use rand_pcg::Pcg64;

use crate::judge::{Candidate, Judge};
use crate::look_ahead::Prospect;
use crate::roster::Standing;
use crate::{Aim, PlannedShot, Purpose, Scales, Verdict};

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
        // A first look tells of the bow and of the set as well: it comes before any second one.
        let looked_at = |one: &Candidate<'_>| !one.standing.counted.is_empty();
        open.sort_by(|(one, gain), (other, more)| {
            let first_looks = looked_at(one).cmp(&looked_at(other));
            first_looks.then(more.gain_per_shot.total_cmp(&gain.gain_per_shot))
        });
        if open.is_empty() {
            return None;
        }
        let references = self.references_to_shoot(&open);
        open.truncate(self.setup.arrows_per_end.saturating_sub(references.len()).max(1));
        open.shuffle(&mut Pcg64::seed_from_u64(self.seed));
        let bare = open.into_iter().map(|(one, prospect)| self.bare_shot(one, prospect));
        Some(references.into_iter().chain(bare).collect())
    }

    /// The reference, where it tells the open shafts more than one more bare shot would.
    ///
    /// Its shot says where references land, which every open shaft is measured from; a bare shot says it of one.
    fn references_to_shoot(&self, open: &[(&Candidate<'_>, Prospect)]) -> Vec<PlannedShot> {
        let Scales { bare_mm, reference_mm, read_mm, aim_mm, .. } = *self.scales;
        let sitting = self.posterior.layout.sitting(self.sitting);
        let told = |known_mm2: f64, scatter_mm: f64| {
            let shot_mm2 = scatter_mm * scatter_mm + read_mm * read_mm + aim_mm * aim_mm;
            known_mm2 * known_mm2 / (known_mm2 + shot_mm2)
        };
        let landing_mm2 = f64::midpoint(
            self.posterior.covariance[(sitting, sitting)],
            self.posterior.covariance[(sitting + 1, sitting + 1)],
        );
        let by_reference = open.len() as f64 * told(landing_mm2, reference_mm);
        let by_bare = open
            .iter()
            .map(|(one, _)| told(one.promise().miss.covariance_mm2.trace() / 2.0, bare_mm))
            .fold(0.0, f64::max);
        let shot = |standing: &Standing| PlannedShot {
            shaft: standing.name.clone(),
            purpose: Purpose::Reference,
        };
        let wanted = usize::from(by_reference >= by_bare);
        self.roster.references_in_use().take(wanted).map(shot).collect()
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
