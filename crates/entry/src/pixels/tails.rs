//! The pixels of tails, `t1130,702`, among the words behind a hole.

use std::mem;
use std::ops::Range;

use super::typed_holes::{TypedHole, TypedTail};
use super::{PixelFault, Read, pieces, pixel};
use crate::Located;
use crate::shorthand::{ShorthandFault, share_protruding_length};

/// Takes the pixel of the tail out of these bytes of a text, and leaves blanks in its place.
pub(super) fn take(text: &mut String, bytes: Range<usize>) -> Read<Option<TypedTail>> {
    let from = bytes.start;
    let behind = text.get(bytes).unwrap_or_default();
    let is_tail = |(_, piece): &(usize, &str)| is_tail(piece);
    let spans: Vec<_> = pieces(behind)
        .filter(is_tail)
        .map(|(at, piece)| from + at..from + at + piece.len())
        .collect();
    if let [_, again, ..] = &spans[..] {
        return Err(Located::new(ShorthandFault::SaidTwice.into(), again.clone()));
    }
    let Some(span) = spans.into_iter().next() else { return Ok(None) };
    let shown = span.start + 1..span.end;
    let pixel = pixel(text.get(shown.clone()).unwrap_or_default())
        .map_err(|fault| fault.shifted(shown.start))?;
    text.replace_range(span.clone(), &" ".repeat(span.len()));
    Ok(Some(TypedTail { pixel, span, protruding_mm: None }))
}

/// `t` and two numbers, or what begins so.
fn is_tail(piece: &str) -> bool {
    let shown = piece.strip_prefix(['t', 'T']);
    shown.is_some_and(|shown| shown.contains(',') && !shown.starts_with(','))
}

/// Tails are read one way, and what sticks out was said of all.
pub(super) fn settle(holes: &mut [TypedHole]) -> Read<()> {
    if holes.iter().all(|hole| hole.tail.is_none()) {
        let mut shots: Vec<_> = holes.iter_mut().map(|hole| mem::take(&mut hole.shot)).collect();
        share_protruding_length(&mut shots);
        holes.iter_mut().zip(shots).for_each(|(hole, shot)| hole.shot = shot);
        return Ok(());
    }
    if let Some(span) = holes.iter().find_map(|hole| hole.words.tail()) {
        return Err(Located::new(PixelFault::TailsReadTwoWays, span));
    }
    let said_mm = holes.iter().find_map(|hole| hole.shot.protruding_mm);
    for hole in holes {
        let own_mm = hole.shot.protruding_mm.take();
        if let Some(tail) = &mut hole.tail {
            tail.protruding_mm = own_mm.or(said_mm);
        }
    }
    Ok(())
}
