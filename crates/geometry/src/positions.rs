//! The evenly spaced places where a mark may be put.

use crate::{GeometryError, Index};

/// How many evenly spaced places a mark may take, the first at 12 o'clock: 12 (the hours), 8, 4, 3
/// or any other.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Positions(u16);

impl Positions {
    /// The twelve hours.
    pub const HOURS: Self = Self(12);

    /// `count` places, from 1 to 72: finer than 5 degrees no hand can set a nock (common practice,
    /// from memory).
    ///
    /// # Errors
    /// [`GeometryError::Positions`] for any other number.
    pub fn new(count: u16) -> Result<Self, GeometryError> {
        if (1..=72).contains(&count) {
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
        (0..self.0).map(move |k| Index::from_degrees(f64::from(k) * self.step_deg()))
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
