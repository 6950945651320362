//! The point that most shafts of a set can reach, and what is judged from it.

use nalgebra::DMatrix;
use quarterturn_geometry::{Index, Offset};

use crate::bow_first::is_worth_moving;
use crate::design::{self, Planar};
use crate::judge::{Candidate, Judge, MOST_SHOTS};
use crate::response::LearnedResponse;
use crate::roster::ShaftState;
use crate::set_mean::SetMean;
use crate::{BowReport, Matching, MeasuredFrom, Miss, Scales};

/// What a judge measures misses from.
#[derive(Clone, Debug)]
pub enum Origin {
    /// The mean of the references in use.
    References,
    /// Where bare shafts as a whole land.
    Common,
    /// A point near the mean of a set.
    Set {
        /// The mean of the set, each shaft at its best index.
        mean: SetMean,
        /// From that mean to the point: chosen, and so without a doubt of its own.
        beyond: Offset,
    },
}

impl<'a> Judge<'a> {
    /// The judge that measures from what the archer wants matched, the shafts seen from there, and the bow.
    pub fn settled(self) -> (Self, Vec<Candidate<'a>>, BowReport) {
        let candidates = self.candidates();
        match self.setup.matching {
            Matching::Reference => {
                let bow = self.bow_report(&candidates);
                (self, candidates, bow)
            }
            Matching::Set => self.settled_for_the_set(&candidates),
        }
    }

    /// What the reported misses are measured from.
    pub fn measured_from(&self) -> MeasuredFrom {
        match &self.origin {
            Origin::References => MeasuredFrom::Reference,
            Origin::Common => MeasuredFrom::CommonPoint(self.common_offset()),
            Origin::Set { mean, beyond } => {
                let bow = self.posterior.layout.bow(self.bow);
                let Miss { mean, covariance_mm2 } =
                    mean.beside_references(self.posterior, bow, &self.references);
                MeasuredFrom::CommonPoint(Miss { mean: mean + *beyond, covariance_mm2 })
            }
        }
    }

    /// The move that may still bring a shaft in: for a set it is in what is measured from, and a bow that is known and not
    /// worth moving stays.
    pub fn shift_to_come(&self, bow: &BowReport) -> Offset {
        match self.setup.matching {
            Matching::Reference if is_worth_moving(bow) || !self.knows_the_bow() => {
                bow.wanted_shift
            }
            Matching::Reference | Matching::Set => Offset::ZERO,
        }
    }

    /// The fewest shots of a shaft that may be a keep.
    ///
    /// What a shaft is expected to be before it is shot must not keep it: where the archer scatters so widely that his shots
    /// tell little, so many must count that by themselves they would tell where it lands on average to within the tolerance,
    /// one standard error. Shafts of a set are known to each other beforehand, as alike as shafts usually are, so that each
    /// of them must have been shot so often that its shots alone, were they all at the common point, would tell it to be inside.
    ///
    /// # Formula
    /// n ≥ σ² / R², and for a set n ≥ −2 ln(1 − level) σ² / R², σ² the variance of a bare shot along the axis on which it scatters
    /// more widely, R the tolerance.
    fn fewest_to_keep(&self) -> usize {
        let Scales { bare_mm, read_mm, .. } = *self.scales;
        let wide_mm =
            self.scales.along_axes().map(|axis| bare_mm * axis).into_iter().fold(0.0, f64::max);
        let shot_mm2 = wide_mm * wide_mm + read_mm * read_mm;
        let (fewest, times) = match self.setup.matching {
            Matching::Reference => (self.policy.keep_shots, 1.0),
            Matching::Set => (self.policy.set_keep_shots, -2.0 * (1.0 - self.policy.keep_at).ln()),
        };
        let told_by = times * shot_mm2 / self.setup.tolerance.mm().powi(2);
        (fewest..=MOST_SHOTS).find(|&n| n as f64 >= told_by).unwrap_or(usize::MAX)
    }

    /// Whether too few shots of a shaft count for a keep.
    pub fn is_seen_too_little_to_keep(&self, candidate: &Candidate<'_>) -> bool {
        candidate.standing.counted.len() < self.fewest_to_keep()
    }

    /// How many more shots make a keep of a shaft that too few of its own speak for.
    pub fn shots_lacking(&self, candidate: &Candidate<'_>) -> Option<usize> {
        let lacking = self.fewest_to_keep().checked_sub(candidate.standing.counted.len());
        let spoken_for = candidate.promise().within >= self.policy.keep_at;
        lacking.filter(|&shots| spoken_for && shots > 0)
    }

