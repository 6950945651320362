//! An archer, a bow and a set of shafts invented from a seed, whose truth is known.

use quarterturn_geometry::{Index, Lean, Offset, Point};
use rand::{RngExt, SeedableRng};
use rand_distr::{Distribution, StandardNormal};
use rand_pcg::Pcg64;

use crate::{End, Hit, PlannedShot, Purpose, Setup, ShaftName, Shot, World};

/// An invented archer who shoots what he is told to, and whose shafts are known to the millimetre.
#[derive(Clone, Debug)]
pub struct SimulatedArcher {
    world: World,
    spread_mm: f64,
    common: Offset,
    shafts: Vec<(ShaftName, Truth)>,
    random: Pcg64,
}

/// What is true of one shaft.
#[derive(Clone, Debug)]
struct Truth {
    centre: Offset,
    turning: Offset,
    turning_against: Offset,
    stiff: Offset,
    stiff_against: Offset,
    third: Offset,
    lean_differs: [Offset; 2],
    wider: f64,
}

impl SimulatedArcher {
    /// Draws an archer with the shafts of `setup` from `world`.
    pub fn new(setup: &Setup, world: World, seed: u64) -> Self {
        let mut random = Pcg64::seed_from_u64(seed);
        let [narrow, wide] = world.spread_mm;
        let spread_mm = narrow + (wide - narrow) * random.random::<f64>();
        let common = planar(&mut random, world.common_mm);
        let shafts = setup
            .shafts
            .iter()
            .map(|(name, _)| (name.clone(), Truth::draw(&world, &mut random)))
            .collect();
        Self { world, spread_mm, common, shafts, random }
    }

    /// Shoots the planned shots in their order.
    pub fn shoot(&mut self, planned: &[PlannedShot], evening: &str) -> End {
        let aim = planar(&mut self.random, self.world.drift_mm);
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
        Some(self.common + self.truth(shaft)?.own_miss(index))
    }

    /// Whether a shaft truly groups.
    pub fn groups(&self, shaft: &ShaftName) -> bool {
        self.truth(shaft).is_some_and(|truth| truth.wider <= 1.0)
    }

    /// Where bare shafts as a whole truly land.
    pub fn true_common(&self) -> Offset {
        self.common
    }

    fn truth(&self, shaft: &ShaftName) -> Option<&Truth> {
        self.shafts.iter().find(|(name, _)| name == shaft).map(|(_, truth)| truth)
    }

    fn shoot_one(&mut self, planned: &PlannedShot, aim: Offset, frame: Offset) -> Shot {
        let (index, mean, lean, wider) = match (planned.purpose, self.truth(&planned.shaft)) {
            (Purpose::Bare { index, .. }, Some(truth)) => {
                let miss = self.common + truth.own_miss(index);
                let lean = self.lean_of(miss) + truth.lean_differs(index);
                (index, miss, lean, truth.wider * self.world.bare_wider)
            }
            _ => (Index::TWELVE, Offset::ZERO, Offset::ZERO, 1.0),
        };
        let flies = if self.random.random::<f64>() < self.world.flyer_share { 3.0 } else { 1.0 };
        let scatter = planar(&mut self.random, self.spread_mm * wider * flies);
        let read = planar(&mut self.random, self.world.read_mm);
        let lean = lean + frame + planar(&mut self.random, self.world.lean_shot_deg * flies);
        let hit = Hit {
            at: Point::SPOT + (aim + mean + scatter + read),
            lean: Some(Lean::from_degrees(lean.x_mm, lean.y_mm)),
            read_sd: None,
            lean_sd: None,
        };
        let shaft = planned.shaft.clone();
        Shot { shaft, index, hit: Some(hit), call: None, flags: Vec::new() }
    }

    /// The lean, degrees, that goes with a miss: it grows with it, then no further, and turns back.
    fn lean_of(&self, miss: Offset) -> Offset {
        let length_mm = miss.length().mm();
        let bends = self.world.lean_bends_at_mm;
        let bent = length_mm * (-(length_mm / bends).powi(2) / 2.0).exp();
        let share = if length_mm > 0.0 { bent / length_mm } else { 1.0 };
        miss * (self.world.lean_deg_per_mm * share)
    }
}

impl Truth {
    fn draw(world: &World, random: &mut Pcg64) -> Self {
        let loose = random.random::<f64>() < world.loose_share;
        let crooked = random.random::<f64>() < world.crooked_share;
        let larger = if crooked { world.crooked_larger } else { 1.0 };
        let mut part = |size_mm: f64| planar(random, size_mm * larger);
        Self {
            centre: part(world.centre_mm),
            turning: part(world.turning_mm),
            turning_against: part(world.turning_mm * world.against_share),
            stiff: part(world.stiff_mm),
            stiff_against: part(world.stiff_mm * world.against_share),
            third: part(world.third_mm),
            lean_differs: [0, 1].map(|_| planar(random, world.lean_discrepancy_deg)),
            wider: if loose { world.loose_wider } else { 1.0 },
        }
    }

    /// What the shaft itself adds to the common offset with its mark at `index`.
    fn own_miss(&self, index: Index) -> Offset {
        let mark = index.angle();
        self.centre
            + self.turning.rotated(-mark)
            + self.turning_against.rotated(mark)
            + self.stiff.rotated(mark * -2.0)
            + self.stiff_against.rotated(mark * 2.0)
            + self.third.rotated(mark * -3.0)
    }

    fn lean_differs(&self, index: Index) -> Offset {
        let [centre, turning] = self.lean_differs;
        centre + turning.rotated(-index.angle())
    }
}

/// A planar normal draw with `sd` per axis.
fn planar(random: &mut Pcg64, sd: f64) -> Offset {
    let x: f64 = StandardNormal.sample(random);
    let y: f64 = StandardNormal.sample(random);
    Offset::new(x * sd, y * sd)
}
