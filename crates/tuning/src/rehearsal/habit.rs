//! The usual habit: a quarter of the clock at a time.

use quarterturn_geometry::{Index, Offset};

use super::session::Session;
use super::{Outcome, Ruling};
use crate::{End, Setup, ShaftName, World};

/// So many hits at one quarter keep a shaft, and so many misses turn it on.
const TWICE: u32 = 2;

const QUARTERS: u32 = 4;

/// One shaft on its way round the clock.
struct OnItsWay {
    shaft: ShaftName,
    index: Index,
    quarters: u32,
    hits: u32,
    misses: u32,
    ruling: Ruling,
}

/// Plays a dozen by the usual habit.
pub fn play(setup: &Setup, world: World, seed: u64) -> Outcome {
    let mut session = Session::begin(setup, world, seed);
    let begin = |(shaft, index): &(ShaftName, Index)| OnItsWay {
        shaft: shaft.clone(),
        index: *index,
        quarters: 1,
        hits: 0,
        misses: 0,
        ruling: Ruling::Open,
    };
    let mut dozen: Vec<_> = setup.shafts.iter().map(begin).collect();
    while session.shoot_first_open(&mut dozen) {}
    session.close(dozen.into_iter().map(|one| (one.ruling, one.index)))
}

impl Session {
    /// Shoots the first shafts that are not settled beside the reference; whether there was one.
    fn shoot_first_open(&mut self, dozen: &mut [OnItsWay]) -> bool {
        let Setup { tolerance, arrows_per_end, .. } = self.history.setup;
        let open = dozen.iter_mut().filter(|one| one.ruling == Ruling::Open);
        let mut open: Vec<_> = open.take(arrows_per_end.saturating_sub(1).max(1)).collect();
        let bare = open.iter().map(|one| self.bare(&one.shaft, one.index));
        let planned: Vec<_> = self.reference().into_iter().chain(bare).collect();
        if open.is_empty() {
            return false;
        }
        let end = self.shoot(&planned);
        for (one, miss) in open.iter_mut().zip(misses(&end)) {
            one.see(miss.length() <= tolerance);
        }
        true
    }
}

impl OnItsWay {
    fn see(&mut self, hit: bool) {
        self.hits += u32::from(hit);
        self.misses += u32::from(!hit);
        match (self.hits, self.misses) {
            (TWICE, _) => self.ruling = Ruling::Keep,
            (_, TWICE) if self.quarters == QUARTERS => self.ruling = Ruling::Retire,
            (_, TWICE) => {
                self.index = Index::from_degrees(self.index.degrees() + 90.0);
                self.quarters += 1;
                (self.hits, self.misses) = (0, 0);
            }
            _ => {}
        }
    }
}

/// How far every other shot of an end landed from its first.
pub fn misses(end: &End) -> impl Iterator<Item = Offset> + '_ {
    let at = |place: usize| end.shots.get(place).and_then(|shot| shot.hit).map(|hit| hit.at);
    let reference = at(0);
    (1..end.shots.len()).filter_map(move |place| Some(at(place)? - reference?))
}
