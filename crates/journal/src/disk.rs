//! Every access to the journal's file and to what is set aside from it.

use std::fs::{self, File};
use std::io::{self, BufReader, ErrorKind, Read, Seek, SeekFrom, Write};
use std::path::{Path, PathBuf};

use crate::JournalError;

/// `name.kind` beside the file `name`.
pub(crate) fn beside(path: &Path, kind: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(".");
    name.push(kind);
    name.into()
}

/// Opens the journal to be read from its beginning.
pub(crate) fn reader(path: &Path) -> Result<BufReader<File>, JournalError> {
    File::open(path).map(BufReader::new).map_err(|error| match error.kind() {
        ErrorKind::NotFound => JournalError::Missing { path: path.to_owned() },
        _ => JournalError::io("open", path)(error),
    })
}

/// How many bytes the journal has.
pub(crate) fn length(path: &Path) -> Result<u64, JournalError> {
    fs::metadata(path).map(|file| file.len()).map_err(JournalError::io("look at", path))
}

/// The bytes of the journal from `from` on, at most `most` of them.
pub(crate) fn bytes(path: &Path, from: u64, most: u64) -> Result<Vec<u8>, JournalError> {
    let read = |mut file: File| {
        let mut bytes = Vec::new();
        file.seek(SeekFrom::Start(from))?;
        file.take(most).read_to_end(&mut bytes)?;
        Ok(bytes)
    };
    File::open(path).and_then(read).map_err(JournalError::io("read", path))
}

/// Makes the new file `path` with these bytes, synced like the folder that it stands in; whole or not at all.
pub(crate) fn create(path: &Path, bytes: &[u8]) -> Result<(), JournalError> {
    let mut file = File::create_new(path).map_err(|error| match error.kind() {
        ErrorKind::AlreadyExists => JournalError::Exists { path: path.to_owned() },
        _ => JournalError::io("create", path)(error),
    })?;
    let written = file.write_all(bytes).and_then(|()| file.sync_all());
    written.and_then(|()| sync_folder(path)).map_err(|source| {
        // What could not be confirmed must not stand in the way of the next try.
        match fs::remove_file(path) {
            Ok(()) => JournalError::NotRecorded { path: path.to_owned(), source },
            Err(_) => JournalError::NotConfirmed { path: path.to_owned(), source },
        }
    })
}

/// Writes `bytes` at the end of the journal of `length` bytes and syncs them; if that fails, cuts them off again.
pub(crate) fn append(path: &Path, length: u64, bytes: &[u8]) -> Result<(), JournalError> {
    let mut file = open_to_write(path)?;
    file.write_all(bytes).and_then(|()| file.sync_data()).map_err(|source| {
        match cut(&file, length) {
            Ok(()) => JournalError::NotRecorded { path: path.to_owned(), source },
            Err(_) => JournalError::NotConfirmed { path: path.to_owned(), source },
        }
    })
}

/// Moves what follows the first `length` bytes of the journal into a file of its own, and says which.
pub(crate) fn set_aside(path: &Path, length: u64) -> Result<PathBuf, JournalError> {
    let torn = bytes(path, length, u64::MAX)?;
    let kept = (1_u32..).map(|n| beside(path, &format!("torn-{n}")));
    let kept = kept
        .map(|kept| create(&kept, &torn).map(|()| kept))
        .find(|kept| !matches!(kept, Err(JournalError::Exists { .. })));
    let kept = kept.unwrap_or_else(|| Err(JournalError::Exists { path: path.to_owned() }))?;
    cut(&open_to_write(path)?, length).map_err(JournalError::io("cut back", path))?;
    Ok(kept)
}

fn open_to_write(path: &Path) -> Result<File, JournalError> {
    File::options().append(true).open(path).map_err(JournalError::io("write to", path))
}

fn cut(file: &File, length: u64) -> io::Result<()> {
    file.set_len(length).and_then(|()| file.sync_all())
}

/// Syncs the folder that `path` stands in, so that its name survives too.
#[cfg(unix)]
fn sync_folder(path: &Path) -> io::Result<()> {
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty());
    File::open(folder.unwrap_or(Path::new(".")))?.sync_all()
}

/// A folder cannot be opened here, and the system keeps names by itself.
#[cfg(not(unix))]
fn sync_folder(_path: &Path) -> io::Result<()> {
    Ok(())
}

#[cfg(all(test, target_os = "linux"))]
mod tests {
    use std::path::Path;

    use super::append;
    use crate::JournalError;

    #[test]
    fn what_cannot_be_cut_off_again_is_not_confirmed() {
        // Every write to this device finds the disk full, and it has no length to cut back to.
        let error = append(Path::new("/dev/full"), 0, b"{}\n").unwrap_err();
        assert!(matches!(error, JournalError::NotConfirmed { .. }), "{error}");
    }
}
