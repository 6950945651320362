//! What a journal makes one suspect, in words.

use quarterturn_tuning::{Hint, Whereabouts};

use super::{all, count, mark, tail};

/// The kind of a hint, in a word for other programs.
pub const fn hint_kind(hint: &Hint) -> &'static str {
    match hint {
        Hint::Exchanged { .. } => "exchanged",
        Hint::UpsideDown { .. } => "upside-down",
        Hint::Slipped { .. } => "slipped",
        Hint::LeanContradicts { .. } => "lean",
    }
}

/// A hint: what it looks like and what to do about it, a sentence.
pub fn hint(hint: &Hint) -> String {
    match hint {
        Hint::Exchanged { shafts, at } => format!(
            "Shots of {} in end {} look exchanged: if they are, {}.",
            all(shafts),
            at.end,
            enter_anew(*at)
        ),
        Hint::UpsideDown { shaft, at, recorded, seems } => format!(
            "The shot of {shaft} in end {} lies where it would with its mark at {}, not at {}: look whether \
             its nock was on upside down; if it was, {} with the mark there.",
            at.end,
            mark(*seems),
            mark(*recorded),
            enter_anew(*at)
        ),
        Hint::Slipped { shaft, at, recorded, seems, shots: 1 } => format!(
            "The shot of {shaft} in end {} lies where it would with its mark at {}, not at {}: look whether \
             its nock slipped or the mark was misread; if so, {} with the mark there.",
            at.end,
            mark(*seems),
            mark(*recorded),
            enter_anew(*at)
        ),
        Hint::Slipped { shaft, at, recorded, seems, shots } => format!(
            "From end {} on ({}) {shaft} lies where it would with its mark at {}, not at {}: look where \
             its mark stands; if the nock slipped, {} with the mark there.",
            at.end,
            count(*shots, "shot"),
            mark(*seems),
            mark(*recorded),
            enter_anew(*at)
        ),
        Hint::LeanContradicts { shaft, differs, sd_deg, index, shots } => format!(
            "{shaft} leans otherwise than its hits ask for: {} of what goes with them at {} (± {sd_deg:.1} \
             deg, {}). Likely causes, in this order: contact, a kick in the butt, the archer.",
            tail(Some(*differs)),
            mark(*index),
            count(*shots, "shot")
        ),
    }
}

/// How an end is put right: the last entry is taken back by one `undo`, an older one by several.
fn enter_anew(at: Whereabouts) -> String {
    match at.entries_back {
        0 | 1 => "take the end back with `undo` and enter it anew".to_owned(),
        entries => format!(
            "take back {entries} entries with `undo`, and enter the end and what came after it anew"
        ),
    }
}

#[cfg(test)]
mod tests {
    use quarterturn_geometry::{Index, Lean};
    use quarterturn_tuning::ShaftName;

    use super::*;

    const LAST: Whereabouts = Whereabouts { end: 6, entries_back: 1 };
    const OLDER: Whereabouts = Whereabouts { end: 6, entries_back: 3 };

    fn name(name: &str) -> ShaftName {
        name.parse().unwrap()
    }

    #[test]
    fn exchanged_numbers_are_taken_back_and_entered_anew() {
        let said = |at| hint(&Hint::Exchanged { shafts: ["4", "11"].map(name), at });
        assert_eq!(
            said(LAST),
            "Shots of 4 and 11 in end 6 look exchanged: if they are, take the end back with `undo` and enter \
             it anew."
        );
        assert_eq!(
            said(OLDER),
            "Shots of 4 and 11 in end 6 look exchanged: if they are, take back 3 entries with `undo`, and \
             enter the end and what came after it anew."
        );
    }

    #[test]
    fn turned_nocks_are_to_be_looked_at() {
        let (shaft, recorded) = (name("7"), Index::TWELVE);
        let upside_down = Hint::UpsideDown {
            shaft: shaft.clone(),
            at: LAST,
            recorded,
            seems: Index::from_hour(6.0),
        };
        assert_eq!(
            hint(&upside_down),
            "The shot of 7 in end 6 lies where it would with its mark at 6 o'clock, not at 12 o'clock: look \
             whether its nock was on upside down; if it was, take the end back with `undo` and enter it anew \
             with the mark there."
        );
        let seems = Index::from_hour(2.0);
        let slipped =
            |shots| Hint::Slipped { shaft: shaft.clone(), at: LAST, recorded, seems, shots };
        assert_eq!(
            hint(&slipped(1)),
            "The shot of 7 in end 6 lies where it would with its mark at 2 o'clock, not at 12 o'clock: look \
             whether its nock slipped or the mark was misread; if so, take the end back with `undo` and enter \
             it anew with the mark there."
        );
        assert_eq!(
            hint(&slipped(3)),
            "From end 6 on (3 shots) 7 lies where it would with its mark at 2 o'clock, not at 12 o'clock: \
             look where its mark stands; if the nock slipped, take the end back with `undo` and enter it anew \
             with the mark there."
        );
    }

    #[test]
    fn a_lean_that_contradicts_hits_comes_with_its_likely_causes() {
        let lean = Hint::LeanContradicts {
            shaft: name("9"),
            differs: Lean::from_degrees(2.31, -0.04),
            sd_deg: 0.46,
            index: Index::from_hour(3.0),
            shots: 5,
        };
        assert_eq!(
            hint(&lean),
            "9 leans otherwise than its hits ask for: tail 2.3 deg right of what goes with them at 3 \
             o'clock (± 0.5 deg, 5 shots). Likely causes, in this order: contact, a kick in the butt, the \
             archer."
        );
    }
}
