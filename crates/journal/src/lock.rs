//! One writer at a time.

use std::fs::{File, TryLockError};
use std::io::{self, Read, Write};
use std::path::Path;
use std::process;
use std::thread::sleep;
use std::time::Duration;

use crate::JournalError;
use crate::disk::beside;

/// How often the lock is tried before giving up: two seconds in all.
const TRIES: u32 = 100;

/// How long to wait between two tries.
const PAUSE: Duration = Duration::from_millis(20);

/// The right to write to a journal, as long as this value lives.
///
/// It is a lock on a file beside the journal, since the journal itself may be replaced by a repaired one. The
/// system takes it away with the process that holds it, however that ends; the file stays.
pub(crate) struct Lock {
    _file: File,
}

impl Lock {
    /// Waits for the right to write to `journal`, at most two seconds.
    pub fn take(journal: &Path) -> Result<Self, JournalError> {
        let path = beside(journal, "lock");
        let file = File::options().read(true).write(true).create(true).truncate(false).open(&path);
        let mut file = file.map_err(JournalError::io("open", &path))?;
        for _ in 0..TRIES {
            match file.try_lock() {
                Ok(()) => {
                    name_holder(&mut file).map_err(JournalError::io("write to", &path))?;
                    return Ok(Self { _file: file });
                }
                Err(TryLockError::WouldBlock) => sleep(PAUSE),
                Err(TryLockError::Error(error)) => {
                    return Err(JournalError::io("lock", &path)(error));
                }
            }
        }
        Err(JournalError::Busy { path: journal.to_owned(), holder: holder(file) })
    }
}

fn name_holder(file: &mut File) -> io::Result<()> {
    file.set_len(0)?;
    writeln!(file, "{}", process::id())
}

fn holder(mut file: File) -> Option<u32> {
    let mut pid = String::new();
    file.read_to_string(&mut pid).ok()?;
    pid.trim().parse().ok()
}
