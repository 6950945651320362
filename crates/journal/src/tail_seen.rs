//! What an eye says of a tail.

/// How far a tail stands off, by eye beside the reference's.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TailSeen {
    /// Nothing to be seen: up to 1 cm.
    None,
    /// Some: 1 to 3 cm.
    Some,
    /// Much: more than 3 cm.
    Much,
    /// Off to this side, and nobody looked by how much.
    Side,
}
