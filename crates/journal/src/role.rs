//! What an arrow is in a journal.

/// Whether an arrow is looked at or looked from.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Role {
    /// A bare shaft.
    #[default]
    Bare,
    /// A fletched arrow that is trusted.
    Reference,
}
