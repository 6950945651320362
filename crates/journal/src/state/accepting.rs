//! What an entry does to a journal that can take it, or why it cannot.

use quarterturn_tuning::{End, Event, Roster, ShaftChange, ShaftName, ShaftState, Shot};

use super::State;
use crate::chain::Chain;
use crate::effect::Effect;
use crate::group_entry::not_finished;
use crate::shaft_entry::follows;
use crate::{BenchEntry, Entry, Fault, FixEntry, RedoEntry, Stamp, Timestamp, UndoEntry, What};

impl State {
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
