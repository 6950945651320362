//! The echoes of what was recorded beside ends.

use std::path::PathBuf;

use quarterturn_journal::{Confirmed, Deed, Role, Timestamp, Word};
use quarterturn_tuning::{BowPart, Event, ShaftChange};

use crate::opened::Opened;
use crate::wording::{self, as_words, command, count, mark, paragraph, visible};

/// The bow was changed.
pub fn recorded_bow(opened: &Opened, part: Option<BowPart>) -> String {
    let part = part.unwrap_or_default();
    let said = followed(opened, &format!("Recorded: the {} was changed", wording::part(part)));
    let recheck = paragraph("", wording::AFTER_A_NEW_STRING);
    if part == BowPart::String { format!("{recheck}\n\n{said}") } else { said }
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
        ShaftChange::Fletched => return recorded_fletched(opened, name),
        ShaftChange::Checked => "was checked and is sound",
        ShaftChange::HardHit => "hit something hard",
        ShaftChange::NewNock => "has a new nock",
    };
    let recheck = match change {
        ShaftChange::HardHit => Some(wording::AFTER_A_HARD_HIT),
        ShaftChange::NewNock => Some(wording::AFTER_A_NEW_NOCK),
        _ => None,
    };
    let recheck = recheck.map(|text| format!("{}\n\n", paragraph("", text))).unwrap_or_default();
    recheck + &followed(opened, &format!("Recorded: {name} {what}"))
}

/// A shaft was fletched: its mark is where it stays.
fn recorded_fletched(opened: &Opened, name: &str) -> String {
    let name = visible(name);
    let roster = opened.journal.state().roster();
    let standing = name.parse().ok().and_then(|name| roster.find(&name));
    let mark = standing.map(|standing| mark(standing.index_now)).unwrap_or_default();
    followed(opened, &format!("Recorded: {name} is fletched, its mark at {mark}: no longer bare"))
}

/// A shaft or a reference joined.
pub fn recorded_join(opened: &Opened, name: &str, role: Role) -> String {
    let what = match role {
        Role::Bare => "is shot bare from now on",
        Role::Reference => "is a reference from now on",
    };
    followed(opened, &format!("Recorded: {name} {what}"))
}

/// A note was kept.
pub fn recorded_note(opened: &Opened) -> String {
    followed(opened, "Recorded: a note; `log` shows it")
}

/// The last entry was taken back.
pub fn undone(opened: &Opened, confirmed: &Confirmed) -> String {
    let what = said(confirmed.recalled.as_ref());
    let redo = command("redo", &opened.path);
    followed(opened, &format!("Taken back: {what}; the journal keeps both"))
        + &format!("Not so? {redo}\n")
}

/// What was taken back last stands again.
pub fn redone(opened: &Opened, confirmed: &Confirmed) -> String {
    followed(opened, &format!("Brought back: {}", said(confirmed.recalled.as_ref())))
}

/// What was taken or brought back, in words.
fn said(deed: Option<&Deed>) -> String {
    match deed {
        Some(Deed::Added(Event::End(end))) => {
            format!("an end of {}", count(end.shots.len(), "shot"))
        }
        Some(Deed::Added(Event::Bow(_))) => "a change of the bow".to_owned(),
        Some(Deed::Added(Event::BowLeft)) => "the word that the bow stays as it is".to_owned(),
        Some(Deed::Added(Event::Shaft(name, change))) => {
            format!("\"{name}: {}\"", as_words(change.word()))
        }
        Some(Deed::Added(Event::Fletched(name, _))) => format!("\"{name}: fletched\""),
        Some(Deed::Corrected { end }) => format!("the last correction of end {end}"),
        Some(Deed::Joined(name)) => format!("that {name} joined"),
        Some(Deed::Measured(name)) => format!("what was measured of {name}"),
        Some(Deed::Glued(shafts)) => format!("what was glued on {}", wording::all(shafts)),
        Some(Deed::Grouped { shots }) => {
            format!("a group of {} with finished arrows", count(*shots, "shot"))
        }
        Some(Deed::Quivered) => "a word about the quiver".to_owned(),
        Some(Deed::Noted) => "a note".to_owned(),
        None => "nothing".to_owned(),
    }
}

/// What happened beside a record: a torn end was moved, or a clock was set back.
pub fn what_else(confirmed: &Confirmed) -> impl Iterator<Item = String> {
    let moved =
        |kept: &PathBuf| format!("the journal had a torn end: it was moved to {}", kept.display());
    let later = |later: &Timestamp| {
        let now = &confirmed.record.stamp.time;
        format!(
            "the clock says {now}, and the entry before was made at {later}: order is kept all the same"
        )
    };
    let torn = confirmed.torn_kept.as_ref().map(moved);
    torn.into_iter().chain(confirmed.later.as_ref().map(later))
}

fn followed(opened: &Opened, what: &str) -> String {
    let what = paragraph("", &format!("{what}."));
    format!("{what}\n\nThen: {}\n", command("next", &opened.path))
}

#[cfg(test)]
mod tests {
    use quarterturn_journal::{Confirmed, Entry, NoteEntry, Record, RecordId, Stamp};

    #[test]
    fn a_clock_that_was_set_back_is_told() {
        let time = |text: &str| text.parse().unwrap();
        let stamp = Stamp { id: RecordId::from_bits(1), time: time("2027-03-02T10:00:00Z") };
        let entry = Entry::Note(NoteEntry { note: "late".into() });
        let confirmed = Confirmed {
            record: Record { seq: 7, stamp, entry },
            recalled: None,
            later: Some(time("2027-03-02T11:00:00Z")),
            torn_kept: None,
        };
        let told: Vec<String> = super::what_else(&confirmed).collect();
        let expected = "the clock says 2027-03-02T10:00:00Z, and the entry before was made at \
            2027-03-02T11:00:00Z: order is kept all the same";
        assert_eq!(told, [expected]);
    }
}