    /// The miss of a shaft at an index.
    pub fn miss(&self, life: usize, index: Index) -> Miss {
        let of = self.unmeasured_miss(life, index.angle().radians());
        let miss = self.posterior.miss(&of);
        match &self.origin {
            Origin::References | Origin::Common => miss,
            Origin::Set { mean, beyond } => {
                let miss = mean.subtracted_from(&miss, &of);
                Miss { mean: miss.mean - *beyond, ..miss }
            }
        }
    }

    /// The miss of a shaft with its mark at `mark_rad` as a combination of unknowns, but for the mean of the set.
    pub fn unmeasured_miss(&self, life: usize, mark_rad: f64) -> Planar {
        let layout = &self.posterior.layout;
        match self.origin {
            Origin::References => {
                let bare = design::bare_hit(layout, life, self.bow, mark_rad);
                design::from_references(bare, layout, &self.references)
            }
            Origin::Common | Origin::Set { .. } => design::own_miss(layout, life, mark_rad),
        }
    }

    /// The joint covariance of misses and leans in turn, given as combinations of unknowns.
    pub fn joint_covariance(&self, of: &[Planar]) -> DMatrix<f64> {
        let joint = self.posterior.joint_covariance(of);
        match &self.origin {
            Origin::References | Origin::Common => joint,
            Origin::Set { mean, .. } => mean.subtracted_from_every_second(joint, of),
        }
    }

    /// Where bare shafts as a whole land, from what is measured from.
    pub fn common(&self) -> Offset {
        match &self.origin {
            Origin::References => {
                self.posterior.miss(&design::single(self.posterior.layout.bow(self.bow))).mean
            }
            Origin::Common => Offset::ZERO,
            Origin::Set { mean, beyond } => -(mean.mean() + *beyond),
        }
    }

    fn settled_for_the_set(
        self,
        from_references: &[Candidate<'a>],
    ) -> (Self, Vec<Candidate<'a>>, BowReport) {
        let offset = self.common_offset();
        let now = self.expected_within(&of_the_set(from_references), Offset::ZERO);
        let judge = self.at_the_common_point();
        let candidates = judge.candidates();
        let set = of_the_set(&candidates);
        let bow = BowReport {
            offset,
            wanted_shift: -judge.measured_from().at(),
            expected_within_now: now,
            expected_within_if_moved: judge.expected_within(&set, Offset::ZERO),
            shafts: set.len(),
            // The bow is moved only once the set is settled.
            proposed_move: None,
            response: LearnedResponse::of(&judge.bow_moves, judge.posterior)
                .and_then(|learned| learned.report()),
        };
        (judge, candidates, bow)
    }

    /// Looks for the point first from the common offset, then from the mean of the shafts at the indices that serve that
    /// point best.
    fn at_the_common_point(self) -> Self {
        let judge = Self { origin: Origin::Common, ..self };
        let candidates = judge.candidates();
        let set = of_the_set(&candidates);
        let shift = judge.best_shift(&set, Offset::ZERO);
        let at_best = |one: &&Candidate<'_>| (one.life, judge.best_after(one, shift));
        let mean = SetMean::of(judge.posterior, &set.iter().map(at_best).collect::<Vec<_>>());
        let shift = shift + mean.mean();
        let judge =
            Self { origin: Origin::Set { mean: mean.clone(), beyond: Offset::ZERO }, ..judge };
        let candidates = judge.candidates();
        let shift = judge.best_shift(&of_the_set(&candidates), shift);
        Self { origin: Origin::Set { mean, beyond: -shift }, ..judge }
    }

    /// The index at which a shaft is likeliest to be inside the tolerance after a common `shift`.
    fn best_after(&self, one: &Candidate<'_>, shift: Offset) -> Index {
        let within =
            one.predictions.iter().map(|at| (at.index, self.within_shifted(&at.miss, shift)));
        let best = within.max_by(|(_, one), (_, other)| one.total_cmp(other));
        best.map_or(one.standing.index_now, |(index, _)| index)
    }
}

/// The shafts that the common point is to serve: those in use, and those that were fletched where they stand.
fn of_the_set<'a, 'b>(candidates: &'b [Candidate<'a>]) -> Vec<&'b Candidate<'a>> {
    let serves = |one: &&Candidate<'_>| {
        matches!(one.standing.state, ShaftState::InUse | ShaftState::Fletched)
    };
    candidates.iter().filter(serves).collect()
}
