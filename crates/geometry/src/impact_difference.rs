//! How the impact of a bare shaft differs from that of the fletched reference.

use crate::{Lean, Offset};

/// The impact of a bare shaft relative to the fletched reference's, bare minus reference in both
/// parts ([conventions](crate#conventions)).
///
/// It comes from subtracting two impacts. The size and the clock direction of the impact angle are
/// those of the lean.
///
/// # Example
/// ```
/// use quarterturn_geometry::{Impact, Lean, Point};
///
/// let bare = Impact { at: Point::new(31.0, 8.0), lean: Some(Lean::from_degrees(-2.5, 4.0)) };
/// let reference = Impact { at: Point::new(3.0, -12.0), lean: Some(Lean::from_degrees(0.5, 0.0)) };
///
/// let miss = bare - reference;
/// assert_eq!((miss.offset.x_mm, miss.offset.y_mm), (28.0, 20.0)); // right and high
/// let angle = miss.lean.unwrap();
/// assert_eq!(format!("{:.1}", angle.size().degrees()), "5.0");
/// assert_eq!(format!("{:.0}", angle.clock_angle().degrees()), "323"); // tail left and high
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ImpactDifference {
    /// From the reference's hole to the bare shaft's.
    pub offset: Offset,
    /// The impact angle: the bare shaft's lean as seen from the reference's; unknown unless both
    /// were read.
    pub lean: Option<Lean>,
}

#[cfg(test)]
mod tests {
    use crate::{Impact, Lean, Point};

    #[test]
    fn an_unread_lean_stays_unknown() {
        let read = Impact { at: Point::SPOT, lean: Some(Lean::default()) };
        let unread = Impact { lean: None, ..read };
        assert_eq!((read - unread).lean, None);
        assert_eq!((unread - read).lean, None);
        assert_eq!((read - read).lean, Some(Lean::default()));
    }
}
