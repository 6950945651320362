//! The columns of a table, by their names.

use super::delimiter::bare;
use super::member::Member;
use super::row::{Cell, Row};
use super::{MOST_FAULTS, TableFault};
use crate::Located;

/// What each column holds.
#[derive(Clone, Debug)]
pub(super) struct Columns(Vec<Member>);

impl Columns {
    /// Reads the first row.
    pub fn of(head: &Row) -> Result<Self, Vec<Located<TableFault>>> {
        let (mut members, mut faults): (Vec<Member>, Vec<_>) = (Vec::new(), Vec::new());
        for Cell { text, span } in head.cells() {
            match Member::named(bare(text)) {
                Ok(member) if members.iter().any(|earlier| earlier.is_same(member)) => {
                    faults.push(Located::new(TableFault::ColumnTwice, span));
                }
                Ok(member) => members.push(member),
                Err(fault) => faults.push(Located::new(fault, span)),
            }
            if faults.len() == MOST_FAULTS {
                break;
            }
        }
        let columns = Self(members);
        if faults.is_empty() && columns.place(Member::Shaft).is_none() {
            faults.push(Located::new(TableFault::NoShaftColumn, head.whole.clone()));
        }
        if faults.is_empty() { Ok(columns) } else { Err(faults) }
    }

    /// How many there are.
    pub fn len(&self) -> usize {
        self.0.len()
    }

    /// The cell of `row` that holds `member`; nothing where it is blank or there is no such column.
    pub fn cell<'a>(&self, row: &'a Row, member: Member) -> Option<Cell<'a>> {
        row.cell(self.place(member)?)
    }

    /// Every cell of a row that is not blank, with what it holds.
    pub fn cells<'a>(&self, row: &'a Row) -> impl Iterator<Item = (Member, Cell<'a>)> {
        let members = self.0.iter().enumerate();
        members.filter_map(|(place, member)| Some((*member, row.cell(place)?)))
    }

    fn place(&self, member: Member) -> Option<usize> {
        self.0.iter().position(|own| *own == member)
    }
}
