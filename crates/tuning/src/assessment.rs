//! Everything that a history tells at given scales.

use quarterturn_geometry::Lean;

use crate::common_point::Origin;
use crate::evidence::Evidence;
use crate::far_off::reach_far;
use crate::judge::Judge;
use crate::learn::{Learned, at_sizes, learn};
use crate::observation::{Kind, Observation, Observations};
use crate::posterior::Posterior;
use crate::response::bow_moves;
use crate::roster::{Roster, Standing};
use crate::{History, LeanRelation, Policy, Scales, Verdict};

/// A history, what is read from it, and what follows for the unknowns.
pub struct Assessment<'a> {
    history: &'a History,
    /// What the flight model reads.
    pub seen: Observations,
    roster: Roster,
    learned: Learned,
}

impl<'a> Assessment<'a> {
    /// Reads a history.
    pub fn of(history: &'a History) -> Self {
        let mut seen = Observations::of(history);
        let mut expected = Scales::at(history.setup.distance);
        reach_far(&mut seen, &mut expected);
        let learned = learn(&seen, &expected);
        Self { history, roster: Roster::of(history), learned, seen }
    }

    /// What was read, and what it taught.
    pub fn told(self) -> (Observations, Learned) {
        (self.seen, self.learned)
    }

    /// What an earlier history tells at the sizes that this one taught; `before` is what a still earlier one told.
    pub fn earlier<'b>(
        &self,
        history: &'b History,
        before: Option<(Observations, Learned)>,
    ) -> Assessment<'b> {
        let mut seen = Observations::of(history);
        let mut scales = self.learned.scales;
        reach_far(&mut seen, &mut scales);
        // Of a journal so long that its beginning is not read, shots have another place in each reading.
        let first_end = |seen: &Observations| seen.shots.first().map(|shot| shot.end);
        let before = before.filter(|(earlier, _)| first_end(earlier) == first_end(&seen));
        let learned = at_sizes(&seen, &scales, before.as_ref().map(|(_, learned)| learned));
        Assessment { history, roster: Roster::of(history), learned, seen }
    }

    /// The verdicts on its shafts, in their order.
    pub fn verdicts(&self, policy: &Policy) -> Vec<Verdict> {
        let (judge, candidates, bow) = self.judge(policy).settled();
        judge.judged(candidates, &bow).into_iter().map(|(_, verdict)| verdict).collect()
    }

    /// The judge of its shafts.
    pub fn judge<'b>(&'b self, policy: &'b Policy) -> Judge<'b> {
        let life = |standing: &Standing| self.seen.life_of(&standing.name);
        let bow = self.seen.bow_changes_mm.len();
        Judge {
            setup: &self.history.setup,
            policy,
            scales: &self.learned.scales,
            posterior: &self.learned.posterior,
            roster: &self.roster,
            loose: &self.learned.loose,
            shafts: self.roster.shafts.iter().filter_map(life).collect(),
            references: self.roster.references_in_use().filter_map(life).collect(),
            bow,
            bow_moves: bow_moves(self.history, &self.seen),
            shots_with_bow: self.bare().filter(|shot| shot.bow == bow).count(),
            references_shot: self.references_shot(),
            leans_are_read: self.leans_are_read(),
            origin: Origin::References,
            seed: self.history.events.len() as u64,
        }
    }

    /// What is known of every shot from all the others.
    pub fn evidence(&self) -> Evidence<'_> {
        Evidence::of(&self.learned.reader(&self.seen))
    }

    /// How leans go with misses; nothing before a bare shot whose lean was read.
    pub fn lean_relation(&self) -> Option<LeanRelation> {
        let shots = self.bare().filter(|shot| shot.lean_deg.is_some()).count();
        let Posterior { layout, mean, .. } = &self.learned.posterior;
        let common = layout.bow(self.seen.bow_changes_mm.len()) + 2;
        let slope = self.learned.slope;
        (shots > 0).then(|| LeanRelation {
            slope_deg_per_mm: slope.deg_per_mm,
            interval: slope.interval(),
            common: Lean::from_degrees(mean[common], mean[common + 1]),
            shots,
        })
    }

    /// Whether most bare shots came with a lean; before the first shot it is hoped for.
    fn leans_are_read(&self) -> bool {
        2 * self.bare().filter(|shot| shot.lean_deg.is_some()).count() >= self.bare().count()
    }

    /// Counted shots of references since the aim was last renewed.
    fn references_shot(&self) -> usize {
        let now = self.seen.sittings - 1;
        let all = self.seen.shots.iter().filter(|shot| shot.sitting == now).count();
        all - self.bare().filter(|shot| shot.sitting == now).count()
    }

    fn bare(&self) -> impl Iterator<Item = &Observation> {
        self.seen.shots.iter().filter(|shot| self.seen.kind_of(shot) == Kind::Bare)
    }
}
