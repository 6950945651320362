//! Files written whole or not at all.

use std::fs;
use std::io::ErrorKind;
use std::path::{Path, PathBuf};

use quarterturn_journal::{Existing, WriteError, write_whole};

use crate::failure::{Failure, Kind};

/// Writes `content` to the file `path`, whole or not at all; never through a link.
pub fn write(path: &Path, content: impl AsRef<[u8]>, existing: Existing) -> Result<(), Failure> {
    write_whole(path, content.as_ref(), existing).map_err(|error| failed(path, error))
}

/// What is done with a file that exists, where `--force` was said or not.
pub const fn existing(force: bool) -> Existing {
    if force { Existing::Replace } else { Existing::Keep }
}

/// Refuses files that exist, before the first of several is written.
pub fn keep_those_of(paths: &[PathBuf], existing: Existing) -> Result<(), Failure> {
    let there = |path: &&PathBuf| fs::symlink_metadata(path).is_ok();
    match paths.iter().find(there) {
        Some(path) if existing == Existing::Keep => Err(failed(path, WriteError::Exists)),
        _ => Ok(()),
    }
}

fn failed(path: &Path, error: WriteError) -> Failure {
    let path = path.display();
    let failure = |what| Failure::new(Kind::InputOutput, what);
    match error {
        WriteError::Exists => failure(format!("{path} exists already and is not overwritten"))
            .hinting(["choose another name, or say --force"]),
        WriteError::NotPlain => failure(format!("{path} is no plain file and is not replaced"))
            .hinting(["choose another name"]),
        WriteError::Journal => {
            failure(format!("{path} is a journal, and nothing is written over one"))
                .hinting(["choose another name"])
        }
        error => failure(format!("could not write {path}: {error}")),
    }
}

/// Makes the new folder `path`.
pub fn new_folder(path: &Path) -> Result<(), Failure> {
    fs::create_dir(path).map_err(|error| match error.kind() {
        ErrorKind::AlreadyExists => {
            Failure::new(Kind::InputOutput, format!("{} exists already", path.display()))
                .hinting(["name another folder"])
        }
        _ => Failure::new(Kind::InputOutput, format!("could not make {}: {error}", path.display())),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_existing_file_is_kept_unless_it_may_be_replaced() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("target.svg");
        write(&path, "one", Existing::Keep).unwrap();
        assert!(write(&path, "two", Existing::Keep).is_err());
        assert_eq!(fs::read_to_string(&path).unwrap(), "one");
        write(&path, "three", Existing::Replace).unwrap();
        assert_eq!(fs::read_to_string(&path).unwrap(), "three");
        assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1);
    }

    #[cfg(unix)]
    #[test]
    fn a_link_is_neither_followed_nor_replaced() {
        let folder = tempfile::tempdir().unwrap();
        let (aim, link) = (folder.path().join("letters"), folder.path().join("target.svg"));
        fs::write(&aim, "mine").unwrap();
        std::os::unix::fs::symlink(&aim, &link).unwrap();
        for existing in [Existing::Keep, Existing::Replace] {
            assert!(write(&link, "one", existing).is_err());
        }
        assert_eq!(fs::read_to_string(&aim).unwrap(), "mine");
        assert!(fs::symlink_metadata(&link).unwrap().is_symlink());
        assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 2);
    }

    #[test]
    fn a_folder_that_is_not_there_is_named() {
        let failure = write(Path::new("/nowhere/at/all.svg"), "", Existing::Keep).unwrap_err();
        assert!(failure.what.contains("/nowhere/at/all.svg"), "{}", failure.what);
    }
}
