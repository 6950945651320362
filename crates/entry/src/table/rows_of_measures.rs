//! From rows to entries: each row is what was measured of one shaft.

use quarterturn_journal::{BenchEntry, Entry, SpineEntry};

use super::bench_column::BenchColumn;
use super::cell::number;
use super::delimiter::{Delimiter, bare};
use super::guarded::unguarded;
use super::member::Member;
use super::row::{Cell, Row};
use super::{MOST_FAULTS, TableFault};
use crate::Located;
use crate::incoming::{Read, ReadCell};
use crate::quantity::Unit;

type Faults = Vec<Located<TableFault>>;

/// Whether a table is one of workshop measures: it has a column of them and none that only shots have.
pub(super) fn are_measures(head: &Row) -> bool {
    let names = || head.cells().map(|cell| bare(cell.text).to_owned());
    let of_shots =
        |name: String| matches!(Member::named(&name), Ok(member) if member != Member::Shaft);
    names().any(|name| BenchColumn::is_measure(&name)) && !names().any(of_shots)
}

/// The entries that the rows say.
pub(super) fn entries(head: &Row, rows: &[Row], delimiter: Delimiter) -> Result<Vec<Read>, Faults> {
    let columns = columns(head)?;
    let (mut entries, mut faults) = (Vec::new(), Vec::new());
    for row in rows {
        match entry(&columns, row, delimiter) {
            Ok(read) => entries.push(read),
            Err(found) => faults.extend(found),
        }
    }
    if faults.is_empty() { Ok(entries) } else { Err(faults) }
}

fn columns(head: &Row) -> Result<Vec<BenchColumn>, Faults> {
    let (mut columns, mut faults): (Vec<BenchColumn>, Faults) = (Vec::new(), Vec::new());
    for Cell { text, span } in head.cells() {
        match BenchColumn::named(bare(text)) {
            Ok(column) if columns.iter().any(|earlier| earlier.is_same(column)) => {
                faults.push(Located::new(TableFault::ColumnTwice, span));
            }
            Ok(column) => columns.push(column),
            Err(fault) => faults.push(Located::new(fault, span)),
        }
    }
    if faults.is_empty() && !columns.contains(&BenchColumn::Shaft) {
        faults.push(Located::new(TableFault::NoShaftColumn, head.whole.clone()));
    }
    faults.truncate(MOST_FAULTS);
    if faults.is_empty() { Ok(columns) } else { Err(faults) }
}

fn entry(columns: &[BenchColumn], row: &Row, delimiter: Delimiter) -> Result<Read, Faults> {
    let whole = row.whole.clone();
    if row.len() != columns.len() {
        let fault = TableFault::Cells { found: row.len(), expected: columns.len() };
        return Err(vec![Located::new(fault, whole)]);
    }
    let (mut bench, mut cells, mut faults) = (BenchEntry::default(), Vec::new(), Vec::new());
    for (place, column) in columns.iter().enumerate() {
        let Some(Cell { text, span }) = row.cell(place) else { continue };
        match say(&mut bench, *column, unguarded(text).trim(), delimiter) {
            Ok(name) => cells.push((None, name.to_owned(), span)),
            Err(fault) => faults.push(Located::new(fault, span)),
        }
    }
    if bench.shaft.is_empty() {
        faults.push(Located::new(TableFault::NobodysMeasures, whole.clone()));
    }
    if faults.is_empty() { Ok(read(bench, whole, cells)) } else { Err(faults) }
}

/// Puts what a cell says into its place, and names that.
fn say(
    bench: &mut BenchEntry,
    column: BenchColumn,
    text: &str,
    delimiter: Delimiter,
) -> Result<&'static str, TableFault> {
    let measures = &mut bench.measures;
    Ok(match column {
        BenchColumn::Shaft => {
            text.clone_into(&mut bench.shaft);
            "shaft"
        }
        BenchColumn::SpineStandard => {
            measures.spine_standard = Some(text.to_owned());
            "spine_standard"
        }
        BenchColumn::Number(measured, worth) => {
            *measured.of(measures) = Some(number(text, delimiter)? * worth);
            measured.name
        }
        BenchColumn::Sag { side_deg, mm } => {
            let sag_in = Unit::INCH.of_base(number(text, delimiter)? * mm);
            measures.spine.push(SpineEntry { side_deg, sag_in });
            "sag_in"
        }
    })
}

fn read(bench: BenchEntry, whole: std::ops::Range<usize>, cells: Vec<ReadCell>) -> Read {
    let entry = Entry::Bench(bench);
    Read { seq: None, id: None, time: None, entry, whole, complete: false, cells }
}
