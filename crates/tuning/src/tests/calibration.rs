//! On a world drawn as the model believes, its regions and probabilities are right.

use quarterturn_geometry::{Index, Offset};
use nalgebra::Vector2;

use super::journal::Journal;
use crate::tolerance::{COVERAGE, STANDARD_ERRORS, WITHIN_IS_RIGHT_TO};
use crate::{Aim, Event, Miss, PlannedShot, Purpose, Scales, SimulatedArcher, World};

const SESSIONS: u64 = 60;
const SHAFTS: usize = 6;
const ENDS: usize = 8;

/// −2 ln 0.1: a planar normal lies within this squared Mahalanobis distance in 90 % of all cases.
const NINETY_PERCENT: f64 = 4.605_170_185_988_091;

/// A world with the sizes that the model expects, no flyers and no shaft out of the common.
fn own_world(scales: &Scales) -> World {
    World {
        spread_mm: [scales.reference_mm; 2],
        bare_wider: scales.bare_mm / scales.reference_mm,
        drift_mm: scales.aim_mm,
        common_mm: scales.common_mm,
        centre_mm: scales.centre_mm,
        turning_mm: scales.turning_mm * scales.set_share.hypot(1.0),
        stiff_mm: scales.stiff_mm * scales.set_share.hypot(1.0),
        against_share: scales.against_share,
        third_mm: 0.0,
        loose_share: 0.0,
        crooked_share: 0.0,
        flyer_share: 0.0,
        lean_deg_per_mm: scales.lean_per_miss_deg_per_mm,
        lean_bends_at_mm: f64::INFINITY,
        lean_discrepancy_deg: scales.discrepancy_deg,
        lean_shot_deg: scales.bare_lean_deg.hypot(scales.read_lean_deg),
        lean_frame_deg: scales.frame_deg,
        read_mm: scales.read_mm,
        ..World::ORDINARY
    }
}

/// A third of the shafts an end, each at an hour of its own each time, whatever was seen.
fn planned(end: usize) -> Vec<PlannedShot> {
    let bare = (0..SHAFTS).filter(|shaft| shaft % 2 == end % 2).map(|shaft| {
        let index = Index::from_hour((5 * end + 2 * shaft) as f64);
        let purpose = Purpose::Bare { index, from: index, aim: Aim::Try };
        PlannedShot { shaft: super::journal::name(&(shaft + 1).to_string()), purpose }
    });
    let reference = PlannedShot { shaft: super::journal::name("R"), purpose: Purpose::Reference };
    std::iter::once(reference).chain(bare).collect()
}

/// What was predicted for one position, and whether it came true.
struct Case {
    session: u64,
    covered: bool,
    said: f64,
    inside: bool,
}

fn session(seed: u64) -> Vec<Case> {
    let mut journal = Journal::of(SHAFTS);
    let scales = Scales::at(journal.history.setup.distance);
    let mut archer = journal.archer(own_world(&scales), seed);
    for end in 0..ENDS {
        let end = archer.shoot(&planned(end), "first");
        journal.history.events.push(Event::End(end));
    }
    let tolerance = journal.history.setup.tolerance;
    let case = |archer: &SimulatedArcher, shaft, at: &crate::Prediction| {
        let truth = archer.true_miss(shaft, at.index).unwrap();
        let inside = truth.length() <= tolerance;
        Case { session: seed, covered: covers(&at.miss, truth), said: at.within, inside }
    };
    let advice = journal.advice();
    advice
        .shafts
        .iter()
        .flat_map(|one| one.positions.iter().map(|at| case(&archer, &one.shaft, at)))
        .collect()
}

fn covers(miss: &Miss, truth: Offset) -> bool {
    let off = Vector2::new(truth.x_mm - miss.mean.x_mm, truth.y_mm - miss.mean.y_mm);
    let precision = miss.covariance_mm2.try_inverse().unwrap();
    off.dot(&(precision * off)) <= NINETY_PERCENT
}

fn share(cases: &[&Case], of: impl Fn(&Case) -> bool) -> f64 {
    cases.iter().filter(|case| of(case)).count() as f64 / cases.len() as f64
}

#[test]
fn its_regions_cover_and_its_probabilities_come_true() {
    let cases: Vec<_> = (0..SESSIONS).flat_map(session).collect();
    let all: Vec<_> = cases.iter().collect();
    let covered = share(&all, |case| case.covered);
    println!("covered {covered} of {}", all.len());
    for bin in 0..3 {
        let of_bin = |case: &&Case| (case.said * 3.0).floor().min(2.0) == f64::from(bin);
        let cases: Vec<_> = cases.iter().filter(of_bin).collect();
        let said = cases.iter().map(|case| case.said).sum::<f64>() / cases.len() as f64;
        println!("{bin}: {} said {said} inside {}", cases.len(), share(&cases, |case| case.inside));
    }
}
