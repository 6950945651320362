//! Where the middle of the picture lies in each end: on the fletched reference.

use quarterturn_geometry::{Lean, Offset};
use quarterturn_tuning::{BowPart, End, Event, History, Hit, ShaftName};

/// Where the references landed, from the spot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Middle {
    /// Their mean.
    pub at: Offset,
    /// The mean of their tails, where one was read in this end.
    pub tail: Option<Lean>,
    /// What it rests on.
    pub basis: Basis,
}

/// What the middle of an end rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Basis {
    /// Counted hits of the references in this end.
    End {
        /// How many.
        hits: usize,
    },
    /// The other ends of the evening, with the sight where it was: in this one no reference counts.
    Evening,
}

/// The middle of each end of a history, in order; nothing for an end from another distance, and for one of an evening
/// without a reference.
pub fn middles(history: &History) -> Vec<Option<Middle>> {
    let ends = ends(history);
    ends.iter()
        .map(|&(sitting, own)| {
            let same = ends.iter().filter(|(other, _)| sitting.is_some() && *other == sitting);
            own.or_else(|| evening(same.filter_map(|(_, own)| *own)))
        })
        .collect()
}

/// The ends in order: to which sitting each belongs, and its own middle. An end from another distance has neither.
fn ends(history: &History) -> Vec<(Option<usize>, Option<Middle>)> {
    let (mut sitting, mut evening) = (0, "");
    let mut ends = Vec::new();
    for event in &history.events {
        match event {
            Event::End(end) if end.distance.is_some() => ends.push((None, None)),
            Event::End(end) => {
                sitting += usize::from(end.evening != evening);
                evening = &end.evening;
                ends.push((Some(sitting), own(end, &history.setup.references)));
            }
            Event::Bow(change) => sitting += usize::from(change.part == BowPart::Sight),
            Event::BowLeft | Event::Shaft(..) | Event::Fletched(..) => {}
        }
    }
    ends
}

/// Where the references landed in an end by themselves; nothing where none counts.
pub fn own(end: &End, references: &[ShaftName]) -> Option<Middle> {
    let shots = end.shots.iter().filter(|shot| references.contains(&shot.shaft) && shot.counts());
    let hits: Vec<Hit> = shots.filter_map(|shot| shot.hit).collect();
    let at = mean(hits.iter().map(|hit| hit.at.from_spot()))?;
    let tail = mean_lean(hits.iter().filter_map(|hit| hit.lean));
    Some(Middle { at, tail, basis: Basis::End { hits: hits.len() } })
}

fn evening(others: impl Iterator<Item = Middle>) -> Option<Middle> {
    let at = mean(others.map(|middle| middle.at))?;
    Some(Middle { at, tail: None, basis: Basis::Evening })
}

/// The mean of some displacements; nothing of none.
pub fn mean(offsets: impl Iterator<Item = Offset>) -> Option<Offset> {
    let offsets: Vec<Offset> = offsets.collect();
    let sum = offsets.iter().copied().reduce(|sum, offset| sum + offset)?;
    Some(sum * (1.0 / offsets.len() as f64))
}

fn mean_lean(leans: impl Iterator<Item = Lean>) -> Option<Lean> {
    let leans: Vec<Lean> = leans.collect();
    let share = 1.0 / leans.len() as f64;
    leans
        .into_iter()
        .map(|lean| Lean { x: lean.x * share, y: lean.y * share })
        .reduce(|sum, lean| Lean { x: sum.x + lean.x, y: sum.y + lean.y })
}
