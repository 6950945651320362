//! What is known of a lens before its picture is looked at.

use crate::{Millimetres, Pixel};

/// Across the corners of a picture on 35 mm film, mm.
const FILM_MM: f64 = 43.27;

/// A lens and the picture behind it: what is known before any mark is, and how well.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lens {
    /// How far the picture is behind the pinhole, px.
    pub focal_px: f64,
    /// The standard deviation of its natural logarithm: 0.1 for "within a tenth".
    pub focal_spread: f64,
    /// Where the lens looks straight ahead.
    pub middle: Pixel,
    /// How well that is known, a standard deviation along each axis, px.
    pub middle_sd_px: f64,
    /// How far the corners of the picture are from its middle, px.
    pub corner_px: f64,
    /// By how much of that the lens may move a place at the corner outward: the standard deviation of the share.
    pub bend_sd: f64,
}

impl Lens {
    /// A lens named in the terms of 35 mm film, as telephones do it, before a picture of `size` pixels, across and down, from
    /// which nothing was cut off.
    ///
    /// Taken for granted, by common practice: the lens looks at the middle of the picture within 1 % of its diagonal, and
    /// a place at the corner is moved by 0.6 % at most in two of three pictures.
    ///
    /// # Formula
    /// focal length in px = `focal` · diagonal in px / 43.27 mm.
    pub fn of_film(focal: Millimetres, focal_spread: f64, size: [u32; 2]) -> Self {
        let [width, height] = size.map(f64::from);
        let corner_px = width.hypot(height) / 2.0;
        Self {
            focal_px: focal.mm() * 2.0 * corner_px / FILM_MM,
            focal_spread,
            middle: Pixel::new((width - 1.0) / 2.0, (height - 1.0) / 2.0),
            middle_sd_px: 0.02 * corner_px,
            corner_px,
            bend_sd: 0.006,
        }
    }

    /// A focal length in px in the terms of 35 mm film.
    pub fn on_film(&self, focal_px: f64) -> Millimetres {
        Millimetres::new(focal_px * FILM_MM / (2.0 * self.corner_px))
    }
}
