//! The words for a tail: by degrees, by tape, or by eye.

use quarterturn_geometry::{Index, Millimetres, Offset};
use quarterturn_journal::TailSeen;

use super::ShorthandFault;
use super::word::{Read, Word, hour, not_negative, thousandths};
use crate::Located;
use crate::quantity::{Dimension, Unit, leading_number};

/// How far a tail is off, in the way in which it was read.
enum Amount {
    /// Degrees, which a number without a unit is.
    Degrees(f64),
    /// By tape, mm.
    Tape(f64),
    /// By eye.
    Seen(TailSeen),
}

/// The word `t` and `rest`; faults stand in `rest`.
pub(super) fn tail(word: &str, rest: &str) -> Read<Word> {
    let mut letters = rest.chars();
    match letters.next() {
        _ if rest == "n" => Ok(Word::TailSeen(TailSeen::None, None)),
        Some(side @ ('r' | 'l' | 'u' | 'd')) => {
            let amount = amount(word, letters.as_str()).map_err(|fault| fault.shifted(1))?;
            Ok(to_side(side, &amount))
        }
        Some('0'..='9' | '.') => toward_hour(word, rest),
        _ if matches!(rest, "s" | "some" | "m" | "much" | "lots") => {
            Err(Located::new(ShorthandFault::TailWithoutSide, 0..rest.len()))
        }
        _ => Err(Located::new(ShorthandFault::unknown_word(word), 0..rest.len())),
    }
}

/// `2.5`, `2cm`, `s`, `m`, or nothing behind a side.
fn amount(word: &str, text: &str) -> Read<Amount> {
    match text {
        "" => return Ok(Amount::Seen(TailSeen::Side)),
        "s" => return Ok(Amount::Seen(TailSeen::Some)),
        "m" => return Ok(Amount::Seen(TailSeen::Much)),
        _ if text.starts_with(|c: char| c.is_ascii_alphabetic()) => {
            return Err(Located::new(ShorthandFault::unknown_word(word), 0..text.len()));
        }
        _ => {}
    }
    let number = leading_number(text).map_err(Located::widened)?;
    let value = not_negative(number.value, text)?;
    let symbol = text.get(number.end..).unwrap_or_default();
    let unknown =
        |fault: crate::quantity::QuantityFault| Located::new(fault.into(), number.end..text.len());
    if symbol.is_empty() {
        return Ok(Amount::Degrees(thousandths(value)));
    }
    if let Ok(unit) = Unit::named(symbol, Dimension::Length) {
        return Ok(Amount::Tape(thousandths(unit.to_base(value))));
    }
    Unit::named(symbol, Dimension::Angle).map_err(unknown)?;
    Ok(Amount::Degrees(thousandths(value)))
}

fn to_side(side: char, amount: &Amount) -> Word {
    let (across, sign) = match side {
        'r' => (true, 1.0),
        'l' => (true, -1.0),
        'u' => (false, 1.0),
        _ => (false, -1.0),
    };
    // Adding zero makes a plain zero of a negative one.
    match *amount {
        Amount::Degrees(deg) if across => Word::TailRight(sign * deg + 0.0),
        Amount::Degrees(deg) => Word::TailUp(sign * deg + 0.0),
        Amount::Tape(mm) if across => Word::TapeRight(sign * mm + 0.0),
        Amount::Tape(mm) => Word::TapeUp(sign * mm + 0.0),
        Amount::Seen(seen) => {
            let hour = match (across, sign > 0.0) {
                (true, true) => 3.0,
                (true, false) => 9.0,
                (false, true) => 12.0,
                (false, false) => 6.0,
            };
            Word::TailSeen(seen, Some(Index::from_hour(hour)))
        }
    }
}

/// `10h2`, `10h2cm`, `10hs`, `10h`; or `0`, `0mm`: straight.
fn toward_hour(word: &str, text: &str) -> Read<Word> {
    let number = leading_number(text).map_err(Located::widened)?;
    let (written, rest) = text.split_at(number.end);
    if let Some(behind) = rest.strip_prefix('h') {
        let toward = hour(number.value, written)?;
        let amount = amount(word, behind).map_err(|fault| fault.shifted(number.end + 1))?;
        return Ok(toward_index(toward, &amount));
    }
    match amount(word, text)? {
        Amount::Degrees(0.0) => Ok(Word::Tail { x_deg: 0.0, y_deg: 0.0 }),
        Amount::Tape(0.0) => Ok(Word::TapeOff(Offset::ZERO)),
        _ => Err(Located::new(ShorthandFault::TailWithoutSide, 0..text.len())),
    }
}

fn toward_index(toward: Index, amount: &Amount) -> Word {
    let parts = |length| {
        let Offset { x_mm, y_mm } = Offset::toward(toward.angle(), Millimetres::new(length));
        (thousandths(x_mm), thousandths(y_mm))
    };
    match *amount {
        Amount::Degrees(deg) => {
            let (x_deg, y_deg) = parts(deg);
            Word::Tail { x_deg, y_deg }
        }
        Amount::Tape(mm) => {
            let (x_mm, y_mm) = parts(mm);
            Word::TapeOff(Offset::new(x_mm, y_mm))
        }
        Amount::Seen(seen) => Word::TailSeen(seen, Some(toward)),
    }
}
