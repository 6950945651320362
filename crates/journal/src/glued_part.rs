//! What is glued on a shaft.

/// A part that is glued.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum GluedPart {
    /// The insert, or whatever holds the point.
    #[default]
    Insert,
    /// The vanes.
    Vanes,
    /// Anything else: a collar, a bushing.
    Other,
}
