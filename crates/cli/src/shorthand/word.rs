//! One word of the shorthand.

use quarterturn_geometry::{Index, Millimetres, Offset};
use quarterturn_tuning::{Call, Flag};

use super::ShorthandFault;
use crate::located::Located;
use crate::quantity::{self, Dimension, Unit, leading_number};

/// What a word says of a shot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Word {
    /// `0`, `2h8`: where it hit.
    Hit(Offset),
    /// `r31`, `l4`: how far to the right it hit, mm.
    HitRight(f64),
    /// `u8`, `d12`: how far up it hit, mm.
    HitUp(f64),
    /// `t0`: the tail points straight.
    TailStraight,
    /// `tr1`, `tl2.5`: how far to the right the tail leans, degrees.
    TailRight(f64),
    /// `tu1`, `td2`: how far up the tail leans, degrees.
    TailUp(f64),
    /// `i4`, `i120deg`: where the mark stood.
    Mark(Index),
    /// `g`, `p`: what was called.
    Called(Call),
    /// `w`, `k`, `n`, `q`, `x`, `b`: what else was noticed.
    Noticed(Flag),
}

type Read<T> = Result<T, Located<ShorthandFault>>;

impl Word {
    /// Reads one word in small letters; lengths without a unit are in `unit`.
    pub fn parse(word: &str, unit: &'static Unit) -> Read<Self> {
        if let Some(letter) = Self::of_letter(word) {
            return Ok(letter);
        }
        let unknown = || Located::new(ShorthandFault::unknown_word(word), 0..word.len());
        let mut rest = word.chars();
        match rest.next() {
            _ if word == "0" => Ok(Self::Hit(Offset::ZERO)),
            _ if word == "t0" => Ok(Self::TailStraight),
            Some(side @ ('r' | 'l' | 'u' | 'd')) => hit_toward(side, rest.as_str(), unit),
            Some('t') => tail_toward(word, rest.as_str()),
            Some('i') => mark_at(rest.as_str()).map(Self::Mark).map_err(|fault| fault.shifted(1)),
            Some('0'..='9') => toward_hour(word, unit)?.map(Self::Hit).ok_or_else(unknown),
            _ => Err(unknown()),
        }
    }

    /// The members of a shot's JSON that the word gives.
    pub const fn members(self) -> &'static [&'static str] {
        match self {
            Self::Hit(_) => &["x_mm", "y_mm"],
            Self::HitRight(_) => &["x_mm"],
            Self::HitUp(_) => &["y_mm"],
            Self::TailStraight => &["lean_x_deg", "lean_y_deg"],
            Self::TailRight(_) => &["lean_x_deg"],
            Self::TailUp(_) => &["lean_y_deg"],
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
    let length = length(amount, unit).map_err(|fault| fault.shifted(side.len_utf8()))?;
    Ok(match side {
        'r' => Word::HitRight(length.mm()),
        'l' => Word::HitRight(-length.mm()),
        'u' => Word::HitUp(length.mm()),
        _ => Word::HitUp(-length.mm()),
    })
}

/// `tl2.5`: the side and the degrees behind it; `tail` is the word without its `t`.
fn tail_toward(word: &str, tail: &str) -> Read<Word> {
    let mut rest = tail.chars();
    let side = rest.next();
    let amount = rest.as_str();
    let fault = match side {
        Some('r' | 'l' | 'u' | 'd') if amount.is_empty() => ShorthandFault::TailWithoutDegrees,
        Some('r' | 'l' | 'u' | 'd') => return tail_by(side, amount),
        Some('0'..='9') => ShorthandFault::TailByClock,
        _ => ShorthandFault::unknown_word(word),
    };
    Err(Located::new(fault, 0..word.len()))
}

fn tail_by(side: Option<char>, amount: &str) -> Read<Word> {
    let deg = quantity::angle_deg(amount)
        .map_err(Located::widened)
        .and_then(|deg| not_negative(deg, amount));
    let deg = deg.map_err(|fault| fault.shifted("tl".len()))?;
    Ok(match side {
        Some('r') => Word::TailRight(deg),
        Some('l') => Word::TailRight(-deg),
        Some('u') => Word::TailUp(deg),
        _ => Word::TailUp(-deg),
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
        Ok(_) => Ok(Index::from_degrees(number.value)),
        Err(fault) => Err(Located::new(fault.into(), number.end..text.len())),
    }
}

/// `2h8`, `2.5h3in`: the hour and the length behind it; nothing where no `h` follows the number.
fn toward_hour(word: &str, unit: &'static Unit) -> Read<Option<Offset>> {
    let number = leading_number(word).map_err(Located::widened)?;
    let (written, rest) = word.split_at(number.end);
    let Some(amount) = rest.strip_prefix('h') else { return Ok(None) };
    let direction = hour(number.value, written)?;
    let length = length(amount, unit).map_err(|fault| fault.shifted(number.end + 1))?;
    let Offset { x_mm, y_mm } = Offset::toward(direction.angle(), length);
    // Sine and cosine leave specks; no tape reads a thousandth of a millimetre.
    Ok(Some(Offset::new(thousandths(x_mm), thousandths(y_mm))))
}

fn hour(value: f64, written: &str) -> Read<Index> {
    if (1.0..13.0).contains(&value) {
        Ok(Index::from_hour(value))
    } else {
        Err(Located::new(ShorthandFault::NoSuchHour, 0..written.len()))
    }
}

fn length(amount: &str, unit: &'static Unit) -> Read<Millimetres> {
    let length = quantity::length(amount, Some(unit)).map_err(Located::widened)?;
    not_negative(length.mm(), amount).map(Millimetres::new)
}

fn not_negative(value: f64, written: &str) -> Read<f64> {
    if value < 0.0 {
        Err(Located::new(ShorthandFault::Negative, 0..written.len()))
    } else {
        Ok(value)
    }
}

fn thousandths(value: f64) -> f64 {
    (value * 1000.0).round() / 1000.0 + 0.0
}
