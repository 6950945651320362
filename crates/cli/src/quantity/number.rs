//! A plain decimal number at the beginning of a text.

use super::QuantityFault;
use crate::located::Located;

/// More digits than this were never measured.
const MOST_DIGITS: usize = 15;

/// A number read from the beginning of a text.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LeadingNumber {
    /// Its value, finite.
    pub value: f64,
    /// The byte after its last character.
    pub end: usize,
}

/// Reads `[+-]digits[.digits]` after leading blanks; no exponents, no names such as "infinity".
pub fn leading_number(text: &str) -> Result<LeadingNumber, Located<QuantityFault>> {
    let start = text.len() - text.trim_start().len();
    let sign = usize::from(text[start..].starts_with(['+', '-']));
    let digits = start + sign;
    let end = digits + number_length(&text[digits..]);
    let written = &text[start..end];
    let found = |fault, span| Err(Located::new(fault, span));
    if !written.contains(|c: char| c.is_ascii_digit()) {
        return found(QuantityFault::NotANumber, start..text.trim_end().len().max(start));
    }
    match text[end..].chars().next() {
        Some('.') => return found(QuantityFault::SecondPoint, end..end + 1),
        Some(',') => return found(QuantityFault::decimal_comma(text.trim()), end..end + 1),
        _ => {}
    }
    if written.chars().filter(char::is_ascii_digit).count() > MOST_DIGITS {
        return found(QuantityFault::TooManyDigits, start..end);
    }
    match written.parse::<f64>() {
        // Adding zero turns a minus zero into a plain one.
        Ok(value) => Ok(LeadingNumber { value: value + 0.0, end }),
        Err(_) => found(QuantityFault::NotANumber, start..end),
    }
}

/// The bytes of the digits, the point and the digits after it.
fn number_length(text: &str) -> usize {
    let digits = |from: &str| from.bytes().take_while(u8::is_ascii_digit).count();
    let whole = digits(text);
    match text[whole..].strip_prefix('.') {
        Some(fraction) => whole + 1 + digits(fraction),
        None => whole,
    }
}
