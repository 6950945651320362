//! A dozen being played: the archer, what he has shot, and what it took so far.

use std::collections::HashMap;

use quarterturn_geometry::{Index, Offset};
use rand::SeedableRng;
use rand_distr::{Distribution, StandardNormal};
use rand_pcg::Pcg64;

use super::{BowAsked, Fate, Outcome, Ruling};
use crate::{
    Aim, BowChange, BowPart, End, Event, History, PlannedShot, Policy, Purpose, Setup, ShaftName,
    SimulatedArcher, World,
};

/// An archer goes home for good after so many ends and moves of the bow, finished or not.
pub const MOST_STEPS: usize = 120;

/// A move of the bow does what was asked of it within this share.
const BOW_GAIN_SD: f64 = 0.2;

/// What a millimetre at the rest of an invented bow does at the face.
const FACE_MM_PER_REST_MM: f64 = 20.0;

/// A dozen being played.
pub struct Session {
    pub archer: SimulatedArcher,
    pub history: History,
    pub outcome: Outcome,
    pub marks: HashMap<ShaftName, Index>,
    bare_this_evening: usize,
    evening_shots: usize,
    hand: Pcg64,
}

impl Session {
    /// Begins with an archer drawn from `world`.
    pub fn begin(setup: &Setup, world: World, seed: u64) -> Self {
        Self {
            archer: SimulatedArcher::new(setup, world, seed),
            history: History { setup: setup.clone(), events: Vec::new() },
            outcome: Outcome { evenings: 1, ..Outcome::default() },
            marks: setup.shafts.iter().cloned().collect(),
            bare_this_evening: 0,
            evening_shots: Policy::default().evening_shots,
            // Another stream than the archer's, so that a move of the bow changes no shot.
            hand: Pcg64::seed_from_u64(!seed),
        }
    }

    /// A shot of the first reference.
    pub fn reference(&self) -> Option<PlannedShot> {
        let shaft = self.history.setup.references.first()?.clone();
        Some(PlannedShot { shaft, purpose: Purpose::Reference })
    }

    /// A shot of a bare shaft with its mark at `index`.
    pub fn bare(&self, shaft: &ShaftName, index: Index) -> PlannedShot {
        let from = self.mark(shaft);
        PlannedShot { shaft: shaft.clone(), purpose: Purpose::Bare { index, from, aim: Aim::Try } }
    }

    /// Where the mark of a shaft stands.
    pub fn mark(&self, shaft: &ShaftName) -> Index {
        self.marks.get(shaft).copied().unwrap_or(Index::TWELVE)
    }

    /// Shoots an end, on another evening once this one is long enough.
    pub fn shoot(&mut self, planned: &[PlannedShot]) -> End {
        if self.bare_this_evening >= self.evening_shots {
            self.outcome.evenings += 1;
            self.bare_this_evening = 0;
        }
        let end = self.archer.shoot(planned, &self.outcome.evenings.to_string());
        for shot in planned {
            if let Purpose::Bare { index, .. } = shot.purpose {
                let before = self.marks.insert(shot.shaft.clone(), index);
                self.outcome.turns += usize::from(before != Some(index));
                self.outcome.bare_shots += 1;
                self.bare_this_evening += 1;
            }
        }
        self.outcome.shots += planned.len();
        self.outcome.ends += 1;
        self.history.events.push(Event::End(end.clone()));
        end
    }

    /// Moves the bow as asked, as nearly as one can, and notes it.
    pub fn move_bow(&mut self, wanted: Offset) {
        let asked = BowAsked {
            after_bare_shots: self.outcome.bare_shots,
            offset: self.archer.true_common(),
        };
        self.outcome.bow_asked.get_or_insert(asked);
        let luck: f64 = StandardNormal.sample(&mut self.hand);
        self.archer.move_bow(wanted * (1.0 + BOW_GAIN_SD * luck));
        let moved = Some(wanted * (1.0 / FACE_MM_PER_REST_MM));
        self.history.events.push(Event::Bow(BowChange { part: BowPart::Rest, moved }));
    }

    /// Ends with what was settled of each shaft, in the order of the setup.
    pub fn close(self, settled: impl IntoIterator<Item = (Ruling, Index)>) -> Outcome {
        let Setup { shafts, tolerance, .. } = &self.history.setup;
        let fates = shafts
            .iter()
            .zip(settled)
            .filter_map(|((shaft, _), settled)| Fate::of(&self.archer, *tolerance, shaft, settled));
        Outcome { shafts: fates.collect(), ..self.outcome }
    }
}
