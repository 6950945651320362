//! The journals of a folder.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

/// The files of `folder` whose names end in `.journal`, sorted by name.
///
/// # Errors
/// What the system says where the folder cannot be read.
pub fn journals_in(folder: &Path) -> io::Result<Vec<PathBuf>> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        if path.extension().is_some_and(|ending| ending == "journal") && path.is_file() {
            found.push(path);
        }
    }
    found.sort();
    Ok(found)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_files_of_that_name_sorted() {
        let folder = tempfile::tempdir().unwrap();
        for name in ["b.journal", "a.journal", "a.journal.lock", "a.csv"] {
            fs::write(folder.path().join(name), "").unwrap();
        }
        fs::create_dir(folder.path().join("c.journal")).unwrap();
        let names = ["a.journal", "b.journal"].map(|name| folder.path().join(name));
        assert_eq!(journals_in(folder.path()).unwrap(), names);
        assert!(journals_in(&folder.path().join("nowhere")).is_err());
    }
}
