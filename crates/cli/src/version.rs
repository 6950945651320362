//! What `--version` says: the version, the commit, what was built in, and the format of journals.

use quarterturn_journal::FORMAT;

/// The parts that a build may leave out, and whether this one has them.
const PARTS: [(&str, bool); 0] = [];

/// The lines behind the program's name.
pub fn version() -> String {
    let commit =
        option_env!("QUARTERTURN_COMMIT").map_or(String::new(), |commit| format!(" ({commit})"));
    let parts: Vec<_> = PARTS
        .iter()
        .map(|(name, built)| format!("{name} {}", if *built { "yes" } else { "no" }))
        .collect();
    let parts = if parts.is_empty() {
        String::new()
    } else {
        format!("\nbuilt with: {}", parts.join(", "))
    };
    format!("{}{commit}{parts}\njournal format: {FORMAT}", env!("CARGO_PKG_VERSION"))
}
