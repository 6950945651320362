//! One line of a table, or several where a cell in quotes has line ends, with where each cell stands.

use std::ops::Range;

use csv::{ReaderBuilder, StringRecord};

use super::TableFault;
use super::delimiter::Delimiter;
use crate::Located;

/// A row as it was read.
#[derive(Clone, Debug)]
pub(super) struct Row {
    cells: StringRecord,
    /// The bytes of each cell, its quotes included.
    spans: Vec<Range<usize>>,
    /// The bytes of the row.
    pub whole: Range<usize>,
}

/// A cell as it was read.
#[derive(Clone, Debug)]
pub(super) struct Cell<'a> {
    /// Its text, without quotes and blanks round it.
    pub text: &'a str,
    /// Its bytes.
    pub span: Range<usize>,
}

impl Row {
    /// Every row of `text` that is not blank.
    pub fn all(text: &str, delimiter: Delimiter) -> Result<Vec<Self>, Located<TableFault>> {
        let mut reader = ReaderBuilder::new()
            .has_headers(false)
            .flexible(true)
            // Each of the three is one byte.
            .delimiter(u8::try_from(delimiter.0).unwrap_or(b','))
            .from_reader(text.as_bytes());
        let mut rows = Vec::new();
        for cells in reader.records() {
            let unreadable = |_| Located::new(TableFault::Unreadable, 0..text.len());
            let cells = cells.map_err(unreadable)?;
            let from = cells.position().map_or(0, csv::Position::byte);
            let spans = spans(text, usize::try_from(from).unwrap_or_default(), delimiter)?;
            let whole = spans.first().map_or(0, |first| first.start)
                ..spans.last().map_or(0, |last| last.end);
            let row = Self { cells, spans, whole };
            if row.cells.iter().any(|cell| !cell.trim().is_empty()) {
                rows.push(row);
            }
        }
        Ok(rows)
    }

    /// How many cells it has.
    pub fn len(&self) -> usize {
        self.cells.len()
    }

    /// The cell in this column; nothing where it is blank.
    pub fn cell(&self, column: usize) -> Option<Cell<'_>> {
        let text = self.cells.get(column)?;
        let span = self.spans.get(column).unwrap_or(&self.whole).clone();
        (!text.trim().is_empty()).then_some(Cell { text, span })
    }

    /// Every cell, blank or not.
    pub fn cells(&self) -> impl Iterator<Item = Cell<'_>> {
        let spans = self.spans.iter().chain(std::iter::repeat(&self.whole));
        self.cells.iter().zip(spans).map(|(text, span)| Cell { text, span: span.clone() })
    }
}

/// The bytes of the cells of the row that begins at `from`, or behind the line ends there.
fn spans(
    text: &str,
    from: usize,
    delimiter: Delimiter,
) -> Result<Vec<Range<usize>>, Located<TableFault>> {
    let rest = text.get(from..).unwrap_or_default();
    let from = text.len() - rest.trim_start_matches(['\r', '\n']).len();
    let mut spans = Vec::new();
    let (mut start, mut quoted) = (from, false);
    for (at, c) in text.get(from..).unwrap_or_default().char_indices() {
        let at = from + at;
        match c {
            // A quote inside a cell that did not begin with one is a letter.
            '"' if quoted || text.get(start..at) == Some("") => quoted = !quoted,
            '"' if text.get(start..at).is_some_and(|cell| cell.starts_with('"')) => quoted = true,
            c if !quoted && c == delimiter.0 => {
                spans.push(start..at);
                start = at + 1;
            }
            '\r' | '\n' if !quoted => {
                spans.push(start..at);
                return Ok(spans);
            }
            _ => {}
        }
    }
    if quoted {
        let end = text.get(start..).and_then(|rest| rest.lines().next()).map_or(0, str::len);
        return Err(Located::new(TableFault::OpenQuote, start..start + end));
    }
    spans.push(start..text.len());
    Ok(spans)
}
