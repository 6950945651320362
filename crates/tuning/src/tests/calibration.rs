//! On a world drawn as the model believes, its regions and probabilities are right.

use nalgebra::Vector2;
use quarterturn_geometry::{Index, Offset};
use quarterturn_statistics::probability_within_circle;

use super::journal::{Journal, name};
use crate::at_scales::AtScales;
use crate::tolerance::{COVERAGE, WITHIN_IS_RIGHT_TO};
use crate::{Aim, Event, Miss, PlannedShot, Purpose, Scales, ShaftName, SimulatedArcher, World};

/// −2 ln 0.1: a planar normal lies within this squared Mahalanobis distance in 90 % of all cases.
const NINETY_PERCENT: f64 = 4.605_170_185_988_091;

const TOLERANCE_MM: f64 = 25.0;

/// The scales as the simulated archer is: one reference that is where it is, shafts with nothing in common, one lean
/// scatter for all, and a bow that is nearly right.
fn own_scales(journal: &Journal) -> Scales {
    let scales = Scales::at(journal.history.setup.distance);
    Scales {
        reference_lean_deg: scales.bare_lean_deg,
        between_references_mm: 0.1,
        between_references_deg: 0.1,
        set_share: 0.01,
        common_mm: 12.0,
        ..scales
    }
}

/// A world of these sizes, with no flyers and no shaft out of the common.
fn own_world(scales: &Scales) -> World {
    World {
        spread_mm: [scales.reference_mm; 2],
        bare_wider: scales.bare_mm / scales.reference_mm,
        torque_share: 0.0,
        drift_mm: scales.aim_mm[0],
        wander_mm: 0.0,
        common_mm: scales.common_mm,
        uneven_share: 0.0,
        centre_mm: scales.centre_mm,
        turning_mm: scales.turning_mm,
        stiff_mm: scales.stiff_mm,
        against_share: scales.against_share,
        third_mm: 0.0,
        seating_deg: 0.0,
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

/// Six shafts, three an end beside the reference, each time at another hour, whatever was seen.
fn shot_over(ends: usize, seed: u64) -> (Journal, SimulatedArcher) {
    let mut journal = Journal::of(6);
    let mut archer = journal.archer(own_world(&own_scales(&journal)), seed);
    for end in 0..ends {
        let bare = (1..=6_usize).filter(|shaft| shaft % 2 == end % 2).map(|shaft| {
            let index = Index::from_hour((5 * end + 2 * shaft) as f64);
            let purpose = Purpose::Bare { index, from: index, aim: Aim::Try };
            PlannedShot { shaft: name(&shaft.to_string()), purpose }
        });
        let reference = PlannedShot { shaft: name("R"), purpose: Purpose::Reference };
        let planned: Vec<_> = std::iter::once(reference).chain(bare).collect();
        journal.history.events.push(Event::End(archer.shoot(&planned, "first")));
    }
    (journal, archer)
}

/// What was said of one shaft at one position, and whether it is true.
struct Case {
    session: u64,
    covered: bool,
    within: f64,
    inside: bool,
}

impl Case {
    fn of(session: u64, miss: &Miss, within: f64, truth: Offset) -> Self {
        let off = Vector2::new(truth.x_mm - miss.mean.x_mm, truth.y_mm - miss.mean.y_mm);
        let covered =
            off.dot(&(miss.covariance_mm2.try_inverse().unwrap() * off)) <= NINETY_PERCENT;
        Self { session, covered, within, inside: truth.length().mm() <= TOLERANCE_MM }
    }
}

/// The share of cases that hold, less what was said of them, with its standard error; the cases of a session go
/// together.
fn excess(cases: &[&Case], of: impl Fn(&Case) -> (bool, f64)) -> (f64, f64) {
    let off = |case: &&Case| {
        let (holds, said) = of(case);
        f64::from(holds) - said
    };
    let mean = cases.iter().map(off).sum::<f64>() / cases.len() as f64;
    let sessions = cases.chunk_by(|one, next| one.session == next.session);
    let squares = sessions
        .map(|of_session| of_session.iter().map(|case| off(case) - mean).sum::<f64>().powi(2));
    (mean, squares.sum::<f64>().sqrt() / cases.len() as f64)
}

#[track_caller]
fn assert_calibrated(cases: &[Case]) {
    let all: Vec<_> = cases.iter().collect();
    let (excess_covered, error) = excess(&all, |case| (case.covered, 0.9));
    // What sampling alone may do is no fault.
    let beyond = |excess: f64, error: f64| excess - excess.clamp(-2.0 * error, 2.0 * error);
    let covered = 0.9 + beyond(excess_covered, error);
    assert!(COVERAGE.contains(&covered), "0.9 + {excess_covered} ± {error}");
    for (from, to) in [(0.0, 0.4), (0.4, 0.7), (0.7, 1.01)] {
        let bin: Vec<_> = cases.iter().filter(|case| (from..to).contains(&case.within)).collect();
        let (excess, error) = excess(&bin, |case| (case.inside, case.within));
        let off = beyond(excess, error).abs();
        assert!(off <= WITHIN_IS_RIGHT_TO, "{from} to {to}: {excess} ± {error}");
    }
}

/// Standard errors: 0.006 of the coverage, 0.02 of a bin. The model is a little wary: that the lean of a
/// stiff side is its miss's and no more, it does not know.
#[test]
fn at_known_scales_its_regions_cover_and_its_probabilities_come_true() {
    let session = |seed| {
        let (journal, archer) = shot_over(8, seed);
        let read = AtScales::read(&journal.history, &own_scales(&journal), |_| 1.0);
        let case = |shaft: usize, hour: u8| {
            let (shaft, index) = (shaft.to_string(), Index::from_hour(f64::from(hour)));
            let miss = read.miss(&name(&shaft), index).unwrap();
            let mean = Vector2::new(miss.mean.x_mm, miss.mean.y_mm);
            let within = probability_within_circle(mean, &miss.covariance_mm2, TOLERANCE_MM);
            let truth = archer.true_miss(&name(&shaft), index).unwrap();
            Case::of(seed, &miss, within, truth)
        };
        let cases = (1..=6).flat_map(|shaft| (0..12).step_by(3).map(move |hour| (shaft, hour)));
        cases.map(|(shaft, hour)| case(shaft, hour)).collect::<Vec<_>>()
    };
    assert_calibrated(&(0..200).flat_map(session).collect::<Vec<_>>());
}

/// Standard errors: 0.011 of the coverage, 0.03 of a bin.
#[test]
fn with_scales_learned_its_regions_cover_and_its_probabilities_come_true() {
    let session = |seed| {
        let (journal, archer) = shot_over(8, seed);
        let shafts = journal.advice().shafts;
        let truth = |shaft: &ShaftName, index| archer.true_miss(shaft, index).unwrap();
        let cases = shafts.iter().flat_map(|one| one.positions.iter().map(move |at| (one, at)));
        cases
            .map(|(one, at)| Case::of(seed, &at.miss, at.within, truth(&one.shaft, at.index)))
            .collect::<Vec<_>>()
    };
    assert_calibrated(&(0..60).flat_map(session).collect::<Vec<_>>());
}
