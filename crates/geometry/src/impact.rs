//! What one arrow left to be read at the butt.

use std::ops::Sub;

use crate::{ImpactDifference, Lean, Point};

/// Where an arrow went in and how it leans.
///
/// Bare minus fletched reference is an [`ImpactDifference`].
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Impact {
    /// The hole, from the spot that this shot was aimed at.
    pub at: Point,
    /// The lean in the frame used for the whole end; unknown is not zero.
    pub lean: Option<Lean>,
}

/// Bare minus fletched reference.
impl Sub for Impact {
    type Output = ImpactDifference;
    fn sub(self, reference: Self) -> ImpactDifference {
        let lean =
            self.lean.zip(reference.lean).map(|(bare, reference)| bare.relative_to(reference));
        ImpactDifference { offset: self.at - reference.at, lean }
    }
}
