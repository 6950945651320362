//! From the posterior to what is known of each shaft, and the verdict on it.

use nalgebra::{Matrix2, Vector2};
use quarterturn_geometry::{Index, Offset};
use quarterturn_statistics::{approximate_probability_within_circle, probability_within_circle};

use crate::common_point::Origin;
use crate::design;
use crate::posterior::Posterior;
use crate::response::BowMove;
use crate::roster::{Roster, ShaftState, Standing};
use crate::{
    BowReport, Miss, OpenReason, Policy, Prediction, RetireReason, Scales, Setup, ShaftReport,
    Verdict,
};

/// More shots than this nobody shoots to settle one shaft.
pub const MOST_SHOTS: usize = 50;

/// Everything that verdicts are read from.
pub struct Judge<'a> {
    pub setup: &'a Setup,
    pub policy: &'a Policy,
    pub scales: &'a Scales,
    pub posterior: &'a Posterior,
    pub roster: &'a Roster,
    /// For each life, the probability that it does not repeat.
    pub loose: &'a [f64],
    /// The lives of the bare shafts.
    pub shafts: Vec<usize>,
    /// The lives of the references in use.
    pub references: Vec<usize>,
    /// How many times the bow was changed.
    pub bow: usize,
    /// The moves of the bow that were measured.
    pub bow_moves: Vec<BowMove>,
    /// How many counted bare shots there are with the bow as it stands.
    pub shots_with_bow: usize,
    /// How many counted shots of references there are in the present sitting.
    pub references_shot: usize,
    /// Whether a shot shows its lean.
    pub leans_are_read: bool,
    /// What misses are measured from.
    pub origin: Origin,
    /// What the order of the next end is shuffled by.
    pub seed: u64,
}

/// A bare shaft with what is predicted for each index it may take.
pub struct Candidate<'a> {
    pub standing: &'a Standing,
    pub life: usize,
    pub predictions: Vec<Prediction>,
    /// The place in `predictions` of the index that promises most.
    pub best: usize,
}

impl Candidate<'_> {
    /// The prediction for the index that promises most.
    pub fn promise(&self) -> &Prediction {
        &self.predictions[self.best]
    }
}

