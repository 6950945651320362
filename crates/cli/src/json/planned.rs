//! A planned shot as JSON.

use quarterturn_tuning::{PlannedShot, Purpose};
use serde::Serialize;

/// One shot of the end to shoot.
#[derive(Serialize)]
pub struct Planned<'a> {
    shaft: &'a str,
    #[serde(skip_serializing_if = "Option::is_none")]
    index_deg: Option<f64>,
}

impl<'a> From<&'a PlannedShot> for Planned<'a> {
    fn from(shot: &'a PlannedShot) -> Self {
        let index_deg = match shot.purpose {
            Purpose::Reference => None,
            Purpose::Bare { index, .. } => Some(index.degrees()),
        };
        Self { shaft: shot.shaft.as_str(), index_deg }
    }
}
