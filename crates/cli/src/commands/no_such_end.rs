//! An end was named that the journal has not.

use crate::failure::{Failure, Kind};

/// Says which ends there are.
pub fn no_such_end(end: usize, ends: usize) -> Failure {
    let failure = Failure::new(Kind::Data, format!("there is no end {end} in this journal"));
    failure.hinting([match ends {
        0 => "no end was entered yet".to_owned(),
        1 => "it has one end, end 1".to_owned(),
        _ => format!("it has ends 1 to {ends}; `log` shows them"),
    }])
}
