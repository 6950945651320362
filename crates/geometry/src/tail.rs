//! The lean from what a tape reads at the tail, and the tail from the lean.

use crate::{Angle, GeometryError, Lean, Millimetres, Offset};

impl Lean {
    /// The lean of a shaft whose tail stands `tail` to the side of where it would stand straight, x
    /// to the right and y up, with `protruding` millimetres of shaft from the face to the nock.
    ///
    /// # Formula
    /// `lean_x = asin(x / L)`, `lean_y = asin(y / L)`; `x`, `y` the parts of `tail`, `L` the
    /// protruding length, measured along the shaft. Plain trigonometry: the shaft is taken as
    /// straight and `tail` as square to its straight position.
    ///
    /// # Errors
    /// [`GeometryError::Protruding`] unless the length is positive and finite;
    /// [`GeometryError::TailAside`] where the tail stands farther off than the length.
    ///
    /// # Example
    /// ```
    /// use quarterturn_geometry::{Lean, Millimetres, Offset};
    ///
    /// let lean = Lean::from_tail(Offset::new(-10.0, 0.0), Millimetres::from_cm(60.0))?;
    /// assert_eq!(format!("{:.3}", lean.x.degrees()), "-0.955"); // tail left
    /// # Ok::<(), quarterturn_geometry::GeometryError>(())
    /// ```
    pub fn from_tail(tail: Offset, protruding: Millimetres) -> Result<Self, GeometryError> {
        let length_mm = protruding.mm();
        if !(length_mm.is_finite() && length_mm > 0.0) {
            return Err(GeometryError::Protruding { protruding });
        }
        let aside = tail.length();
        if aside <= protruding {
            let part = |mm: f64| Angle::from_radians((mm / length_mm).asin());
            Ok(Self { x: part(tail.x_mm), y: part(tail.y_mm) })
        } else {
            Err(GeometryError::TailAside { aside, protruding })
        }
    }

    /// Where the tail of a shaft with this lean stands, with `protruding` millimetres of it outside
    /// the butt: x to the right, y up, from where it would stand straight. The opposite of
    /// [`Lean::from_tail`].
    pub fn tail(self, protruding: Millimetres) -> Offset {
        let part = |lean: Angle| protruding.mm() * lean.radians().sin();
        Offset::new(part(self.x), part(self.y))
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::tolerance::{ROUNDING, assert_within};

    const PROTRUDING: Millimetres = Millimetres::new(600.0);

    /// Source: asin(1/60) in degrees, computed apart with mpmath 1.4.1.
    #[test]
    fn a_centimetre_at_sixty() {
        let lean = Lean::from_tail(Offset::new(10.0, -10.0), PROTRUDING).unwrap();
        let expected_deg = 0.954_973_873_784_913_6;
        assert_within(lean.x.degrees(), expected_deg, ROUNDING);
        assert_within(lean.y.degrees(), -expected_deg, ROUNDING);
    }

    #[test]
    fn half_the_length_is_thirty_degrees() {
        let lean = Lean::from_tail(Offset::new(0.0, 300.0), PROTRUDING).unwrap();
        assert_eq!(lean.x, Angle::ZERO);
        assert_within(lean.y.degrees(), 30.0, 30.0 * ROUNDING);
    }

    #[test]
    fn lengths_that_cannot_be() {
        for mm in [0.0, -600.0, f64::NAN, f64::INFINITY] {
            let refused = Lean::from_tail(Offset::ZERO, Millimetres::new(mm));
            assert!(matches!(refused, Err(GeometryError::Protruding { .. })), "{mm}");
        }
    }

    #[test]
    fn tails_that_cannot_be() {
        for tail in [Offset::new(600.1, 0.0), Offset::new(500.0, 500.0), Offset::new(f64::NAN, 0.0)]
        {
            let refused = Lean::from_tail(tail, PROTRUDING);
            assert!(matches!(refused, Err(GeometryError::TailAside { .. })), "{tail:?}");
        }
        assert!(Lean::from_tail(Offset::new(-600.0, 0.0), PROTRUDING).is_ok());
    }

    proptest! {
        #[test]
        fn the_tail_comes_back(x_mm in -400.0..400.0, y_mm in -400.0..400.0) {
            let tail = Offset::new(x_mm, y_mm);
            let again = Lean::from_tail(tail, PROTRUDING).unwrap().tail(PROTRUDING);
            assert_within((again - tail).length().mm(), 0.0, PROTRUDING.mm() * ROUNDING);
        }

        #[test]
        fn the_size_is_that_of_the_tail(aside in 0.0..500.0, clock_deg in 0.0..360.0) {
            let tail = Offset::toward(Angle::from_degrees(clock_deg), Millimetres::new(aside));
            let size = Lean::from_tail(tail, PROTRUDING).unwrap().size();
            let exact_deg = (aside / PROTRUDING.mm()).asin().to_degrees();
            assert_within(size.degrees(), exact_deg, 90.0 * ROUNDING);
        }
    }
}
