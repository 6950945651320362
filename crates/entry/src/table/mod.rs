//! Tables with named columns: ends from outside, and everything there is; `docs/import-export.md` describes them.

mod bench_column;
mod cell;
mod column;
mod delimiter;
mod fault;
mod guarded;
mod member;
mod row;
mod rows_of_ends;
mod rows_of_measures;
mod written;

use crate::Located;
use crate::incoming::{Incoming, identified};
use column::Columns;
use delimiter::Delimiter;
pub use fault::TableFault;
use row::Row;
use rows_of_ends::entries;
pub use written::written;

/// The longest line, in bytes: more is not a table.
const LONGEST_LINE: usize = 1 << 20;

/// So many faults are told at once.
const MOST_FAULTS: usize = 20;

/// Reads a table: its first line names the columns, each other line is a shot, an entry of another kind, or in a table
/// of workshop measures one shaft.
///
/// # Errors
/// What is wrong with the columns; else the first faults of the cells, each where it stands.
pub fn read(text: &str) -> Result<Vec<Incoming>, Vec<Located<TableFault>>> {
    if let Some(fault) = too_long(text) {
        return Err(vec![fault]);
    }
    let delimiter = Delimiter::of(text).map_err(|fault| vec![fault])?;
    let rows = Row::all(text, delimiter).map_err(|fault| vec![fault])?;
    let Some((head, rows)) = rows.split_first() else {
        return Err(vec![Located::new(TableFault::Empty, 0..text.len())]);
    };
    let read = if rows_of_measures::are_measures(head) {
        some(head, rows).and_then(|()| rows_of_measures::entries(head, rows, delimiter))
    } else {
        let columns = Columns::of(head)?;
        some(head, rows).and_then(|()| entries(&columns, rows, delimiter))
    };
    let read = read.map_err(|mut faults| {
        faults.truncate(MOST_FAULTS);
        faults
    })?;
    Ok(identified(read))
}

/// That there are lines below the names of the columns.
fn some(head: &Row, rows: &[Row]) -> Result<(), Vec<Located<TableFault>>> {
    if rows.is_empty() {
        return Err(vec![Located::new(TableFault::NoRows, head.whole.clone())]);
    }
    Ok(())
}

fn too_long(text: &str) -> Option<Located<TableFault>> {
    let mut start = 0;
    for line in text.split('\n') {
        if line.len() > LONGEST_LINE {
            // Of such a line its beginning is enough to be seen.
            let end = line.char_indices().take(40).last().map_or(0, |(at, c)| at + c.len_utf8());
            return Some(Located::new(TableFault::LongLine, start..start + end));
        }
        start += line.len() + 1;
    }
    None
}

#[cfg(test)]
mod measure_tests;
#[cfg(test)]
mod tests;
