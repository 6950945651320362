//! The archer with a bow and a dozen shafts, all of it known to us and none of it to the program.

use std::collections::HashMap;

use serde_json::{Value, json};

use super::luck::Luck;
use super::next::Asked;
use super::shaft::Shaft;
use super::vector::Vector;
use super::world::{
    BARE_WIDER, BOW_GAIN_SD, Bow, FLYER_WIDER, FLYERS, LEAN_DEG_PER_MM, LEAN_FRAME_DEG,
    LEAN_READING_DEG, LEAN_SCATTER_BARE_DEG, LEAN_SCATTER_FLETCHED_DEG, Lean, SHAFTS,
    UNREPEATABLE_WIDER, World,
};

/// One archer on one evening.
pub struct Player<'a> {
    world: &'a World,
    luck: Luck,
    spread_mm: f64,
    common_offset: Vector,
    /// By the name in the journal.
    shafts: HashMap<String, Shaft>,
}

/// One shot as it truly went, before anybody read it.
struct Flight {
    hit: Vector,
    lean: Vector,
}

impl<'a> Player<'a> {
    pub fn new(world: &'a World, seed: u64) -> Self {
        let mut luck = Luck::new(seed);
        let spread_mm = luck.between(world.spread_mm.clone());
        let common_offset = match world.bow {
            Bow::Near { sd_mm } => luck.scatter(sd_mm),
            Bow::Off { mm } => luck.direction(mm),
        };
        let mut shaft = |number: usize| (number.to_string(), Shaft::build(world.fault, &mut luck));
        let shafts = (1..=SHAFTS).map(&mut shaft).collect();
        Self { world, luck, spread_mm, common_offset, shafts }
    }

    /// Where a shaft lands on average, from the reference.
    pub fn miss(&self, shaft: &str, index_deg: f64) -> Vector {
        self.common_offset + self.shafts[shaft].miss(index_deg)
    }

    pub fn groups(&self, shaft: &str) -> bool {
        self.shafts[shaft].groups
    }

    pub fn common_offset(&self) -> Vector {
        self.common_offset
    }

    /// Moves the bow so that bare shafts shift by what was asked, as nearly as one can.
    pub fn move_bow(&mut self, shift: Vector) {
        let gain = 1.0 + BOW_GAIN_SD * self.luck.normal();
        self.common_offset = self.common_offset + shift * gain;
    }

    /// Shoots the end that was asked for; the shots as they are read, to the millimetre and tenth of a degree.
    pub fn shoot(&mut self, asked: &[Asked]) -> Vec<Value> {
        let aim = self.luck.scatter(self.world.drift_mm);
        let frame = self.luck.scatter(LEAN_FRAME_DEG);
        asked
            .iter()
            .map(|shot| {
                let flight = self.flight(shot);
                let reading = self.luck.scatter(LEAN_READING_DEG);
                self.read(shot, aim + flight.hit, frame + flight.lean + reading)
            })
            .collect()
    }

    fn flight(&mut self, shot: &Asked) -> Flight {
        let flyer = if self.luck.happens(FLYERS) { FLYER_WIDER } else { 1.0 };
        let wild = self.luck.scatter(self.spread_mm * flyer);
        let lean_wild = self.luck.scatter(1.0);
        let (Some(index_deg), Some(shaft)) = (shot.index_deg, self.shafts.get(&shot.shaft)) else {
            return Flight { hit: wild, lean: lean_wild * LEAN_SCATTER_FLETCHED_DEG };
        };
        let miss = self.miss(&shot.shaft, index_deg);
        let wider = if shaft.groups { BARE_WIDER } else { BARE_WIDER * UNREPEATABLE_WIDER };
        let lean = self.lean_for(miss) + shaft.lean_of_its_own;
        Flight { hit: miss + wild * wider, lean: lean + lean_wild * LEAN_SCATTER_BARE_DEG }
    }

    fn lean_for(&self, miss: Vector) -> Vector {
        let mm = miss.length();
        let bent = match self.world.lean {
            Lean::BendsBack if mm > 20.0 => 20.0 + (mm.min(60.0) - 20.0) / 2.0,
            _ => mm,
        };
        miss * (LEAN_DEG_PER_MM * bent / mm.max(f64::MIN_POSITIVE))
    }

    fn read(&self, shot: &Asked, hit: Vector, lean: Vector) -> Value {
        // Adding nothing turns −0 into 0, as people write it.
        let tenths = |deg: f64| (deg * 10.0).round() / 10.0 + 0.0;
        let mut read = json!({
            "shaft": shot.shaft, "x_mm": hit.x.round() + 0.0, "y_mm": hit.y.round() + 0.0
        });
        if let Some(index_deg) = shot.index_deg {
            read["index_deg"] = json!(index_deg);
        }
        if self.world.lean != Lean::NotRead {
            read["lean_x_deg"] = json!(tenths(lean.x));
            read["lean_y_deg"] = json!(tenths(lean.y));
        }
        read
    }
}
