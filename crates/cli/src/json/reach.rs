//! The chance on a plate against the distance, as JSON.

use quarterturn_geometry::Millimetres;
use quarterturn_statistics::Level;
use quarterturn_tuning::{EndedBy, Farthest, Reach, Rung, ShotKind, Start};
use serde::Serialize;

use crate::failure::Failure;
use crate::opened::Opened;
use crate::wording;

#[derive(Serialize)]
struct ReachAnswer {
    schema: &'static str,
    plate_mm: f64,
    chance: f64,
    level: f64,
    groups: usize,
    groups_left_out: usize,
    distances: Vec<RungAnswer>,
    #[serde(skip_serializing_if = "Option::is_none")]
    farthest: Option<FarthestAnswer>,
    cautions: &'static [&'static str],
}

#[derive(Serialize)]
struct RungAnswer {
    distance_m: f64,
    kinds: Vec<KindAnswer>,
}

#[derive(Serialize)]
struct KindAnswer {
    head: String,
    cold: bool,
    shots: usize,
    on_plate: usize,
    without_a_hit: usize,
    #[serde(skip_serializing_if = "Option::is_none")]
    chance: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    at_least: Option<f64>,
    counts: bool,
}

#[derive(Serialize)]
struct FarthestAnswer {
    distance_m: f64,
    ended_by: &'static str,
}

/// The answer of `reach --json`.
pub fn reach(
    opened: &Opened,
    reach: &Reach,
    plate: Millimetres,
    chance: Level,
) -> Result<String, Failure> {
    let state = opened.journal.state();
    let groups = state.groups_beside_this_bow().count();
    super::finite_line(&ReachAnswer {
        schema: "quarterturn.reach/1",
        plate_mm: plate.mm(),
        chance: chance.probability(),
        level: Level::P95.probability(),
        groups,
        groups_left_out: state.groups().count() - groups,
        distances: reach.rungs.iter().map(RungAnswer::from).collect(),
        farthest: reach.farthest.map(FarthestAnswer::from),
        cautions: &wording::OF_A_REACH,
    })
}

impl From<&Rung> for RungAnswer {
    fn from(rung: &Rung) -> Self {
        let kind = |(place, kind): (usize, &ShotKind)| KindAnswer {
            head: kind.head.to_string(),
            cold: kind.start == Start::Cold,
            shots: kind.n,
            on_plate: kind.on_plate,
            without_a_hit: kind.without_a_hit,
            chance: kind.chance.map(|chance| chance.estimate),
            at_least: kind.chance.map(|chance| chance.at_least),
            counts: rung.worst == Some(place),
        };
        let kinds = rung.kinds.iter().enumerate().map(kind).collect();
        Self { distance_m: rung.distance.metres(), kinds }
    }
}

impl From<Farthest> for FarthestAnswer {
    fn from(farthest: Farthest) -> Self {
        let ended_by = match farthest.ended_by {
            EndedBy::Chance => "chance",
            EndedBy::Shots => "shots",
        };
        Self { distance_m: farthest.distance.metres(), ended_by }
    }
}
