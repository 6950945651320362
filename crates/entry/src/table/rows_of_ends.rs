//! From rows to entries: the rows of one end stand one below the other.

use quarterturn_journal::{EndEntry, Entry, RecordId, ShotEntry, Timestamp};
use serde_json::Value;

use super::TableFault;
use super::cell::number;
use super::column::Columns;
use super::delimiter::Delimiter;
use super::fault::KINDS;
use super::guarded::unguarded;
use super::member::Member;
use super::row::{Cell, Row};
use crate::Located;
use crate::incoming::{Read, ReadCell};

type Faults = Vec<Located<TableFault>>;

/// What keeps the rows of one end together.
const KEYS: [Member; 5] =
    [Member::Record, Member::RecordId, Member::End, Member::Evening, Member::At];

/// The entries that the rows say.
pub(super) fn entries(
    columns: &Columns,
    rows: &[Row],
    delimiter: Delimiter,
) -> Result<Vec<Read>, Faults> {
    let (mut entries, mut faults): (Vec<Read>, Faults) = (Vec::new(), Vec::new());
    let mut before: Option<&Row> = None;
    for row in rows {
        let reader = Reader { columns, row, delimiter };
        let goes_on = before.is_some_and(|before| reader.goes_on(before));
        let read = match entries.last_mut().filter(|_| goes_on) {
            Some(Read { complete: true, .. }) => Ok(()),
            Some(Read { entry: Entry::End(end), cells, whole, .. }) => {
                whole.end = row.whole.end;
                reader.shot(end, cells)
            }
            _ => reader.entry().map(|entry| entries.push(entry)),
        };
        if let Err(found) = read {
            faults.extend(found);
        }
        before = Some(row);
    }
    if faults.is_empty() { Ok(entries) } else { Err(faults) }
}

/// Reads one row.
struct Reader<'a> {
    columns: &'a Columns,
    row: &'a Row,
    delimiter: Delimiter,
}

