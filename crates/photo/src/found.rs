//! The marks of a face in a picture, found.

use quarterturn_geometry::{Homography, Pixel};

use crate::{Corner, Grid};

/// The marks of a face, found in a picture.
#[derive(Clone, Debug, PartialEq)]
pub struct Found {
    /// Where they are, in the order of [`Corner::ALL`](crate::Corner::ALL).
    pub pixels: [Pixel; 4],
    /// The view that they give.
    pub view: Homography,
    /// The corner whose mark was told from the three others and what is left of it, where one was.
    pub told: Option<Corner>,
    /// What is seen of the grid in that view.
    pub grid: Grid,
    /// How sure it is: by how much the size of the marks, laid on the face by this view, differs at most from one mark to
    /// another and from one axis to the other, as a share. Of a set that is not one face it differs by far more.
    pub unlike: f64,
}
