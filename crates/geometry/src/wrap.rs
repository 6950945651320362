//! Whole turns taken off, in whatever unit a turn is counted.

/// `value` less whole turns, in [0, `turn`); never −0. What is not finite gives NaN.
pub(crate) fn positive(value: f64, turn: f64) -> f64 {
    let rest = value.rem_euclid(turn);
    // A tiny negative value rounds up to a whole turn; adding zero makes −0 plain.
    if rest >= turn { 0.0 } else { rest + 0.0 }
}

/// `value` less whole turns, in (−`turn`/2, `turn`/2]. What is not finite gives NaN.
///
/// Exactly odd but for the half turn: the remainder is exact and both signs are folded alike.
pub(crate) fn signed(value: f64, turn: f64) -> f64 {
    match value % turn {
        rest if rest > turn / 2.0 => rest - turn,
        rest if rest <= -turn / 2.0 => rest + turn,
        rest => rest,
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    #[test]
    fn the_ends_of_the_ranges() {
        let cases = [
            (0.0, 0.0, 0.0),
            (360.0, 0.0, 0.0),
            (180.0, 180.0, 180.0),
            (-180.0, 180.0, 180.0),
            (270.0, 270.0, -90.0),
            (-90.0, 270.0, -90.0),
            (-1e-20, 0.0, -1e-20),
            (725.0, 5.0, 5.0),
        ];
        for (value, in_turn, about_zero) in cases {
            assert_eq!((positive(value, 360.0), signed(value, 360.0)), (in_turn, about_zero));
        }
    }

    #[test]
    fn no_negative_zero() {
        for value in [-0.0, -360.0] {
            assert!(positive(value, 360.0).is_sign_positive());
        }
    }

    #[test]
    fn what_is_not_finite_is_not_hidden() {
        for value in [f64::NAN, f64::INFINITY] {
            assert!(positive(value, 360.0).is_nan() && signed(value, 360.0).is_nan());
        }
    }

    proptest! {
        #[test]
        fn always_in_range(value in proptest::num::f64::NORMAL | proptest::num::f64::SUBNORMAL) {
            prop_assert!((0.0..360.0).contains(&positive(value, 360.0)));
            let about_zero = signed(value, 360.0);
            prop_assert!(-180.0 < about_zero && about_zero <= 180.0);
        }
    }
}
