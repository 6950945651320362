//! A mass in the unit of the trade.

use std::fmt;
use std::iter::Sum;

use crate::BenchError;
use crate::error::above_zero;

/// Exact: the pound of 0.45359237 kg is 7000 grains.
const KILOGRAMS_PER_GRAIN: f64 = 0.453_592_37 / 7000.0;

/// A mass in grains, finite and above zero.
///
/// # Source
/// International yard and pound agreement of 1959; A. Thompson and B. N. Taylor, *Guide for the Use of the
/// International System of Units*, NIST SP 811, 2008, Appendix B: the grain is 64.79891 mg exactly.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Grains(f64);

impl Grains {
    /// A mass of `gr` grains.
    ///
    /// # Errors
    /// [`BenchError::NotAboveZero`].
    pub fn new(gr: f64) -> Result<Self, BenchError> {
        above_zero(gr).map(Self)
    }

    /// The mass in grains.
    pub const fn gr(self) -> f64 {
        self.0
    }

    /// The mass in kilograms.
    pub const fn kilograms(self) -> f64 {
        self.0 * KILOGRAMS_PER_GRAIN
    }
}

/// The mass of what is put together: shaft, insert, point, nock, vanes, wrap and glue.
impl Sum for Grains {
    fn sum<I: Iterator<Item = Self>>(parts: I) -> Self {
        Self(parts.map(Self::gr).sum())
    }
}

/// "450 gr"; a precision given to the formatter rounds the number.
impl fmt::Display for Grains {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)?;
        f.write_str(" gr")
    }
}
