//! The view that marks give, found or pointed at.

use quarterturn_entry::pixels;
use quarterturn_entry::quantity::{self, Unit};
use quarterturn_geometry::{Homography, Mark, MarkError, Millimetres, Pixel};
use quarterturn_photo::{Corner, Found, Grid};

use super::Picture;
use crate::args::PhotoArgs;
use crate::failure::{Failure, Kind, Marked};

/// Marks that are farther off where the others put them were misread, or the face is not flat.
const MOST_OFF_MM: f64 = 2.0;
/// No face is larger.
const WIDEST_MM: f64 = 3000.0;
/// How exactly a pixel is read in a viewer that shows the photo enlarged, px; common practice.
const USUAL_READING_PX: f64 = 2.0;
/// Nobody reads worse and calls it reading.
const WORST_READING_PX: f64 = 1000.0;

/// A photo as a view of the face.
pub struct PhotoView {
    /// The view.
    pub view: Homography,
    /// What it was taken from.
    pub marks: Vec<Mark>,
    /// How these were come by.
    pub by: By,
    /// How exactly pixels are read.
    pub reading: Reading,
}

/// How marks were come by.
pub enum By {
    /// They were found in the photo.
    Picture(Box<Found>),
    /// They were pointed at, and so much is seen of the grid where they say.
    Hand(Grid),
}

/// How exactly pixels are read, as a standard deviation along each axis, px.
#[derive(Clone, Copy)]
pub enum Reading {
    /// As was said or is usual.
    Said(f64),
    /// As more than four marks show.
    Shown(f64),
}

impl Reading {
    /// The standard deviation, px.
    pub const fn px(self) -> f64 {
        match self {
            Self::Said(px) | Self::Shown(px) => px,
        }
    }
}

impl PhotoView {
    /// The view by the marks that were given, or else by those that are found in the picture.
    pub fn of(
        args: &PhotoArgs,
        unit: &'static Unit,
        picture: Option<&Picture>,
    ) -> Result<Self, Failure> {
        let said_px = reading(args)?;
        let marks = given(args, unit)?;
        let spacing = args.spacing.as_deref().map(|text| spacing(text, unit)).transpose()?;
        match (marks, picture, spacing) {
            (Some(marks), ..) => {
                let mut photo = Self::by_hand(marks, said_px)?;
                if let (Some(picture), Some(spacing)) = (picture, spacing) {
                    photo.by = By::Hand(picture.grid(&photo.view, spacing));
                }
                Ok(photo)
            }
            (None, Some(picture), Some(spacing)) => {
                let found = picture.marks(spacing)?;
                let marks = at_corners(found.pixels, spacing);
                let view = found.view.clone();
                Ok(Self {
                    view,
                    marks,
                    by: By::Picture(Box::new(found)),
                    reading: Reading::Said(said_px),
                })
            }
            (None, Some(_), None) => Err(unknown_spacing()),
            (None, None, _) => Err(no_marks()),
        }
    }

    fn by_hand(marks: Vec<Mark>, said_px: f64) -> Result<Self, Failure> {
        let view = Homography::of_marks(&marks).map_err(|error| refused(&error))?;
        let off_mm = |mark: usize| view.errors()[mark].length().mm();
        let worst_mm = (0..marks.len()).map(off_mm).fold(0.0, f64::max);
        if worst_mm > MOST_OFF_MM {
            let each = marks.iter().enumerate().map(|(n, mark)| {
                let Pixel { x_px, y_px } = mark.pixel;
                format!(
                    "mark {} at {x_px},{y_px} is {:.1} mm off where the others put it",
                    n + 1,
                    off_mm(n)
                )
            });
            let what = format!(
                "the marks agree on no view of a flat face: one is {worst_mm:.1} mm off, and at most {MOST_OFF_MM:.0} mm are taken"
            );
            return Err(Failure::new(Kind::Data, what).hinting(each));
        }
        let shown = view.reading_error_px().filter(|px| *px > said_px);
        let reading = shown.map_or(Reading::Said(said_px), Reading::Shown);
        Ok(Self { view, marks, by: By::Hand(Grid::default()), reading })
    }

