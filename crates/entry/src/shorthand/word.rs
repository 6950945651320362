//! One word of the shorthand.

use quarterturn_geometry::{Index, Millimetres, Offset};
use quarterturn_journal::TailSeen;
use quarterturn_tuning::{Call, Flag};

use super::ShorthandFault;
use super::tail::tail;
use crate::Located;
use crate::quantity::{self, Dimension, Unit, leading_number};

/// What a word says of a shot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Word {
    /// `0`: it hit the spot.
    Spot,
    /// `r31`, `l4`: how far to the right it hit, mm.
    HitRight(f64),
    /// `u8`, `d12`: how far up it hit, mm.
    HitUp(f64),
    /// `2h8`: how far out it hit and toward where.
    HitOut { mm: f64, toward: Index },
    /// `t0`, `t10h2`: how the tail leans.
    Tail { x_deg: f64, y_deg: f64 },
    /// `tr1`, `tl2.5`: how far to the right the tail leans, degrees.
    TailRight(f64),
    /// `tu1`, `td2`: how far up the tail leans, degrees.
    TailUp(f64),
    /// `t0mm`, `t10h2cm`: how far off the tail stands, by tape.
    TapeOff(Offset),
    /// `tr1cm`: how far to the right the tail stands, mm.
    TapeRight(f64),
    /// `tu1cm`: how far up the tail stands, mm.
    TapeUp(f64),
    /// `tn`, `tl`, `tls`, `tlm`: what an eye says of the tail, and toward where.
    TailSeen(TailSeen, Option<Index>),
    /// `s62cm`: how far the arrow protrudes, mm.
    Protruding(f64),
    /// `i4`, `i120deg`: where the mark stood.
    Mark(Index),
    /// `g`, `p`: what was called.
    Called(Call),
    /// `w`, `k`, `n`, `q`, `x`, `b`: what else was noticed.
    Noticed(Flag),
}

/// A kilometre in millimetres: what is more was meant otherwise, and has more digits than are printed again.
const FARTHEST: f64 = 1e6;

pub(super) type Read<T> = Result<T, Located<ShorthandFault>>;

impl Word {
    /// Reads one word in small letters; lengths without a unit are in `unit`.
    pub fn parse(word: &str, unit: &'static Unit) -> Read<Self> {
        if let Some(letter) = Self::of_letter(word) {
            return Ok(letter);
        }
        if let Some(full) = ShorthandFault::full_word(word) {
            return Err(Located::new(full, 0..word.len()));
        }
        let unknown = || Located::new(ShorthandFault::unknown_word(word), 0..word.len());
        let mut rest = word.chars();
        let shift = |fault: Located<_>| fault.shifted(1);
        match rest.next() {
            _ if word == "0" => Ok(Self::Spot),
            Some(side @ ('r' | 'l' | 'u' | 'd')) => hit_toward(side, rest.as_str(), unit),
            Some('t') => tail(word, rest.as_str()).map_err(shift),
            Some('s') => {
                length(rest.as_str(), unit).map(|l| Self::Protruding(l.mm())).map_err(shift)
            }
            Some('i') => mark_at(rest.as_str()).map(Self::Mark).map_err(shift),
            Some('0'..='9') => toward_hour(word, unit)?.ok_or_else(unknown),
            _ => Err(unknown()),
        }
    }

