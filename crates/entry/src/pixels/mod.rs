//! Pixels of a photo as people type them: `1204,833`; marks, `-83,83=412,388`; holes, with tails, `7=1204,833 t1130,702 i3 p`.

mod fault;
mod tails;
mod typed_holes;

use quarterturn_geometry::{Mark, Millimetres, Pixel, Point};

use crate::Located;
use crate::quantity::{self, Unit};
use crate::shorthand::TypedWords;

pub use fault::PixelFault;
pub use typed_holes::{TypedHole, TypedHoles, TypedTail};

type Read<T> = Result<T, Located<PixelFault>>;

/// A pixel: `1204,833` is 1204 to the right and 833 down.
///
/// # Errors
/// What cannot be read, and where.
pub fn pixel(text: &str) -> Read<Pixel> {
    let fault = || Located::new(PixelFault::NoPair, 0..text.len());
    let (right, down) = text.split_once(',').ok_or_else(fault)?;
    let number = |piece: &str, at: usize| {
        let value = piece.parse().ok().filter(|value: &f64| value.is_finite());
        value.ok_or_else(|| Located::new(PixelFault::NoNumber, at..at + piece.len()))
    };
    Ok(Pixel::new(number(right, 0)?, number(down, right.len() + 1)?))
}

/// Four pixels with blanks between them.
///
/// # Errors
/// The first that cannot be read, and where; another number of them.
pub fn four_pixels(text: &str) -> Read<[Pixel; 4]> {
    let read = |(at, piece): (usize, &str)| pixel(piece).map_err(|fault| fault.shifted(at));
    let pixels: Vec<Pixel> = pieces(text).map(read).collect::<Result<_, _>>()?;
    let count = pixels.len();
    let fault = |_| Located::new(PixelFault::NotFour { count }, 0..text.len());
    pixels.try_into().map_err(fault)
}

/// A mark: where it is on the face, right and up, without a unit in `unit`, and its pixel.
///
/// # Errors
/// What cannot be read, and where.
pub fn mark(text: &str, unit: &'static Unit) -> Read<Mark> {
    let fault = || Located::new(PixelFault::NoMark, 0..text.len());
    let (place, shown) = text.split_once('=').ok_or_else(fault)?;
    let (right, up) = place.split_once(',').ok_or_else(fault)?;
    let length = |piece: &str, at: usize| {
        let length = quantity::length(piece, Some(unit)).map(Millimetres::mm);
        length.map_err(|fault| fault.widened().shifted(at))
    };
    let point = Point::new(length(right, 0)?, length(up, right.len() + 1)?);
    let pixel = pixel(shown).map_err(|fault| fault.shifted(place.len() + 1))?;
    Ok(Mark { pixel, point })
}

/// Holes, one a line: the arrow, = and its pixel, and words of the shorthand but for the hit, or the pixel of its tail behind
/// a `t`; lengths without a unit are in `unit`.
///
/// # Errors
/// The first that cannot be read, and where; no hole; tails of which some are pixels and others not.
pub fn holes(text: &str, unit: &'static Unit) -> Read<TypedHoles> {
    let mut holes = Vec::new();
    let mut begins = 0;
    // The words of which tails are taken out.
    let mut words = text.to_owned();
    for line in text.split_inclusive('\n') {
        if let Some((at, head)) = pieces(line).next() {
            holes.push(hole(&mut words, begins + at, head, begins + line.len(), unit)?);
        }
        begins += line.len();
    }
    if holes.is_empty() {
        return Err(Located::new(PixelFault::Nothing, 0..text.len()));
    }
    tails::settle(&mut holes)?;
    Ok(TypedHoles(holes))
}

/// The hole whose `head` is the first word of a line that ends at `end`.
fn hole(
    text: &mut String,
    at: usize,
    head: &str,
    end: usize,
    unit: &'static Unit,
) -> Read<TypedHole> {
    let fault = || Located::new(PixelFault::NoHole, at..at + head.len());
    // A name may hold any letter, a pixel no equals sign.
    let (name, shown) =
        head.rsplit_once('=').filter(|(name, _)| !name.is_empty()).ok_or_else(fault)?;
    let shown_at = at + name.len() + 1;
    let pixel = pixel(shown).map_err(|fault| fault.shifted(shown_at))?;
    let behind = at + head.len();
    let tail = tails::take(text, behind..end)?;
    let line = text.get(..end).unwrap_or_default();
    let words = TypedWords::parse(line, behind, unit).map_err(Located::widened)?;
    let said = words.said();
    if said.x_mm.is_some() || said.out_mm.is_some() {
        let rest = line.get(behind..).unwrap_or_default().trim_end();
        let start = behind + rest.len() - rest.trim_start().len();
        return Err(Located::new(PixelFault::HitSaid, start..behind + rest.len()));
    }
    let mut shot = said.clone();
    name.clone_into(&mut shot.shaft);
    let pixel_span = shown_at..behind;
    Ok(TypedHole { shot, pixel, pixel_span, tail, name: at..at + name.len(), words })
}

