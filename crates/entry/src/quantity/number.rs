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
///
/// # Errors
/// What stands there instead of a number, and where.
pub fn leading_number(text: &str) -> Result<LeadingNumber, Located<QuantityFault>> {
    let trimmed = text.trim_start();
    let start = text.len() - trimmed.len();
    let unsigned = trimmed.strip_prefix(['+', '-']).unwrap_or(trimmed);
    let end = text.len() - unsigned.len() + number_length(unsigned);
    let (written, rest) = text.split_at(end);
    let written = written.trim_start();
    let found = |fault, span| Err(Located::new(fault, span));
    let after_comma =
        rest.strip_prefix(',').is_some_and(|rest| rest.starts_with(|c: char| c.is_ascii_digit()));
    if written.trim_start_matches(['+', '-']).is_empty() && after_comma {
        return found(QuantityFault::decimal_comma(text.trim()), end..end + 1);
    }
    if !written.contains(|c: char| c.is_ascii_digit()) {
        return found(QuantityFault::NotANumber, start..text.trim_end().len().max(start));
    }
    match rest.chars().next() {
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
    let after_digits = |from: &str| from.trim_start_matches(|c: char| c.is_ascii_digit()).len();
    let rest = text.trim_start_matches(|c: char| c.is_ascii_digit());
    let left = rest.strip_prefix('.').map_or(rest.len(), after_digits);
    text.len() - left
}
