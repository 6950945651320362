//! Where the ends that the flight model reads stand in the journal.

use super::hint::Whereabouts;
use crate::{Event, History};

/// For each end that the flight model reads, where it is in the journal.
pub fn journal_ends(history: &History) -> Vec<Whereabouts> {
    let (mut ends, mut number) = (Vec::new(), 0);
    for (at, event) in history.events.iter().enumerate() {
        let Event::End(end) = event else { continue };
        number += 1;
        if end.distance.is_none() {
            ends.push(Whereabouts { end: number, entries_back: history.events.len() - at });
        }
    }
    ends
}
