//! Moves of the bow that were measured.

use quarterturn_geometry::Offset;

use crate::observation::{Kind, Observations};
use crate::{BowPart, Event, History};

/// One measured move of a part of the bow.
#[derive(Clone, Copy, Debug)]
pub struct BowMove {
    /// The part.
    pub part: BowPart,
    /// How far it was moved, right and up.
    pub by: Offset,
    /// How many times the bow had been changed before.
    pub bow_before: usize,
    /// Counted bare shots beside the bow as it stood before.
    pub shots_before: usize,
    /// Counted bare shots beside the bow as it stood after.
    pub shots_after: usize,
}

/// All moves of the bow that were measured since the first shot that is read, in order; a sight moves all arrows alike and is none.
pub fn bow_moves(history: &History, seen: &Observations) -> Vec<BowMove> {
    let bare = |bow| {
        let beside = seen.shots.iter().filter(|shot| shot.bow == bow);
        beside.filter(|shot| seen.kind_of(shot) == Kind::Bare).count()
    };
    let changes = history.events[seen.first_event..].iter().filter_map(|event| match event {
        Event::Bow(change) if change.part != BowPart::Sight => Some(change),
        _ => None,
    });
    let measured = changes.enumerate().filter_map(|(bow_before, change)| {
        let by = change.moved.filter(|by| by.length().mm() > 0.0)?;
        let (shots_before, shots_after) = (bare(bow_before), bare(bow_before + 1));
        Some(BowMove { part: change.part, by, bow_before, shots_before, shots_after })
    });
    measured.collect()
}
