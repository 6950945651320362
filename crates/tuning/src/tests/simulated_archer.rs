//! The invented archer does what his world says.

use quarterturn_geometry::{Index, Offset};

use super::journal::{Journal, name};
use crate::flight::lean_with;
use crate::{Aim, Leans, PlannedShot, Purpose, Shot, SimulatedArcher, World};

/// A world in which nothing moves.
const NOTHING: World = World {
    spread_mm: [0.0, 0.0],
    torque_share: 0.0,
    drift_mm: 0.0,
    wander_mm: 0.0,
    common_mm: 0.0,
    uneven_share: 0.0,
    centre_mm: 0.0,
    turning_mm: 0.0,
    stiff_mm: 0.0,
    against_share: 0.0,
    third_mm: 0.0,
    seating_deg: 0.0,
    loose_share: 0.0,
    crooked_share: 0.0,
    flyer_share: 0.0,
    lean_discrepancy_deg: 0.0,
    lean_shot_deg: 0.0,
    lean_frame_deg: 0.0,
    read_mm: 0.0,
    ..World::ORDINARY
};

fn archer(world: World, seed: u64) -> SimulatedArcher {
    Journal::of(1).archer(world, seed)
}

/// One end of the reference alone and one of the shaft with its mark at 12, `times` over.
fn shot(archer: &mut SimulatedArcher, shaft: &str, times: usize, evening: &str) -> Vec<Shot> {
    let purpose = match shaft {
        "R" => Purpose::Reference,
        _ => Purpose::Bare { index: Index::TWELVE, from: Index::TWELVE, aim: Aim::Try },
    };
    let planned = PlannedShot { shaft: name(shaft), purpose };
    (0..times).flat_map(|_| archer.shoot(std::slice::from_ref(&planned), evening).shots).collect()
}

fn hits(shots: &[Shot]) -> Vec<Offset> {
    shots.iter().map(|shot| shot.hit.unwrap().at.from_spot()).collect()
}

fn sd(values: impl Iterator<Item = f64> + Clone) -> f64 {
    let n = values.clone().count() as f64;
    let mean = values.clone().sum::<f64>() / n;
    (values.map(|value| (value - mean).powi(2)).sum::<f64>() / n).sqrt()
}

/// Standard errors of a standard deviation of 4,000 draws: about 1 %.
const SD_TO: f64 = 0.05;

#[test]
fn torque_is_a_part_of_the_spread_and_shows_in_the_lean() {
    let world = World { spread_mm: [20.0, 20.0], torque_share: 0.6, ..NOTHING };
    let shots = shot(&mut archer(world, 1), "R", 4000, "first");
    let hits = hits(&shots);
    for axis in [sd(hits.iter().map(|hit| hit.x_mm)), sd(hits.iter().map(|hit| hit.y_mm))] {
        assert!((axis / 20.0 - 1.0).abs() < SD_TO, "{axis}");
    }
    let leans = shots.iter().map(|shot| shot.hit.unwrap().lean.unwrap());
    let across = sd(leans.clone().map(|lean| lean.x.degrees()));
    assert!((across / (20.0 * 0.6 * 0.1) - 1.0).abs() < SD_TO, "{across}");
    assert!(leans.map(|lean| lean.y.degrees()).all(|up| up == 0.0), "torque acts to the sides");
}

#[test]
fn an_archer_may_spread_wider_up_and_down() {
    let world = World { spread_mm: [20.0, 20.0], taller: 4.0, torque_share: 0.6, ..NOTHING };
    let hits = hits(&shot(&mut archer(world, 5), "R", 4000, "first"));
    for (axis, expected) in
        [(sd(hits.iter().map(|hit| hit.x_mm)), 10.0), (sd(hits.iter().map(|hit| hit.y_mm)), 40.0)]
    {
        assert!((axis / expected - 1.0).abs() < SD_TO, "{axis}");
    }
}

#[test]
fn the_aim_walks_off_until_the_evening_is_over() {
    let mut archer = archer(World { wander_mm: 3.0, ..NOTHING }, 2);
    let from_spot_mm = |shots: Vec<Shot>| hits(&shots).last().unwrap().length().mm();
    let late: Vec<f64> =
        (0..40).map(|n| from_spot_mm(shot(&mut archer, "R", 100, &format!("long {n}")))).collect();
    let early: Vec<f64> =
        (0..40).map(|n| from_spot_mm(shot(&mut archer, "R", 1, &format!("short {n}")))).collect();
    let root_mean =
        |all: &[f64]| (all.iter().map(|x| x * x).sum::<f64>() / all.len() as f64).sqrt();
    // A walk of a hundred steps goes ten times as far as one step; forty walks say so to a tenth.
    let times = root_mean(&late) / root_mean(&early);
    assert!((7.0..14.0).contains(&times), "{times}");
}

#[test]
fn an_uneven_bow_makes_an_ellipse_of_the_circle() {
    let sizes = |uneven_share: f64| {
        let archer = archer(World { turning_mm: 20.0, uneven_share, ..NOTHING }, 3);
        let at = |hour: f64| archer.true_miss(&name("1"), Index::from_hour(hour)).unwrap();
        for hour in [1.0, 2.0, 5.0] {
            let centre = at(hour) + at(hour + 6.0);
            assert!(centre.length().mm() < 1e-9, "a half turn still reverses it: {centre:?}");
        }
        let sizes = (0..12_u8).map(|hour| at(f64::from(hour)).length().mm());
        sizes.fold((f64::MAX, 0.0_f64), |(least, most), size| (least.min(size), most.max(size)))
    };
    let (least, most) = sizes(0.3);
    let (even_least, even_most) = sizes(0.0);
    assert!((even_most - even_least).abs() < 1e-9 && most > 1.2 * least, "{least} to {most}");
}

#[test]
fn nocks_seat_a_little_off() {
    let world = World { turning_mm: 50.0, seating_deg: 5.0, ..NOTHING };
    let mut archer = archer(world, 4);
    let truth = archer.true_miss(&name("1"), Index::TWELVE).unwrap();
    let off = hits(&shot(&mut archer, "1", 2000, "first")).into_iter().map(|hit| hit - truth);
    let off: Vec<f64> = off.map(|off| off.length().mm()).collect();
    let root_mean = (off.iter().map(|x| x * x).sum::<f64>() / off.len() as f64).sqrt();
    let expected = truth.length().mm() * 5.0_f64.to_radians();
    assert!((root_mean / expected - 1.0).abs() < SD_TO, "{root_mean}, not {expected}");
}

#[test]
fn a_lean_grows_with_the_miss_and_turns_back() {
    let lean_deg = |mm: f64| -lean_with(Offset::new(mm, 0.0), &World::LEAN_BENDS).x_mm;
    assert!((lean_deg(1.0) - 0.1).abs() < 1e-3);
    assert!(
        lean_deg(30.0) > lean_deg(25.0) && lean_deg(30.0) > lean_deg(35.0),
        "it turns at 30 mm"
    );
    assert!(lean_deg(90.0) < lean_deg(10.0));
}

#[test]
fn a_bow_is_as_far_off_as_it_is_said_to_be() {
    for seed in 0..5 {
        let off = archer(World { bow_off_mm: 60.0, ..NOTHING }, seed).true_common();
        assert!((off.length().mm() - 60.0).abs() < 1e-9, "{off:?}");
    }
}

#[test]
fn what_is_not_read_is_absent() {
    let world = World { leans: Leans::NotRead, ..World::ORDINARY };
    let shots = shot(&mut archer(world, 5), "1", 3, "first");
    assert!(shots.iter().all(|shot| shot.hit.unwrap().lean.is_none()));
}
