//! The marks of a face in a picture, found.

use quarterturn_geometry::{Homography, Millimetres, Pixel};

use crate::Corner;

/// The marks of a face, found in a picture.
#[derive(Clone, Debug, PartialEq)]
pub struct Found {
    /// Where they are, in the order of [`Corner::ALL`](crate::Corner::ALL).
    pub pixels: [Pixel; 4],
    /// The view that they give.
    pub view: Homography,
    /// The corner whose mark was told from the three others and what is left of it, where one was.
    pub told: Option<Corner>,
    /// How far the bold lines of the grid run beside their places in this view, as a root mean square; `None` where too
    /// few are seen to say so.
    pub lines: Option<Millimetres>,
    /// How far apart the marks were drawn along each edge, by the printed grid: what the face says of itself; `None` where too little
    /// of it is seen. A printer that shrinks, or a tape that was misread, makes this another than the spacing that was said.
    pub drawn: Option<Millimetres>,
    /// How sure it is: by how much the size of the marks, laid on the face by this view, differs at most from one mark to
    /// another and from one axis to the other, as a share. Of a set that is not one face it differs by far more.
    pub unlike: f64,
}
