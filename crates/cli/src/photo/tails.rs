//! How arrows lean, by the pixels of their tails.

use quarterturn_entry::pixels::{TypedHole, TypedTail};
use quarterturn_geometry::{
    Angle, Camera, Lean, Millimetres, Pixel, SeenLean, SeenShaft, TailError,
};
use quarterturn_journal::protruding;

use super::PhotoView;
use super::hit::rounded;

/// The middle of a shaft is told to this at either end; common practice.
const ENDS_SD: Millimetres = Millimetres::new(1.0);
/// Nothing is read finer.
const FINEST_DEG: f64 = 0.01;

/// A tail in the picture, and how its arrow leans.
pub struct Tail {
    /// Where the end of the nock is.
    pub pixel: Pixel,
    /// The lean beside the reference.
    pub lean: Lean,
    /// How well it is known beside the others, a standard deviation along each axis.
    pub lean_sd: Angle,
    /// How far the arrow sticks out, where that was said.
    pub protruding: Option<Millimetres>,
}

/// Why tails tell of no lean.
pub enum NoLean {
    /// The first tail is given, but that of no reference is.
    NoReference {
        /// The number of that hole.
        hole: usize,
    },
    /// The tail of this hole cannot be.
    Tail {
        /// The number of the hole.
        hole: usize,
        /// Why.
        error: TailError,
    },
}

/// How each arrow leans whose tail is given, beside the first that `is_reference`: how the face is tilted is known less well
/// by far, and only leans beside each other are used.
pub fn tails(
    photo: &PhotoView,
    camera: &Camera,
    holes: &[TypedHole],
    is_reference: impl Fn(&str) -> bool,
) -> Result<Vec<Option<Tail>>, NoLean> {
    let given: Vec<(usize, &TypedHole, &TypedTail)> = holes
        .iter()
        .enumerate()
        .filter_map(|(n, hole)| Some((n, hole, hole.tail.as_ref()?)))
        .collect();
    let seen = given.iter().map(|&(hole, typed, tail)| {
        let shaft = shaft(photo, typed, tail);
        camera.lean(&shaft).map_err(|error| NoLean::Tail { hole, error })
    });
    let seen: Vec<SeenLean> = seen.collect::<Result<_, _>>()?;
    let reference =
        given.iter().zip(&seen).find(|((_, typed, _), _)| is_reference(&typed.shot.shaft));
    let (first, reference) =
        (given.first().map_or(0, |first| first.0), reference.map(|found| found.1.lean));
    let reference = reference.ok_or(NoLean::NoReference { hole: first })?;
    let mut tails: Vec<Option<Tail>> = holes.iter().map(|_| None).collect();
    for ((&(hole, _, typed), seen), spread) in given.iter().zip(&seen).zip(SeenLean::spreads(&seen))
    {
        let lean = seen.lean.relative_to(reference);
        let hundredths = |angle: Angle| rounded(angle.degrees(), 100.0);
        let lean = Lean::from_degrees(hundredths(lean.x), hundredths(lean.y));
        let lean_sd = Angle::from_degrees(hundredths(spread).max(FINEST_DEG));
        let protruding = typed.protruding_mm.map(Millimetres::new);
        tails[hole] = Some(Tail { pixel: typed.pixel, lean, lean_sd, protruding });
    }
    Ok(tails)
}

fn shaft(photo: &PhotoView, hole: &TypedHole, tail: &TypedTail) -> SeenShaft {
    let [length, length_sd] = protruding(tail.protruding_mm);
    let read_sd_px = photo.reading.px();
    SeenShaft {
        hole: hole.pixel,
        tail: tail.pixel,
        read_sd_px,
        ends_sd: ENDS_SD,
        length,
        length_sd,
    }
}
