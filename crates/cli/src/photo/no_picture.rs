//! No photo is read where the program was built without the feature `photo`.

use std::path::Path;

use quarterturn_geometry::{Homography, Millimetres};
use quarterturn_photo::{Found, Grid};

use crate::failure::{Failure, Kind};

/// There is none.
pub enum Picture {}

impl Picture {
    /// Says that none is read.
    pub fn read(_: &Path) -> Result<Self, Failure> {
        let what = "this program was built without reading pictures";
        let hint = "leave the picture out and give the pixels of the marks with --marks";
        Err(Failure::new(Kind::Usage, what).hinting([hint]))
    }

    /// Pixels across and up and down.
    pub fn size(&self) -> [u32; 2] {
        match *self {}
    }

    /// The marks of the printed face in it.
    pub fn marks(&self, _: Millimetres) -> Result<Found, Failure> {
        match *self {}
    }

    /// What is seen of the printed grid.
    pub fn grid(&self, _: &Homography, _: Millimetres) -> Grid {
        match *self {}
    }

    /// The photo to be drawn on.
    pub fn jpeg(&self) -> Result<Vec<u8>, Failure> {
        match *self {}
    }
}
