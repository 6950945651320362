//! What a journal says now, with everything taken back left out.

use std::cell::OnceCell;

use quarterturn_tuning::{
    End, Event, Group, History, Policy, Roster, ShaftChange, ShaftName, ShaftState, Shot,
};

use crate::chain::Chain;
use crate::deed::{Step, StepKind};
use crate::effect::Effect;
use crate::group_entry::not_finished;
use crate::shaft_entry::follows;
use crate::{
    BenchEntry, BenchMeasures, Deed, Entry, FaceUnit, Fault, FixEntry, GlueEntry, NewEntry,
    QuiverEntry, RedoEntry, Stamp, Timestamp, UndoEntry, What,
};

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
            StepKind::Glues(glue) => Some(glue),
            _ => None,
        })
    }

    /// The single head that was put on an arrow last.
    pub(crate) fn mounted(&self, arrow: &str) -> Option<&str> {
        let mut moved_on = Vec::new();
        for step in self.standing.iter().rev() {
            let StepKind::Quivers(QuiverEntry::Head(head)) = &step.kind else { continue };
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

    /// The journal as it would be with one more entry, which is not written: a dry run.
    ///
    /// # Errors
    /// What is wrong with the entry.
    pub fn with(&self, mut entry: Entry, stamp: &Stamp) -> Result<Self, Vec<Fault>> {
        let effect = self.accept(&mut entry, &stamp.time)?;
        let mut state = self.clone();
        state.apply(effect, Chain { seq: self.chain.seq + 1, ..self.chain });
        Ok(state)
    }

    /// What `entry`, with everything written out, does to this journal.
    pub(crate) fn effect(&self, entry: &Entry) -> Result<Effect, Vec<Fault>> {
        let setup = &self.history.setup;
        let effect = match entry {
            Entry::New(_) => Err(Fault::whole(What::Begun)),
            Entry::End(end) => return end.end(setup).map(Event::End).map(Effect::Adds),
            Entry::Fix(fix) => return self.exchange(fix),
            Entry::Bow(bow) => bow.event().map(Effect::Adds),
            Entry::Shaft(shaft) => shaft.event(setup).map(Effect::Adds),
            Entry::Add(add) => add.joining(setup).map(Effect::Joins),
            Entry::Bench(bench) => {
                bench.shaft(setup).map(|_| Effect::Measures(Box::new(bench.clone())))
            }
            Entry::Glue(glue) => glue.can_be(setup).map(|()| Effect::Glues(glue.clone())),
            Entry::Group(group) => return group.group(setup).map(Effect::Groups),
            Entry::Quiver(quiver) => quiver.check(setup).map(|()| Effect::Quivers(quiver.clone())),
            Entry::Note(note) if note.note.trim().is_empty() => {
                Err(Fault::whole(What::Missing { member: "note" }))
            }
            Entry::Note(_) => Ok(Effect::Notes),
            Entry::Undo(UndoEntry { seq }) if self.last_number() == Some(*seq) => {
                Ok(Effect::TakesBack)
            }
            Entry::Unreadable(_) => Ok(Effect::Nothing),
            Entry::Redo(RedoEntry { seq }) if self.last_taken() == Some(*seq) => {
                Ok(Effect::BringsBack)
            }
            Entry::Undo(UndoEntry { seq }) => Err(Fault::at("seq", What::NotLast { seq: *seq })),
            Entry::Redo(RedoEntry { seq }) => Err(Fault::at("seq", What::NotTaken { seq: *seq })),
        };
        effect.map_err(|fault| vec![fault])
    }

    fn exchange(&self, fix: &FixEntry) -> Result<Effect, Vec<Fault>> {
        let standing = self.numbers.iter().position(|number| *number == fix.seq);
        let is_end = |at: &usize| matches!(self.history.events.get(*at), Some(Event::End(_)));
        match standing.filter(is_end) {
            Some(at) => {
                let event = fix.end(&self.history.setup).map(Event::End)?;
                Ok(Effect::Exchanges { at, event })
            }
            None => Err(vec![Fault::at("seq", What::NoEnd { seq: fix.seq })]),
        }
    }

    /// The effect of an entry that is made now: what it leaves out is written out, and it must follow on what is
    /// recorded. What stands in a journal is not asked that: it has happened.
    pub(crate) fn accept(&self, entry: &mut Entry, now: &Timestamp) -> Result<Effect, Vec<Fault>> {
        let roster = self.roster();
        let meant = match entry {
            Entry::End(end) => {
                end.make_explicit(roster, now);
                end.cannot_be_meant()
            }
            Entry::Fix(fix) => {
                fix.end.derive();
                fix.end.cannot_be_meant()
            }
            Entry::Group(group) => {
                group.make_explicit(roster, now, |arrow| self.mounted(arrow));
                group.cannot_be_meant()
            }
            Entry::Add(add) => {
                add.make_explicit();
                Vec::new()
            }
            Entry::Glue(glue) => {
                glue.make_explicit(now);
                Vec::new()
            }
            Entry::Bench(bench) => {
                bench.make_explicit();
                Vec::new()
            }
            _ => Vec::new(),
        };
        if !meant.is_empty() {
            return Err(meant);
        }
        let effect = self.effect(entry)?;
        let faults = match &effect {
            Effect::Adds(Event::End(end)) => out_of_use(end, roster),
            Effect::Measures(bench) => self.balances(bench).err().into_iter().collect(),
            Effect::Groups(group) => not_finished(group, roster),
            Effect::Quivers(quiver) => quiver.not_finished(roster),
            Effect::Adds(Event::Shaft(name, change)) => does_not_follow(name, *change, roster),
            Effect::Adds(Event::Fletched(name, _)) => {
                does_not_follow(name, ShaftChange::Fletched, roster)
            }
            _ => Vec::new(),
        };
        if faults.is_empty() { Ok(effect) } else { Err(faults) }
    }

    /// That a shaft with these measures and those recorded before balances on its own length.
    fn balances(&self, bench: &BenchEntry) -> Result<(), Fault> {
        let name = bench.shaft(&self.history.setup)?;
        bench.measures.clone().over(self.measures(&name)).balances()
    }

    /// Lets the record that ends `chain` have its effect, and returns what it takes or brings back.
    pub(crate) fn apply(&mut self, effect: Effect, chain: Chain) -> Option<Deed> {
        self.chain = chain;
        let kind = match effect {
            Effect::Adds(event) => StepKind::Adds(Some(event)),
            Effect::Exchanges { at, event } => StepKind::Exchanges { at, other: event },
            Effect::Joins(joining) => StepKind::Joins(joining),
            Effect::Measures(bench) => StepKind::Measures(bench),
            Effect::Glues(glue) => StepKind::Glues(glue),
            Effect::Groups(group) => StepKind::Groups(Some(group)),
            Effect::Quivers(quiver) => StepKind::Quivers(quiver),
            Effect::Notes => StepKind::Notes,
            Effect::Nothing => return None,
            Effect::TakesBack => return self.take_back(),
            Effect::BringsBack => return self.bring_back(),
        };
        self.taken.clear();
        self.go(Step { seq: chain.seq, kind });
        None
    }

    /// Takes the last entry that stands back.
    fn take_back(&mut self) -> Option<Deed> {
        let mut step = self.standing.pop()?;
        let deed = self.deed(&step.kind);
        self.roster.take();
        match &mut step.kind {
            StepKind::Adds(event) => {
                self.numbers.pop();
                *event = self.history.events.pop();
            }
            StepKind::Exchanges { at, other } => self.exchange_event(*at, other),
            StepKind::Joins(joining) => joining.leave(&mut self.history.setup),
            StepKind::Groups(group) => *group = self.groups.pop().map(|(_, group)| group),
            StepKind::Measures(_) | StepKind::Glues(_) | StepKind::Quivers(_) | StepKind::Notes => {
            }
        }
        self.taken.push(step);
        Some(deed)
    }

    /// Brings the entry back that was taken back last.
    fn bring_back(&mut self) -> Option<Deed> {
        let step = self.taken.pop()?;
        self.roster.take();
        self.go(step);
        self.standing.last().map(|step| self.deed(&step.kind))
    }

    /// Lets an entry stand.
    fn go(&mut self, mut step: Step) {
        match &mut step.kind {
            StepKind::Adds(event) => {
                if let Some(event) = event.take() {
                    if let Some(roster) = self.roster.get_mut() {
                        roster.read(&event);
                    }
                    self.history.events.push(event);
                    self.numbers.push(step.seq);
                }
            }
            StepKind::Exchanges { at, other } => {
                self.roster.take();
                self.exchange_event(*at, other);
            }
            StepKind::Joins(joining) => {
                self.roster.take();
                joining.join(&mut self.history.setup);
            }
            StepKind::Groups(group) => {
                self.groups.extend(group.take().map(|group| (step.seq, group)));
            }
            StepKind::Measures(_) | StepKind::Glues(_) | StepKind::Quivers(_) | StepKind::Notes => {
            }
        }
        self.standing.push(step);
    }

    fn exchange_event(&mut self, at: usize, other: &mut Event) {
        if let Some(event) = self.history.events.get_mut(at) {
            std::mem::swap(event, other);
        }
    }

    /// What an entry that stands did.
    fn deed(&self, kind: &StepKind) -> Deed {
        match kind {
            StepKind::Adds(_) => {
                self.history.events.last().cloned().map_or(Deed::Noted, Deed::Added)
            }
            StepKind::Exchanges { at, .. } => {
                Deed::Corrected { end: self.end_at(*at).unwrap_or_default() }
            }
            StepKind::Joins(joining) => Deed::Joined(joining.name().clone()),
            StepKind::Measures(bench) => Deed::Measured(bench.shaft.clone()),
            StepKind::Glues(glue) => Deed::Glued(glue.shafts.clone()),
            StepKind::Groups(_) => Deed::Grouped {
                shots: self.groups.last().map_or(0, |(_, group)| group.shots.len()),
            },
            StepKind::Quivers(_) => Deed::Quivered,
            StepKind::Notes => Deed::Noted,
        }
    }

    /// The number of the end in this place of the history, counted from 1.
    fn end_at(&self, at: usize) -> Option<usize> {
        let events = self.history.events.get(..=at)?;
        let is_end = |event: &&Event| matches!(event, Event::End(_));
        events.last().filter(is_end)?;
        Some(events.iter().filter(is_end).count())
    }
}

fn does_not_follow(name: &ShaftName, change: ShaftChange, roster: &Roster) -> Vec<Fault> {
    let what = follows(name, change, roster).err();
    what.map(|what| Fault::at("change", what)).into_iter().collect()
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
