//! Where every shaft and every reference stands: its state, its mark and its shots.

use quarterturn_geometry::{Index, Positions};

use crate::{End, Event, Flag, History, ShaftChange, ShaftName, Shot};

/// Every shaft and every reference of a history, in the order in which they were named.
#[derive(Clone, Debug, PartialEq)]
pub struct Roster {
    /// The bare shafts.
    pub shafts: Vec<Standing>,
    /// The fletched references.
    pub references: Vec<Standing>,
}

/// Where one shaft stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Standing {
    /// Its name.
    pub name: ShaftName,
    /// Whether it can be shot.
    pub state: ShaftState,
    /// Where its mark stood at the beginning.
    pub index_first: Index,
    /// Where its mark stood when it was last shot, or at the beginning.
    pub index_now: Index,
    /// The marks of its counted shots in its present life, in order.
    pub counted: Vec<Index>,
    /// How many shots are kept but left out.
    pub left_out: usize,
    /// How often its nock was turned in its present life.
    pub turns: usize,
}

/// Whether a shaft can be shot.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ShaftState {
    /// It can.
    InUse,
    /// It was fletched.
    Fletched,
    /// The archer laid it aside.
    SetAside,
    /// It was not found.
    Lost,
    /// It is broken.
    Broken,
}

impl Roster {
    /// Reads a history.
    pub fn of(history: &History) -> Self {
        let setup = &history.setup;
        let mut roster = Self {
            shafts: setup.shafts.iter().map(|(name, index)| Standing::new(name, *index)).collect(),
            references: setup
                .references
                .iter()
                .map(|name| Standing::new(name, Index::TWELVE))
                .collect(),
        };
        history.events.iter().for_each(|event| roster.read(event));
        roster
    }

    /// The standing of a shaft or a reference.
    pub fn find(&self, name: &ShaftName) -> Option<&Standing> {
        self.shafts.iter().chain(&self.references).find(|standing| standing.name == *name)
    }

    /// The references that can be shot.
    pub fn references_in_use(&self) -> impl Iterator<Item = &Standing> {
        self.references.iter().filter(|standing| standing.state == ShaftState::InUse)
    }

    /// Reads one more event.
    pub fn read(&mut self, event: &Event) {
        match event {
            Event::End(end) => end.shots.iter().for_each(|shot| self.see(end, shot)),
            Event::Shaft(name, change) => {
                if let Some(standing) = self.find_mut(name) {
                    standing.change(*change);
                }
            }
            Event::Fletched(name, index) => {
                if let Some(standing) = self.find_mut(name) {
                    standing.turn_to(*index);
                    standing.change(ShaftChange::Fletched);
                }
            }
            Event::Bow(_) | Event::BowLeft => {}
        }
    }

    fn see(&mut self, end: &End, shot: &Shot) {
        let Some(standing) = self.find_mut(&shot.shaft) else { return };
        standing.turn_to(shot.index);
        if shot.counts() && end.distance.is_none() {
            standing.counted.push(shot.index);
        } else {
            standing.left_out += 1;
        }
        if shot.has(Flag::Broken) {
            standing.state = ShaftState::Broken;
        } else if shot.has(Flag::Lost) {
            standing.state = ShaftState::Lost;
        }
    }

    fn find_mut(&mut self, name: &ShaftName) -> Option<&mut Standing> {
        self.shafts.iter_mut().chain(&mut self.references).find(|standing| standing.name == *name)
    }
}

impl Standing {
    fn new(name: &ShaftName, index: Index) -> Self {
        Self {
            name: name.clone(),
            state: ShaftState::InUse,
            index_first: index,
            index_now: index,
            counted: Vec::new(),
            left_out: 0,
            turns: 0,
        }
    }

    /// How many counted shots stood within half a position of `index`.
    pub fn shots_at(&self, index: Index, positions: Positions) -> usize {
        self.counted.iter().filter(|mark| mark.is_near(index, positions)).count()
    }

    fn turn_to(&mut self, index: Index) {
        self.turns += usize::from(!self.index_now.is_at(index));
        self.index_now = index;
    }

    fn change(&mut self, change: ShaftChange) {
        self.state = match change {
            ShaftChange::Lost => ShaftState::Lost,
            ShaftChange::Broken => ShaftState::Broken,
            ShaftChange::SetAside => ShaftState::SetAside,
            ShaftChange::Fletched => ShaftState::Fletched,
            ShaftChange::Readmit => ShaftState::InUse,
            ShaftChange::Checked | ShaftChange::HardHit => self.state,
            ShaftChange::NewNock => {
                self.turns = 0;
                self.state
            }
            ShaftChange::Repaired => {
                self.counted.clear();
                self.turns = 0;
                ShaftState::InUse
            }
        };
    }
}
