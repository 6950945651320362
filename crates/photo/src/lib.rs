//! Finds the four marks of the printed face in a picture of it.
//!
//! - [`Corner`] says how each mark is printed: no two arrangements of them look alike, turned or mirrored.
//! - [`Luminance`] is a picture; with the feature `read`, `Picture` reads one from the bytes of a JPEG or a PNG.
//! - [`Grid`] is what is seen of the printed grid.
//! - [`find`] gives the marks with how well they agree, or says why there is no set that can be taken.
//!
//! The crate is pure: bytes in, marks out.

mod candidate;
mod corner;
mod dot;
mod find;
mod found;
mod fourth;
mod grid;
mod ink;
#[cfg(feature = "read")]
mod jpeg_end;
mod lines;
mod look;
mod luminance;
mod not_found;
mod oval;
#[cfg(feature = "read")]
mod picture;
#[cfg(feature = "read")]
mod picture_error;
mod pitch;
mod region;
mod regions;
mod seen;
mod set;
mod ways;

pub use corner::Corner;
pub use dot::Dot;
pub use find::find;
pub use found::Found;
pub use grid::Grid;
pub use luminance::Luminance;
pub use not_found::NotFound;
#[cfg(feature = "read")]
pub use picture::Picture;
#[cfg(feature = "read")]
pub use picture_error::PictureError;
