//! The short line in which an end is typed: `R 0, 7 i3 r31 u8 tl2.5, 9 2h8 p`; its grammar is docs/entry.md.

mod fault;
mod glued;
mod group;
mod printed;
mod protruding;
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
pub use protruding::share_protruding_length;
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
    share_protruding_length(&mut end.entry.shots);
    match end.protruding_alone() {
        Some(span) => Err(Located::new(ShorthandFault::ProtrudingAlone, span)),
        None => Ok(end),
    }
}

/// Reads what is said anew of some arrows of an end: for each the bytes of its name, and the words behind it.
///
/// # Errors
/// As [`parse`]; an arrow of which nothing is said.
pub fn amendments(
    line: &str,
    unit: &'static Unit,
) -> Result<Vec<(Range<usize>, TypedWords)>, Located<ShorthandFault>> {
    no_decimal_comma(line)?;
    let mut amendments: Vec<(Range<usize>, TypedWords)> = Vec::new();
    for text in line.split([',', '\n']) {
        let Some(name) = text.split_whitespace().next() else { continue };
        let (named, end) = (span_in(line, name), span_in(line, text).end);
        let words = TypedWords::between(line, named.end..end, unit)?;
        if words.is_empty() {
            let fault = ShorthandFault::NothingSaid { shaft: name.to_owned() };
            return Err(Located::new(fault, named));
        }
        if amendments.iter().any(|(earlier, _)| line.get(earlier.clone()) == Some(name)) {
            return Err(Located::new(ShorthandFault::SaidTwice, named));
        }
        amendments.push((named, words));
    }
    if amendments.is_empty() {
        return Err(Located::new(ShorthandFault::Nothing, 0..line.len()));
    }
    Ok(amendments)
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
