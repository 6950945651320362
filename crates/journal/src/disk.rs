//! The real disk.

use std::fs::{self, File, TryLockError};
use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};

use crate::{Existing, Storage, StoredFile};

/// The disk of this computer.
#[derive(Clone, Copy, Debug, Default)]
pub struct Disk;

impl Storage for Disk {
    type File = File;

    fn resolve(&self, path: &Path) -> io::Result<PathBuf> {
        let link = fs::symlink_metadata(path).is_ok_and(|file| file.is_symlink());
        if link { fs::canonicalize(path) } else { Ok(path.to_owned()) }
    }

    fn open(&self, path: &Path) -> io::Result<File> {
        File::open(path)
    }

    fn open_to_append(&self, path: &Path) -> io::Result<File> {
        File::options().append(true).open(path)
    }

    fn open_lock(&self, path: &Path) -> io::Result<File> {
        File::options().read(true).write(true).create(true).truncate(false).open(path)
    }

    fn create(&self, path: &Path) -> io::Result<File> {
        File::create_new(path)
    }

    fn rename(&self, from: &Path, to: &Path, existing: Existing) -> io::Result<()> {
        match existing {
            Existing::Keep => name_anew(from, to),
            Existing::Replace => {
                // The new file is for the same eyes as the one in whose place it is put.
                if let Ok(replaced) = fs::metadata(to) {
                    fs::set_permissions(from, replaced.permissions())?;
                }
                fs::rename(from, to)
            }
        }
    }

    fn remove(&self, path: &Path) -> io::Result<()> {
        fs::remove_file(path)
    }

    #[cfg(unix)]
    fn sync_folder(&self, path: &Path) -> io::Result<()> {
        let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty());
        File::open(folder.unwrap_or(Path::new(".")))?.sync_all()
    }

    /// A folder cannot be opened here, and the system keeps names by itself.
    #[cfg(not(unix))]
    fn sync_folder(&self, _path: &Path) -> io::Result<()> {
        Ok(())
    }
}

/// A second name for the file fails where something has it already, which a rename does not.
fn name_anew(from: &Path, to: &Path) -> io::Result<()> {
    match fs::hard_link(from, to) {
        Ok(()) => {
            // It has its name; that the other one stays too is only untidy.
            let _ = fs::remove_file(from);
            Ok(())
        }
        Err(error) if error.kind() == ErrorKind::AlreadyExists => Err(error),
        // On a card formatted for a camera a file has one name only.
        Err(_) if fs::symlink_metadata(to).is_ok() => Err(ErrorKind::AlreadyExists.into()),
        Err(_) => fs::rename(from, to),
    }
}

impl StoredFile for File {
    fn length(&self) -> io::Result<u64> {
        self.metadata().map(|file| file.len())
    }

    fn cut(&mut self, length: u64) -> io::Result<()> {
        self.set_len(length)
    }

    fn sync(&mut self) -> io::Result<()> {
        self.sync_data()
    }

    fn try_lock(&self) -> Result<(), TryLockError> {
        Self::try_lock(self)
    }
}
