//! The median of a sample.

use crate::Sample;
use crate::order_statistics::neighbours;

impl Sample {
    /// The middle value, or the mean of the two in the middle.
    pub fn median(&self) -> f64 {
        let values = self.values();
        let (low, high) = neighbours(self.n(), |at| values[at], (self.n() - 1) / 2);
        if self.n() % 2 == 1 { low } else { low + 0.5 * (high - low) }
    }
}
