//! The unit that a person likes to be answered in.

/// The unit in which a person reads distances on the face.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum FaceUnit {
    /// Millimetres.
    #[default]
    Millimetres,
    /// Centimetres.
    Centimetres,
    /// Inches.
    Inches,
}
