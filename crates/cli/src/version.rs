//! What `--version` says: the version, the commit, what was built in, and the format of journals.

use quarterturn_journal::FORMAT;

/// The parts that a build may leave out, and whether this one has them.
const PARTS: [(&str, bool); 2] =
    [("photo", cfg!(feature = "photo")), ("png", cfg!(feature = "png"))];

/// The lines behind the program's name.
pub fn version() -> String {
    let commit = option_env!("QUARTERTURN_COMMIT").unwrap_or("no commit known");
    let part = |(name, built): &(&str, bool)| {
        format!("{} {name}", if *built { "with" } else { "without" })
    };
    let parts = PARTS.iter().map(part).collect::<Vec<_>>().join(", ");
    format!("{} ({commit})\nbuilt {parts}\njournal format: {FORMAT}", env!("CARGO_PKG_VERSION"))
}
