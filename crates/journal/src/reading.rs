//! Reads a journal from its first line to its last, or only its first and its last lines.

use std::io::{self, BufRead, BufReader, SeekFrom};
use std::path::Path;

use crate::chain::Chain;
use crate::journal_file::{bytes, reader};
use crate::lines::{Line, Lines};
use crate::sealed::{Sealed, half_written};
use crate::{Damage, Entry, JournalError, Record, State, Storage, StoredFile, Timestamp};

/// How many bytes at the end of a journal are read before an entry is added: some thousands of shots. A shorter
/// journal is read whole.
const RECENT: u64 = 1 << 19;

/// How many bytes are read from the disk at once.
const AT_ONCE: usize = 1 << 16;

/// What a journal holds.
#[derive(Debug)]
pub(crate) struct Reading {
    /// What its records say.
    pub state: State,
    /// How many of them that is.
    pub extent: Extent,
    /// The bytes of its whole records.
    pub length: u64,
    /// The bytes of the last of them.
    pub last: u64,
    /// When that one was written.
    pub time: Timestamp,
    /// The bytes after them, which are no record.
    pub torn: u64,
}

/// Which records were read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Extent {
    /// All.
    Whole,
    /// The first and the last ones.
    Recent,
}

impl Reading {
    /// Reads the journal `path`, which is neither changed nor locked.
    pub fn whole<S: Storage>(storage: &S, path: &Path) -> Result<Self, JournalError> {
        let read = || Self::watched(storage, path, |_| {});
        // While it was read a writer may have cut off a torn end and gone on; true damage is there the second time.
        read().or_else(|error| match error {
            JournalError::Damaged { .. } => read(),
            error => Err(error),
        })
    }

    /// The same, where `watch` sees every record as it is read.
    pub fn watched<S: Storage>(
        storage: &S,
        path: &Path,
        mut watch: impl FnMut(&Record),
    ) -> Result<Self, JournalError> {
        let lines = Lines::of(BufReader::with_capacity(AT_ONCE, reader(storage, path)?));
        let mut read = Read { lines, state: None, length: 0, last: 0, time: None };
        let torn = read.on(&mut watch).map_err(|stopped| stopped.of(path))?;
        let read = read.done(Extent::Whole, torn);
        read.ok_or_else(|| JournalError::NotBegun { path: path.to_owned() })
    }

    /// Reads the first record and the last ones of the journal `path`; all where it is short, or where anything about
    /// them is not as it should be.
    pub fn recent<S: Storage>(storage: &S, path: &Path) -> Result<Self, JournalError> {
        let long = Self::of_a_long_one(reader(storage, path)?);
        long.ok().flatten().map_or_else(|| Self::whole(storage, path), Ok)
    }

    /// Whether the file still ends as it was read: only its end is looked at, however long it is.
    pub fn is_current<S: Storage>(&self, storage: &S, path: &Path) -> Result<bool, JournalError> {
        let end = bytes(storage, path, self.length - self.last)?;
        let last = usize::try_from(self.last).ok().and_then(|last| end.get(..last));
        let line = last.and_then(|line| line.strip_suffix(b"\n"));
        let same = line.is_some_and(|line| self.state.chain().ends_with(line));
        Ok(same && end.len() as u64 == self.last + self.torn)
    }

    fn of_a_long_one(file: impl StoredFile) -> Result<Option<Self>, Stopped> {
        let bytes = file.length()?;
        if bytes <= RECENT {
            return Ok(None);
        }
        let mut lines = Lines::of(BufReader::new(file));
        let mut state = None;
        if let Some(Line::Ended(first)) = lines.next()? {
            next(&mut state, first, &mut |_| {}).map_err(Stopped::first)?;
        }
        let mut lines = from(lines, bytes - RECENT)?;
        // This line is met in its middle.
        let Some(Line::Ended(passed)) = lines.next()? else { return Ok(None) };
        let length = bytes - RECENT + passed.len() as u64 + 1;
        let Some(Line::Ended(line)) = lines.next()? else { return Ok(None) };
        let chain = Sealed::of(line).ok().and_then(|line| Chain::stated_by(&line));
        let Some((state, chain)) = state.zip(chain) else { return Ok(None) };

        let state = Some(state.resumed(chain));
        let mut read = Read { lines: from(lines, length)?, state, length, last: 0, time: None };
        let torn = read.on(&mut |_| {})?;
        Ok(read.done(Extent::Recent, torn))
    }
}

