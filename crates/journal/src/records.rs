//! Every record of a journal, as `log` and `export` ask for them.

use std::io::{BufRead, Read};
use std::path::Path;

use crate::chain::{Chain, LONGEST_LINE};
use crate::{Damage, JournalError, Record, disk};

/// The whole records of the journal `path`, in order.
pub(crate) fn records(path: &Path) -> Result<Vec<Record>, JournalError> {
    let mut reader = disk::reader(path)?;
    let (mut chain, mut records, mut line) = (Chain::default(), Vec::new(), Vec::new());
    loop {
        line.clear();
        let mut rest = reader.by_ref().take(LONGEST_LINE as u64 + 1);
        rest.read_until(b'\n', &mut line).map_err(JournalError::io("read", path))?;
        // What has no line end is no record yet.
        let Some(whole) = line.strip_suffix(b"\n") else { return Ok(records) };
        let damaged = |damage: Damage| JournalError::Damaged {
            path: path.to_owned(),
            line: chain.seq + 1,
            damage,
        };
        records.push(chain.read(whole).map_err(damaged)?);
        chain = chain.after(whole);
    }
}
