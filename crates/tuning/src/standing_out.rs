//! Which shots lie far from the others of their arrow, and which shafts spread wider than the archer does.

use quarterturn_geometry::{Millimetres, Offset};
use quarterturn_statistics::{
    Coverage, Level, MinimumCovarianceDeterminant, PlanarSample, PooledSpread, scatter_excess,
};

use crate::archer_group::{alike, sample};
use crate::doubts::counted_places;
use crate::observation::Observations;
use crate::{History, ShaftName};

/// Of fewer shots at one mark it cannot be told which lies far.
const FEWEST: usize = 3;

/// A shaft that spreads no wider than the others is named once in so many journals.
const ONCE_IN: f64 = 20.0;

/// What stands out; nothing is left out for it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct StandingOut {
    /// Shots far from the others of their arrow at that mark, in the order they were shot.
    pub shots: Vec<FarShot>,
    /// Shafts and references that spread wider than all others, in the order of the journal.
    pub shafts: Vec<WideShaft>,
}

/// A shot far from the others of its arrow.
#[derive(Clone, Debug, PartialEq)]
pub struct FarShot {
    /// Which shaft or reference.
    pub shaft: ShaftName,
    /// The end of the shot, counted from 1 over all ends of the journal.
    pub end: usize,
    /// Where it hit, from the mean of the others.
    pub from_others: Offset,
    /// The archer's spread per axis with all shots.
    pub spread: Millimetres,
    /// The same without this one.
    pub spread_without: Millimetres,
}

/// A shaft that spreads wider than the others.
#[derive(Clone, Debug, PartialEq)]
pub struct WideShaft {
    /// Which shaft or reference.
    pub shaft: ShaftName,
    /// How many times as wide.
    pub times: f64,
    /// Its shots that were repeated at one mark.
    pub shots: usize,
    /// The probability that some shaft is so wide by chance.
    pub by_chance: f64,
}

/// What stands out among the shots that count, of one arrow at one mark in one sitting each.
///
/// # Method
/// *Shots*: in groups of three or more the ways from the group's mean, times √(n/(n − 1)), are alike for all groups; the robust
/// distances of all of them together are flagged, the farthest first, by
/// [`MinimumCovarianceDeterminant`](quarterturn_statistics::MinimumCovarianceDeterminant), once in twenty clean journals
/// at most. *Shafts*: each one's pooled spread against that of all others by
/// [`scatter_excess`](quarterturn_statistics::scatter_excess).
pub fn standing_out(history: &History) -> StandingOut {
    let seen = Observations::of(history);
    let groups = alike(&seen);
    StandingOut {
        shots: far_shots(history, &seen, &groups),
        shafts: wide_shafts(&seen, &groups).unwrap_or_default(),
    }
}

/// The farthest shot is set aside until none is left that is flagged: a far shot carries the mean of its group along, so that
/// without it the others may be near again.
fn far_shots(history: &History, seen: &Observations, groups: &[Vec<usize>]) -> Vec<FarShot> {
    let mut far: Vec<usize> = Vec::new();
    while let Some(at) = farthest(seen, groups, &far) {
        far.push(at);
    }
    far.sort_unstable();
    far.into_iter().filter_map(|at| far_shot(history, seen, groups, at)).collect()
}

/// The shot farthest from its group, those set aside left out, if any is flagged.
fn farthest(seen: &Observations, groups: &[Vec<usize>], aside: &[usize]) -> Option<usize> {
    let mut shots = Vec::new();
    for group in groups {
        let group: Vec<usize> = group.iter().copied().filter(|at| !aside.contains(at)).collect();
        if group.len() < FEWEST {
            continue;
        }
        let (mean, n) = (sample(seen, &group)?.centroid(), group.len() as f64);
        let own = |&at: &usize| (at, (seen.shots[at].hit_mm - mean) * (n / (n - 1.0)).sqrt());
        shots.extend(group.iter().map(own));
    }
    let ways = PlanarSample::new(shots.iter().map(|(_, way)| *way).collect()).ok()?;
    let robust = MinimumCovarianceDeterminant::new(&ways, Coverage::ThreeQuarters, 1).ok()?;
    let flags = robust.flags().max_by(|one, other| one.distance.total_cmp(&other.distance));
    flags.map(|flag| shots[flag.position].0)
}

fn far_shot(
    history: &History,
    seen: &Observations,
    groups: &[Vec<usize>],
    at: usize,
) -> Option<FarShot> {
    let own = groups.iter().find(|group| group.contains(&at))?;
    let others: Vec<usize> = own.iter().copied().filter(|other| *other != at).collect();
    let way = seen.shots[at].hit_mm - sample(seen, &others)?.centroid();
    let spread = |groups: &mut dyn Iterator<Item = &Vec<usize>>| {
        let samples: Vec<_> = groups.filter_map(|group| sample(seen, group)).collect();
        let spread = PooledSpread::of(&samples).estimate(Level::P90).ok()?;
        Some(Millimetres::new(spread.value))
    };
    Some(FarShot {
        shaft: seen.lives[seen.shots[at].life].name.clone(),
        end: counted_places(history, seen).get(at)?.end(history),
        from_others: Offset::new(way.x, way.y),
        spread: spread(&mut groups.iter())?,
        spread_without: spread(
            &mut groups.iter().map(|group| if group == own { &others } else { group }),
        )?,
    })
}

fn wide_shafts(seen: &Observations, groups: &[Vec<usize>]) -> Option<Vec<WideShaft>> {
    let repeated = |life: usize| {
        let own =
            groups.iter().filter(move |group| group.len() > 1 && seen.shots[group[0]].life == life);
        let samples: Vec<PlanarSample> = own.filter_map(|group| sample(seen, group)).collect();
        PooledSpread::of(&samples)
    };
    let spreads: Vec<PooledSpread> = (0..seen.lives.len()).map(repeated).collect();
    let found = scatter_excess(&spreads).ok()?.into_iter().enumerate();
    let wide = found.filter_map(|(life, excess)| {
        let excess = excess.filter(|excess| excess.adjusted_p_value <= 1.0 / ONCE_IN)?;
        let shaft = seen.lives[life].name.clone();
        (seen.life_of(&shaft) == Some(life)).then_some(WideShaft {
            shaft,
            times: excess.ratio,
            shots: excess.test.n,
            by_chance: excess.adjusted_p_value,
        })
    });
    Some(wide.collect())
}
