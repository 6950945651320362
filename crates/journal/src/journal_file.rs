//! What is done to the file of a journal that stands.

use std::io::{self, ErrorKind, Read, Seek, SeekFrom};
use std::path::{Path, PathBuf};

use crate::whole_file::put_numbered;
use crate::{JournalError, Storage, StoredFile, WriteError};

/// Opens the journal to be read from its beginning.
pub(crate) fn reader<S: Storage>(storage: &S, path: &Path) -> Result<S::File, JournalError> {
    storage.open(path).map_err(|error| match error.kind() {
        ErrorKind::NotFound => JournalError::Missing { path: path.to_owned() },
        _ => JournalError::io("open", path)(error),
    })
}

/// The bytes of the journal from `from` on.
pub(crate) fn bytes<S: Storage>(
    storage: &S,
    path: &Path,
    from: u64,
) -> Result<Vec<u8>, JournalError> {
    let read = |mut file: S::File| {
        let mut bytes = Vec::new();
        file.seek(SeekFrom::Start(from))?;
        file.read_to_end(&mut bytes)?;
        Ok(bytes)
    };
    read(reader(storage, path)?).map_err(JournalError::io("read", path))
}

/// Writes `bytes` at the end of the journal of `length` bytes and syncs them; where that fails, cuts them off again.
pub(crate) fn append<S: Storage>(
    storage: &S,
    path: &Path,
    length: u64,
    bytes: &[u8],
) -> Result<(), WriteError> {
    // Whoever gave the journal its name may have been stopped before the name was on the disk.
    storage.sync_folder(path).map_err(WriteError::Nothing)?;
    let mut file = storage.open_to_append(path).map_err(WriteError::Nothing)?;
    if let Err(source) = write_at_end(&mut file, length, bytes) {
        return Err(match cut(&mut file, length) {
            Ok(()) => WriteError::Nothing(source),
            Err(_) => WriteError::Uncertain(source),
        });
    }
    file.sync().map_err(|source| {
        // It must not be read as if it were there. Whether that holds after a power cut is as uncertain as the rest.
        let _ = cut(&mut file, length);
        WriteError::Uncertain(source)
    })
}

/// Writes `bytes` behind the `length` bytes of a file.
pub(crate) fn write_at_end(
    file: &mut impl StoredFile,
    length: u64,
    bytes: &[u8],
) -> io::Result<()> {
    file.write_all(bytes)?;
    let whole = file.length()? == length + bytes.len() as u64;
    // A disk may say that it took bytes it did not take.
    if whole { Ok(()) } else { Err(ErrorKind::WriteZero.into()) }
}

/// Moves what follows the first `length` bytes of the journal into a file of its own, and says which.
pub(crate) fn set_aside<S: Storage>(
    storage: &S,
    path: &Path,
    length: u64,
) -> Result<PathBuf, JournalError> {
    let torn = bytes(storage, path, length)?;
    let kept = put_numbered(storage, path, "torn", &torn);
    let kept = kept.map_err(|error| error.of_journal(path))?;
    let mut file = storage.open_to_append(path).map_err(JournalError::io("write to", path))?;
    cut(&mut file, length).map_err(JournalError::io("cut back", path))?;
    Ok(kept)
}

fn cut(file: &mut impl StoredFile, length: u64) -> io::Result<()> {
    file.cut(length).and_then(|()| file.sync())
}

#[cfg(all(test, target_os = "linux"))]
mod tests {
    use std::path::Path;

    use super::append;
    use crate::{Disk, WriteError};

    #[test]
    fn what_cannot_be_cut_off_again_is_not_confirmed() {
        // Every write to this device finds the disk full, and it has no length to cut back to.
        let error = append(&Disk, Path::new("/dev/full"), 0, b"{}\n").unwrap_err();
        assert!(matches!(error, WriteError::Uncertain(_)), "{error}");
    }
}
