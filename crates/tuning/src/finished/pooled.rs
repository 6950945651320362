//! Groups put together: one distance, one kind of shots.

use std::collections::BTreeMap;

use nalgebra::Vector2;
use quarterturn_geometry::Millimetres;
use quarterturn_statistics::PlanarSample;

use super::{Group, Head, Start};
use crate::{Call, ShaftName, Shot};

/// Two distances nearer than this are one: nobody paces them out better.
const SAME_DISTANCE: Millimetres = Millimetres::new(1000.0);

/// What was shot from one distance.
pub struct Pooled<'a> {
    /// The distance, the mean of those that are taken for one.
    pub distance: Millimetres,
    groups: Vec<&'a Group>,
}

/// An arrow, and the single head that was on it where that is recorded.
#[derive(Clone, Debug, PartialEq)]
pub struct Numbered {
    pub arrow: ShaftName,
    pub piece: Option<String>,
}

/// Groups by their distance, the nearest first.
pub fn by_distance<'a>(groups: &[&'a Group]) -> Vec<Pooled<'a>> {
    let mut sorted = groups.to_vec();
    sorted.sort_by(|a, b| a.distance.mm().total_cmp(&b.distance.mm()));
    let together = |a: &&Group, b: &&Group| (b.distance - a.distance).mm() < SAME_DISTANCE.mm();
    sorted.chunk_by(together).map(Pooled::of).collect()
}

impl<'a> Pooled<'a> {
    fn of(groups: &[&'a Group]) -> Self {
        let sum: f64 = groups.iter().map(|group| group.distance.mm()).sum();
        let distance = Millimetres::new(sum / groups.len() as f64);
        Self { distance, groups: groups.to_vec() }
    }

    /// The kinds of shots that there are, field points before broadheads and warm before cold.
    pub fn kinds(&self) -> Vec<(Head, Start)> {
        let mut kinds: Vec<_> =
            self.groups.iter().map(|group| (group.head.clone(), group.start)).collect();
        kinds.sort();
        kinds.dedup();
        kinds
    }

    /// Where the shots of one kind hit that count, mm from their own spots.
    pub fn hits(&self, head: &Head, start: Start) -> Vec<Vector2<f64>> {
        let shots = self.of_kind(head, start).filter(|shot| shot.counts());
        shots.filter_map(from_spot).collect()
    }

    /// Where the shots of one kind hit that count, by arrow and by the single head it carried; 2 stands before 10.
    pub fn hits_by_arrow(&self, head: &Head, start: Start) -> Vec<(Numbered, PlanarSample)> {
        let mut hits: BTreeMap<_, Vec<_>> = BTreeMap::new();
        let groups = self.groups.iter().filter(|g| g.head == *head && g.start == start);
        for group in groups {
            for shot in group.shots.iter().filter(|shot| shot.counts()) {
                let piece = group.piece(&shot.shaft);
                let key = (shot.shaft.as_str().len(), shot.shaft.clone(), piece);
                hits.entry(key).or_default().extend(from_spot(shot));
            }
        }
        let numbered = |((_, arrow, piece), hits)| {
            Some((Numbered { arrow, piece }, PlanarSample::new(hits).ok()?))
        };
        hits.into_iter().filter_map(numbered).collect()
    }

    /// How many shots of one kind there are, those that do not count included.
    pub fn shot(&self, head: &Head, start: Start) -> usize {
        self.of_kind(head, start).count()
    }

    /// How many shots of one kind were not called poor and never found: where they went nobody knows.
    pub fn without_a_hit(&self, head: &Head, start: Start) -> usize {
        let missing = |shot: &&Shot| shot.hit.is_none() && shot.call != Some(Call::Poor);
        self.of_kind(head, start).filter(missing).count()
    }

    fn of_kind(&self, head: &Head, start: Start) -> impl Iterator<Item = &'a Shot> {
        let groups = self.groups.iter().filter(move |g| g.head == *head && g.start == start);
        groups.flat_map(|group| &group.shots)
    }
}

/// Where a shot hit, mm from its spot.
fn from_spot(shot: &Shot) -> Option<Vector2<f64>> {
    let from_spot = shot.hit.as_ref()?.at.from_spot();
    Some(Vector2::new(from_spot.x_mm, from_spot.y_mm))
}