/// The lines of the same file from the byte `at` on.
fn from<F: StoredFile>(lines: Lines<BufReader<F>>, at: u64) -> io::Result<Lines<BufReader<F>>> {
    let mut file = lines.into_inner().into_inner();
    file.seek(SeekFrom::Start(at))?;
    Ok(Lines::of(BufReader::with_capacity(AT_ONCE, file)))
}

/// A journal that is being read.
struct Read<R> {
    lines: Lines<R>,
    state: Option<State>,
    length: u64,
    last: u64,
    time: Option<Timestamp>,
}

impl<R: BufRead> Read<R> {
    fn done(self, extent: Extent, torn: u64) -> Option<Reading> {
        let Self { state, length, last, time, .. } = self;
        let (state, time) = state.zip(time)?;
        Some(Reading { state, extent, length, last, time, torn })
    }

    /// Reads on to the end, and returns how many bytes there are no whole record.
    fn on(&mut self, watch: &mut impl FnMut(&Record)) -> Result<u64, Stopped> {
        while let Some(line) = self.lines.next()? {
            let number = self.state.as_ref().map_or(0, State::records) + 1;
            let (record, bytes) = match line {
                Line::Ended(record) => (record, record.len() as u64 + 1),
                Line::Cut(torn) => return Ok(torn.len() as u64),
                Line::TooLong => return Err(Stopped::Damaged(number, Damage::TooLong)),
            };
            let begun = self.state.is_some();
            let time = &mut self.time;
            let mut watch = |record: &Record| {
                *time = Some(record.stamp.time.clone());
                watch(record);
            };
            if let Err(damage) = next(&mut self.state, record, &mut watch) {
                let torn = begun && damage.of_writing() && half_written(record);
                return if torn && self.lines.at_end()? {
                    Ok(bytes)
                } else {
                    Err(Stopped::Damaged(number, damage))
                };
            }
            self.last = bytes;
            self.length += bytes;
        }
        Ok(0)
    }
}

/// Why reading stopped.
enum Stopped {
    Io(io::Error),
    /// At a line, the first being 1.
    Damaged(u64, Damage),
}

impl Stopped {
    fn first(damage: Damage) -> Self {
        Self::Damaged(1, damage)
    }

    fn of(self, path: &Path) -> JournalError {
        match self {
            Self::Io(error) => JournalError::io("read", path)(error),
            Self::Damaged(line, damage) => {
                JournalError::Damaged { path: path.to_owned(), line, damage }
            }
        }
    }
}

impl From<io::Error> for Stopped {
    fn from(error: io::Error) -> Self {
        Self::Io(error)
    }
}

/// Lets the next line, given without its line feed, have its effect on what the journal says, and returns where the
/// chain of records then stands.
pub(crate) fn next(
    state: &mut Option<State>,
    line: &[u8],
    watch: &mut impl FnMut(&Record),
) -> Result<Chain, Damage> {
    let chain = state.as_ref().map(State::chain).unwrap_or_default();
    let record = chain.read(line)?;
    let chain = chain.after(line);
    watch(&record);
    match (state, record.entry) {
        (state @ None, Entry::New(beginning)) => {
            *state = Some(State::begun(beginning, chain).map_err(Damage::Meaning)?);
        }
        (None, _) => return Err(Damage::NoBeginning),
        (Some(state), entry) => {
            let effect = state.effect(&entry).map_err(Damage::meaning)?;
            state.apply(effect, chain);
        }
    }
    Ok(chain)
}
