//! The camera that took the photo, by what is known of its lens.

use quarterturn_entry::pixels;
use quarterturn_entry::quantity::{self, Unit};
use quarterturn_geometry::{Camera, Lens, Millimetres, Pixel};

use super::PhotoView;
use super::view::unusable;
use crate::args::PhotoArgs;
use crate::failure::{Failure, Kind};

/// What telephones and cameras have, zoomed or not, in the terms of 35 mm film, and the spread of its logarithm: two of three
/// pictures are taken with 27 to 91 mm, nearly all with 15 to 166; common practice.
const USUAL_MM: f64 = 50.0;
const USUAL_SPREAD: f64 = 0.6;
/// What is said of a lens holds to this: it is rounded, and changes as it is focused near by; common practice.
const SAID_SPREAD: f64 = 0.05;
/// Beyond these nothing takes pictures of a face.
const LENSES_MM: std::ops::RangeInclusive<f64> = 5.0..=1000.0;
/// No picture has more pixels along a side.
const LONGEST_PX: f64 = 100_000.0;
/// Standard deviations: marks that go less well with a lens have another, or the picture was cut.
const WORST_MISFIT: f64 = 4.0;
/// The spread with which the marks are asked what they tell by themselves: nearly any lens.
const FREE_SPREAD: f64 = 2.0;
/// Standard deviations that a lens may be off that, and from how many on it is said.
const WORST_OFF: f64 = 3.0;
const DOUBTFUL_OFF: f64 = 1.5;

/// The camera, and how its lens is known.
pub struct PhotoCamera {
    /// The camera.
    pub camera: Camera,
    /// How its lens is known.
    pub lens: KnownLens,
}

/// How a lens is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum KnownLens {
    /// It was said.
    Said {
        /// What the marks tell rather, where that is doubtfully far off.
        rather: Option<Millimetres>,
    },
    /// By the marks, and by what lenses there are.
    ByMarks,
}

impl PhotoCamera {
    /// The camera that sees the marks in a picture of this size; where there is no picture it must have been said.
    pub fn of(
        args: &PhotoArgs,
        photo: &PhotoView,
        size: Option<[u32; 2]>,
    ) -> Result<Self, Failure> {
        let size = match (size, &args.size) {
            (Some(size), _) => size,
            (None, Some(text)) => said_size(text)?,
            (None, None) => return Err(unknown_size()),
        };
        let Some(text) = &args.lens else {
            let usual = camera(photo, Millimetres::new(USUAL_MM), USUAL_SPREAD, size);
            let camera = usual.ok_or_else(no_usual_lens)?;
            return Ok(Self { camera, lens: KnownLens::ByMarks });
        };
        let said = said_lens(text)?;
        let free = camera(photo, said, FREE_SPREAD, size);
        let off = free.as_ref().map_or(0.0, |free| off(free, said));
        let told = free.map(|free| free.focal());
        let another = told.filter(|_| off > WORST_OFF);
        let camera = camera(photo, said, SAID_SPREAD, size).filter(|_| another.is_none());
        let camera = camera.ok_or_else(|| another_lens(another))?;
        Ok(Self { camera, lens: KnownLens::Said { rather: told.filter(|_| off > DOUBTFUL_OFF) } })
    }
}

/// The camera that goes with the marks and with what is known of its lens.
fn camera(photo: &PhotoView, focal: Millimetres, spread: f64, size: [u32; 2]) -> Option<Camera> {
    let lens = Lens::of_film(focal, spread, size);
    let camera = Camera::of_marks(&photo.marks, &photo.view, &lens, photo.reading.px());
    camera.filter(|camera| camera.misfit() <= WORST_MISFIT)
}

/// How far what the marks tell of a lens is off what was said, in standard deviations.
fn off(free: &Camera, said: Millimetres) -> f64 {
    let off = (said.mm() / free.focal().mm()).ln();
    off.abs() / free.focal_spread().hypot(SAID_SPREAD)
}

fn said_lens(text: &str) -> Result<Millimetres, Failure> {
    let lens = quantity::length(text, Some(Unit::MILLIMETRE))
        .map_err(|fault| Failure::in_option("--lens", text, &fault))?;
    let (least, most) = (LENSES_MM.start(), LENSES_MM.end());
    let label = format!("{least} to {most} mm are possible");
    if LENSES_MM.contains(&lens.mm()) { Ok(lens) } else { Err(unusable("--lens", text, &label)) }
}

fn said_size(text: &str) -> Result<[u32; 2], Failure> {
    let Pixel { x_px, y_px } =
        pixels::pixel(text).map_err(|fault| Failure::in_option("--size", text, &fault))?;
    let is_side = |side: f64| (1.0..=LONGEST_PX).contains(&side) && side.fract() == 0.0;
    let label = format!("whole pixels across and down, 1 to {LONGEST_PX}, are expected");
    if !(is_side(x_px) && is_side(y_px)) {
        return Err(unusable("--size", text, &label));
    }
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "checked above")]
    Ok([x_px as u32, y_px as u32])
}

fn unknown_size() -> Failure {
    Failure::new(Kind::Usage, "a tail is read only in a picture whose size is known").hinting([
        "name the photo behind the journal",
        "or say how many pixels it has across and down: --size 4000,3000",
    ])
}

const AT_THE_BUTT: &str = "or take the pixels of tails out, and say what was read at the butt";

fn no_usual_lens() -> Failure {
    let what = "the marks go with no usual lens before a whole picture, and so no lean is read";
    let hint = "was it cut, or does its lens bend straight lines? read the marks again, or take the picture as the telephone made it";
    Failure::new(Kind::Data, what).hinting([hint, AT_THE_BUTT])
}

/// The marks do not go with the lens that was said, and perhaps tell of another.
fn another_lens(told: Option<Millimetres>) -> Failure {
    let another = told.map_or_else(String::new, |told| {
        format!(": by them it is one of about {:.0} mm", told.mm())
    });
    let what = format!("the marks do not go with this lens before a whole picture{another}");
    let hint = "leave --lens out if you zoomed or the picture was cut";
    Failure::new(Kind::Data, what).hinting([hint, AT_THE_BUTT])
}
