//! A damaged journal made whole again, in memory.

use std::collections::BTreeMap;

use crate::chain::{Chain, LONGEST_LINE, hex};
use crate::reading::next;
use crate::sealed::{Sealed, body, half_written, sealed};
use crate::{Damage, Entry, Finding, Stamp, State, UnreadableEntry};

/// How many records may be missing in a row. A line that is farther on than this is of another journal.
const MOST_MISSING: u64 = 1000;

/// A journal of the same records with the same numbers. Whatever is not damaged is as it was; what is lost has an entry
/// that says so in its place.
pub(crate) struct Mending<'a> {
    /// Its bytes.
    pub text: Vec<u8>,
    /// What was found; nothing where the journal is whole.
    pub findings: Vec<Finding>,
    /// How many records are kept.
    pub kept: u64,
    /// The numbers of those that are lost.
    pub lost: Vec<u64>,
    /// The bytes after the last line.
    pub torn: u64,
    state: Option<State>,
    chain: Chain,
    /// Where the chain stood in the damaged journal, as far as that is known.
    was: Option<Chain>,
    /// The line of the last record that was kept.
    line: u64,
    stamp: &'a Stamp,
    original: &'a str,
}

/// A line whose checksum is right, and its number, the first being 1.
#[derive(Clone, Copy)]
struct Found<'t> {
    number: u64,
    line: &'t [u8],
}

impl<'a> Mending<'a> {
    /// Mends the journal of these bytes. The entries for lost records have the time of `stamp`, ids that go on from its
    /// own, and `original` as the name of the file that keeps these bytes.
    ///
    /// # Errors
    /// [`Damage::NoBeginning`] where the first record is lost, [`Damage::Format`] and [`Damage::Kind`] where a newer
    /// program wrote some of it: then it is not for this one to mend.
    pub fn of(bytes: &[u8], stamp: &'a Stamp, original: &'a str) -> Result<Self, Damage> {
        let mut mending = Self {
            text: Vec::with_capacity(bytes.len()),
            findings: Vec::new(),
            kept: 0,
            lost: Vec::new(),
            torn: 0,
            state: None,
            chain: Chain::default(),
            was: Some(Chain::default()),
            line: 0,
            stamp,
            original,
        };
        let sorted = mending.sort(bytes)?;
        for (seq, found) in &sorted {
            let after = sorted.get(&seq.saturating_add(1)).map(Vec::as_slice).unwrap_or_default();
            mending.take(*seq, found, after)?;
        }
        let lines = sorted.values().flatten().map(|found| found.number);
        mending.lose_after(lines.max().unwrap_or_default())?;
        match mending.state {
            Some(_) => Ok(mending),
            None => Err(Damage::NoBeginning),
        }
    }

