//! The names that a journal knows.

use quarterturn_tuning::{Setup, ShaftName};

use crate::What;

/// Every shaft and reference, in the order in which they were named.
pub(crate) fn all(setup: &Setup) -> impl Iterator<Item = &ShaftName> {
    setup.shafts.iter().map(|(name, _)| name).chain(&setup.references)
}

/// The shaft or reference that is called `name`.
pub(crate) fn known(setup: &Setup, name: &str) -> Result<ShaftName, What> {
    all(setup).find(|known| known.as_str() == name).cloned().ok_or_else(|| What::UnknownShaft {
        name: name.to_owned(),
        known: all(setup).cloned().collect(),
    })
}
