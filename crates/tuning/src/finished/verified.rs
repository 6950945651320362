//! Finished arrows by number: whether each lands where its bare shaft promised, and where they all do.

use nalgebra::Vector2;
use quarterturn_geometry::Millimetres;
use quarterturn_statistics::{Ellipse, PlanarEstimate, PlanarSample};

use super::arrow_means::{ArrowMeans, FromTheOthers};
use super::pooled::{Numbered, Pooled, by_distance};
use super::together::LEVEL;
use super::{Group, GroupShape, Head, SightMove, Start};
use crate::ShaftName;

/// A group is called drawn out where a round one would be so in one of twenty looks at all distances.
const SURE: f64 = 0.05;

/// Finished arrows with field points at one distance.
#[derive(Clone, Debug, PartialEq)]
pub struct Verified {
    /// From the archer to the face.
    pub distance: Millimetres,
    /// How near to the others an arrow is to land there: the tolerance of the bare shafts, in proportion to the distance.
    pub tolerance: Millimetres,
    /// Every arrow of which a shot counts, 2 before 10.
    pub arrows: Vec<VerifiedArrow>,
    /// Where they land together; nothing for fewer than three shots, or where they lie on one line.
    pub centre: Option<Centre>,
    /// The shape of the group; nothing where too few shots tell it.
    pub shape: Option<GroupShape>,
}

/// One arrow.
#[derive(Clone, Debug, PartialEq)]
pub struct VerifiedArrow {
    /// Its name.
    pub arrow: ShaftName,
    /// How many of its shots count.
    pub shots: usize,
    /// Their centre, from the spot, mm.
    pub centre: Vector2<f64>,
    /// Where it lands beside the others; nothing for a single arrow, or where no arrow was shot twice.
    pub from_the_others: Option<FromTheOthers>,
}

/// Where finished arrows land together.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Centre {
    /// From the spot, mm.
    pub estimate: PlanarEstimate,
    /// Where the truth lies at 95 %.
    pub region: Ellipse,
    /// The same by its two parts.
    pub miss: SightMove,
}

/// Finished arrows at every distance, the nearest first.
///
/// # Method
/// Field points only, without cold first shots and what does not count (called poor, wind, contact). Each arrow is compared with
/// the mean of the others, so that the sight is not in it; *together* and *apart* are those of
/// [`FromTheOthers`], within `tolerance` at `at` in proportion to the distance. The centre is that of all shots.
///
/// # Assumptions
/// Those of [`FromTheOthers`]; sight and bow unchanged; every arrow about as often shot.
pub fn verify(groups: &[&Group], tolerance: Millimetres, at: Millimetres) -> Vec<Verified> {
    let distances = by_distance(groups);
    let shot = |at: &&Pooled| at.shot(&Head::Field, Start::Warm) > 0;
    let looked_at: Vec<_> = distances.iter().filter(shot).collect();
    let sure = SURE / looked_at.len().max(1) as f64;
    let verified = |there: &&Pooled| {
        let share = there.distance.mm() / at.mm();
        Verified::of(there, Millimetres::new(share * tolerance.mm()), sure)
    };
    looked_at.iter().map(verified).collect()
}

impl Verified {
    fn of(at: &Pooled, tolerance: Millimetres, sure: f64) -> Self {
        let by_arrow = at.hits_by_arrow(&Head::Field, Start::Warm);
        let samples: Vec<_> = by_arrow.iter().map(|(_, sample)| sample.clone()).collect();
        let means = ArrowMeans::of(&samples);
        let beside = means.beside_the_others(Some(tolerance));
        let arrow =
            |((Numbered { arrow, .. }, sample), from_the_others): ((_, PlanarSample), _)| {
                let (shots, centre) = (sample.n(), sample.centroid());
                VerifiedArrow { arrow, shots, centre, from_the_others }
            };
        Self {
            distance: at.distance,
            tolerance,
            arrows: by_arrow.into_iter().zip(beside).map(arrow).collect(),
            centre: Centre::of(at.hits(&Head::Field, Start::Warm)),
            shape: GroupShape::of(&means.scatter, means.degrees_of_freedom, sure),
        }
    }
}

impl Centre {
    fn of(hits: Vec<Vector2<f64>>) -> Option<Self> {
        let estimate = PlanarSample::new(hits).ok()?.mean_estimate().ok()?;
        let miss = SightMove::miss(&estimate).ok()?;
        Some(Self { estimate, region: estimate.region(LEVEL), miss })
    }
}
