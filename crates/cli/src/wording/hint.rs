//! What a journal makes one suspect, in words.

use quarterturn_entry::shorthand;
use quarterturn_geometry::Index;
use quarterturn_tuning::{Hint, ShaftName};

use super::{count, mark, tail};

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
        Hint::Exchanged { shafts: [one, other], end } => format!(
            "Shots of {one} and {other} in end {end} look exchanged: if they are, put the end right with \
             `fix` {end} --exchange {one},{other}."
        ),
        Hint::UpsideDown { shaft, end, recorded, seems } => format!(
            "The shot of {shaft} in end {end} lies where it would with its mark at {}, not at {}: look whether \
             its nock was on upside down; if it was, {}.",
            mark(*seems),
            mark(*recorded),
            put_right(shaft, *end, *seems)
        ),
        Hint::Slipped { shaft, end, recorded, seems, shots: 1 } => format!(
            "The shot of {shaft} in end {end} lies where it would with its mark at {}, not at {}: look whether \
             its nock slipped or the mark was misread; if so, {}.",
            mark(*seems),
            mark(*recorded),
            put_right(shaft, *end, *seems)
        ),
        Hint::Slipped { shaft, end, recorded, seems, shots } => format!(
            "From end {end} on ({}) {shaft} lies where it would with its mark at {}, not at {}: look where \
             its mark stands; if the nock slipped, {}, and so its later shots.",
            count(*shots, "shot"),
            mark(*seems),
            mark(*recorded),
            put_right(shaft, *end, *seems)
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

/// How the mark of a shot is put right.
fn put_right(shaft: &ShaftName, end: usize, seems: Index) -> String {
    format!("put it right with `fix` {end} \"{shaft} {}\"", shorthand::mark(seems))
}

#[cfg(test)]
mod tests {
    use quarterturn_geometry::Lean;

    use super::*;

    fn name(name: &str) -> ShaftName {
        name.parse().unwrap()
    }

    #[test]
    fn exchanged_numbers_are_put_right_by_a_fix() {
        assert_eq!(
            hint(&Hint::Exchanged { shafts: ["4", "11"].map(name), end: 6 }),
            "Shots of 4 and 11 in end 6 look exchanged: if they are, put the end right with `fix` 6 \
             --exchange 4,11."
        );
    }

    #[test]
    fn turned_nocks_are_to_be_looked_at() {
        let (shaft, recorded) = (name("7"), Index::TWELVE);
        let upside_down = Hint::UpsideDown {
            shaft: shaft.clone(),
            end: 6,
            recorded,
            seems: Index::from_hour(6.0),
        };
        assert_eq!(
            hint(&upside_down),
            "The shot of 7 in end 6 lies where it would with its mark at 6 o'clock, not at 12 o'clock: look \
             whether its nock was on upside down; if it was, put it right with `fix` 6 \"7 i6\"."
        );
        let seems = Index::from_hour(2.0);
        let slipped =
            |shots| Hint::Slipped { shaft: shaft.clone(), end: 6, recorded, seems, shots };
        assert_eq!(
            hint(&slipped(1)),
            "The shot of 7 in end 6 lies where it would with its mark at 2 o'clock, not at 12 o'clock: look \
             whether its nock slipped or the mark was misread; if so, put it right with `fix` 6 \"7 i2\"."
        );
        assert_eq!(
            hint(&slipped(3)),
            "From end 6 on (3 shots) 7 lies where it would with its mark at 2 o'clock, not at 12 o'clock: \
             look where its mark stands; if the nock slipped, put it right with `fix` 6 \"7 i2\", and so its \
             later shots."
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
