//! What the shafts of a set are to match.

use quarterturn_geometry::Offset;

use crate::Miss;

/// What the archer asks of his shafts.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Matching {
    /// To land where the fletched reference lands.
    #[default]
    Reference,
    /// To land where the others land, wherever that is; the bow or the sight is moved for them at the end.
    Set,
}

/// What the misses of shafts are measured from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum MeasuredFrom {
    /// The mean of the references in use.
    Reference,
    /// The common point of the set, which lies there from the references.
    CommonPoint(Miss),
}

impl MeasuredFrom {
    /// Where it lies, from the references.
    pub fn at(self) -> Offset {
        match self {
            Self::Reference => Offset::ZERO,
            Self::CommonPoint(at) => at.mean,
        }
    }
}
