//! A number in a cell.

use super::TableFault;
use super::delimiter::Delimiter;

/// More digits were never measured, and a double keeps no more.
const MOST_DIGITS: usize = 20;

/// The number of a cell, which stands alone in it: its unit is in the name of the column.
///
/// A comma is a decimal one where it parts no columns and no thousands: `18,5` and `0,125`, not `1,234`.
pub(super) fn number(text: &str, delimiter: Delimiter) -> Result<f64, TableFault> {
    let text = text.trim();
    let with_point = point(text, delimiter)?;
    let plain = |c: char| c.is_ascii_digit() || matches!(c, '.' | '-' | '+' | 'e' | 'E');
    if with_point.ends_with(|c: char| c.is_alphabetic() || matches!(c, '"' | '\'' | '°'))
        && with_point.starts_with(|c: char| c.is_ascii_digit() || matches!(c, '-' | '+' | '.'))
    {
        return Err(TableFault::UnitInCell);
    }
    if !with_point.chars().all(plain) || !with_point.contains(|c: char| c.is_ascii_digit()) {
        return Err(TableFault::NotANumber);
    }
    let mantissa = with_point.split(['e', 'E']).next().unwrap_or_default();
    let digits = mantissa.trim_start_matches(['-', '+', '0', '.']);
    if digits.chars().filter(char::is_ascii_digit).count() > MOST_DIGITS {
        return Err(TableFault::TooManyDigits);
    }
    match with_point.parse::<f64>() {
        Ok(value) if value.is_finite() => Ok(value),
        Ok(_) => Err(TableFault::TooLarge),
        Err(_) => Err(TableFault::NotANumber),
    }
}

/// The text with a point for its decimal comma.
fn point(text: &str, delimiter: Delimiter) -> Result<String, TableFault> {
    let Some((whole, part)) = text.split_once(',') else { return Ok(text.to_owned()) };
    let digits = whole.trim_start_matches(['-', '+']);
    let is_decimal = !whole.contains('.')
        && !part.contains([',', '.'])
        && part.starts_with(|c: char| c.is_ascii_digit());
    let thousands = part.len() == 3 && !digits.trim_start_matches('0').is_empty();
    if is_decimal && !thousands && delimiter.leaves_commas() {
        Ok(format!("{whole}.{part}"))
    } else {
        Err(TableFault::DoubtfulComma)
    }
}
