//! Who a tuning is played to.

use quarterturn_tuning::Step;

use crate::failure::Failure;

/// Whether a tuning is played on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Going {
    /// It is.
    On,
    /// Somebody has seen enough.
    Stop,
}

/// Who a tuning is played to.
pub trait Audience {
    /// A step was asked for by `command` and is about to be done, if the audience says so.
    fn asked(&mut self, command: &str, screen: &str, step: &Step) -> Result<Going, Failure>;

    /// Something was done with `command`.
    fn done(&mut self, command: &str, screen: &str) -> Result<(), Failure>;
}