/// The words of a text, each with where it begins.
fn pieces(text: &str) -> impl Iterator<Item = (usize, &str)> {
    text.split_whitespace().map(|piece| (piece.as_ptr().addr() - text.as_ptr().addr(), piece))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Advising;

    #[test]
    fn holes_with_words_behind_them() {
        let text = "R=1804,1622.5\n\n 7=2010,1544 i3 tl2.5 p \na=b=3,-4";
        let TypedHoles(holes) = holes(text, Unit::MILLIMETRE).unwrap();
        let read: Vec<_> =
            holes.iter().map(|hole| (hole.shot.shaft.as_str(), hole.pixel)).collect();
        let expected = [("R", 1804.0, 1622.5), ("7", 2010.0, 1544.0), ("a=b", 3.0, -4.0)];
        assert_eq!(read, expected.map(|(name, x, y)| (name, Pixel::new(x, y))));
        let shot = &holes[1].shot;
        assert_eq!((shot.index_deg, shot.lean_x_deg), (Some(90.0), Some(-2.5)));
        assert_eq!(shot.call.as_deref(), Some("poor"));
        assert_eq!(text.get(holes[1].pixel_span.clone()), Some("2010,1544"));
    }

    #[test]
    fn tails_are_pixels_and_what_sticks_out_holds_for_all() {
        let text = "R=1,2 T30,40.5 s62cm g\n7=3,4 i3 t-5,6\n9=5,6 t7,8 s600";
        let TypedHoles(holes) = holes(text, Unit::MILLIMETRE).unwrap();
        let tails: Vec<_> = holes.iter().map(|hole| hole.tail.clone().unwrap()).collect();
        let read = |tail: &TypedTail| (tail.pixel, tail.protruding_mm);
        let expected = [(30.0, 40.5, 620.0), (-5.0, 6.0, 620.0), (7.0, 8.0, 600.0)];
        let expected = expected.map(|(x, y, mm)| (Pixel::new(x, y), Some(mm)));
        assert_eq!(tails.iter().map(read).collect::<Vec<_>>(), expected);
        assert!(holes.iter().all(|hole| hole.shot.protruding_mm.is_none()), "no tape was held");
        assert_eq!(holes[0].shot.call.as_deref(), Some("good"));
        assert_eq!(holes[1].shot.index_deg, Some(90.0));
        assert_eq!(text.get(tails[1].span.clone()), Some("t-5,6"));
    }

    /// As in a typed end.
    #[test]
    fn what_sticks_out_holds_for_all_tapes() {
        let text = "R=1,2 tl1cm s62cm\n7=3,4 tr2cm";
        let TypedHoles(holes) = holes(text, Unit::MILLIMETRE).unwrap();
        assert_eq!(holes[1].shot.protruding_mm, Some(620.0));
    }

    #[test]
    fn a_mark_has_its_place_and_its_pixel() {
        let read = mark("-8.3cm,83=412,388.5", Unit::MILLIMETRE).unwrap();
        assert_eq!(read.pixel, Pixel::new(412.0, 388.5));
        assert_eq!(read.point, Point::new(-83.0, 83.0));
        assert_eq!(four_pixels("1,2  3,4 5,6\t7,8").unwrap()[3], Pixel::new(7.0, 8.0));
    }

    #[test]
    fn faults_point_at_the_place() {
        let of_hole = |text| holes(text, Unit::MILLIMETRE).unwrap_err();
        let of_mark = |text| mark(text, Unit::MILLIMETRE).unwrap_err();
        for (located, text, wrong) in [
            (of_hole("R=1,2\n7 3,4"), "R=1,2\n7 3,4", "7"),
            (of_hole("R=1,2\n=3,4"), "R=1,2\n=3,4", "=3,4"),
            (of_hole("7=12x,4"), "7=12x,4", "12x"),
            (of_hole("7=12"), "7=12", "12"),
            (of_hole("7=1,inf"), "7=1,inf", "inf"),
            (of_hole("R=1,2\n7=3,4 z8"), "R=1,2\n7=3,4 z8", "z8"),
            (of_hole("7=3,4 p r31 \n"), "7=3,4 p r31 \n", "p r31"),
            (of_hole(" "), " ", " "),
            (of_hole("7=3,4 t5"), "7=3,4 t5", "5"),
            (of_hole("7=3,4 t5,x"), "7=3,4 t5,x", "x"),
            (of_hole("7=3,4 t5,6 i3 t7,8"), "7=3,4 t5,6 i3 t7,8", "t7,8"),
            (of_hole("7=3,4 t5,6 i3 tl2"), "7=3,4 t5,6 i3 tl2", "tl2"),
            (of_hole("R=1,2 t3,4\n7=3,4 p tu1cm"), "R=1,2 t3,4\n7=3,4 p tu1cm", "tu1cm"),
            (of_mark("3,4"), "3,4", "3,4"),
            (of_mark("3=4,5"), "3=4,5", "3=4,5"),
            (of_mark("3,4gr=4,5"), "3,4gr=4,5", "gr"),
            (of_mark("3,4=4,y"), "3,4=4,y", "y"),
            (four_pixels("1,2 3,x").unwrap_err(), "1,2 3,x", "x"),
            (four_pixels("1,2 3,4").unwrap_err(), "1,2 3,4", "1,2 3,4"),
        ] {
            assert_eq!(text.get(located.span.clone()), Some(wrong), "{text}: {located:?}");
            assert!(located.fault.way_on().is_some(), "{text}");
        }
    }

    proptest::proptest! {
        /// Whatever is typed is read or refused, and a fault stands in the text.
        #[test]
        fn whatever_is_typed_has_an_answer(text in "(7=1,2 ?)?([t T,.0-9xé=si\\-\n]|tl2|s6cm){0,24}") {
            if let Err(located) = holes(&text, Unit::MILLIMETRE) {
                proptest::prop_assert!(text.get(located.span.clone()).is_some(), "{text:?} {located:?}");
            }
        }
    }
}
