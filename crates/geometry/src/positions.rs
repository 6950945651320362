//! The evenly spaced places where a mark may be put.

use crate::{GeometryError, Index};

/// How many evenly spaced places a mark may take: 12 (the hours), 8, 4, 3 or any other.
///
/// They begin at 12 o'clock, but for **three**: that is said of arrows that carry three vanes already,
/// which clear the rest only as they stand or a third of a turn further, so three go from where the mark
/// of the shaft stood at first.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Positions(u16);

impl Positions {
    /// The twelve hours.
    pub const HOURS: Self = Self(12);

    /// The thirds of a turn.
    const THIRDS: Self = Self(3);

    /// Every 5 degrees: finer no hand can set a nock (common practice, from memory).
    pub const FINEST: Self = Self(72);

    /// `count` places, from 1 to the 72 of [`FINEST`](Self::FINEST).
    ///
    /// # Errors
    /// [`GeometryError::Positions`] for any other number.
    pub fn new(count: u16) -> Result<Self, GeometryError> {
        if (1..=Self::FINEST.0).contains(&count) {
            Ok(Self(count))
        } else {
            Err(GeometryError::Positions { count })
        }
    }

    /// How many places there are.
    pub const fn count(self) -> u16 {
        self.0
    }

    /// Degrees from one place to the next.
    pub fn step_deg(self) -> f64 {
        360.0 / f64::from(self.0)
    }

    /// The places, clockwise from 12 o'clock.
    pub fn iter(self) -> impl Iterator<Item = Index> {
        self.clockwise_from(Index::TWELVE)
    }

    /// The places of a shaft whose mark stood at `first` to begin with: three go clockwise from there, any other
    /// number from 12 o'clock.
    pub fn of_shaft(self, first: Index) -> impl Iterator<Item = Index> {
        self.clockwise_from(if self == Self::THIRDS { first } else { Index::TWELVE })
    }

    fn clockwise_from(self, start: Index) -> impl Iterator<Item = Index> {
        let turned_deg = move |k| start.degrees() + f64::from(k) * self.step_deg();
        (0..self.0).map(move |k| Index::from_degrees(turned_deg(k)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn none_and_too_many_are_refused() {
        for count in [0, 73] {
            assert_eq!(Positions::new(count), Err(GeometryError::Positions { count }));
        }
    }

    #[test]
    fn the_places_of_three_vanes() {
        let places: Vec<_> = Positions::new(3).unwrap().iter().collect();
        assert_eq!(places, [0.0, 4.0, 8.0].map(Index::from_hour));
    }

    #[test]
    fn three_go_from_where_the_mark_stood_and_other_numbers_from_twelve() {
        let places = |count| {
            let places = Positions::new(count).unwrap().of_shaft(Index::from_degrees(260.0));
            places.map(Index::degrees).collect::<Vec<_>>()
        };
        assert_eq!(places(3), [260.0, 20.0, 140.0]);
        assert_eq!(places(4), [0.0, 90.0, 180.0, 270.0]);
    }

    #[test]
    fn the_finest_are_five_degrees_apart() {
        assert_eq!(Positions::new(72), Ok(Positions::FINEST));
        assert_eq!(Positions::FINEST.iter().nth(1), Some(Index::from_degrees(5.0)));
    }

    #[test]
    fn every_place_is_near_itself_only() {
        for positions in (1..=72).map(|count| Positions::new(count).unwrap()) {
            for (k, place) in positions.iter().enumerate() {
                let near: Vec<_> = positions
                    .iter()
                    .enumerate()
                    .filter(|(_, p)| place.is_near(*p, positions))
                    .collect();
                assert_eq!(near, [(k, place)]);
            }
        }
    }
}
