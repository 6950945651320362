//! What was noted of a shot.

use quarterturn_journal::Word;
use quarterturn_tuning::{Call, Shot};

use super::all;

/// "9: called poor, wind; kept, and left out of the estimates".
pub fn noted(shot: &Shot) -> Option<String> {
    let call = shot.call.map(|call| match call {
        Call::Good => "called good",
        Call::Poor => "called poor",
    });
    let noted: Vec<&str> =
        call.into_iter().chain(shot.flags.iter().map(|flag| flag.word())).collect();
    let left_out = if shot.counts() { "" } else { "; kept, and left out of the estimates" };
    (!noted.is_empty()).then(|| format!("{}: {}{left_out}", shot.shaft, all(noted)))
}
