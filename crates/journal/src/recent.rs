//! Whether the end of a journal tells enough to judge a new entry by.

use quarterturn_tuning::Event;

use crate::{Entry, State};

/// Whether `state`, read from the first and the last records only, knows of `entry` what the whole would.
///
/// Of a shaft it must have a shot: where the mark stood then is where it stands, unless a later shot says otherwise, and
/// nobody records a shot of a shaft that is out of use. What cannot be settled so is settled by reading everything.
pub(crate) fn settles(state: &State, entry: &Entry) -> bool {
    match entry {
        Entry::End(end) => end.shots.iter().all(|shot| was_shot(state, &shot.shaft)),
        Entry::Shaft(shaft) => was_shot(state, &shaft.shaft),
        Entry::Undo(_) => state.last_number().is_some(),
        Entry::Bow(_) | Entry::Note(_) => true,
        Entry::Redo(_) => state.last_taken().is_some(),
        Entry::New(_)
        | Entry::Add(_)
        | Entry::Bench(_)
        | Entry::Fix(_)
        | Entry::Glue(_)
        | Entry::Group(_)
        | Entry::Quiver(_)
        | Entry::Unreadable(_) => false,
    }
}

fn was_shot(state: &State, name: &str) -> bool {
    let shot = |event: &Event| match event {
        Event::End(end) => end.shots.iter().any(|shot| shot.shaft.as_str() == name),
        _ => false,
    };
    state.history().events.iter().rev().any(shot)
}
