//! An entry from outside, with where it stood in its text.

use std::ops::Range;

use quarterturn_journal::{Entry, Place, RecordId, Timestamp};

use crate::content_id::content_id;

/// An entry that was read from a table or an export.
#[derive(Clone, Debug, PartialEq)]
pub struct Incoming {
    /// The number that its record had where it comes from.
    pub seq: Option<u64>,
    /// Its id: as it was stated, or from what it says.
    pub id: RecordId,
    /// When it was recorded, where that is stated.
    pub time: Option<Timestamp>,
    /// What it says.
    pub entry: Entry,
    /// The bytes of the text it was read from.
    pub whole: Range<usize>,
    cells: Vec<ReadCell>,
}

/// Which shot of an end, or the end itself, which member of it, and where that was read.
pub(crate) type ReadCell = (Option<usize>, String, Range<usize>);

/// An entry before it has its id.
#[derive(Clone, Debug)]
pub(crate) struct Read {
    pub seq: Option<u64>,
    pub id: Option<RecordId>,
    pub time: Option<Timestamp>,
    pub entry: Entry,
    pub whole: Range<usize>,
    /// Whether all of it was said in one cell: then the rows below that go on with it add nothing.
    pub complete: bool,
    /// For each shot and member, where it was read.
    pub cells: Vec<ReadCell>,
}

/// Gives each entry its id: the stated one, or one that follows from what it says and how often it was said before.
pub(crate) fn identified(read: Vec<Read>) -> Vec<Incoming> {
    let mut said: Vec<Entry> = Vec::new();
    let mut incoming = Vec::new();
    for Read { seq, id, time, entry, whole, cells, .. } in read {
        let id = id.or_else(|| {
            let ordinal = said.iter().filter(|earlier| **earlier == entry).count();
            said.push(entry.clone());
            content_id(&entry, ordinal)
        });
        // What is finite has its JSON, and what was read is finite.
        let Some(id) = id else { continue };
        incoming.push(Incoming { seq, id, time, entry, whole, cells });
    }
    incoming
}

impl Incoming {
    /// The bytes of the text that gave what stands at `place` of the entry; the nearest around it where nothing did.
    pub fn span(&self, place: &Place) -> Range<usize> {
        let of_it = || self.cells.iter().filter(|(shot, ..)| *shot == place.shot());
        let named = of_it().find(|(_, member, _)| Some(member.as_str()) == place.name());
        let found = named.or_else(|| of_it().find(|(_, member, _)| member == "shaft"));
        found.map_or(&self.whole, |(.., span)| span).clone()
    }
}
