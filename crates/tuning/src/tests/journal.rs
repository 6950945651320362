//! A journal written line by line; what is not said is the plainest case.

use std::ops::Range;

use quarterturn_geometry::{Index, Lean, Offset, Point};

use crate::{
    Advice, Aim, BowChange, BowPart, End, Event, Flag, History, Hit, PlannedShot, Policy, Purpose,
    Setup, ShaftChange, ShaftName, ShaftReport, Shot, SimulatedArcher, Step, World, advise,
};

/// A history being written, all its ends on one evening until another begins.
#[derive(Clone)]
pub struct Journal {
    pub history: History,
    evening: String,
}

impl Journal {
    /// Shafts 1 to `count` with their marks at 12 o'clock, the reference R, 18.3 m, 25 mm, four arrows an end, hours.
    pub fn of(count: usize) -> Self {
        let setup = Setup::beside_one_reference(count);
        Self { history: History { setup, events: Vec::new() }, evening: "first".to_owned() }
    }

    /// The same with another setting.
    pub fn with(mut self, set: impl FnOnce(&mut Setup)) -> Self {
        set(&mut self.history.setup);
        self
    }

    /// From here on, another evening.
    pub fn evening(mut self, evening: &str) -> Self {
        evening.clone_into(&mut self.evening);
        self
    }

    pub fn then(mut self, event: Event) -> Self {
        self.history.events.push(event);
        self
    }

    /// An end beside the reference, which hits the spot and does not lean.
    pub fn end(self, bare: impl IntoIterator<Item = Shot>) -> Self {
        let reference = leaning(shot("R", 0.0, Offset::ZERO), 0.0, 0.0);
        let shots = std::iter::once(reference).chain(bare).collect();
        self.end_of(shots)
    }

    /// An end of exactly these shots.
    pub fn end_of(self, shots: Vec<Shot>) -> Self {
        let evening = self.evening.clone();
        self.then(Event::End(End { shots, evening, distance: None }))
    }

    pub fn shaft(self, shaft: &str, change: ShaftChange) -> Self {
        self.then(Event::Shaft(name(shaft), change))
    }

    /// A change of the bow that nobody measured.
    pub fn bow(self, part: BowPart) -> Self {
        self.then(Event::Bow(BowChange { part, moved: None }))
    }

    pub fn advice(&self) -> Advice {
        advise(&self.history, &Policy::default())
    }

    pub fn report(&self, shaft: &str) -> ShaftReport {
        self.advice().shafts.into_iter().find(|one| one.shaft.as_str() == shaft).unwrap()
    }

    /// Follows the advice for up to `ends` ends, from `archer`'s hand, and says the last advice.
    pub fn follow(&mut self, archer: &mut SimulatedArcher, ends: usize) -> Advice {
        for _ in 0..ends {
            let Step::Shoot(planned) = self.advice().step else { break };
            let end = archer.shoot(&planned, &self.evening);
            self.history.events.push(Event::End(end));
        }
        self.advice()
    }

    /// Ends of the reference and the next three of twelve shafts, the marks of each end at one hour.
    pub fn shoot_in_turn(
        &mut self,
        archer: &mut SimulatedArcher,
        ends: Range<usize>,
        hour: impl Fn(usize) -> f64,
    ) {
        for end in ends {
            let index = Index::from_hour(hour(end));
            let bare = (0..3).map(|place| {
                let purpose = Purpose::Bare { index, from: index, aim: Aim::Try };
                PlannedShot { shaft: name(&((3 * end + place) % 12 + 1).to_string()), purpose }
            });
            let reference = PlannedShot { shaft: name("R"), purpose: Purpose::Reference };
            let planned: Vec<_> = std::iter::once(reference).chain(bare).collect();
            self.history.events.push(Event::End(archer.shoot(&planned, &self.evening)));
        }
    }

    /// An archer with the shafts of this journal.
    pub fn archer(&self, world: World, seed: u64) -> SimulatedArcher {
        SimulatedArcher::new(&self.history.setup, world, seed)
    }
}

pub fn name(name: &str) -> ShaftName {
    name.parse().unwrap()
}

/// A shot with its mark at `hour` o'clock that hits `at` from the spot, its lean not read.
pub fn shot(shaft: &str, hour: f64, at: Offset) -> Shot {
    let hit = Hit { at: Point::SPOT + at, lean: None, read_sd: None, lean_sd: None };
    Shot {
        shaft: name(shaft),
        index: Index::from_hour(hour),
        hit: Some(hit),
        call: None,
        flags: Vec::new(),
    }
}

/// The same shot with a lean.
pub fn leaning(mut shot: Shot, x_deg: f64, y_deg: f64) -> Shot {
    shot.hit.as_mut().unwrap().lean = Some(Lean::from_degrees(x_deg, y_deg));
    shot
}

/// The same shot noted with `flag`.
pub fn flagged(mut shot: Shot, flag: Flag) -> Shot {
    shot.flags.push(flag);
    shot
}
