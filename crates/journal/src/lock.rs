//! One writer at a time.

use std::fs::TryLockError;
use std::io::{self, Read};
use std::path::Path;
use std::process;
use std::thread::sleep;
use std::time::{Duration, Instant};

use crate::beside::beside;
use crate::{JournalError, Storage, StoredFile};

/// How long the lock is waited for.
const PATIENCE: Duration = Duration::from_secs(2);

/// How long to wait between two tries.
const PAUSE: Duration = Duration::from_millis(20);

/// The right to write to a journal, as long as this value lives.
///
/// It is a lock on a file beside the journal, since the journal itself may be replaced by a mended one. The
/// system takes it away with the process that holds it, however that ends; the file stays.
pub(crate) struct Lock<F> {
    _file: F,
}

impl<F: StoredFile> Lock<F> {
    /// Waits for the right to write to `journal`, at most two seconds.
    pub fn take(storage: &impl Storage<File = F>, journal: &Path) -> Result<Self, JournalError> {
        let path = beside(journal, "lock");
        let mut file = storage.open_lock(&path).map_err(JournalError::io("open", &path))?;
        let begun = Instant::now();
        loop {
            match file.try_lock() {
                Ok(()) => {
                    name_holder(&mut file).map_err(JournalError::io("write to", &path))?;
                    return Ok(Self { _file: file });
                }
                Err(TryLockError::WouldBlock) if begun.elapsed() < PATIENCE => sleep(PAUSE),
                Err(TryLockError::WouldBlock) => break,
                Err(TryLockError::Error(error)) => {
                    return Err(JournalError::io("lock", &path)(error));
                }
            }
        }
        Err(JournalError::Busy { path: journal.to_owned(), holder: holder(file) })
    }
}

fn name_holder(file: &mut impl StoredFile) -> io::Result<()> {
    file.cut(0)?;
    file.write_all(format!("{}\n", process::id()).as_bytes())
}

fn holder(mut file: impl Read) -> Option<u32> {
    let mut pid = String::new();
    file.read_to_string(&mut pid).ok()?;
    pid.trim().parse().ok()
}
