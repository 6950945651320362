//! The index of a shaft: where its ink mark stands on the string.

use std::fmt;

use crate::{Angle, Positions, wrap};

const TURN_DEG: f64 = 360.0;
pub(crate) const HOUR_DEG: f64 = 30.0;

/// Marks that are closer than this are the same to the eye.
const SAME_DEG: f64 = 0.05;

/// The clock angle of the builder's ink mark on the **shaft** when the arrow sits on the string.
///
/// 0 = 12 o'clock, clockwise as the archer sees it, in [0, 360) degrees
/// ([conventions](crate#conventions)).
///
/// It says where the *mark* is, never how far a nock was turned: the nock stays with the string, so
/// **turning the nock clockwise turns the shaft counter-clockwise** on the string, and the mark
/// goes back by as much.
///
/// Kept in degrees and not in radians, because degrees are what people and files say, and what was
/// said must come back unchanged.
///
/// # Example
/// ```
/// use quarterturn_geometry::Index;
///
/// let now = Index::from_degrees(330.0);
/// let wanted = Index::from_hour(2.0);
/// assert_eq!(wanted.to_string(), "2 o'clock (60 deg)");
/// assert_eq!(now.turn_to(wanted).degrees().round(), 90.0); // three hours clockwise
/// assert_eq!(wanted.turn_to(now).degrees().round(), -90.0);
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Index {
    deg: f64,
}

impl Index {
    /// The mark at 12 o'clock.
    pub const TWELVE: Self = Self { deg: 0.0 };

    /// The mark at `deg` degrees clockwise from 12 o'clock; whole turns are taken off.
    ///
    /// What lies in [0, 360) is kept to the last digit. What is not finite gives NaN: check it
    /// where it is read.
    pub fn from_degrees(deg: f64) -> Self {
        Self { deg: wrap::positive(deg, TURN_DEG) }
    }

    /// The mark at `hour` o'clock, 12 and 0 being the same.
    pub fn from_hour(hour: f64) -> Self {
        Self::from_degrees(hour * HOUR_DEG)
    }

    /// Degrees clockwise from 12 o'clock, in [0, 360).
    pub const fn degrees(self) -> f64 {
        self.deg
    }

    /// Hours past 12 o'clock, in [0, 12).
    pub const fn hours(self) -> f64 {
        self.deg / HOUR_DEG
    }

    /// The clock angle, clockwise from 12 o'clock, in [0, 2π).
    pub const fn angle(self) -> Angle {
        Angle::from_degrees(self.deg)
    }

    /// The shorter way for the mark from here to `other`, clockwise positive, in (−180, 180]
    /// degrees.
    pub fn turn_to(self, other: Self) -> Angle {
        Angle::from_degrees(self.turn_deg(other))
    }

    /// Whether `other` is at most half a position away.
    pub fn is_near(self, other: Self, positions: Positions) -> bool {
        self.turn_deg(other).abs() <= positions.step_deg() / 2.0
    }

    /// Whether `other` is the same place to the eye: less than a twentieth of a degree away.
    pub fn is_at(self, other: Self) -> bool {
        self.turn_deg(other).abs() < SAME_DEG
    }

    fn turn_deg(self, other: Self) -> f64 {
        wrap::signed(other.deg - self.deg, TURN_DEG)
    }
}

/// "4 o'clock (120 deg)", "half past 4 (135 deg)"; anywhere else only the degrees, "97.5 deg", to
/// the hundredth: a seventh of a turn would fill the line.
impl fmt::Display for Index {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let said = Self::from_degrees((self.deg * 100.0).round() / 100.0);
        let (deg, hours) = (said.deg, said.hours());
        let hour = if hours < 1.0 { 12.0 } else { hours.floor() };
        match hours.fract() {
            0.0 => write!(f, "{hour} o'clock ({deg} deg)"),
            0.5 => write!(f, "half past {hour} ({deg} deg)"),
            _ => write!(f, "{deg} deg"),
        }
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    #[test]
    fn what_people_type_comes_back_unchanged() {
        for deg in [0.0, 30.0, 45.5, 90.0, 97.3, 120.0, 270.0, 359.9] {
            assert_eq!(Index::from_degrees(deg).degrees().to_bits(), f64::to_bits(deg));
        }
    }

    #[test]
    fn whole_turns_are_taken_off() {
        for deg in [-0.0, 360.0, -360.0, 720.0, -1e-20] {
            assert_eq!(Index::from_degrees(deg).to_string(), "12 o'clock (0 deg)");
        }
        assert_eq!(Index::from_degrees(-90.0), Index::from_hour(9.0));
        assert_eq!(Index::from_hour(12.0), Index::TWELVE);
    }

    #[test]
    fn said_as_an_archer_would() {
        let said = [
            (15.0, "half past 12 (15 deg)"),
            (30.0, "1 o'clock (30 deg)"),
            (345.0, "half past 11 (345 deg)"),
            (97.5, "97.5 deg"),
            (360.0 / 7.0, "51.43 deg"),
            (359.999, "12 o'clock (0 deg)"),
        ];
        for (deg, text) in said {
            assert_eq!(Index::from_degrees(deg).to_string(), text);
        }
    }

    #[test]
    fn half_a_position_is_near() {
        for place in Positions::HOURS.iter() {
            for (deg, near) in [(-15.1, false), (-15.0, true), (15.0, true), (15.1, false)] {
                let other = Index::from_degrees(place.degrees() + deg);
                assert_eq!(place.is_near(other, Positions::HOURS), near, "{place} {deg}");
            }
        }
    }

    #[test]
    fn what_no_eye_can_tell_is_the_same_place() {
        let seventh = Index::from_degrees(360.0 / 7.0);
        assert!(seventh.is_at(Index::from_degrees(51.43)));
        assert!(!seventh.is_at(Index::from_degrees(51.5)));
        assert!(Index::from_degrees(359.99).is_at(Index::TWELVE));
    }

    #[test]
    fn half_a_turn_is_clockwise_both_ways() {
        let six = Index::from_hour(6.0);
        assert_eq!(Index::TWELVE.turn_to(six), Angle::from_degrees(180.0));
        assert_eq!(six.turn_to(Index::TWELVE), Angle::from_degrees(180.0));
    }

    proptest! {
        #[test]
        fn a_whole_number_of_tenths_comes_back_unchanged(tenths in 0_u16..3600) {
            let deg = f64::from(tenths) / 10.0;
            prop_assert_eq!(Index::from_degrees(deg).degrees().to_bits(), deg.to_bits());
        }

        #[test]
        fn the_way_back_is_the_way_there(from in 0.0..360.0, to in 0.0..360.0) {
            let (from, to) = (Index::from_degrees(from), Index::from_degrees(to));
            let half_turn = Angle::from_degrees(180.0);
            prop_assume!(from.turn_to(to) != half_turn);
            prop_assert_eq!(from.turn_to(to), -to.turn_to(from));
            prop_assert!(-half_turn < from.turn_to(to) && from.turn_to(to) < half_turn);
        }
    }
}
