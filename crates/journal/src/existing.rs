//! What becomes of a file where a new one is to stand.

/// What to do where the file exists already.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Existing {
    /// Leave it and say so.
    Keep,
    /// Put the new one in its place.
    Replace,
}
