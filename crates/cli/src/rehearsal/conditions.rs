//! What a person says of himself and his dozen, as an invented world.

use quarterturn_geometry::Millimetres;
use quarterturn_tuning::{Leans, Setup, World};

/// A circle of this diameter, in standard deviations per axis, holds nine shots out of ten: 2 √(2 ln 10).
const NINE_OF_TEN: f64 = 4.291_932_052_578_694;

/// The ordinary archer's own spread and drift from end to end at 18.3 m, mm: what of a group is the one and what the other.
const SPREAD_AND_DRIFT_MM: [f64; 2] = [19.0, 8.0];

/// What a person says of himself and his dozen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Conditions {
    /// The diameter of the circle that holds nine out of ten fletched shots of several ends.
    pub group: Millimetres,
    /// From the archer to the face.
    pub distance: Millimetres,
    /// How far from the reference a shaft may land.
    pub tolerance: Millimetres,
    /// Bare shafts.
    pub shafts: u16,
    /// Arrows before walking up, the reference included.
    pub arrows_per_end: u16,
    /// Whether leans are read.
    pub leans: Leans,
}

impl Conditions {
    /// The standard deviation per axis of his fletched shots, drift from end to end included: the group over 2 √(2 ln 10),
    /// for a spread that is normal and the same both ways.
    pub fn spread(&self) -> Millimetres {
        self.group * (1.0 / NINE_OF_TEN)
    }

    /// An ordinary bow and ordinary shafts in the hands of this archer.
    pub fn world(&self) -> World {
        let [spread_mm, drift_mm] = SPREAD_AND_DRIFT_MM;
        let times = self.spread().mm() / spread_mm.hypot(drift_mm);
        World {
            spread_mm: [spread_mm * times; 2],
            drift_mm: drift_mm * times,
            leans: self.leans,
            ..World::ORDINARY.at(self.distance)
        }
    }

    /// The dozen beside one reference.
    pub fn setup(&self) -> Setup {
        Setup {
            distance: self.distance,
            tolerance: self.tolerance,
            arrows_per_end: self.arrows_per_end.into(),
            ..Setup::beside_one_reference(self.shafts.into())
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const ASKED: Conditions = Conditions {
        group: Millimetres::new(80.0),
        distance: Millimetres::new(18_300.0),
        tolerance: Millimetres::new(25.0),
        shafts: 12,
        arrows_per_end: 4,
        leans: Leans::Read,
    };

    /// Of a planar normal the share outside radius r is exp(−r²/2σ²): a tenth at half the group.
    #[test]
    fn nine_out_of_ten_shots_lie_in_the_group() {
        let out = 40.0 / ASKED.spread().mm();
        assert!(((-out * out / 2.0).exp() - 0.1).abs() < 1e-12);
    }

    #[test]
    fn spread_and_drift_together_are_the_group() {
        let world = ASKED.world();
        let together_mm = world.spread_mm[0].hypot(world.drift_mm);
        assert!((together_mm - ASKED.spread().mm()).abs() < 1e-12);
        assert_eq!(ASKED.setup().shafts.len(), 12);
    }
}
