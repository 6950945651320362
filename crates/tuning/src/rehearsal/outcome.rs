//! What came of a dozen that was played.

use quarterturn_geometry::{Millimetres, Offset};

use super::{Fate, Said};

/// What it took, and what became of each shaft.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Outcome {
    /// All shots, those of references too.
    pub shots: usize,
    /// Shots of bare shafts.
    pub bare_shots: usize,
    /// Walks to the butt.
    pub ends: usize,
    /// Evenings, each as long as the policy bears.
    pub evenings: usize,
    /// Turns of a nock.
    pub turns: usize,
    /// The first time that the bow was to be moved.
    pub bow_asked: Option<BowAsked>,
    /// What was said after the sixth end, and whether it was true.
    pub said: Vec<Said>,
    /// What became of each shaft, in the order of the setup.
    pub shafts: Vec<Fate>,
}

/// When the bow was to be moved, and where it stood.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BowAsked {
    /// After so many bare shots.
    pub after_bare_shots: usize,
    /// Where bare shafts as a whole truly landed then, from the reference.
    pub offset: Offset,
}

impl BowAsked {
    /// Whether the bow was near enough: within half the tolerance.
    pub fn is_false(&self, tolerance: Millimetres) -> bool {
        self.offset.length() < tolerance * 0.5
    }
}
