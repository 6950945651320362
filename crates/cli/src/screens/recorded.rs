//! The echoes of what was recorded beside ends.

use quarterturn_journal::{Confirmed, Word};
use quarterturn_tuning::{BowPart, Event, ShaftChange};

use crate::opened::Opened;
use crate::wording::{self, command, count, paragraph};

/// The bow was changed.
pub fn recorded_bow(opened: &Opened, part: Option<BowPart>) -> String {
    let part = wording::part(part.unwrap_or_default());
    followed(opened, &format!("Recorded: the {part} was changed"))
}

/// The bow stays as it is.
pub fn recorded_leave(opened: &Opened) -> String {
    followed(
        opened,
        "Recorded: the bow stays as it is; it is not asked for again before new shots speak for it",
    )
}

/// A shaft or a reference changed its state.
pub fn recorded_shaft(opened: &Opened, name: &str, change: ShaftChange) -> String {
    let what = match change {
        ShaftChange::Lost => "was not found",
        ShaftChange::Broken => "is broken and is not shot again until it is repaired",
        ShaftChange::Repaired => "was repaired and starts anew",
        ShaftChange::SetAside => "is set aside",
        ShaftChange::Readmit => "is taken up again",
        ShaftChange::Fletched => "is fletched: no longer bare",
    };
    followed(opened, &format!("Recorded: {name} {what}"))
}

/// The last entry was taken back.
pub fn undone(opened: &Opened, confirmed: &Confirmed) -> String {
    let what = match &confirmed.taken_back {
        Some(Event::End(end)) => format!("an end of {}", count(end.shots.len(), "shot")),
        Some(Event::Bow(_)) => "a change of the bow".to_owned(),
        Some(Event::BowLeft) => "the word that the bow stays as it is".to_owned(),
        Some(Event::Shaft(name, change)) => format!("\"{name}: {}\"", change.word()),
        None => "nothing".to_owned(),
    };
    followed(opened, &format!("Taken back: {what}; the journal keeps both"))
}

/// Where the torn end of a journal was moved, if it had one.
pub fn torn_kept(confirmed: &Confirmed) -> Option<String> {
    let kept = confirmed.torn_kept.as_ref()?;
    Some(format!("the journal had a torn end: it was moved to {}", kept.display()))
}

fn followed(opened: &Opened, what: &str) -> String {
    let what = paragraph("", &format!("{what}."));
    format!("{what}\n\nThen: {}\n", command("next", &opened.path))
}
