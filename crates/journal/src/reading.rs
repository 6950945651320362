//! Reads a journal from its first line to its last.

use std::io::{BufRead, Read};
use std::path::Path;

use crate::chain::LONGEST_LINE;
use crate::{Damage, Entry, JournalError, State, disk};

/// What a journal holds.
#[derive(Debug)]
pub(crate) struct Reading {
    /// What its records say.
    pub state: State,
    /// The bytes of its whole records.
    pub length: u64,
    /// The bytes of the last of them.
    pub last: u64,
    /// The bytes after them, which are no record.
    pub torn: u64,
}

impl Reading {
    /// Reads the journal `path`, which is neither changed nor locked.
    pub fn of(path: &Path) -> Result<Self, JournalError> {
        let mut reader = disk::reader(path)?;
        let mut state: Option<State> = None;
        let (mut length, mut last) = (0, 0);
        let mut line = Vec::new();
        let torn = loop {
            line.clear();
            let mut rest = reader.by_ref().take(LONGEST_LINE as u64 + 1);
            let bytes =
                rest.read_until(b'\n', &mut line).map_err(JournalError::io("read", path))?;
            let number = state.as_ref().map_or(0, State::records) + 1;
            state = match line.strip_suffix(b"\n") {
                Some(record) => Some(next(state, record)),
                None if bytes > LONGEST_LINE => Some(Err(Damage::TooLong)),
                None => break bytes as u64,
            }
            .transpose()
            .map_err(|damage| JournalError::Damaged {
                path: path.to_owned(),
                line: number,
                damage,
            })?;
            last = bytes as u64;
            length += last;
        };
        let state = state.ok_or_else(|| JournalError::NotBegun { path: path.to_owned() })?;
        Ok(Self { state, length, last, torn })
    }
}

/// What the journal says with the next line, given without its line feed.
fn next(state: Option<State>, line: &[u8]) -> Result<State, Damage> {
    let chain = state.as_ref().map(State::chain).unwrap_or_default();
    let record = chain.read(line)?;
    let chain = chain.after(line);
    match (state, record.entry) {
        (None, Entry::New(beginning)) => State::begun(beginning, chain).map_err(Damage::Meaning),
        (None, _) => Err(Damage::NoBeginning),
        (Some(mut state), entry) => {
            let effect = state.effect(&entry).map_err(Damage::meaning)?;
            state.apply(effect, chain);
            Ok(state)
        }
    }
}
