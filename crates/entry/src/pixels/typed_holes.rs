//! Holes as they were typed, which remember where each part of them stands in the text.

use std::ops::Range;

use quarterturn_geometry::Pixel;
use quarterturn_journal::{Place, ShotEntry};

use crate::shorthand::TypedWords;

/// A hole: whose, where the picture shows it, and what else was said of the arrow.
#[derive(Clone, Debug, PartialEq)]
pub struct TypedHole {
    /// The arrow with all that was said of it but its hit.
    pub shot: ShotEntry,
    /// Where the picture shows its hole.
    pub pixel: Pixel,
    /// The bytes of the pixel.
    pub pixel_span: Range<usize>,
    /// Where the picture shows its tail, where that was said.
    pub tail: Option<TypedTail>,
    pub(super) name: Range<usize>,
    pub(super) words: TypedWords,
}

/// The tail of an arrow in the picture.
#[derive(Clone, Debug, PartialEq)]
pub struct TypedTail {
    /// Where the picture shows the end of its nock.
    pub pixel: Pixel,
    /// The bytes of the word.
    pub span: Range<usize>,
    /// How far the arrow sticks out, mm, where that was said of it or of another of the end.
    pub protruding_mm: Option<f64>,
}

/// The holes of an end.
#[derive(Clone, Debug, PartialEq)]
pub struct TypedHoles(pub Vec<TypedHole>);

impl TypedHoles {
    /// The bytes of the text that gave what stands at `place` of the end; the nearest around it where nothing did.
    pub fn span(&self, place: &Place) -> Range<usize> {
        let hole = place.shot().and_then(|shot| self.0.get(shot)).or(self.0.first());
        hole.map_or(0..0, |hole| {
            let is_hit = matches!(place.name(), Some("x_mm" | "y_mm" | "read_sd_mm"));
            let own = is_hit.then(|| hole.pixel_span.clone());
            own.or_else(|| hole.words.span(place)).unwrap_or_else(|| hole.name.clone())
        })
    }
}
