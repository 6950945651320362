//! A fault with the place where it stands in the text that was typed.

use std::error::Error;
use std::ops::Range;

/// What a fault can say about itself beside its sentence.
pub trait Advising: Error {
    /// What to type instead, where that is known.
    fn way_on(&self) -> Option<String>;
}

/// A fault and the bytes of the text that it is about.
#[derive(Clone, Debug, PartialEq)]
pub struct Located<F> {
    /// What is wrong.
    pub fault: F,
    /// Where: bytes of the text, on character borders; empty where something is missing.
    pub span: Range<usize>,
}

impl<F> Located<F> {
    /// `fault` about the bytes `span`.
    pub fn new(fault: F, span: Range<usize>) -> Self {
        Self { fault, span }
    }

    /// The same, where the text examined began `by` bytes into the whole.
    #[must_use]
    pub fn shifted(self, by: usize) -> Self {
        Self { span: self.span.start + by..self.span.end + by, ..self }
    }

    /// The same place with a fault of a wider kind.
    pub fn widened<G: From<F>>(self) -> Located<G> {
        Located { fault: self.fault.into(), span: self.span }
    }
}
