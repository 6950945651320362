//! What a journal asks of a disk: its only way to files, so that a test can put a failing disk in its place.

use std::fs::TryLockError;
use std::io::{self, Read, Seek, Write};
use std::path::{Path, PathBuf};

use crate::Existing;

/// A disk with files and folders. [`Disk`](crate::Disk) is the real one.
pub trait Storage {
    /// An open file.
    type File: StoredFile;

    /// The file that `path` leads to, where it is a link; else `path` itself.
    ///
    /// # Errors
    /// What the system says of a link that leads nowhere.
    fn resolve(&self, path: &Path) -> io::Result<PathBuf>;

    /// Opens the file `path`, which is there, to be read.
    ///
    /// # Errors
    /// What the system says.
    fn open(&self, path: &Path) -> io::Result<Self::File>;

    /// Opens the file `path`, which is there, to be written at its end.
    ///
    /// # Errors
    /// What the system says.
    fn open_to_append(&self, path: &Path) -> io::Result<Self::File>;

    /// Opens the file `path` as a lock: to be read and written, and made where it is not there.
    ///
    /// # Errors
    /// What the system says.
    fn open_lock(&self, path: &Path) -> io::Result<Self::File>;

    /// Makes the new file `path` and opens it to be written.
    ///
    /// # Errors
    /// [`AlreadyExists`](io::ErrorKind::AlreadyExists) where anything stands there, a link too; else what the system
    /// says.
    fn create(&self, path: &Path) -> io::Result<Self::File>;

    /// Gives the file `from` the name `to`, in one step as others see it.
    ///
    /// # Errors
    /// [`AlreadyExists`](io::ErrorKind::AlreadyExists) where something stands there that must be kept; else what the
    /// system says.
    fn rename(&self, from: &Path, to: &Path, existing: Existing) -> io::Result<()>;

    /// Removes the file `path`.
    ///
    /// # Errors
    /// What the system says.
    fn remove(&self, path: &Path) -> io::Result<()>;

    /// Syncs the folder that `path` stands in, so that the names in it survive a power cut.
    ///
    /// # Errors
    /// What the system says.
    fn sync_folder(&self, path: &Path) -> io::Result<()>;
}

/// A file that is open.
pub trait StoredFile: Read + Write + Seek {
    /// How many bytes it has.
    ///
    /// # Errors
    /// What the system says.
    fn length(&self) -> io::Result<u64>;

    /// Cuts it to its first `length` bytes.
    ///
    /// # Errors
    /// What the system says.
    fn cut(&mut self, length: u64) -> io::Result<()>;

    /// Returns once its bytes and its length survive a power cut.
    ///
    /// # Errors
    /// What the system says; what was written before is then not known to be on the disk, whatever a later call says.
    fn sync(&mut self) -> io::Result<()>;

    /// Takes the lock on it, which goes with the file when it is closed or its process ends.
    ///
    /// # Errors
    /// [`WouldBlock`](TryLockError::WouldBlock) where another has it, else what the system says.
    fn try_lock(&self) -> Result<(), TryLockError>;
}
