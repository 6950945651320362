//! The archer's own group, from shots of one shaft at one index.

use crate::ArcherReport;
use crate::observation::Observations;

/// How the archer's bare shots scatter about the mean of their shaft and index, ends apart.
pub fn archer_group(_seen: &Observations) -> ArcherReport {
    ArcherReport { spread: None }
}
