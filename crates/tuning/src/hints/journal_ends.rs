//! Where the ends that the flight model reads stand in the journal.

use crate::{Event, History};

/// For each end that the flight model reads, its number among all ends of the journal, counted from 1.
pub fn journal_ends(history: &History) -> Vec<usize> {
    let ends = history.events.iter().filter_map(|event| match event {
        Event::End(end) => Some(end),
        _ => None,
    });
    (1..).zip(ends).filter(|(_, end)| end.distance.is_none()).map(|(number, _)| number).collect()
}
