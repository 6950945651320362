//! The dot in the middle of a photo mark, by which the corners of the face are told apart.

use quarterturn_geometry::Millimetres;

/// How large the dot in the middle of a mark is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Dot {
    /// Nearly a quarter of the white is left.
    Large,
    /// Between the two.
    Medium,
    /// No more than the middle.
    Small,
}

impl Dot {
    /// The radius of the whole mark: a black ring ends here.
    pub const MARK: Millimetres = Millimetres::new(6.0);
    /// The radius of the white disc in it.
    pub const WHITE: Millimetres = Millimetres::new(4.2);

    /// The radius of the dot.
    pub const fn radius(self) -> Millimetres {
        Millimetres::new(match self {
            Self::Large => 2.9,
            Self::Medium => 1.8,
            Self::Small => 1.0,
        })
    }

    /// The dot that takes this share of the white disc; `None` where it is none of them.
    ///
    /// The limits are geometric means of the printed shares 0.48, 0.18 and 0.057: ink that runs, and pictures that are
    /// too light, make all of them larger or smaller by the same factor.
    pub(crate) fn of_share(share: f64) -> Option<Self> {
        match share {
            0.31..0.75 => Some(Self::Large),
            0.105..0.28 => Some(Self::Medium),
            0.015..0.1 => Some(Self::Small),
            _ => None,
        }
    }
}