    /// The members of a shot's JSON that the word gives, or that follow from it.
    pub const fn members(self) -> &'static [&'static str] {
        match self {
            Self::Spot => &["x_mm", "y_mm"],
            Self::HitRight(_) => &["x_mm"],
            Self::HitUp(_) => &["y_mm"],
            Self::HitOut { .. } => &["x_mm", "y_mm", "out_mm", "toward_deg"],
            Self::Tail { .. } => &["lean_x_deg", "lean_y_deg"],
            Self::TailRight(_) => &["lean_x_deg"],
            Self::TailUp(_) => &["lean_y_deg"],
            Self::TapeOff(_) => &["lean_x_deg", "lean_y_deg", "tail_x_mm", "tail_y_mm"],
            Self::TapeRight(_) => &["lean_x_deg", "tail_x_mm"],
            Self::TapeUp(_) => &["lean_y_deg", "tail_y_mm"],
            Self::TailSeen(..) => &["lean_x_deg", "lean_y_deg", "tail_seen", "tail_toward_deg"],
            Self::Protruding(_) => &["protruding_mm"],
            Self::Mark(_) => &["index_deg"],
            Self::Called(_) => &["call"],
            Self::Noticed(_) => &["flags"],
        }
    }

    fn of_letter(word: &str) -> Option<Self> {
        Some(match word {
            "g" => Self::Called(Call::Good),
            "p" => Self::Called(Call::Poor),
            "w" => Self::Noticed(Flag::Wind),
            "k" => Self::Noticed(Flag::Contact),
            "n" => Self::Noticed(Flag::NockMoved),
            "q" => Self::Noticed(Flag::Doubtful),
            "x" => Self::Noticed(Flag::Lost),
            "b" => Self::Noticed(Flag::Broken),
            _ => return None,
        })
    }
}

/// `r31`: the side and the length behind it.
fn hit_toward(side: char, amount: &str, unit: &'static Unit) -> Read<Word> {
    let mm = length(amount, unit).map_err(|fault| fault.shifted(side.len_utf8()))?.mm();
    Ok(match side {
        'r' => Word::HitRight(mm),
        'l' => Word::HitRight(0.0 - mm),
        'u' => Word::HitUp(mm),
        _ => Word::HitUp(0.0 - mm),
    })
}

/// `4`, `4.5` or `120deg`.
fn mark_at(text: &str) -> Read<Index> {
    let number = leading_number(text).map_err(Located::widened)?;
    let (written, symbol) = text.split_at(number.end);
    if symbol.is_empty() {
        return hour(number.value, written);
    }
    match Unit::named(symbol, Dimension::Angle) {
        Ok(_) if number.value.abs() > 360.0 => {
            Err(Located::new(ShorthandFault::MoreThanATurn, 0..number.end))
        }
        Ok(_) => Ok(Index::from_degrees(thousandths(number.value))),
        Err(fault) => Err(Located::new(fault.into(), number.end..text.len())),
    }
}

/// `2h8`, `2.5h3in`: the hour and the length behind it; nothing where no `h` follows the number.
fn toward_hour(word: &str, unit: &'static Unit) -> Read<Option<Word>> {
    let number = leading_number(word).map_err(Located::widened)?;
    let (written, rest) = word.split_at(number.end);
    let Some(amount) = rest.strip_prefix('h') else { return Ok(None) };
    let toward = hour(number.value, written)?;
    let mm = length(amount, unit).map_err(|fault| fault.shifted(number.end + 1))?.mm();
    Ok(Some(Word::HitOut { mm, toward }))
}

/// An hour as it was written.
pub(super) fn hour(value: f64, written: &str) -> Read<Index> {
    if (1.0..13.0).contains(&value) {
        let deg = Index::from_hour(value).degrees();
        Ok(Index::from_degrees(thousandths(deg)))
    } else {
        Err(Located::new(ShorthandFault::NoSuchHour, 0..written.len()))
    }
}

/// A length that has no sign, to a thousandth of a millimetre: no tape reads finer, and as such it is printed.
fn length(amount: &str, unit: &'static Unit) -> Read<Millimetres> {
    let length = quantity::length(amount, Some(unit)).map_err(Located::widened)?;
    not_negative(length.mm(), amount).map(thousandths).map(Millimetres::new)
}

pub(super) fn not_negative(value: f64, written: &str) -> Read<f64> {
    if value < 0.0 {
        Err(Located::new(ShorthandFault::Negative, 0..written.len()))
    } else if value > FARTHEST {
        Err(Located::new(ShorthandFault::TooFar, 0..written.len()))
    } else {
        Ok(value)
    }
}

pub(super) fn thousandths(value: f64) -> f64 {
    (value * 1000.0).round() / 1000.0 + 0.0
}
