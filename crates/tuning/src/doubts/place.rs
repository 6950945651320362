//! Where shots stand in a journal.

use quarterturn_geometry::Offset;

use crate::observation::Observations;
use crate::{End, Event, History, Shot};

/// Where a shot stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Place {
    /// The event.
    pub event: usize,
    /// The shot in its end.
    pub shot: usize,
}

/// The places of all shots for which `of` holds, from the event on with which reading begins.
pub fn places(
    history: &History,
    seen: &Observations,
    of: impl Fn(&End, &Shot) -> bool,
) -> Vec<Place> {
    let in_event = |(event, what): (usize, &Event)| -> Vec<Place> {
        let Event::End(end) = what else { return Vec::new() };
        let shots = end.shots.iter().enumerate().filter(|(_, shot)| of(end, shot));
        shots.map(|(shot, _)| Place { event, shot }).collect()
    };
    history.events.iter().enumerate().skip(seen.first_event).flat_map(in_event).collect()
}

/// The places of the shots that the flight model reads, in its order.
pub fn counted_places(history: &History, seen: &Observations) -> Vec<Place> {
    let setup = &history.setup;
    let known = |shot: &Shot| {
        setup.references.contains(&shot.shaft)
            || setup.shafts.iter().any(|(name, _)| *name == shot.shaft)
    };
    places(history, seen, |end, shot| end.distance.is_none() && shot.counts() && known(shot))
}

impl Place {
    /// The end it stands in, counted from 1 over all ends of the journal.
    pub fn end(self, history: &History) -> usize {
        let ends = history.events[..=self.event].iter();
        ends.filter(|event| matches!(event, Event::End(_))).count()
    }

    /// Where the shot hit, from the references of its end; from the spot where there were none.
    pub fn miss(self, history: &History) -> Option<Offset> {
        let Event::End(end) = history.events.get(self.event)? else { return None };
        let own = end.shots.get(self.shot)?.hit?.at.from_spot();
        let is_reference = |shot: &&Shot| history.setup.references.contains(&shot.shaft);
        let counted = end.shots.iter().filter(is_reference).filter(|shot| shot.counts());
        let hits: Vec<_> = counted.filter_map(|shot| Some(shot.hit?.at.from_spot())).collect();
        let sum = hits.iter().fold(Offset::ZERO, |sum, &hit| sum + hit);
        Some(if hits.is_empty() { own } else { own - sum * (hits.len() as f64).recip() })
    }
}
