//! What parts the columns of a table.

use super::TableFault;
use super::bench_column::BenchColumn;
use super::member::Member;
use crate::Located;

/// A comma, a semicolon or a tab.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Delimiter(pub char);

impl Delimiter {
    const ALL: [Self; 3] = [Self(','), Self(';'), Self('\t')];

    /// The one that parts the first line into the most names of columns.
    pub fn of(text: &str) -> Result<Self, Located<TableFault>> {
        let start = text.len() - text.trim_start_matches(['\r', '\n']).len();
        let head = text.get(start..).and_then(|rest| rest.lines().next()).unwrap_or_default();
        if head.trim().is_empty() {
            return Err(Located::new(TableFault::Empty, 0..text.len()));
        }
        let is_named =
            |name: &&str| Member::is_named(bare(name)) || BenchColumn::is_measure(bare(name));
        let named = |one: &Self| head.split(one.0).filter(is_named).count();
        let parts = |one: &Self| head.matches(one.0).count();
        let best = Self::ALL.into_iter().max_by_key(|one| (named(one), parts(one)));
        Ok(best.unwrap_or(Self(',')))
    }

    /// Whether a comma can be a decimal one: it does not part columns.
    pub const fn leaves_commas(self) -> bool {
        self.0 != ','
    }
}

/// A name without blanks and quotes round it.
pub(super) fn bare(name: &str) -> &str {
    name.trim().trim_matches('"').trim()
}
