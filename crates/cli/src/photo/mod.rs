//! Hits from a photo: the marks, the view that they give, and what it says of holes.

mod hit;
#[cfg_attr(not(feature = "photo"), path = "no_picture.rs")]
mod picture;
mod view;

pub use hit::{Among, Hit, hits};
pub use picture::Picture;
pub use view::{By, PhotoView, Reading};
