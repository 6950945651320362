//! The short line in which an end is typed: `R 0, 7 i3 r31 u8 tl2.5, 9 2h8 p`; its grammar is docs/entry.md.

mod fault;
mod glued;
mod group;
mod printed;
mod tail;
mod typed_end;
mod typed_words;
mod word;

use std::ops::Range;

use crate::Located;
use crate::quantity::Unit;

pub use fault::ShorthandFault;
use glued::words;
use group::Group;
pub use printed::{mark, printed};
pub use typed_end::TypedEnd;
pub use typed_words::TypedWords;

/// Reads an end; lengths without a unit are in `unit`.
///
/// # Errors
/// The first word that cannot be read, and where it stands in `line`.
pub fn parse(line: &str, unit: &'static Unit) -> Result<TypedEnd, Located<ShorthandFault>> {
    no_decimal_comma(line)?;
    let mut end = TypedEnd::new(line);
    for text in line.split([',', '\n']) {
        if let Some(group) = Group::parse(line, text, unit)? {
            end.push(group);
        }
    }
    if end.entry.shots.is_empty() {
        return Err(Located::new(ShorthandFault::Nothing, 0..line.len()));
    }
    end.share_protruding_length();
    Ok(end)
}

/// A comma between two digits may part arrows or be a decimal: it is not guessed.
fn no_decimal_comma(line: &str) -> Result<(), Located<ShorthandFault>> {
    let is_digit = |c: char| c.is_ascii_digit();
    let doubtful = line.match_indices(',').find(|(at, _)| {
        let (before, after) = line.split_at(*at);
        let piece = before.rsplit([' ', '\t', '\n', ',']).next().unwrap_or_default();
        let word = words(piece).last().unwrap_or_default();
        let after = after.trim_start_matches(',');
        // After these nothing but a new arrow can follow: a spot, a straight tail, a number with its point.
        let settled = matches!(word, "0" | "t0") || word.contains('.');
        !settled && word.ends_with(is_digit) && after.starts_with(is_digit)
    });
    match doubtful {
        Some((at, comma)) => Err(Located::new(ShorthandFault::DecimalComma, at..at + comma.len())),
        None => Ok(()),
    }
}

/// The bytes of `line` at which `piece`, which is borrowed from it, stands.
fn span_in(line: &str, piece: &str) -> Range<usize> {
    let start = piece.as_ptr().addr() - line.as_ptr().addr();
    start..start + piece.len()
}

#[cfg(test)]
mod tests;