impl Reader<'_> {
    /// Whether this row belongs to the end of the row before.
    fn goes_on(&self, before: &Row) -> bool {
        let text = |row, member| self.columns.cell(row, member).map(|cell| cell.text.to_owned());
        let same = |member| text(before, member) == text(self.row, member);
        self.kind() == "end" && same(Member::Kind) && KEYS.into_iter().all(same)
    }

    fn kind(&self) -> String {
        let kind = self.columns.cell(self.row, Member::Kind);
        kind.map_or_else(|| "end".to_owned(), |cell| cell.text.trim().to_owned())
    }

    /// The entry that begins with this row.
    fn entry(&self) -> Result<Read, Faults> {
        let kind = self.kind();
        if !KINDS.contains(&kind.as_str()) {
            return Err(vec![self.fault(Member::Kind, TableFault::UnknownKind { kind })]);
        }
        let mut cells = Vec::new();
        let data = self.columns.cell(self.row, Member::Data);
        let complete = data.is_some();
        let entry = match data {
            Some(data) => stated(&kind, &data)?,
            None if kind == "end" => {
                let mut end = self.end_without_shots(&mut cells)?;
                self.shot(&mut end, &mut cells)?;
                Entry::End(end)
            }
            None => return Err(vec![self.fault(Member::Kind, TableFault::NoData)]),
        };
        let whole = self.row.whole.clone();
        let (seq, id, time) = (self.seq()?, self.id()?, self.time()?);
        Ok(Read { seq, id, time, entry, whole, complete, cells })
    }

    fn end_without_shots(&self, cells: &mut Vec<ReadCell>) -> Result<EndEntry, Faults> {
        let mut text = |member, name: &str| {
            let cell = self.columns.cell(self.row, member)?;
            cells.push((None, name.to_owned(), cell.span));
            Some(unguarded(cell.text).to_owned())
        };
        let mut end = EndEntry {
            evening: text(Member::Evening, "evening"),
            at: text(Member::At, "at"),
            note: text(Member::Note, "note"),
            ..EndEntry::default()
        };
        for (member, cell) in self.columns.cells(self.row) {
            if let Member::Distance(metres) = member {
                let value = number(cell.text, self.delimiter)
                    .map_err(|fault| vec![Located::new(fault, cell.span.clone())])?;
                cells.push((None, "distance_m".to_owned(), cell.span));
                end.distance_m = Some(value * metres);
            }
        }
        Ok(end)
    }

    /// Adds the shot of this row to its end.
    fn shot(&self, end: &mut EndEntry, cells: &mut Vec<ReadCell>) -> Result<(), Faults> {
        let (mut shot, mut faults) = (ShotEntry::default(), Vec::new());
        if self.row.len() != self.columns.len() {
            let (found, expected) = (self.row.len(), self.columns.len());
            let fault = TableFault::Cells { found, expected };
            return Err(vec![Located::new(fault, self.row.whole.clone())]);
        }
        for (member, Cell { text, span }) in self.columns.cells(self.row) {
            let said = unguarded(text);
            let name = match member {
                Member::Shaft => {
                    said.trim().clone_into(&mut shot.shaft);
                    "shaft"
                }
                Member::Call => {
                    shot.call = Some(said.trim().to_owned());
                    "call"
                }
                Member::TailSeen => {
                    shot.tail_seen = Some(said.trim().to_owned());
                    "tail_seen"
                }
                Member::Flags => {
                    shot.flags = said.split_whitespace().map(str::to_owned).collect();
                    "flags"
                }
                Member::Number(of, worth) => {
                    match number(said, self.delimiter) {
                        Ok(value) => *of.of(&mut shot) = Some(value * worth),
                        Err(fault) => faults.push(Located::new(fault, span.clone())),
                    }
                    of.name
                }
                _ => continue,
            };
            cells.push((Some(end.shots.len()), name.to_owned(), span));
        }
        if shot.shaft.is_empty() {
            faults.push(Located::new(TableFault::NoShaft, self.row.whole.clone()));
        }
        end.shots.push(shot);
        if faults.is_empty() { Ok(()) } else { Err(faults) }
    }

    fn seq(&self) -> Result<Option<u64>, Faults> {
        self.parsed(Member::Record, "the number of a record", |text| text.parse().ok())
    }

    fn id(&self) -> Result<Option<RecordId>, Faults> {
        let what = "an id of 16 hexadecimal digits";
        self.parsed(Member::RecordId, what, |text| {
            serde_json::from_value(Value::String(text.to_owned())).ok()
        })
    }

    fn time(&self) -> Result<Option<Timestamp>, Faults> {
        let what = "a time like 2027-03-02T10:15:00Z";
        self.parsed(Member::RecordedAt, what, |text| text.parse().ok())
    }

    fn parsed<T>(
        &self,
        member: Member,
        what: &'static str,
        parse: impl Fn(&str) -> Option<T>,
    ) -> Result<Option<T>, Faults> {
        let Some(cell) = self.columns.cell(self.row, member) else { return Ok(None) };
        let parsed = parse(cell.text.trim());
        let fault = || vec![Located::new(TableFault::NotA { what }, cell.span.clone())];
        parsed.map(Some).ok_or_else(fault)
    }

    /// A fault in the cell of a member; in the row where there is none.
    fn fault(&self, member: Member, fault: TableFault) -> Located<TableFault> {
        let cell = self.columns.cell(self.row, member);
        Located::new(fault, cell.map_or(self.row.whole.clone(), |cell| cell.span))
    }
}

/// The entry of this kind whose data stand in one cell.
fn stated(kind: &str, data: &Cell<'_>) -> Result<Entry, Faults> {
    // An apostrophe that keeps text from being a formula may stand before it.
    Entry::read(kind, unguarded(data.text))
        .map_err(|damage| vec![Located::new(TableFault::data(&damage), data.span.clone())])
}
