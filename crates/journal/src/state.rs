//! What a journal says now, with everything taken back left out.

use std::cell::OnceCell;

use quarterturn_tuning::{End, Event, History, Policy, Roster, ShaftState, Shot};

use crate::chain::Chain;
use crate::effect::Effect;
use crate::shaft_entry::follows;
use crate::{Entry, FaceUnit, Fault, NewEntry, Timestamp, UndoEntry, What};

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
    chain: Chain,
}

impl State {
    /// A journal of one record, which ends `chain`.
    pub(crate) fn begun(beginning: NewEntry, chain: Chain) -> Result<Self, Fault> {
        let (setup, unit, policy) = (beginning.setup()?, beginning.unit()?, beginning.policy()?);
        let history = History { setup, events: Vec::new() };
        let (roster, numbers) = (OnceCell::new(), Vec::new());
        Ok(Self { beginning, unit, policy, history, roster, numbers, chain })
    }

    /// The same, to go on with the record that follows `chain`: what was between is not known to it.
    pub(crate) fn resumed(self, chain: Chain) -> Self {
        Self { chain, ..self }
    }

    /// The journal as the model reads it.
    pub fn history(&self) -> &History {
        &self.history
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
        for event in &self.history.events {
            if let Event::End(end) = event
                && !evenings.contains(&end.evening.as_str())
            {
                evenings.push(end.evening.as_str());
            }
        }
        evenings
    }

    /// The event that an undo would take back.
    pub fn last(&self) -> Option<&Event> {
        self.history.events.last()
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
        self.numbers.last().copied()
    }

    /// What `entry`, with everything written out, does to this journal.
    pub(crate) fn effect(&self, entry: &Entry) -> Result<Effect, Vec<Fault>> {
        let setup = &self.history.setup;
        let effect = match entry {
            Entry::New(_) => Err(Fault::whole(What::Begun)),
            Entry::End(end) => return end.end(setup).map(Event::End).map(Effect::Adds),
            Entry::Bow(bow) => bow.event().map(Effect::Adds),
            Entry::Shaft(shaft) => shaft.event(setup).map(Effect::Adds),
            Entry::Undo(UndoEntry { seq }) if self.last_number() == Some(*seq) => {
                Ok(Effect::TakesBack)
            }
            Entry::Unreadable(_) => Ok(Effect::Nothing),
            Entry::Undo(UndoEntry { seq }) => Err(Fault::at("seq", What::NotLast { seq: *seq })),
        };
        effect.map_err(|fault| vec![fault])
    }

    /// The effect of an entry that is made now: what it leaves out is written out, and it must follow on what is
    /// recorded. What stands in a journal is not asked that: it has happened.
    pub(crate) fn accept(&self, entry: &mut Entry, now: &Timestamp) -> Result<Effect, Vec<Fault>> {
        let roster = self.roster();
        if let Entry::End(end) = entry {
            end.make_explicit(roster, now);
        }
        let effect = self.effect(entry)?;
        let faults = match &effect {
            Effect::Adds(Event::End(end)) => out_of_use(end, roster),
            Effect::Adds(Event::Shaft(name, change)) => {
                let what = follows(name, *change, roster).err();
                what.map(|what| Fault::at("change", what)).into_iter().collect()
            }
            Effect::Adds(_) | Effect::Nothing | Effect::TakesBack => Vec::new(),
        };
        if faults.is_empty() { Ok(effect) } else { Err(faults) }
    }

    /// Lets the record that ends `chain` have its effect, and returns what it takes back.
    pub(crate) fn apply(&mut self, effect: Effect, chain: Chain) -> Option<Event> {
        self.chain = chain;
        match effect {
            Effect::Adds(event) => {
                if let Some(roster) = self.roster.get_mut() {
                    roster.read(&event);
                }
                self.history.events.push(event);
                self.numbers.push(chain.seq);
                None
            }
            Effect::Nothing => None,
            Effect::TakesBack => {
                self.roster.take();
                self.numbers.pop();
                self.history.events.pop()
            }
        }
    }
}

/// The shots of an end whose shaft is not to be shot.
fn out_of_use(end: &End, roster: &Roster) -> Vec<Fault> {
    let fault = |(n, shot): (usize, &Shot)| {
        let standing = roster.find(&shot.shaft).filter(|s| s.state != ShaftState::InUse)?;
        let what = What::OutOfUse { name: shot.shaft.clone(), state: standing.state };
        Some(Fault::at("shaft", what).under("shots", n))
    };
    end.shots.iter().enumerate().filter_map(fault).collect()
}
