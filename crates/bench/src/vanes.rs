//! Where the vanes stand round the shaft.

use quarterturn_geometry::Index;

/// How many vanes an arrow carries, evenly spaced.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Vanes {
    /// A cock vane and two hen vanes, a third of a turn apart.
    #[default]
    Three,
    /// A quarter of a turn apart.
    Four,
}

impl Vanes {
    /// How many they are.
    pub const fn count(self) -> u8 {
        match self {
            Self::Three => 3,
            Self::Four => 4,
        }
    }

    /// Where each vane stands on the shaft, clockwise **from the ink mark** as seen from behind; the cock vane first.
    ///
    /// # Formula
    /// On the string the mark stands at the clock angle φ and the cock vane is to stand at κ. Both are seen from
    /// behind, and nothing turns between the two looks, so the cock vane stands κ − φ clockwise from the mark; the
    /// others follow clockwise by 360°/n each.
    /// # Source
    /// Elementary; the clock is that of the conventions.
    pub fn from_mark(self, mark: Index, cock: Index) -> impl Iterator<Item = Index> {
        let first_deg = cock.degrees() - mark.degrees();
        let step_deg = 360.0 / f64::from(self.count());
        (0..self.count()).map(move |n| Index::from_degrees(first_deg + f64::from(n) * step_deg))
    }
}