    /// What is seen of the printed grid.
    pub fn grid(&self) -> Grid {
        match &self.by {
            By::Picture(found) => found.grid,
            By::Hand(grid) => *grid,
        }
    }

    /// How far the farthest mark is off, where there are more than four: four always fit.
    pub fn off(&self) -> Option<Millimetres> {
        let off_mm = self.view.errors().iter().map(|error| error.length().mm());
        (self.marks.len() > 4).then(|| Millimetres::new(off_mm.fold(0.0, f64::max)))
    }
}

/// The marks that were pointed at.
fn given(args: &PhotoArgs, unit: &'static Unit) -> Result<Option<Vec<Mark>>, Failure> {
    if let (Some(text), Some(spacing)) = (&args.marks, &args.spacing) {
        let pixels = pixels::four_pixels(text)
            .map_err(|fault| Failure::in_option("--marks", text, &fault))?;
        return Ok(Some(at_corners(pixels, self::spacing(spacing, unit)?)));
    }
    let read = |text: &String| {
        pixels::mark(text, unit).map_err(|fault| Failure::in_option("--mark", text, &fault))
    };
    let marks: Vec<Mark> = args.mark.iter().map(read).collect::<Result<_, _>>()?;
    Ok((!marks.is_empty()).then_some(marks))
}

fn at_corners(pixels: [Pixel; 4], spacing: Millimetres) -> Vec<Mark> {
    let mark = |(pixel, corner): (Pixel, Corner)| Mark { pixel, point: corner.point(spacing) };
    pixels.into_iter().zip(Corner::ALL).map(mark).collect()
}

fn spacing(text: &str, unit: &'static Unit) -> Result<Millimetres, Failure> {
    let spacing = quantity::length(text, Some(unit))
        .map_err(|fault| Failure::in_option("--spacing", text, &fault))?;
    let is_possible = spacing.mm() > 0.0 && spacing.mm() <= WIDEST_MM;
    let label = format!("more than 0 and at most {WIDEST_MM} mm is possible");
    if is_possible { Ok(spacing) } else { Err(unusable("--spacing", text, &label)) }
}

fn reading(args: &PhotoArgs) -> Result<f64, Failure> {
    let Some(text) = &args.read_to else { return Ok(USUAL_READING_PX) };
    let is_possible = |px: &f64| *px > 0.0 && *px <= WORST_READING_PX;
    text.parse().ok().filter(is_possible).ok_or_else(|| {
        let label =
            format!("a number of pixels, more than 0 and at most {WORST_READING_PX}, is expected");
        unusable("--read-to", text, &label)
    })
}

pub(super) fn unusable(option: &str, text: &str, label: &str) -> Failure {
    let marked = Marked::typed(text).wrong(0..text.len(), label);
    Failure::new(Kind::Usage, format!("the value of {option} cannot be used")).marking(marked)
}

fn refused(error: &MarkError) -> Failure {
    let hints: &[&str] = match error {
        MarkError::Mirrored | MarkError::Crossed { .. } => &[
            "as you face the target: top left, top right, bottom right, bottom left",
            "pixels are counted to the right and down from the upper left corner",
        ],
        _ => &[],
    };
    Failure::new(Kind::Data, format!("the marks cannot be used: {error}")).hinting(hints)
}

fn unknown_spacing() -> Failure {
    Failure::new(Kind::Usage, "it is not said how far apart the marks are").hinting([
        "the printed face says it: --spacing 166mm; where your printer shrinks, measure it",
        "of a face of another kind, give each mark with --mark",
    ])
}

fn no_marks() -> Failure {
    Failure::new(Kind::Usage, "there are no marks to measure by").hinting([
        "name the photo of the printed face behind the journal, with --spacing 166mm",
        "or give the pixels of four marks with --marks, or of any others each with --mark",
    ])
}
