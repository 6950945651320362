//! The corners of the face at which its photo marks stand.

use quarterturn_geometry::{Millimetres, Point};

use crate::Dot;

/// A corner of the square of marks, as the archer sees it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Corner {
    /// To the left and up; its mark has the large dot.
    TopLeft,
    /// To the right and up; its mark has the small dot.
    TopRight,
    /// To the right and down.
    BottomRight,
    /// To the left and down.
    BottomLeft,
}

impl Corner {
    /// All of them, clockwise: the order in which marks are given and told.
    pub const ALL: [Self; 4] = [Self::TopLeft, Self::TopRight, Self::BottomRight, Self::BottomLeft];

    /// The dot of its mark. Three kinds in this order are the fewest that look different turned or in a mirror.
    pub const fn dot(self) -> Dot {
        match self {
            Self::TopLeft => Dot::Large,
            Self::TopRight => Dot::Small,
            Self::BottomRight | Self::BottomLeft => Dot::Medium,
        }
    }

    /// Where its mark stands when the marks are `spacing` apart along each edge, with the spot in the middle.
    pub fn point(self, spacing: Millimetres) -> Point {
        let out_mm = spacing.mm() / 2.0;
        match self {
            Self::TopLeft => Point::new(-out_mm, out_mm),
            Self::TopRight => Point::new(out_mm, out_mm),
            Self::BottomRight => Point::new(out_mm, -out_mm),
            Self::BottomLeft => Point::new(-out_mm, -out_mm),
        }
    }

    /// "top left".
    pub const fn name(self) -> &'static str {
        match self {
            Self::TopLeft => "top left",
            Self::TopRight => "top right",
            Self::BottomRight => "bottom right",
            Self::BottomLeft => "bottom left",
        }
    }
}
