//! Whether the bow, not the arrows, must be corrected.

use nalgebra::Vector2;
use quarterturn_geometry::Offset;
use quarterturn_statistics::probability_within_circle;

use crate::judge::{Candidate, Judge};
use crate::response::LearnedResponse;
use crate::roster::ShaftState;
use crate::{BowReport, Miss, design};

/// The bow is moved only when its offset is larger than this share of the tolerance...
const LARGE_SHARE: f64 = 0.5;

/// ... with at least this probability...
const SURELY: f64 = 0.98;

/// ... and the move is expected to bring in at least this share of the shafts.
const WORTH_A_MOVE: f64 = 0.25;

/// Fewer shots of the references may be one that flew far, and not the bow.
const FEWEST_REFERENCES: usize = 3;

/// With fewer bare shots the bow as it stands is not known.
const SHOTS_TO_KNOW_THE_BOW: usize = 9;

/// A move that brings in less than this is none: rounding must not walk.
const NO_GAIN: f64 = 1e-4;

/// The best move is looked for down to this share of the tolerance.
const FINEST_SHARE: f64 = 0.05;

/// Whether the move brings in so many shafts more that it will be asked for once it is sure.
pub fn is_worth_moving(bow: &BowReport) -> bool {
    bow.gain() >= WORTH_A_MOVE * bow.shafts as f64
}

impl Judge<'_> {
    /// The bow as it stands, and the common move that brings most shafts within reach.
    pub fn bow_report(&self, candidates: &[Candidate<'_>]) -> BowReport {
        let in_play: Vec<_> =
            candidates.iter().filter(|one| one.standing.state == ShaftState::InUse).collect();
        let offset = self.common_offset();
        let wanted_shift = self.best_shift(&in_play, -offset.mean);
        let learned = LearnedResponse::of(&self.bow_moves, self.posterior);
        BowReport {
            offset,
            wanted_shift,
            expected_within_now: self.expected_within(&in_play, Offset::ZERO),
            expected_within_if_moved: self.expected_within(&in_play, wanted_shift),
            shafts: in_play.len(),
            proposed_move: learned.as_ref().and_then(|one| one.proposed(wanted_shift)),
            response: learned.and_then(|one| one.report()),
        }
    }

    /// Whether the move brings clearly more shafts in than any turning can.
    pub fn must_move(&self, bow: &BowReport) -> bool {
        let mean = Vector2::new(bow.offset.mean.x_mm, bow.offset.mean.y_mm);
        let large_mm = LARGE_SHARE * self.setup.tolerance.mm();
        let small = probability_within_circle(mean, &bow.offset.covariance_mm2, large_mm);
        self.references_shot >= FEWEST_REFERENCES && is_worth_moving(bow) && 1.0 - small >= SURELY
    }

    /// Whether enough bare shafts were shot with the bow as it stands.
    pub fn knows_the_bow(&self) -> bool {
        self.shots_with_bow >= SHOTS_TO_KNOW_THE_BOW
    }

    /// Where bare shafts as a whole land from the references in use.
    pub fn common_offset(&self) -> Miss {
        let layout = &self.posterior.layout;
        self.posterior.miss(&design::from_references(
            design::single(layout.bow(self.bow)),
            layout,
            &self.references,
        ))
    }

    /// The expected number of shafts inside the tolerance at their best index after a common `shift`.
    pub fn expected_within(&self, shafts: &[&Candidate<'_>], shift: Offset) -> f64 {
        let reach = |shaft: &&Candidate<'_>| {
            shaft
                .predictions
                .iter()
                .map(|at| self.within_shifted(&at.miss, shift))
                .fold(0.0, f64::max)
        };
        shafts.iter().map(reach).sum()
    }

    /// Looks for the shift that brings most shafts in, from `start` in ever smaller steps.
    pub fn best_shift(&self, shafts: &[&Candidate<'_>], start: Offset) -> Offset {
        let tolerance_mm = self.setup.tolerance.mm();
        let (mut best, mut most) = (start, self.expected_within(shafts, start));
        let mut step_mm = tolerance_mm / 2.0;
        while step_mm >= FINEST_SHARE * tolerance_mm {
            let around = [(1.0, 0.0), (-1.0, 0.0), (0.0, 1.0), (0.0, -1.0)];
            let tried = around.map(|(x, y)| {
                let shift = best + Offset::new(x, y) * step_mm;
                (shift, self.expected_within(shafts, shift))
            });
            match tried.into_iter().max_by(|one, other| one.1.total_cmp(&other.1)) {
                Some((shift, within)) if within > most + NO_GAIN => (best, most) = (shift, within),
                _ => step_mm /= 2.0,
            }
        }
        best
    }
}
