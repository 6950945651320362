//! A solver that is told every level.

use nalgebra::Vector2;
use quarterturn_geometry::Index;
use quarterturn_statistics::probability_within_circle;

use super::session::Session;
use super::true_scales::true_scales;
use super::{Outcome, Ruling};
use crate::at_scales::AtScales;
use crate::{Policy, Scales, Setup, ShaftName, World};

/// A turn must promise more than this much probability, or the mark stays where it is.
const WORTH_A_TURN: f64 = 0.01;

/// A shaft on the border is left open after so many shots; without an end it would take more than all others.
const MOST_SHOTS: usize = 12;

/// One shaft as the solver sees it.
struct Seen {
    shaft: ShaftName,
    shots: usize,
    index: Index,
    ruling: Ruling,
}

impl Seen {
    fn is_open(&self) -> bool {
        self.ruling == Ruling::Open && self.shots < MOST_SHOTS
    }
}

/// Plays a dozen with every level told.
pub fn play(setup: &Setup, world: World, seed: u64) -> Outcome {
    let mut session = Session::begin(setup, world, seed);
    let scales = true_scales(&world, session.archer.true_spread(), setup.distance);
    let begin = |(shaft, index): &(ShaftName, Index)| Seen {
        shaft: shaft.clone(),
        shots: 0,
        index: *index,
        ruling: Ruling::Open,
    };
    let mut dozen: Vec<_> = setup.shafts.iter().map(begin).collect();
    while session.shoot_likeliest(&mut dozen, &scales) {}
    session.close(dozen.into_iter().map(|one| (one.ruling, one.index)))
}

impl Session {
    /// Shoots the open shafts that were shot least, each at its likeliest index, and settles what can be settled;
    /// whether there was one.
    fn shoot_likeliest(&mut self, dozen: &mut [Seen], scales: &Scales) -> bool {
        let mut open: Vec<_> = dozen.iter_mut().filter(|one| one.is_open()).collect();
        if open.is_empty() {
            return false;
        }
        open.sort_by_key(|one| one.shots);
        open.truncate(self.history.setup.arrows_per_end.saturating_sub(1).max(1));
        let bare = open.iter().map(|one| self.bare(&one.shaft, one.index));
        let planned: Vec<_> = self.reference().into_iter().chain(bare).collect();
        self.shoot(&planned);
        for one in open {
            one.shots += 1;
        }
        let loose_wider = self.archer.world().loose_wider;
        let wider = |shaft: &ShaftName| if self.is_loose(shaft) { loose_wider } else { 1.0 };
        let read = AtScales::read(&self.history, scales, wider);
        for one in dozen.iter_mut().filter(|one| one.is_open()) {
            self.judge(one, &read);
        }
        true
    }

    /// Moves a shaft to its likeliest index, and settles it where the levels of the policy are reached.
    fn judge(&self, one: &mut Seen, read: &AtScales) {
        let policy = Policy::default();
        let now = self.within(read, &one.shaft, one.index);
        let positions = self.history.setup.positions.iter();
        let likeliest = positions
            .map(|index| (self.within(read, &one.shaft, index), index))
            .max_by(|one, other| one.0.total_cmp(&other.0));
        let (within, index) = likeliest
            .filter(|(within, _)| *within > now + WORTH_A_TURN)
            .unwrap_or((now, one.index));
        one.index = index;
        one.ruling = match one.shots {
            shots if shots >= policy.retire_shots && self.is_loose(&one.shaft) => Ruling::Retire,
            _ if self.is_loose(&one.shaft) => Ruling::Open,
            shots if shots >= policy.keep_shots && within >= policy.keep_at => Ruling::Keep,
            shots if shots >= policy.retire_shots && within < policy.retire_at => Ruling::Retire,
            _ => Ruling::Open,
        };
    }

    /// Whether a bare shaft truly does not group.
    fn is_loose(&self, shaft: &ShaftName) -> bool {
        self.marks.contains_key(shaft) && !self.archer.groups(shaft)
    }

    /// The probability that a shaft at `index` is inside the tolerance.
    fn within(&self, read: &AtScales, shaft: &ShaftName, index: Index) -> f64 {
        read.miss(shaft, index).map_or(0.0, |miss| {
            let mean = Vector2::new(miss.mean.x_mm, miss.mean.y_mm);
            let tolerance_mm = self.history.setup.tolerance.mm();
            probability_within_circle(mean, &miss.covariance_mm2, tolerance_mm)
        })
    }
}
