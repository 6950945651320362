//! Broadheads against field points: the difference of their centres at each distance.

use quarterturn_geometry::Millimetres;
use quarterturn_statistics::{DistanceBound, Ellipse, PlanarEstimate, PlanarSample};

use super::growth::Growth;
use super::more_shots::more_shots;
use super::pair::{Pair, pairs};
use super::pooled::{Pooled, by_distance};
use super::together::{LEVEL, TogetherVerdict, at_least_mm, shown};
use super::{Group, Head, Start};

/// One broadhead against field points, at every distance at which it was shot.
#[derive(Clone, Debug, PartialEq)]
pub struct Comparison {
    /// The broadhead.
    pub head: Head,
    /// The distances, the nearest first.
    pub distances: Vec<AtDistance>,
    /// How the difference grows; nothing with fewer than two differences.
    pub growth: Option<Growth>,
}

/// One broadhead against field points at one distance.
#[derive(Clone, Debug, PartialEq)]
pub struct AtDistance {
    /// From the archer to the face.
    pub distance: Millimetres,
    /// How many shots with field points count.
    pub field: usize,
    /// How many shots with the broadhead count.
    pub broadheads: usize,
    /// Nothing with fewer than three of either, or where they all lie on one line.
    pub difference: Option<Difference>,
    /// Every arrow that was shot with both, with the single head it carried.
    pub pairs: Vec<Pair>,
}

/// Where broadheads land from field points.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Difference {
    /// The centre of the broadheads less that of the field points, mm.
    pub estimate: PlanarEstimate,
    /// Where the true difference lies at 95 %.
    pub region: Ellipse,
    /// How far the centres are apart at most, at 95 %.
    pub at_most: DistanceBound,
    /// How far they are apart at least, at 95 %, mm; not below 0.
    pub at_least_mm: f64,
    /// What that is by the archer's own measure; nothing where he gave none.
    pub verdict: Option<TogetherVerdict>,
}

/// Every broadhead against the field points of the same distances.
///
/// # Method
/// The shots of all groups of one distance are put together; cold first shots and what does not count (called poor,
/// wind, contact) are left out. *Together* within D is equivalence and not the absence of a significant difference:
/// [`PlanarEstimate::distance`] at 95 % is at most D. *Apart* is said where the region at 95 % lies wholly outside the
/// circle of radius D.
///
/// # Assumptions
/// Independent normal shots, each head with a covariance of its own; sight and bow unchanged, so that only groups beside
/// one bow may be given. The level holds for each distance and head by itself.
pub fn compare_heads(groups: &[&Group], together: Option<Millimetres>) -> Vec<Comparison> {
    let distances = by_distance(groups);
    let mut heads: Vec<Head> = groups.iter().map(|group| group.head.clone()).collect();
    heads.sort();
    heads.dedup();
    heads.retain(|head| *head != Head::Field);
    let compared = |head: Head| {
        let shot = |at: &&Pooled| at.shot(&head, Start::Warm) > 0;
        let at = |at: &Pooled| AtDistance::of(at, &head, together);
        let distances: Vec<_> = distances.iter().filter(shot).map(at).collect();
        let growth = Growth::of(&distances, together);
        Comparison { head, distances, growth }
    };
    let compared = heads.into_iter().map(compared);
    // A head of which only cold first shots are there is compared with nothing.
    compared.filter(|one| !one.distances.is_empty()).collect()
}

impl AtDistance {
    fn of(at: &Pooled, head: &Head, together: Option<Millimetres>) -> Self {
        let field = at.hits(&Head::Field, Start::Warm);
        let broadheads = at.hits(head, Start::Warm);
        let (of_field, of_heads) = (field.len(), broadheads.len());
        let samples = PlanarSample::new(field).ok().zip(PlanarSample::new(broadheads).ok());
        let difference =
            samples.and_then(|(field, heads)| Difference::of(&field, &heads, together));
        let pairs = pairs(at, head, together);
        Self { distance: at.distance, field: of_field, broadheads: of_heads, difference, pairs }
    }
}

impl Difference {
    pub(super) fn of(
        field: &PlanarSample,
        heads: &PlanarSample,
        together: Option<Millimetres>,
    ) -> Option<Self> {
        let estimate = heads.unequal_difference(field).ok()?;
        let at_most = estimate.distance(LEVEL).ok()?;
        let shown = |together: Millimetres| {
            shown(&estimate, together, LEVEL).unwrap_or_else(|| TogetherVerdict::Open {
                more: more_shots(&estimate, [field, heads], together),
            })
        };
        Some(Self {
            estimate,
            region: estimate.region(LEVEL),
            at_most,
            at_least_mm: at_least_mm(&estimate, LEVEL),
            verdict: together.map(shown),
        })
    }
}
