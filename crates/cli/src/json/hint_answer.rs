//! What a journal makes one suspect, as JSON.

use quarterturn_tuning::{Hint, ShaftName};
use serde::Serialize;

use crate::wording;

/// A hint, in words and for other programs.
#[derive(Serialize)]
pub struct HintAnswer<'a> {
    kind: &'static str,
    shafts: Vec<&'a str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    end: Option<usize>,
    text: String,
}

impl<'a> From<&'a Hint> for HintAnswer<'a> {
    fn from(hint: &'a Hint) -> Self {
        Self {
            kind: wording::hint_kind(hint),
            shafts: hint.shafts().iter().map(ShaftName::as_str).collect(),
            end: hint.end(),
            text: wording::hint(hint),
        }
    }
}
