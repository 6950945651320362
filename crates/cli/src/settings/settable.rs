//! Which options can be set: those that a person would say the same way each time.

/// The commands and their options.
pub const COMMANDS: [(&str, &[&str]); 8] = [
    (
        "new",
        &[
            "reference",
            "distance",
            "tolerance",
            "units",
            "arrows-per-end",
            "shots-per-evening",
            "turns-per-nock",
            "positions",
            "bow",
            "release",
            "hand",
        ],
    ),
    ("paper", &["paper", "measured", "diameter", "units"]),
    ("cut", &["kerf", "squaring"]),
    ("fletch", &["rest", "vanes", "vane-angle"]),
    ("verify", &["eye-to-pin"]),
    ("heads", &["together"]),
    ("reach", &["plate", "chance"]),
    ("rehearse", &["group", "distance", "tolerance", "units", "arrows-per-end"]),
];
