//! Files written whole or not at all.

use std::fs::{self, OpenOptions};
use std::io::{self, ErrorKind, Write};
use std::path::{Path, PathBuf};

use crate::failure::{Failure, Kind};

/// What to do where the file exists already.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Existing {
    /// Leave it and say so.
    Keep,
    /// Put the new one in its place.
    Replace,
}

/// Writes `content` to `path`: beside it first, then in one step to its place.
pub fn write(path: &Path, content: impl AsRef<[u8]>, existing: Existing) -> Result<(), Failure> {
    let failed = |error: io::Error| match error.kind() {
        ErrorKind::AlreadyExists => {
            let what = format!("{} exists already and is not overwritten", path.display());
            Failure::new(Kind::InputOutput, what).hinting(["choose another name, or say --force"])
        }
        _ => {
            Failure::new(Kind::InputOutput, format!("could not write {}: {error}", path.display()))
        }
    };
    let beside = beside(path);
    let written = fill(&beside, content.as_ref()).and_then(|()| place(&beside, path, existing));
    // Where all went well the file beside it is gone already.
    let _ = fs::remove_file(&beside);
    written.map_err(failed)
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

/// A name in the same folder that nobody else uses.
fn beside(path: &Path) -> PathBuf {
    let mut name = path.file_name().unwrap_or_default().to_owned();
    name.push(format!(".{}.part", std::process::id()));
    path.with_file_name(name)
}

fn fill(path: &Path, content: &[u8]) -> io::Result<()> {
    let mut file = OpenOptions::new().write(true).create(true).truncate(true).open(path)?;
    file.write_all(content)?;
    file.sync_all()
}

fn place(beside: &Path, path: &Path, existing: Existing) -> io::Result<()> {
    // A link that leads nowhere is somebody's file too.
    if existing == Existing::Keep && fs::symlink_metadata(path).is_ok() {
        return Err(ErrorKind::AlreadyExists.into());
    }
    fs::rename(beside, path)
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

    #[test]
    fn a_folder_that_is_not_there_is_named() {
        let failure = write(Path::new("/nowhere/at/all.svg"), "", Existing::Keep).unwrap_err();
        assert!(failure.what.contains("/nowhere/at/all.svg"), "{}", failure.what);
    }
}
