//! The number of positions as it is typed: `12`, or `any` for the finest.

use quarterturn_geometry::Positions;

/// Reads a number of positions; whether a nock can be set to so many is settled by the journal.
pub fn positions(text: &str) -> Result<u16, &'static str> {
    match text {
        "any" => Ok(Positions::FINEST.count()),
        _ => text.parse().map_err(|_| "a number from 1 to 72 is expected, or any"),
    }
}
