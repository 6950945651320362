//! The printed grid as a picture shows it: what proves marks, however they were come by.

use quarterturn_geometry::{Homography, Millimetres};

use crate::Luminance;
use crate::lines::Lines;
use crate::look::Look;
use crate::pitch::Pitch;

/// Pixels along the longer side of the picture in which it is looked for.
const LOOK: usize = 2400;

/// What is seen of the printed grid.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Grid {
    /// How far its bold lines run beside their places in the view, as a root mean square; `None` where too few are seen to say so.
    pub lines: Option<Millimetres>,
    /// How far apart the marks were drawn along each edge: what the face says of itself; `None` where too little is seen. A printer
    /// that shrinks, or a tape that was misread, makes this another than the spacing that was said.
    pub drawn: Option<Millimetres>,
}

impl Grid {
    /// The grid in the view of four marks at the corners of the printed face, which were said to be `spacing` apart along each
    /// edge. Of a view by marks that were misread, or of another face, nothing is seen.
    pub fn seen(picture: &Luminance, view: &Homography, spacing: Millimetres) -> Self {
        let by = picture.width().max(picture.height()).div_ceil(LOOK);
        let look = picture.shrunk(by).map(|picture| Look { picture, by });
        let seen = look.and_then(|look| {
            let pitch = Pitch::of(&look, view, spacing)?;
            Some(Self::of(
                &Lines::of_step(&look, view, spacing, pitch.bold_mm),
                Some(pitch),
                spacing,
            ))
        });
        seen.unwrap_or_default()
    }

    /// What lines and pitch say of it.
    pub(crate) fn of(lines: &Lines, pitch: Option<Pitch>, spacing: Millimetres) -> Self {
        let drawn = pitch.map(|pitch| spacing * pitch.size.recip());
        Self { lines: lines.error().filter(|_| lines.prove()), drawn }
    }
}
