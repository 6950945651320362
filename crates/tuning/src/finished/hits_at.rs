//! Every shot that counts from one distance, by what the arrows carried: for pictures.

use nalgebra::Vector2;
use quarterturn_geometry::Millimetres;
use quarterturn_statistics::{Ellipse, PlanarSample};

use super::pooled::{Pooled, by_distance};
use super::together::LEVEL;
use super::{Group, Head, Start};
use crate::ShaftName;

/// What was hit from one distance.
#[derive(Clone, Debug, PartialEq)]
pub struct HitsAt {
    /// From the archer to the face.
    pub distance: Millimetres,
    /// Each kind of shots, field points first.
    pub kinds: Vec<HitsOfKind>,
}

/// What was hit with one kind of shots.
#[derive(Clone, Debug, PartialEq)]
pub struct HitsOfKind {
    /// What the arrows carried.
    pub head: Head,
    /// Whether they were first shots of their days.
    pub start: Start,
    /// Every hit that counts, from its spot, mm, with its arrow.
    pub hits: Vec<(ShaftName, Vector2<f64>)>,
    /// Where their centre lies at 95 %; nothing for fewer than three, or where they lie on one line.
    pub centre: Option<Ellipse>,
}

/// The hits of groups, the nearest distance first.
pub fn hits_at(groups: &[&Group]) -> Vec<HitsAt> {
    by_distance(groups).iter().map(HitsAt::of).collect()
}

impl HitsAt {
    fn of(at: &Pooled) -> Self {
        let kind = |(head, start): (Head, Start)| {
            let by_arrow = at.hits_by_arrow(&head, start);
            let hits = by_arrow.iter().flat_map(|(numbered, sample)| {
                sample.points().iter().map(|point| (numbered.arrow.clone(), *point))
            });
            let centre = PlanarSample::new(at.hits(&head, start))
                .ok()
                .and_then(|sample| sample.mean_estimate().ok())
                .map(|estimate| estimate.region(LEVEL));
            HitsOfKind { hits: hits.collect(), head, start, centre }
        };
        Self { distance: at.distance, kinds: at.kinds().into_iter().map(kind).collect() }
    }
}
