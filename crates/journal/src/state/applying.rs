//! How what was accepted is put in place, taken back and brought back.

use quarterturn_tuning::Event;

use super::State;
use crate::Deed;
use crate::chain::Chain;
use crate::deed::{Step, StepKind};
use crate::effect::Effect;

impl State {
    /// Lets the record that ends `chain` have its effect, and returns what it takes or brings back.
    pub(crate) fn apply(&mut self, effect: Effect, chain: Chain) -> Option<Deed> {
        self.chain = chain;
        let kind = match effect {
            Effect::Adds(event) => StepKind::Adds(Some(Box::new(event))),
            Effect::Exchanges { at, event } => StepKind::Exchanges { at, other: Box::new(event) },
            Effect::Joins(joining) => StepKind::Joins(Box::new(joining)),
            Effect::Measures(bench) => StepKind::Measures(bench),
            Effect::Glues(glue) => StepKind::Glues(Box::new(glue)),
            Effect::Groups(group) => StepKind::Groups(Some(Box::new(group))),
            Effect::Quivers(quiver) => StepKind::Quivers(Box::new(quiver)),
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
                *event = self.history.events.pop().map(Box::new);
            }
            StepKind::Exchanges { at, other } => self.exchange_event(*at, other),
            StepKind::Joins(joining) => joining.leave(&mut self.history.setup),
            StepKind::Groups(group) => *group = self.groups.pop().map(|(_, group)| Box::new(group)),
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
                    self.history.events.push(*event);
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
                self.groups.extend(group.take().map(|group| (step.seq, *group)));
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
    pub(super) fn end_at(&self, at: usize) -> Option<usize> {
        let events = self.history.events.get(..=at)?;
        let is_end = |event: &&Event| matches!(event, Event::End(_));
        events.last().filter(is_end)?;
        Some(events.iter().filter(is_end).count())
    }
}
