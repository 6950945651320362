//! The only place that reads the clock and draws by chance.

use std::collections::hash_map::RandomState;
use std::hash::BuildHasher;

use jiff::ZonedDateTime;
use quarterturn_journal::{RecordId, Stamp, Timestamp};

use crate::failure::{Failure, Kind};

/// The stamp of a record that is written now: the time on the wall with its zone, and a new id.
pub fn stamp() -> Result<Stamp, Failure> {
    // The hasher's random keys are the standard library's only source of chance.
    let id = RecordId::from_bits(RandomState::new().hash_one("record"));
    Ok(Stamp { id, time: now()? })
}

/// A number by chance, short enough to be typed again.
pub fn seed() -> u32 {
    let [one, other, ..] = RandomState::new().hash_one("seed").to_le_bytes();
    u16::from_le_bytes([one, other]).into()
}

/// The moment, to hold a time against that something has to wait for.
pub fn moment() -> jiff::Timestamp {
    jiff::Timestamp::now()
}

fn now() -> Result<Timestamp, Failure> {
    let time = ZonedDateTime::now().strftime("%Y-%m-%dT%H:%M:%S%:z").to_string();
    time.parse().map_err(|_| {
        let failure = Failure::new(Kind::InputOutput, format!("the clock says {time}"));
        failure.hinting(["set the date of this computer"])
    })
}
