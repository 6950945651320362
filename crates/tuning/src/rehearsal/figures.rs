//! What many dozens came to.

use quarterturn_geometry::Millimetres;
use quarterturn_statistics::{Count, Estimate, Level, Sample, share};

use super::{Fate, Mistake, Outcome, Ruling, Said};

/// The bow is asked for early within so many bare shots.
const EARLY_BARE_SHOTS: usize = 12;

/// How many bins `within` is counted in.
const BINS: usize = 10;

/// Means and shares over dozens, with intervals at 95 %; nothing where there is no case.
///
/// Means have Student's interval over dozens. Shares have Wilson's; where the shafts or statements of a dozen go together,
/// at the number of cases that they are worth ([`share`]).
#[derive(Clone, Debug, PartialEq)]
pub struct Figures {
    /// How many dozens.
    pub dozens: usize,
    /// All shots, those of references too, for one shaft.
    pub shots_per_shaft: Option<Estimate>,
    /// Ends.
    pub ends: Option<Estimate>,
    /// Turns of a nock for one shaft.
    pub turns_per_shaft: Option<Estimate>,
    /// Keeps that should not have been, of all keeps.
    pub wrong: Option<Estimate>,
    /// Usable shafts that were retired, of all usable ones.
    pub lost: Option<Estimate>,
    /// Shafts left open, of all.
    pub open: Option<Estimate>,
    /// Dozens in which the bow was to be moved.
    pub bow: Option<Estimate>,
    /// Dozens in which that was said within twelve bare shots.
    pub bow_early: Option<Estimate>,
    /// Dozens in which it was said of a bow that stood within half the tolerance.
    pub bow_false: Option<Estimate>,
    /// How often the stated 90 % regions held the truth, after the sixth end.
    pub covered: Option<Estimate>,
    /// What was said of `within` after the sixth end, in ten bins from 0 to 1, those that are empty left out.
    pub bins: Vec<Bin>,
}

/// The statements whose probability fell in one bin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bin {
    /// The mean of what was said.
    pub said: f64,
    /// How often it was true.
    pub held: Estimate,
}

impl Figures {
    /// The figures of dozens that were each tuned to `tolerance`.
    pub fn of(dozens: &[Outcome], tolerance: Millimetres) -> Self {
        let of_shafts = |counts: fn(&Fate) -> bool, holds: fn(&Fate) -> bool| {
            share_of(dozens, |one| {
                Count::of(one.shafts.iter().filter(|fate| counts(fate)).map(holds))
            })
        };
        let of_dozens =
            |holds: &dyn Fn(&Outcome) -> bool| share_of(dozens, |one| Count::of([holds(one)]));
        let asked = |one: &Outcome, which: &dyn Fn(&super::BowAsked) -> bool| {
            one.bow_asked.as_ref().is_some_and(which)
        };
        let shafts = |one: &Outcome| one.shafts.len().max(1) as f64;
        Self {
            dozens: dozens.len(),
            shots_per_shaft: mean_of(dozens, |one| one.shots as f64 / shafts(one)),
            ends: mean_of(dozens, |one| one.ends as f64),
            turns_per_shaft: mean_of(dozens, |one| one.turns as f64 / shafts(one)),
            wrong: of_shafts(
                |fate| fate.ruling == Ruling::Keep,
                |fate| fate.mistake == Some(Mistake::WrongKeep),
            ),
            lost: of_shafts(|fate| fate.usable, |fate| fate.mistake == Some(Mistake::Lost)),
            open: of_shafts(|_| true, |fate| fate.ruling == Ruling::Open),
            bow: of_dozens(&|one| one.bow_asked.is_some()),
            bow_early: of_dozens(&|one| {
                asked(one, &|bow| bow.after_bare_shots <= EARLY_BARE_SHOTS)
            }),
            bow_false: of_dozens(&|one| asked(one, &|bow| bow.is_false(tolerance))),
            covered: share_of(dozens, |one| Count::of(one.said.iter().map(|said| said.covered))),
            bins: (0..BINS).filter_map(|bin| Bin::of(dozens, bin)).collect(),
        }
    }
}

impl Bin {
    fn of(dozens: &[Outcome], bin: usize) -> Option<Self> {
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "0 to 9")]
        let falls_in = |said: &&Said| ((said.within * BINS as f64) as usize).min(BINS - 1) == bin;
        let held = share_of(dozens, |one| {
            Count::of(one.said.iter().filter(falls_in).map(|said| said.inside))
        })?;
        let said = dozens.iter().flat_map(|one| one.said.iter().filter(falls_in));
        Some(Self { said: said.map(|said| said.within).sum::<f64>() / held.n as f64, held })
    }
}

fn share_of(dozens: &[Outcome], count: impl Fn(&Outcome) -> Count) -> Option<Estimate> {
    share(&dozens.iter().map(count).collect::<Vec<_>>(), Level::P95)
}

fn mean_of(dozens: &[Outcome], value: impl Fn(&Outcome) -> f64) -> Option<Estimate> {
    Sample::new(dozens.iter().map(value).collect()).ok()?.mean_estimate(Level::P95)
}
