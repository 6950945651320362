//! So many out of so many.

use std::fmt;

/// A count of cases in which something held.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Share {
    pub hits: usize,
    pub of: usize,
}

impl Share {
    pub fn count(&mut self, holds: bool) {
        self.hits += usize::from(holds);
        self.of += 1;
    }

    pub fn join(self, other: Self) -> Self {
        Self { hits: self.hits + other.hits, of: self.of + other.of }
    }

    /// Nothing out of nothing is no share: not a number.
    pub fn ratio(self) -> f64 {
        self.hits as f64 / self.of as f64
    }

    pub fn percent(self) -> f64 {
        100.0 * self.ratio()
    }
}

impl FromIterator<bool> for Share {
    fn from_iter<I: IntoIterator<Item = bool>>(cases: I) -> Self {
        let mut share = Self::default();
        cases.into_iter().for_each(|holds| share.count(holds));
        share
    }
}

/// "4.3 %", or a dash for nothing out of nothing.
impl fmt::Display for Share {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.of == 0 { f.pad("-") } else { f.pad(&format!("{:.1} %", self.percent())) }
    }
}