    /// The lines that are whole by themselves, by the number they state.
    fn sort<'t>(&mut self, bytes: &'t [u8]) -> Result<BTreeMap<u64, Vec<Found<'t>>>, Damage> {
        let mut sorted: BTreeMap<u64, Vec<Found>> = BTreeMap::new();
        let mut lines = (1..).zip(bytes.split_inclusive(|byte| *byte == b'\n')).peekable();
        while let Some((number, bytes)) = lines.next() {
            let torn = |line| number > 1 && half_written(line);
            let Some(line) = bytes.strip_suffix(b"\n").filter(|line| line.len() <= LONGEST_LINE)
            else {
                self.overlong_or_cut(number, bytes);
                continue;
            };
            match Sealed::of(line) {
                Ok(read) => sorted.entry(read.seq).or_default().push(Found { number, line }),
                Err(newer @ Damage::Format { .. }) => return Err(newer),
                Err(damage) if lines.peek().is_none() && damage.of_writing() && torn(line) => {
                    self.torn = bytes.len() as u64;
                }
                Err(damage) => self.findings.push(Finding::Damaged { line: number, damage }),
            }
        }
        Ok(sorted)
    }

    /// A line that has no end, or has it too far on.
    fn overlong_or_cut(&mut self, number: u64, bytes: &[u8]) {
        if bytes.len() > LONGEST_LINE {
            self.findings.push(Finding::Damaged { line: number, damage: Damage::TooLong });
        } else {
            self.torn = bytes.len() as u64;
        }
    }

    /// Every damaged line after the last one that is whole was a record too.
    fn lose_after(&mut self, last: u64) -> Result<(), Damage> {
        let after = |finding: &Finding| match finding {
            Finding::Damaged { line, damage } if *line > last => Some(damage.to_string()),
            _ => None,
        };
        let lost: Vec<_> = self.findings.iter().filter_map(after).collect();
        if self.state.is_none() {
            Ok(())
        } else {
            lost.into_iter().try_for_each(|why| self.lose(why))
        }
    }

    /// Takes up the record with the number `seq`, of which these lines were found.
    fn take(&mut self, seq: u64, found: &[Found], after: &[Found]) -> Result<(), Damage> {
        let next = self.chain.seq + 1;
        let belongs = (next..=next + MOST_MISSING).contains(&seq);
        let chosen = self.chosen(found, after).filter(|_| belongs);
        let others = found.iter().filter(|one| Some(one.number) != chosen.map(|one| one.number));
        self.findings.extend(others.map(|one| Finding::LeftOver { line: one.number, record: seq }));
        let Some(chosen) = chosen else { return Ok(()) };
        if next < seq {
            self.findings.push(Finding::Missing { from: next, to: seq - 1 });
            (next..seq)
                .try_for_each(|_| self.lose("no line that can be read says it".to_owned()))?;
        }
        if chosen.number < self.line {
            self.findings.push(Finding::Moved { line: chosen.number, record: seq });
        }
        self.line = chosen.number;
        let read = Sealed::of(chosen.line)?;
        if self.was.is_some_and(|was| !was.is_before(&read)) {
            self.findings.push(Finding::Unlinked { line: chosen.number, record: seq });
        }
        self.was = Some(Chain { seq, crc: crc32fast::hash(chosen.line) });
        match self.keep(chosen.line, &read.prev) {
            Ok(()) => Ok(()),
            Err(newer @ Damage::Kind { .. }) => Err(newer),
            Err(damage) if self.state.is_none() => Err(damage),
            Err(damage) => {
                let why = damage.to_string();
                self.findings.push(Finding::Damaged { line: chosen.number, damage });
                self.lose(why)
            }
        }
    }

    /// The line that was written after the one before and before one of those `after`; else one of which half is true.
    fn chosen<'t>(&self, found: &[Found<'t>], after: &[Found]) -> Option<Found<'t>> {
        let links = |one: &&Found| {
            let read = Sealed::of(one.line);
            let back = self.was.is_some_and(|was| read.is_ok_and(|read| was.is_before(&read)));
            let crc = hex(crc32fast::hash(one.line));
            let on = after.iter().any(|next| Sealed::of(next.line).is_ok_and(|n| n.prev == crc));
            u8::from(back) + u8::from(on)
        };
        // The first of several that are as good.
        found.iter().rev().max_by_key(links).copied()
    }

    /// Adds a line; where the one before it is another than it was, it is linked to it.
    fn keep(&mut self, line: &[u8], prev: &str) -> Result<(), Damage> {
        let text = str::from_utf8(line).map_err(|_| Damage::Checksum)?;
        let linked = match prev {
            prev if prev == hex(self.chain.crc) => text.to_owned(),
            prev => relinked(text, prev, self.chain).ok_or(Damage::NoRecord)?,
        };
        self.add(&linked)?;
        self.kept += 1;
        Ok(())
    }

    /// Adds an entry in the place of a record that is lost.
    fn lose(&mut self, why: String) -> Result<(), Damage> {
        let (lost, kept) = (self.chain.seq + 1, self.original.to_owned());
        let stamp = Stamp { id: self.stamp.id.after(lost), ..self.stamp.clone() };
        let entry = Entry::Unreadable(UnreadableEntry { why, kept });
        let line = self.chain.write(&stamp, &entry);
        let line = line.map_err(|error| Damage::Content { reason: error.to_string() })?;
        self.was = None;
        self.lost.push(lost);
        self.add(&line)
    }

    fn add(&mut self, line: &str) -> Result<(), Damage> {
        self.chain = next(&mut self.state, line.as_bytes(), &mut |_| {})?;
        self.text.extend_from_slice(line.as_bytes());
        self.text.push(b'\n');
        Ok(())
    }
}

/// The same record after another one.
fn relinked(line: &str, prev: &str, chain: Chain) -> Option<String> {
    let member = |crc: &str| format!(",\"prev\":\"{crc}\"");
    let (before, after) = body(line)?.rsplit_once(&member(prev))?;
    Some(sealed(&[before, &member(&hex(chain.crc)), after].concat()))
}
