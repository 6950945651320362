//! What comes off which end of every shaft, and whether the rest may be cut yet.

use quarterturn_bench::{CrookedEnds, CutPlan, Saw};
use quarterturn_geometry::Millimetres;
use quarterturn_journal::State;
use quarterturn_tuning::ShaftName;

use super::{Bench, Gauge, Workshop};

/// The shafts that are cut to one length.
pub struct CutList {
    pub target: Millimetres,
    pub saw: Saw,
    /// The shafts that are longer, in the order of the journal.
    pub planned: Vec<Planned>,
    /// Those that have their length.
    pub done: Vec<ShaftName>,
    /// Those that are too short, each with how long they are.
    pub too_short: Vec<(ShaftName, Millimetres)>,
    /// Those whose length is not known.
    pub unmeasured: Vec<ShaftName>,
    pub gate: Gate,
}

/// One shaft that is cut.
pub struct Planned {
    pub shaft: ShaftName,
    pub length: Millimetres,
    pub plan: CutPlan,
    /// Whether both ends were measured.
    pub ends_known: bool,
}

/// Whether one shaft of the length was shot before the rest is cut.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Gate {
    /// None is cut yet: cut one.
    CutOne,
    /// These are cut and not shot: shoot one bare.
    ShootIt(Vec<ShaftName>),
    /// One of these was shot: the rest may follow.
    CutTheRest(Vec<ShaftName>),
}

/// Two lengths this near are the same: a tape tells no more.
const SAME_MM: f64 = 0.5;

impl CutList {
    /// The list for a journal.
    pub fn of(workshop: &Workshop, state: &State, target: Millimetres, saw: Saw) -> Self {
        let mut list = Self {
            target,
            saw,
            planned: Vec::new(),
            done: Vec::new(),
            too_short: Vec::new(),
            unmeasured: Vec::new(),
            gate: Gate::of(state),
        };
        for standing in super::candidates(state) {
            let bench = workshop.shafts.iter().find(|bench| bench.shaft == standing.name);
            match bench.and_then(|bench| Some((bench, Gauge::Length.of(&bench.measures)?))) {
                Some((bench, length_mm)) => list.sort_in(bench, Millimetres::new(length_mm)),
                None => list.unmeasured.push(standing.name.clone()),
            }
        }
        list
    }

    fn sort_in(&mut self, bench: &Bench, length: Millimetres) {
        let over_mm = (length - self.target).mm();
        let end = |gauge: Gauge| gauge.of(&bench.measures).map(Millimetres::new);
        let crooked = CrookedEnds {
            point: end(Gauge::StraightnessPoint),
            nock: end(Gauge::StraightnessNock),
        };
        let shaft = bench.shaft.clone();
        match CutPlan::of(length, self.target, self.saw, crooked) {
            _ if over_mm.abs() < SAME_MM => self.done.push(shaft),
            Ok(plan) => {
                let ends_known = crooked.point.is_some() && crooked.nock.is_some();
                self.planned.push(Planned { shaft, length, plan, ends_known });
            }
            Err(_) => self.too_short.push((shaft, length)),
        }
    }
}

impl Gate {
    /// Where a journal stands: a shaft is cut when it was recorded how much came off.
    pub fn of(state: &State) -> Self {
        let is_cut = |name: &ShaftName| {
            let measures = state.measures(name);
            measures.cut_point_mm.is_some() || measures.cut_nock_mm.is_some()
        };
        let shafts = &state.roster().shafts;
        let cut: Vec<_> = shafts.iter().filter(|standing| is_cut(&standing.name)).collect();
        let shot = cut.iter().filter(|one| !one.counted.is_empty() || one.left_out > 0);
        let shot: Vec<ShaftName> = shot.map(|standing| standing.name.clone()).collect();
        match (cut.is_empty(), shot.is_empty()) {
            (true, _) => Self::CutOne,
            (false, true) => Self::ShootIt(cut.iter().map(|one| one.name.clone()).collect()),
            (false, false) => Self::CutTheRest(shot),
        }
    }
}
