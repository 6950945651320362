//! From how far a plate is still hit.

use quarterturn_geometry::Millimetres;
use quarterturn_statistics::Level;

use super::plate_bound::PlateBound;
use super::pooled::{Pooled, by_distance};
use super::{Group, Head, Start};

/// The chance on a plate against the distance.
#[derive(Clone, Debug, PartialEq)]
pub struct Reach {
    /// Every distance from which was shot, the nearest first.
    pub rungs: Vec<Rung>,
    /// How far the plate is hit with the chance that was asked for; nothing where no distance can be judged.
    pub farthest: Option<Farthest>,
}

/// One distance.
#[derive(Clone, Debug, PartialEq)]
pub struct Rung {
    /// From the archer to the face.
    pub distance: Millimetres,
    /// Every kind of shots that was shot from there.
    pub kinds: Vec<ShotKind>,
    /// The place among them of the one with the least chance: it is the one that counts.
    pub worst: Option<usize>,
}

/// Shots of one kind at one distance.
#[derive(Clone, Debug, PartialEq)]
pub struct ShotKind {
    /// What the arrows carried.
    pub head: Head,
    /// Whether they were first shots of their days.
    pub start: Start,
    /// How many shots count.
    pub n: usize,
    /// How many of these hit the plate.
    pub on_plate: usize,
    /// How many more were not called poor and never found: they are in no estimate, and make every chance too good.
    pub without_a_hit: usize,
    /// The chance on the plate; nothing for fewer than five shots, or where they lie on one line.
    pub chance: Option<Chance>,
}

/// A chance with its lower bound.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Chance {
    /// The estimate.
    pub estimate: f64,
    /// What it is at least, at 95 %.
    pub at_least: f64,
}

/// How far a plate is hit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Farthest {
    /// The distance.
    pub distance: Millimetres,
    /// What ends it there.
    pub ended_by: EndedBy,
}

/// What ends a reach.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EndedBy {
    /// The lower bound falls below the chance.
    Chance,
    /// Nothing was shot from farther off: what nobody shot is not judged.
    Shots,
}

/// A rung with the bound of its worst kind.
type Bounded = (Millimetres, PlateBound);

/// How often a plate of this diameter is hit, and how far off with `chance` at least.
///
/// # Method
/// From each distance the kind of shots with the least estimated chance counts, so that cold first shots and broadheads count
/// where they are worse. The farthest distance is that up to which the lower bound at 95 % is `chance` or more.
/// An angular spread grows with the distance or stays, so that shots from farther off, shrunk in proportion, are
/// wide enough for every nearer distance; between two distances both neighbours must hold, the nearer one grown in
/// proportion. Beyond the farthest shots nothing is said.
///
/// # Assumptions
/// Those of the bound on one group (normal, independent shots); sight and bow unchanged, and the sight as good between the distances as at them.
pub fn reach(groups: &[&Group], plate: Millimetres, chance: Level, seed: u64) -> Reach {
    let radius_mm = 0.5 * plate.mm();
    let (mut rungs, mut bounds) = (Vec::new(), Vec::new());
    for at in by_distance(groups) {
        let (rung, bound) = Rung::of(&at, radius_mm, seed);
        bounds.extend(bound.map(|bound| (at.distance, bound)));
        rungs.push(rung);
    }
    Reach { rungs, farthest: farthest(&bounds, radius_mm, chance) }
}

impl Rung {
    /// The distance, and the bound of its worst kind.
    fn of(at: &Pooled, radius_mm: f64, seed: u64) -> (Self, Option<PlateBound>) {
        let (mut kinds, mut worst): (Vec<ShotKind>, Option<(usize, f64, PlateBound)>) =
            (Vec::new(), None);
        for (head, start) in at.kinds() {
            let hits = at.hits(&head, start);
            let on_plate = hits.iter().filter(|hit| hit.norm() <= radius_mm).count();
            let without_a_hit = at.without_a_hit(&head, start);
            let n = hits.len();
            let bound = PlateBound::of(hits, seed);
            let chance = bound.as_ref().map(|bound| Chance {
                estimate: bound.chance(radius_mm),
                at_least: bound.at_least(radius_mm),
            });
            if let Some((bound, Chance { estimate, .. })) = bound.zip(chance)
                && worst.as_ref().is_none_or(|(_, least, _)| estimate < *least)
            {
                worst = Some((kinds.len(), estimate, bound));
            }
            kinds.push(ShotKind { head, start, n, on_plate, without_a_hit, chance });
        }
        let (worst, bound) = worst.map(|(place, _, bound)| (place, bound)).unzip();
        (Self { distance: at.distance, kinds, worst }, bound)
    }
}

fn farthest(bounds: &[Bounded], radius_mm: f64, chance: Level) -> Option<Farthest> {
    let holds_to_mm =
        |(distance, bound): &Bounded| distance.mm() * bound.growth_to(radius_mm, chance);
    let limits_mm: Vec<f64> = bounds.iter().map(holds_to_mm).collect();
    let mut reached_mm = 0.0;
    for (place, (distance, _)) in bounds.iter().enumerate() {
        let neighbours = limits_mm.iter().take(place + 1).skip(place.saturating_sub(1));
        let limit_mm = neighbours.copied().fold(f64::INFINITY, f64::min);
        if limit_mm < distance.mm() {
            let distance = Millimetres::new(limit_mm.max(reached_mm));
            return Some(Farthest { distance, ended_by: EndedBy::Chance });
        }
        reached_mm = distance.mm();
    }
    let (distance, _) = bounds.last()?;
    Some(Farthest { distance: *distance, ended_by: EndedBy::Shots })
}
