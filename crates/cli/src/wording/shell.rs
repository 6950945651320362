//! Commands to type next.

use std::path::Path;

/// `quarterturn next dozen.journal`: the command with the journal's name, in quotes where the shell needs them.
pub fn command(command: &str, journal: &Path) -> String {
    let name = super::visible(&journal.to_string_lossy());
    let plain = |c: char| c.is_alphanumeric() || "._-/".contains(c);
    if name.chars().all(plain) {
        format!("quarterturn {command} {name}")
    } else {
        format!("quarterturn {command} '{}'", name.replace('\'', r"'\''"))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_with_blanks_are_quoted() {
        assert_eq!(command("next", Path::new("a/b.journal")), "quarterturn next a/b.journal");
        assert_eq!(command("next", Path::new("my dozen")), "quarterturn next 'my dozen'");
    }
}
