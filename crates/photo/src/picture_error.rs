//! Why bytes are not taken for a picture.

use thiserror::Error;

/// Why bytes are not taken for a picture.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
#[non_exhaustive]
pub enum PictureError {
    /// No bytes at all.
    #[error("it is empty")]
    Empty,
    /// Neither of the two kinds that are read.
    #[error("it is neither a JPEG nor a PNG")]
    OtherKind,
    /// More pixels than are read.
    #[error("it has {width} × {height} pixels, and at most {most} million are read")]
    TooLarge {
        /// Pixels across.
        width: u32,
        /// Pixels up and down.
        height: u32,
        /// Million pixels.
        most: u64,
    },
    /// It begins as a picture and does not go on as one.
    #[error("it is damaged or cut off: {reason}")]
    Damaged {
        /// What the decoder says.
        reason: String,
    },
}
