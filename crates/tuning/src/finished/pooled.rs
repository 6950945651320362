//! Groups put together: one distance, one kind of shots.

use nalgebra::Vector2;
use quarterturn_geometry::Millimetres;

use super::{Group, Head, Start};

/// Two distances nearer than this are one: nobody paces them out better.
const SAME_DISTANCE: Millimetres = Millimetres::new(1000.0);

/// What was shot from one distance.
pub struct Pooled<'a> {
    /// The distance, the mean of those that are taken for one.
    pub distance: Millimetres,
    groups: Vec<&'a Group>,
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
        shots
            .filter_map(|shot| {
                let from_spot = shot.hit.as_ref()?.at.from_spot();
                Some(Vector2::new(from_spot.x_mm, from_spot.y_mm))
            })
            .collect()
    }

    /// How many shots of one kind there are, those that do not count included.
    pub fn shot(&self, head: &Head, start: Start) -> usize {
        self.of_kind(head, start).count()
    }

    /// How many shots of one kind were not called poor and never found: where they went nobody knows.
    pub fn without_a_hit(&self, head: &Head, start: Start) -> usize {
        let missing =
            |shot: &&crate::Shot| shot.hit.is_none() && shot.call != Some(crate::Call::Poor);
        self.of_kind(head, start).filter(missing).count()
    }

    fn of_kind(&self, head: &Head, start: Start) -> impl Iterator<Item = &'a crate::Shot> {
        let groups = self.groups.iter().filter(move |g| g.head == *head && g.start == start);
        groups.flat_map(|group| &group.shots)
    }
}
