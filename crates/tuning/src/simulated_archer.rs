//! An archer, a bow and a set of shafts invented from a seed, whose truth is known.

use quarterturn_geometry::{Angle, Index, Lean, Millimetres, Offset, Point};
use rand::{RngExt, SeedableRng};
use rand_distr::{Distribution, StandardNormal};
use rand_pcg::Pcg64;

use crate::flight::{Flight, lean_with};
use crate::planar::planar;
use crate::true_shaft::TrueShaft;
use crate::{End, Hit, Leans, PlannedShot, Purpose, Setup, ShaftName, Shot, World};

/// An invented archer who shoots what he is told to, and whose shafts are known to the millimetre.
#[derive(Clone, Debug)]
pub struct SimulatedArcher {
    world: World,
    spread_mm: f64,
    common: Offset,
    /// What the bow makes more of and what less: the two numbers of a symmetric matrix without a trace.
    uneven: Offset,
    shafts: Vec<(ShaftName, TrueShaft)>,
    evening: String,
    /// How far the aim has walked off this evening.
    wandered: Offset,
    random: Pcg64,
}

impl SimulatedArcher {
    /// Draws an archer with the shafts of `setup` from `world`.
    pub fn new(setup: &Setup, world: World, seed: u64) -> Self {
        let mut random = Pcg64::seed_from_u64(seed);
        let [narrow, wide] = world.spread_mm;
        let spread_mm = narrow + (wide - narrow) * random.random::<f64>();
        let direction = Angle::from_degrees(360.0 * random.random::<f64>());
        let common = planar(&mut random, world.common_mm)
            + Offset::toward(direction, Millimetres::new(world.bow_off_mm));
        let uneven = planar(&mut random, world.uneven_share);
        let shafts = setup
            .shafts
            .iter()
            .map(|(name, _)| (name.clone(), TrueShaft::draw(&world, &mut random)))
            .collect();
        let (evening, wandered) = (String::new(), Offset::ZERO);
        Self { world, spread_mm, common, uneven, shafts, evening, wandered, random }
    }

    /// Shoots the planned shots in their order.
    pub fn shoot(&mut self, planned: &[PlannedShot], evening: &str) -> End {
        if self.evening != evening {
            evening.clone_into(&mut self.evening);
            self.wandered = Offset::ZERO;
        }
        self.wandered = self.wandered + planar(&mut self.random, self.world.wander_mm);
        let aim = self.wandered + planar(&mut self.random, self.world.drift_mm);
        let frame = planar(&mut self.random, self.world.lean_frame_deg);
        let shots = planned.iter().map(|shot| self.shoot_one(shot, aim, frame)).collect();
        End { shots, evening: evening.to_owned(), distance: None }
    }

    /// Moves the bow so that bare shafts land `shift` away from where they did.
    pub fn move_bow(&mut self, shift: Offset) {
        self.common = self.common + shift;
    }

    /// Where a shaft truly lands on average, from the reference, with its mark at `index`.
    pub fn true_miss(&self, shaft: &ShaftName, index: Index) -> Option<Offset> {
        Some(self.miss(self.truth(shaft)?, index))
    }

    /// Whether a shaft truly groups.
    pub fn groups(&self, shaft: &ShaftName) -> bool {
        self.truth(shaft).is_some_and(|truth| truth.wider <= 1.0)
    }

    /// Where bare shafts as a whole truly land.
    pub fn true_common(&self) -> Offset {
        self.common
    }

    /// What it was drawn from.
    pub fn world(&self) -> &World {
        &self.world
    }

    /// The archer's own spread per axis with fletched arrows.
    pub fn true_spread(&self) -> Millimetres {
        Millimetres::new(self.spread_mm)
    }

    fn truth(&self, shaft: &ShaftName) -> Option<&TrueShaft> {
        self.shafts.iter().find(|(name, _)| name == shaft).map(|(_, truth)| truth)
    }

    fn miss(&self, truth: &TrueShaft, index: Index) -> Offset {
        let own = truth.own_miss(index);
        let Offset { x_mm: stretch, y_mm: shear } = self.uneven;
        let unevenly = Offset::new(
            stretch * own.x_mm + shear * own.y_mm,
            shear * own.x_mm - stretch * own.y_mm,
        );
        self.common + own + unevenly
    }

    fn shoot_one(&mut self, planned: &PlannedShot, aim: Offset, frame: Offset) -> Shot {
        let seated_deg: f64 = StandardNormal.sample(&mut self.random);
        let seated_deg = seated_deg * self.world.seating_deg;
        let (index, mean, wider) = match (planned.purpose, self.truth(&planned.shaft)) {
            (Purpose::Bare { index, .. }, Some(truth)) => {
                let seated = Index::from_degrees(index.degrees() + seated_deg);
                let hit = self.miss(truth, seated);
                let lean_deg = lean_with(hit, &self.world) + truth.lean_differs(seated);
                (index, Flight { hit, lean_deg }, truth.wider * self.world.bare_wider)
            }
            _ => (Index::TWELVE, Flight { hit: Offset::ZERO, lean_deg: Offset::ZERO }, 1.0),
        };
        let spread_mm = self.spread_mm * wider;
        let Flight { hit, lean_deg } =
            Flight::about(mean, &self.world, spread_mm, &mut self.random);
        let lean_deg = lean_deg + frame;
        let read = self.world.leans == Leans::Read;
        let hit = Hit {
            at: Point::SPOT + (aim + hit),
            lean: read.then(|| Lean::from_degrees(lean_deg.x_mm, lean_deg.y_mm)),
            read_sd: None,
            lean_sd: None,
        };
        let shaft = planned.shaft.clone();
        Shot { shaft, index, hit: Some(hit), call: None, flags: Vec::new() }
    }
}
