//! What a journal says now, with everything taken back left out.

mod accepting;
mod applying;

use quarterturn_tuning::{End, Event, Group, History, Policy, Roster, ShaftName};
use std::cell::OnceCell;

use crate::chain::Chain;
use crate::deed::{Step, StepKind};
use crate::{BenchMeasures, FaceUnit, Fault, GlueEntry, NewEntry, QuiverEntry};

/// The journal as it stands.
#[derive(Clone, Debug)]
pub struct State {
    beginning: NewEntry,
    unit: FaceUnit,
    policy: Policy,
    history: History,
    /// Drawn up when it is first asked for: an undo costs nothing while a journal is read.
    roster: OnceCell<Roster>,
    /// The records that the events of the history come from.
    numbers: Vec<u64>,
    /// The groups of finished arrows, each with its record.
    groups: Vec<(u64, Group)>,
    /// The entries that stand, the last of which an undo takes back.
    standing: Vec<Step>,
    /// The entries that were taken back since anything else was entered, the last of which a redo brings back.
    taken: Vec<Step>,
    chain: Chain,
}

impl State {
    /// A journal of one record, which ends `chain`.
    pub(crate) fn begun(beginning: NewEntry, chain: Chain) -> Result<Self, Fault> {
        let (setup, unit, policy) = (beginning.setup()?, beginning.unit()?, beginning.policy()?);
        Ok(Self {
            beginning,
            unit,
            policy,
            history: History { setup, events: Vec::new() },
            roster: OnceCell::new(),
            numbers: Vec::new(),
            groups: Vec::new(),
            standing: Vec::new(),
            taken: Vec::new(),
            chain,
        })
    }

    /// The same, to go on with the record that follows `chain`: what was between is not known to it.
    pub(crate) fn resumed(self, chain: Chain) -> Self {
        Self { chain, ..self }
    }

    /// The journal as the model reads it.
    pub fn history(&self) -> &History {
        &self.history
    }

    /// What was measured of a shaft or a reference in the workshop: of each measure the last.
    pub fn measures(&self, shaft: &ShaftName) -> BenchMeasures {
        let of_shaft = self.standing.iter().filter_map(|step| match &step.kind {
            StepKind::Measures(bench) if bench.shaft == shaft.as_str() => Some(&bench.measures),
            _ => None,
        });
        of_shaft.fold(BenchMeasures::default(), |earlier, later| later.clone().over(earlier))
    }

    /// What was glued, in the order in which it was entered.
    pub fn glued(&self) -> impl Iterator<Item = &GlueEntry> {
        self.standing.iter().filter_map(|step| match &step.kind {
            StepKind::Glues(glue) => Some(glue.as_ref()),
            _ => None,
        })
    }

    /// The single head that was put on an arrow last.
    pub(crate) fn mounted(&self, arrow: &str) -> Option<&str> {
        let mut moved_on = Vec::new();
        for step in self.standing.iter().rev() {
            let StepKind::Quivers(quiver) = &step.kind else { continue };
            let QuiverEntry::Head(head) = quiver.as_ref() else { continue };
            let carries = head.carries.as_str();
            if head.shaft == arrow {
                return Some(carries).filter(|head| !moved_on.contains(head));
            }
            moved_on.push(carries);
        }
        None
    }

    /// Where every shaft and every reference stands.
    pub fn roster(&self) -> &Roster {
        self.roster.get_or_init(|| Roster::of(&self.history))
    }

    /// How the journal was begun, in the words of its first record.
    pub fn beginning(&self) -> &NewEntry {
        &self.beginning
    }

    /// The unit that answers are given in.
    pub fn unit(&self) -> FaceUnit {
        self.unit
    }

    /// What the archer is willing to pay, his limits among it.
    pub fn policy(&self) -> &Policy {
        &self.policy
    }

    /// The evenings, in the order in which they began.
    pub fn evenings(&self) -> Vec<&str> {
        let mut evenings = Vec::new();
        for end in self.ends() {
            if !evenings.contains(&end.evening.as_str()) {
                evenings.push(end.evening.as_str());
            }
        }
        evenings
    }

    /// The ends, in the order in which they were entered: the first is end 1 wherever ends are counted.
    pub fn ends(&self) -> impl Iterator<Item = &End> {
        self.history.events.iter().filter_map(|event| match event {
            Event::End(end) => Some(end),
            _ => None,
        })
    }

    /// The number of the end that the record `seq` entered, counted from 1.
    pub fn end_of(&self, seq: u64) -> Option<usize> {
        let at = self.numbers.iter().position(|number| *number == seq)?;
        self.end_at(at)
    }

    /// The groups of finished arrows, in the order in which they were entered.
    pub fn groups(&self) -> impl Iterator<Item = &Group> {
        self.groups.iter().map(|(_, group)| group)
    }

    /// Those that were entered after the bow or its sight was changed last.
    pub fn groups_beside_this_bow(&self) -> impl Iterator<Item = &Group> {
        let changes = self.history.events.iter().zip(&self.numbers);
        let last = changes.rev().find(|(event, _)| matches!(event, Event::Bow(_)));
        let since = last.map_or(0, |(_, seq)| *seq);
        self.groups.iter().filter(move |(seq, _)| *seq > since).map(|(_, group)| group)
    }

    /// How many entries stand, the first not counted: what was taken back or lost does not, undo and redo are none.
    pub fn standing(&self) -> usize {
        self.standing.len()
    }

    /// How many records the journal has, those taken back included.
    pub fn records(&self) -> u64 {
        self.chain.seq
    }

    /// The checksum of the last line: a seed that is the same as long as the journal is.
    pub fn seed(&self) -> u32 {
        self.chain.crc
    }

    pub(crate) fn chain(&self) -> Chain {
        self.chain
    }

    /// The record that an undo would take back.
    pub(crate) fn last_number(&self) -> Option<u64> {
        self.standing.last().map(|step| step.seq)
    }

    /// The record that a redo would bring back.
    pub(crate) fn last_taken(&self) -> Option<u64> {
        self.taken.last().map(|step| step.seq)
    }
}
