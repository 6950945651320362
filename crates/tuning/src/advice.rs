//! What the journal says now: the next step, every shaft, the bow and the archer.

use nalgebra::Vector2;
use quarterturn_geometry::{Index, Millimetres, Offset};
use quarterturn_statistics::Interval;

use crate::{Hint, MeasuredFrom, Miss, Response, ShaftName, ShaftState, Verdict};

/// Everything that can be said from a history.
#[derive(Clone, Debug, PartialEq)]
pub struct Advice {
    /// What to do now.
    pub step: Step,
    /// Every bare shaft, in the order of the journal.
    pub shafts: Vec<ShaftReport>,
    /// What the misses of the shafts are measured from.
    pub measured_from: MeasuredFrom,
    /// The bow as it stands.
    pub bow: BowReport,
    /// The archer's own group.
    pub archer: ArcherReport,
    /// Counted shots that are too old to be read: they are counted above, and say nothing.
    pub older_shots: usize,
    /// Advice to stop for tonight.
    pub pause: Option<Pause>,
    /// What should be looked at, what is surest first; nothing above was changed for it.
    pub hints: Vec<Hint>,
}

/// What to do now.
#[derive(Clone, Debug, PartialEq)]
pub enum Step {
    /// Shoot this end, in this order.
    Shoot(Vec<PlannedShot>),
    /// Before more nock work, move the bow.
    MoveBow,
    /// Nothing is left that is worth shooting.
    Finished(Ending),
}

/// One shot of the next end.
#[derive(Clone, Debug, PartialEq)]
pub struct PlannedShot {
    /// Which shaft or reference.
    pub shaft: ShaftName,
    /// Why it is shot, and for a bare shaft at which index.
    pub purpose: Purpose,
}

/// Why a shot is planned.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Purpose {
    /// The fletched reference, which the bare shafts are measured from.
    Reference,
    /// A bare shaft.
    Bare {
        /// Where its mark is to stand.
        index: Index,
        /// Where its mark stands now.
        from: Index,
        /// What the shot is for.
        aim: Aim,
    },
}

/// What a shot of a bare shaft is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Aim {
    /// Nothing is known of it yet.
    FirstLook,
    /// This index promises most and was not shot yet.
    Try,
    /// The bow was changed: see where it lands now.
    NewBow,
    /// This index looks right: confirm it.
    Confirm,
    /// It looks as if no index will do: make sure before it is retired.
    Doubt,
}

/// Why nothing more is worth shooting.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ending {
    /// Every shaft has its verdict.
    AllDecided,
    /// What is open would cost more shots than the answer is worth.
    NotWorthMore,
    /// No fletched reference is left to measure from.
    NoReference,
    /// No bare shaft is left.
    NoShafts,
}

/// What is known of one bare shaft.
#[derive(Clone, Debug, PartialEq)]
pub struct ShaftReport {
    /// Which shaft.
    pub shaft: ShaftName,
    /// Whether it can be shot.
    pub state: ShaftState,
    /// The verdict and its reason.
    pub verdict: Verdict,
    /// The index judged: the one to fletch at, or the best by present knowledge.
    pub index: Index,
    /// Where its mark stands now.
    pub index_now: Index,
    /// Probability that its mean miss at `index` is inside the tolerance.
    pub within: f64,
    /// Counted shots within half a position of `index`.
    pub shots_here: usize,
    /// Counted shots in all.
    pub shots_total: usize,
    /// Shots that are kept and left out: called poor, wind, contact, a nock that moved, another distance.
    pub shots_left_out: usize,
    /// How often its nock was turned in its present life.
    pub turns: usize,
    /// How many more turns its nock bears.
    pub turns_left: usize,
    /// The miss at `index`.
    pub miss: Miss,
    /// The miss predicted at each position.
    pub positions: Vec<Prediction>,
}

/// What is predicted for one position of a mark.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Prediction {
    /// Where the mark would stand.
    pub index: Index,
    /// The mean miss there.
    pub miss: Miss,
    /// Probability that the mean miss there is inside the tolerance.
    pub within: f64,
}

/// What is known of the bow as it stands.
#[derive(Clone, Debug, PartialEq)]
pub struct BowReport {
    /// Where bare shafts as a whole land, from the reference.
    pub offset: Miss,
    /// How far the bow should move what bare shafts do, so that most of them come within reach; of a set that matches
    /// itself, so that its common point comes to the reference.
    pub wanted_shift: Offset,
    /// Expected number of shafts inside the tolerance at their best index, as the bow stands.
    pub expected_within_now: f64,
    /// The same after `wanted_shift`.
    pub expected_within_if_moved: f64,
    /// How many shafts the two numbers speak of.
    pub shafts: usize,
    /// What moving the part moved last does, where a move was measured and shots tell of it.
    pub response: Option<Response>,
    /// The next move of that part, right and up, where it is known which way it should go.
    pub proposed_move: Option<Offset>,
}

impl BowReport {
    /// How many standard deviations the offset is from none: the root of oᵀ Σ⁻¹ o.
    pub fn distance(&self) -> f64 {
        let offset = Vector2::new(self.offset.mean.x_mm, self.offset.mean.y_mm);
        let square =
            self.offset.covariance_mm2.try_inverse().map(|inverse| offset.dot(&(inverse * offset)));
        square.unwrap_or(0.0).sqrt()
    }

    /// How many more shafts the move is expected to bring inside the tolerance.
    pub fn gain(&self) -> f64 {
        self.expected_within_if_moved - self.expected_within_now
    }
}

/// The archer's own group, from shots of one arrow at one index.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ArcherReport {
    /// Standard deviation per axis, drift from end to end and reading error included, where shots were repeated.
    pub spread: Option<Spread>,
}

/// A standard deviation per axis with its interval and how much it rests on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread {
    /// The estimate.
    pub per_axis: Millimetres,
    /// Its interval, mm.
    pub interval: Interval,
    /// The degrees of freedom it rests on.
    pub degrees_of_freedom: usize,
    /// The shots that were repeated at one mark.
    pub shots: usize,
}

/// Why to stop for tonight.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Pause {
    /// As many bare shots as one evening bears.
    EnoughShots {
        /// Bare shots of this evening.
        bare_shots: usize,
    },
    /// The archer's last shots of this evening spread wider than his first.
    Tiring {
        /// How many times as widely, far shots weighed less.
        wider: f64,
        /// How many of the first counted shots.
        first: usize,
        /// How many of the last.
        last: usize,
    },
    /// The reference went elsewhere in the last half of the evening's ends than in the first.
    Drifting {
        /// From where it hit in the first half to where it hit in the last.
        moved: Offset,
        /// How many ends the first half has.
        first: usize,
        /// How many ends the last half has.
        last: usize,
    },
}
