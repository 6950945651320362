//! The few ways in which a geometric value can be impossible.

use thiserror::Error;

use crate::Millimetres;

/// Why a geometric value was refused.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[non_exhaustive]
pub enum GeometryError {
    /// A count of places for the mark that no nock can be set to.
    #[error("{count} positions: a nock can be set to 1 to 72 evenly spaced positions")]
    Positions {
        /// What was asked for.
        count: u16,
    },

    /// An hour that no clock shows.
    #[error("{hour} o'clock: the clock has the hours from 0 to 12, half past two is 2.5")]
    Hour {
        /// What was read.
        hour: f64,
    },

    /// A distance from the spot or from the hole that is negative or not finite.
    #[error("{distance} out: a distance is 0 mm or more, its direction is the hour's business")]
    Distance {
        /// What was read.
        distance: Millimetres,
    },

    /// A protruding length that is not positive or not finite.
    #[error(
        "{protruding} of shaft outside the butt: measure from the face to the nock, more than 0 mm"
    )]
    Protruding {
        /// What was measured.
        protruding: Millimetres,
    },

    /// A tail farther to the side than the shaft outside the butt is long, or not finite.
    #[error(
        "the tail stands {aside} to the side of only {protruding} of shaft outside the butt: \
         measure both again"
    )]
    TailAside {
        /// How far the tail stands off.
        aside: Millimetres,
        /// The length of shaft outside the butt.
        protruding: Millimetres,
    },

    /// Steps of a reading that are negative, too large or not finite.
    #[error(
        "read in steps of {direction_deg} degrees and {distance}: the first is 0 to 90, the second 0 mm or more"
    )]
    Steps {
        /// Of the direction.
        direction_deg: f64,
        /// Of the distance.
        distance: Millimetres,
    },

    /// A covariance with an entry that is infinite or not a number.
    #[error("{value_mm2} in a covariance: every entry must be a finite number")]
    NotFinite {
        /// The first such entry, mm².
        value_mm2: f64,
    },

    /// A covariance whose two mixed entries differ by more than rounding.
    #[error("a covariance must be symmetric: {xy_mm2} mm² and {yx_mm2} mm² differ")]
    Asymmetric {
        /// The entry in the first row, mm².
        xy_mm2: f64,
        /// The entry in the second row, mm².
        yx_mm2: f64,
    },

    /// A covariance with a negative variance, by more than rounding, in some direction.
    #[error("a covariance has no negative variance: {variance_mm2} mm² in some direction")]
    Indefinite {
        /// The smaller variance, mm².
        variance_mm2: f64,
    },

    /// A Mahalanobis radius that is negative or not finite.
    #[error("{radius} standard deviations: a radius must be a finite number, 0 or more")]
    Radius {
        /// What was asked for.
        radius: f64,
    },
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn messages_name_the_input_and_a_way_on() {
        let [aside, protruding] = [650.0, 600.0].map(Millimetres::new);
        let said = [
            (
                GeometryError::Hour { hour: 12.5 },
                "12.5 o'clock: the clock has the hours from 0 to 12, half past two is 2.5",
            ),
            (
                GeometryError::TailAside { aside, protruding },
                "the tail stands 650 mm to the side of only 600 mm of shaft outside the butt: \
                 measure both again",
            ),
        ];
        for (error, message) in said {
            assert_eq!(error.to_string(), message);
        }
    }

    #[test]
    fn every_message_says_what_was_read_and_what_can_be() {
        let mm = Millimetres::new;
        let told = [
            GeometryError::Distance { distance: mm(-3.0) },
            GeometryError::Protruding { protruding: mm(0.0) },
            GeometryError::Steps { direction_deg: 100.0, distance: mm(10.0) },
            GeometryError::NotFinite { value_mm2: f64::INFINITY },
            GeometryError::Asymmetric { xy_mm2: 1.0, yx_mm2: 2.0 },
            GeometryError::Indefinite { variance_mm2: -4.0 },
            GeometryError::Radius { radius: -1.0 },
        ]
        .map(|error| error.to_string());
        let expected = [
            "-3 mm out: a distance is 0 mm or more, its direction is the hour's business",
            "0 mm of shaft outside the butt: measure from the face to the nock, more than 0 mm",
            "read in steps of 100 degrees and 10 mm: the first is 0 to 90, the second 0 mm or more",
            "inf in a covariance: every entry must be a finite number",
            "a covariance must be symmetric: 1 mm² and 2 mm² differ",
            "a covariance has no negative variance: -4 mm² in some direction",
            "-1 standard deviations: a radius must be a finite number, 0 or more",
        ];
        assert_eq!(told, expected);
    }
}
