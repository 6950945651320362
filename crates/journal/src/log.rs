//! What was entered, changed and taken back, record by record.

use crate::{EndEntry, Entry, Record};

/// The records of a journal with what became of each.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Log {
    /// Every record, in order.
    pub records: Vec<(Record, Fate)>,
    /// The ends that stand: the first is end 1.
    pub ends: Vec<LoggedEnd>,
}

/// What became of a record.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fate {
    /// It stands.
    Stands,
    /// It is an end that stands as the record `by` corrected it.
    Corrected {
        /// The number of the last correction that stands.
        by: u64,
    },
    /// The record `by` took it back.
    TakenBack {
        /// The number of the undo.
        by: u64,
    },
}

/// An end that stands.
#[derive(Clone, Debug, PartialEq)]
pub struct LoggedEnd {
    /// The number of the record that entered it.
    pub seq: u64,
    /// The end, as it was corrected last.
    pub entry: EndEntry,
}

impl Log {
    /// Reads records, which must be those of a journal from its first on.
    pub fn of(records: Vec<Record>) -> Self {
        let (mut standing, mut taken): (Vec<u64>, Vec<u64>) = (Vec::new(), Vec::new());
        let mut gone = Vec::new();
        for record in &records {
            match &record.entry {
                Entry::New(_) => {}
                Entry::Undo(_) => {
                    taken.extend(standing.pop().inspect(|seq| gone.push((*seq, record.seq))));
                }
                Entry::Redo(_) => standing.extend(taken.pop()),
                _ => {
                    taken.clear();
                    standing.push(record.seq);
                }
            }
        }
        let mut log = Self::default();
        for record in records {
            let undone = gone.iter().rfind(|(seq, _)| *seq == record.seq).map(|(_, by)| *by);
            let stands = undone.is_none() || standing.contains(&record.seq);
            log.read(record, if stands { None } else { undone });
        }
        log
    }

    fn read(&mut self, record: Record, undone: Option<u64>) {
        if let Some(by) = undone {
            self.records.push((record, Fate::TakenBack { by }));
            return;
        }
        match &record.entry {
            Entry::End(end) => {
                self.ends.push(LoggedEnd { seq: record.seq, entry: end.clone() });
            }
            Entry::Fix(fix) => {
                if let Some(end) = self.ends.iter_mut().find(|end| end.seq == fix.seq) {
                    end.entry = fix.end.clone();
                }
                if let Some((_, fate)) = self.records.iter_mut().find(|(r, _)| r.seq == fix.seq) {
                    *fate = Fate::Corrected { by: record.seq };
                }
            }
            _ => {}
        }
        self.records.push((record, Fate::Stands));
    }
}
