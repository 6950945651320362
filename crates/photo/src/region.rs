//! Pixels of one kind that hang together.

use crate::oval::Oval;

/// A region of ink or of paper.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Region {
    /// What it is of.
    pub of: Of,
    /// Its pixels.
    pub oval: Oval,
    /// The region round about it; none where it reaches the left edge with its highest row.
    pub around: Option<usize>,
    /// What lies within it, by the sums of its pixels.
    pub within: Oval,
}

/// What a pixel is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Of {
    /// Darker than what is round about it.
    Ink,
    /// All else.
    Paper,
}
