//! How much an import added, as JSON.

use serde::Serialize;

use crate::failure::Failure;
use crate::screens::Imported;

#[derive(Serialize)]
struct ImportAnswer {
    schema: &'static str,
    dry_run: bool,
    ends: usize,
    shots: usize,
    other_entries: usize,
    known_entries: usize,
}

/// What was imported; or, of a dry run, what would be.
pub fn imported(imported: Imported, dry_run: bool) -> Result<String, Failure> {
    let Imported { ends, shots, others, known } = imported;
    super::line(&ImportAnswer {
        schema: "quarterturn.import/1",
        dry_run,
        ends,
        shots,
        other_entries: others,
        known_entries: known,
    })
}
