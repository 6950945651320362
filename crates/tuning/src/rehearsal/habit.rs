//! The usual habit: a quarter of the clock at a time.

use quarterturn_geometry::{Index, Offset};

use super::session::Session;
use super::{Outcome, Ruling};
use crate::{End, Setup, ShaftName, World};

/// The quarters of the clock, in hours.
const QUARTERS: [f64; 4] = [0.0, 3.0, 6.0, 9.0];

/// Plays a dozen by the usual habit.
pub fn play(setup: &Setup, world: World, seed: u64) -> Outcome {
    let mut session = Session::begin(setup, world, seed);
    let settled: Vec<_> = setup
        .shafts
        .iter()
        .map(|(shaft, index)| session.settle_by_quarters(shaft, *index))
        .collect();
    session.close(settled)
}

impl Session {
    /// Goes round the clock from where the mark stands, until a quarter is good twice.
    fn settle_by_quarters(&mut self, shaft: &ShaftName, first: Index) -> (Ruling, Index) {
        for quarter in QUARTERS {
            let index = Index::from_hour(first.hours() + quarter);
            let shot = self.bare(shaft, index);
            let planned: Vec<_> =
                self.reference().into_iter().chain([shot.clone(), shot]).collect();
            let end = self.shoot(&planned);
            let tolerance = self.history.setup.tolerance;
            if misses(&end).all(|miss| miss.length() <= tolerance) {
                return (Ruling::Keep, index);
            }
        }
        (Ruling::Retire, self.mark(shaft))
    }
}

/// How far every other shot of an end landed from its first.
pub fn misses(end: &End) -> impl Iterator<Item = Offset> + '_ {
    let at = |place: usize| end.shots.get(place).and_then(|shot| shot.hit).map(|hit| hit.at);
    let reference = at(0);
    (1..end.shots.len()).filter_map(move |place| Some(at(place)? - reference?))
}