impl<'a> Judge<'a> {
    /// All bare shafts, with their predictions.
    pub fn candidates(&self) -> Vec<Candidate<'a>> {
        let standings = self.roster.shafts.iter().zip(&self.shafts);
        standings.map(|(shaft, &life)| self.candidate(shaft, life)).collect()
    }

    fn candidate(&self, standing: &'a Standing, life: usize) -> Candidate<'a> {
        let predictions: Vec<_> =
            self.indices(standing).into_iter().map(|index| self.predict(life, index)).collect();
        let best = best(&predictions, standing.index_now, self.worth_a_turn(standing));
        Candidate { standing, life, predictions, best }
    }

    /// The indices a shaft may take: its positions, and where its mark stands now; a fletched one stays.
    fn indices(&self, standing: &Standing) -> Vec<Index> {
        let now = standing.index_now;
        if standing.state == ShaftState::Fletched {
            return vec![now];
        }
        // A mark that stands at a place as well as the eye can tell is not turned for the difference.
        let settled = |place: Index| if place.is_at(now) { now } else { place };
        let places = self.setup.positions.of_shaft(standing.index_first);
        let mut indices: Vec<_> = places.map(settled).collect();
        if !indices.contains(&now) {
            indices.push(now);
        }
        indices
    }

    fn predict(&self, life: usize, index: Index) -> Prediction {
        let miss = self.miss(life, index);
        Prediction { index, miss, within: self.within(&miss) }
    }

    fn within(&self, miss: &Miss) -> f64 {
        let mean = Vector2::new(miss.mean.x_mm, miss.mean.y_mm);
        probability_within_circle(mean, &miss.covariance_mm2, self.setup.tolerance.mm())
    }

    /// The probability of being inside the tolerance were the miss `shift` further, fast.
    pub fn within_shifted(&self, miss: &Miss, shift: Offset) -> f64 {
        let mean = Vector2::new(miss.mean.x_mm + shift.x_mm, miss.mean.y_mm + shift.y_mm);
        approximate_probability_within_circle(mean, &miss.covariance_mm2, self.setup.tolerance.mm())
    }

    /// What is reported of a shaft.
    pub fn report(&self, candidate: &Candidate<'_>, verdict: Verdict) -> ShaftReport {
        let standing = candidate.standing;
        let promise = candidate.promise();
        ShaftReport {
            shaft: standing.name.clone(),
            state: standing.state,
            verdict,
            index: promise.index,
            index_now: standing.index_now,
            within: promise.within,
            shots_here: standing.shots_at(promise.index, self.setup.positions),
            shots_total: standing.counted.len(),
            shots_left_out: standing.left_out,
            turns: standing.turns,
            turns_left: self.turns_left(standing),
            miss: promise.miss,
            positions: candidate.predictions.clone(),
        }
    }

    /// Each shaft with the verdict on it, for a bow that stands as reported.
    pub fn judged(
        &self,
        candidates: Vec<Candidate<'a>>,
        bow: &BowReport,
    ) -> Vec<(Candidate<'a>, Verdict)> {
        let shift = self.shift_to_come(bow);
        let judged = candidates.into_iter().map(|candidate| {
            let verdict = self.verdict(&candidate, shift);
            (candidate, verdict)
        });
        judged.collect()
    }

    /// The verdict on a shaft.
    fn verdict(&self, candidate: &Candidate<'_>, shift: Offset) -> Verdict {
        match candidate.standing.state {
            ShaftState::Lost => Verdict::Retire(RetireReason::Lost),
            ShaftState::Broken => Verdict::Retire(RetireReason::Broken),
            ShaftState::SetAside => Verdict::Retire(RetireReason::SetAside),
            ShaftState::Fletched => Verdict::Keep,
            ShaftState::InUse if self.keeps(candidate) => Verdict::Keep,
            ShaftState::InUse if self.is_loose(candidate) => {
                Verdict::Retire(RetireReason::DoesNotRepeat)
            }
            ShaftState::InUse if self.retires(candidate, shift) => {
                Verdict::Retire(self.why_retired(candidate, shift))
            }
            ShaftState::InUse => Verdict::Open(self.why_open(candidate)),
        }
    }

    /// Inside the tolerance with the probability asked for, repeating, and known as well as two shots there would tell.
    fn keeps(&self, candidate: &Candidate<'_>) -> bool {
        let promise = candidate.promise();
        let known_mm2 = promise.miss.covariance_mm2.trace() / 2.0;
        promise.within >= self.policy.keep_at
            && 1.0 - self.loose[candidate.life] >= self.policy.repeats_at
            && !self.is_seen_too_little_to_keep(candidate)
            && known_mm2 <= self.shot_variance_mm2() / 2.0
    }

    fn is_loose(&self, candidate: &Candidate<'_>) -> bool {
        1.0 - self.loose[candidate.life] <= self.policy.loose_at && self.may_retire(candidate)
    }

    /// One or two shots may have been the archer.
    fn may_retire(&self, candidate: &Candidate<'_>) -> bool {
        candidate.standing.counted.len() >= self.policy.retire_shots
    }

    /// The variance per axis of one bare shot beside one reference.
    pub fn shot_variance_mm2(&self) -> f64 {
        let Scales { bare_mm, reference_mm, read_mm, .. } = *self.scales;
        bare_mm * bare_mm + reference_mm * reference_mm + 2.0 * read_mm * read_mm
    }

    /// No index inside the tolerance, neither as the bow stands nor after its best move.
    fn retires(&self, candidate: &Candidate<'_>, shift: Offset) -> bool {
        self.may_retire(candidate)
            && self.is_out_of_reach(candidate, Offset::ZERO)
            && self.is_out_of_reach(candidate, shift)
    }

    fn is_out_of_reach(&self, candidate: &Candidate<'_>, shift: Offset) -> bool {
        let out = |at: &Prediction| self.within_shifted(&at.miss, shift) < self.policy.retire_at;
        candidate.predictions.iter().all(out)
    }

    /// Which of the two would cure it better: no centre of its own, or a smaller circle.
    fn why_retired(&self, candidate: &Candidate<'_>, shift: Offset) -> RetireReason {
        let own = self.posterior.layout.life(candidate.life);
        let centre = self.posterior.miss(&design::single(own)).mean;
        let common = self.common();
        let best = |moved: &dyn Fn(Offset) -> Offset| {
            let cured = candidate.predictions.iter().map(|at| {
                let miss = Miss { mean: moved(at.miss.mean), ..at.miss };
                self.within_shifted(&miss, shift)
            });
            cured.fold(0.0, f64::max)
        };
        let without_centre = best(&|mean| mean - centre);
        let smaller_circle = [0.0, 0.25, 0.5, 0.75]
            .map(|share| best(&|mean| common + centre + (mean - common - centre) * share))
            .into_iter()
            .fold(0.0, f64::max);
        if without_centre > smaller_circle {
            RetireReason::CentreOff
        } else {
            RetireReason::CircleTooBig
        }
    }

    fn why_open(&self, candidate: &Candidate<'_>) -> OpenReason {
        if self.references.is_empty() {
            return OpenReason::NoReference;
        }
        if candidate.standing.counted.is_empty() {
            return OpenReason::NotShot;
        }
        if self.may_retire(candidate) && self.is_out_of_reach(candidate, Offset::ZERO) {
            return OpenReason::BowOff;
        }
        self.shots_lacking(candidate)
            .or_else(|| self.shots_to_decide(candidate.promise()))
            .filter(|&shots| shots <= MOST_SHOTS)
            .map_or(OpenReason::CannotTell, OpenReason::MoreShots)
    }

    /// About how many more shots at an index would decide it, if its mean stayed where it is.
    fn shots_to_decide(&self, at: &Prediction) -> Option<usize> {
        (1..=MOST_SHOTS).find(|&shots| {
            let told = Matrix2::identity() * (self.shot_variance_mm2() / shots as f64);
            let both = (at.miss.covariance_mm2 + told).try_inverse().unwrap_or_else(Matrix2::zeros);
            let covariance_mm2 = at.miss.covariance_mm2 * both * told;
            let within = self.within_shifted(&Miss { covariance_mm2, ..at.miss }, Offset::ZERO);
            within >= self.policy.keep_at || within < self.policy.retire_at
        })
    }
}

/// The place of the index that promises most; of those that promise as much but for what is worth a turn, the nearest
/// to `now`.
fn best(predictions: &[Prediction], now: Index, worth_a_turn: f64) -> usize {
    let most = predictions.iter().map(|at| at.within).fold(0.0, f64::max);
    let turn = |at: &Prediction| now.turn_to(at.index).degrees().abs();
    let near_enough =
        predictions.iter().enumerate().filter(|(_, at)| at.within >= most - worth_a_turn);
    near_enough
        .min_by(|(_, one), (_, other)| turn(one).total_cmp(&turn(other)))
        .map_or(0, |(at, _)| at)
}
