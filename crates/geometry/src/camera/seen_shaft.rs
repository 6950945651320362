//! A shaft in the butt as a picture shows it.

use crate::{Millimetres, Pixel};

/// The two ends of the shaft outside the butt, with how well each is read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SeenShaft {
    /// Where it goes into the face.
    pub hole: Pixel,
    /// The end of its nock.
    pub tail: Pixel,
    /// How well both pixels are read, a standard deviation along each axis, px.
    pub read_sd_px: f64,
    /// How well both ends are told on the arrow itself, a standard deviation along each axis.
    pub ends_sd: Millimetres,
    /// How much of it is outside, from the face to the end of the nock.
    pub length: Millimetres,
    /// How well that is known, a standard deviation.
    pub length_sd: Millimetres,
}
