//! Hits from a photo: the marks, the view that they give, and what it says of holes and tails.

mod camera;
mod hit;
mod holes;
#[cfg_attr(not(feature = "photo"), path = "no_picture.rs")]
mod picture;
mod tails;
mod view;

pub use camera::{KnownLens, PhotoCamera};
pub use hit::{Among, Hit, hits};
pub use holes::Holes;
pub use picture::Picture;
pub use tails::{NoLean, Tail, tails};
pub use view::{By, PhotoView, Reading};

/// All that a photo says.
pub struct Seen<'a> {
    /// The view of the face.
    pub photo: &'a PhotoView,
    /// The camera, where a tail was read.
    pub camera: Option<&'a PhotoCamera>,
    /// The arrows.
    pub hits: &'a [Hit],
}
