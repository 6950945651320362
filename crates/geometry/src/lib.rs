//! Plane geometry of the target face.

mod angle;
mod error;
mod index;
mod lean;
mod millimetres;
mod offset;
mod point;
mod positions;

pub use angle::Angle;
pub use error::GeometryError;
pub use index::Index;
pub use lean::Lean;
pub use millimetres::Millimetres;
pub use offset::Offset;
pub use point::Point;
pub use positions::Positions;
