//! What stands out, as JSON.

use quarterturn_tuning::{FarShot, StandingOut, WideShaft};
use serde::Serialize;

use super::matrix::pair;
use crate::wording::{self, Ruler};

/// Shots far from their like, and shafts that spread wider than the others.
#[derive(Serialize)]
pub struct StandingOutAnswer<'a> {
    shots: Vec<FarAnswer<'a>>,
    shafts: Vec<WideAnswer<'a>>,
}

#[derive(Serialize)]
struct FarAnswer<'a> {
    shaft: &'a str,
    end: usize,
    from_others_mm: [f64; 2],
    spread_mm: f64,
    spread_without_mm: f64,
    text: String,
}

#[derive(Serialize)]
struct WideAnswer<'a> {
    shaft: &'a str,
    times: f64,
    shots: usize,
    by_chance: f64,
    text: String,
}

impl<'a> StandingOutAnswer<'a> {
    /// What stands out, if anything does; lengths in its texts as `ruler` says them.
    pub fn of(standing_out: &'a StandingOut, ruler: Ruler) -> Option<Self> {
        let StandingOut { shots, shafts } = standing_out;
        let some = !shots.is_empty() || !shafts.is_empty();
        some.then(|| Self {
            shots: shots.iter().map(|shot| FarAnswer::new(shot, ruler)).collect(),
            shafts: shafts.iter().map(WideAnswer::from).collect(),
        })
    }
}

impl<'a> FarAnswer<'a> {
    fn new(shot: &'a FarShot, ruler: Ruler) -> Self {
        Self {
            shaft: shot.shaft.as_str(),
            end: shot.end,
            from_others_mm: pair(shot.from_others),
            spread_mm: shot.spread.mm(),
            spread_without_mm: shot.spread_without.mm(),
            text: wording::far_shot(shot, ruler),
        }
    }
}

impl<'a> From<&'a WideShaft> for WideAnswer<'a> {
    fn from(wide: &'a WideShaft) -> Self {
        Self {
            shaft: wide.shaft.as_str(),
            times: wide.times,
            shots: wide.shots,
            by_chance: wide.by_chance,
            text: wording::wide_shaft(wide),
        }
    }
}
