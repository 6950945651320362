//! Plane geometry of the target face: hits, leans, clock readings and the index of a shaft.
//!
//! Nothing here knows of bows: a face is any flat thing with points on it, a shaft anything that stands out of it.
//! Pure functions on small values. Positions, displacements, angles, lengths and marks are types of
//! their own, valid by construction where a value can be impossible; a raw number carries its unit
//! in its name.
//!
//! # Example
//! A bare shaft beside the fletched reference, hit and tail read by the clock:
//!
//! ```
//! use quarterturn_geometry::{ClockReading, Impact, Index, Lean, Millimetres, Point};
//!
//! let outside = Millimetres::from_cm(60.0); // shaft from the face to the nock
//! let hit = ClockReading::new(2.0, Millimetres::from_cm(8.0))?.offset();
//! let tail = ClockReading::new(10.0, Millimetres::from_cm(2.0))?.offset();
//! let bare = Impact { at: Point::SPOT + hit, lean: Some(Lean::from_tail(tail, outside)?) };
//! let reference = Impact { at: Point::new(3.0, -12.0), lean: Some(Lean::from_degrees(0.5, 0.0)) };
//!
//! let miss = bare - reference;
//! assert_eq!(format!("{:.0}", miss.offset.length()), "84 mm");
//! assert_eq!(format!("{:.1}", ClockReading::of(miss.offset).hour()), "1.7");
//! let angle = miss.lean.expect("both leans were read");
//! assert_eq!(format!("{:.1} deg", angle.size().degrees()), "2.4 deg");
//!
//! // What is fixed to the shaft turns with its mark, here from 12 to 4 o'clock.
//! let turned = miss.offset.rotated(-Index::from_hour(4.0).angle());
//! assert_eq!(format!("{:.1}", ClockReading::of(turned).hour()), "5.7");
//! # Ok::<(), quarterturn_geometry::GeometryError>(())
//! ```
//!
//! # Function, source, check
//! | function | source | checked against |
//! |---|---|---|
//! | [`Millimetres`], its units | international yard and pound agreement 1959; NIST SP 811, Appendix B | the exact definitions; every unit there and back |
//! | [`Index`] | its own definition | what people type comes back to the last digit; the way back is the way there |
//! | [`Offset::rotated`] | rotation matrix | scipy `Rotation`, `fixtures/geometry/rotations.json`; keeps lengths, composes |
//! | [`ClockReading`] | polar coordinates | there and back from both sides |
//! | [`ReadingResolution`] | variance of rounding, GUM 2008, 4.3.7 | all that may have been read, evenly spread; by hand; turns with what was read |
//! | [`Lean::from_tail`] | arc sine | 1 cm at 60 cm is 0.955 degrees; there and back |
//! | [`Lean::size`], [`Lean::clock_angle`] | the angle in space | sines of 0.3 and 0.4 make one of 0.5; the size of the tail |
//! | [`ShaftDirection`], [`Lean::relative_to`] | the smallest rotation that makes the reference straight | scipy `Rotation`, `fixtures/geometry/leans.json`; the same on tilted faces and from a height |
//! | [`Homography`] | Hartley and Zisserman 2004, algorithms 4.2 and 4.3, section 5.2 | `OpenCV`, scikit-image and scipy, `fixtures/geometry/homographies.json`; planted views; coverage by simulation |
//! | [`Camera`] | Zhang 2000; Hartley and Zisserman 2004, chapter 8 | `OpenCV`, `fixtures/geometry/cameras.json`; planted leans; coverage by simulation |
//! | [`Ellipse::new`] | LAPACK, DLAEV2 | numpy `eigh` and mpmath, `fixtures/geometry/ellipses.json`; Johnson and Wichern, example 6.3 |
//! | [`Ellipse::boundary`], [`Ellipse::contains`] | Mahalanobis distance | the distance by the inverse covariance |
//!
#![doc = include_str!("../../../docs/conventions.md")]

mod angle;
mod camera;
mod clock;
mod ellipse;
mod error;
mod homography;
mod impact;
mod impact_difference;
mod index;
mod lean;
mod millimetres;
mod offset;
mod point;
mod positions;
mod principal_axes;
mod reading_resolution;
mod shaft_direction;
mod tail;
#[cfg(test)]
mod tolerance;
mod wrap;

pub use angle::Angle;
pub use camera::{Camera, Lens, SeenLean, SeenShaft, TailError};
pub use clock::ClockReading;
pub use ellipse::Ellipse;
pub use error::GeometryError;
pub use homography::{Homography, Mark, MarkError, Pixel};
pub use impact::Impact;
pub use impact_difference::ImpactDifference;
pub use index::Index;
pub use lean::Lean;
pub use millimetres::Millimetres;
pub use offset::Offset;
pub use point::Point;
pub use positions::Positions;
pub use reading_resolution::ReadingResolution;
pub use shaft_direction::ShaftDirection;
