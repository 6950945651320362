//! Which observations stand out. A flag deletes nothing: it says what would change without the observation.

mod generalized_esd;
mod grubbs;
mod minimum_covariance_determinant;

pub use generalized_esd::{EsdStep, GeneralizedEsd, generalized_esd};
pub use grubbs::{GrubbsTest, Side, grubbs_critical_value, grubbs_test};
pub use minimum_covariance_determinant::{Coverage, MinimumCovarianceDeterminant, PlanarFlag};
