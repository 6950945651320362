//! The chance on a plate: against noncentral chi-squared, how often its bound holds, and how far it reaches.

use nalgebra::{Matrix2, Vector2};
use quarterturn_geometry::Millimetres;
use quarterturn_statistics::distributions::NoncentralChiSquared;
use quarterturn_statistics::{Level, probability_within_circle};

use super::finished_shots::{Archer, group, shot};
use crate::finished::PlateBound;
use crate::tolerance::{BOUND_HOLDS, PLATE_CHANCE, assert_within};
use crate::{Call, EndedBy, Group, Reach, Start, reach};

const PLATE: Millimetres = Millimetres::new(200.0);

fn reached(groups: &[Group], chance: f64) -> Reach {
    let groups: Vec<_> = groups.iter().collect();
    reach(&groups, PLATE, Level::new(chance).unwrap(), 1)
}

/// Hits whose covariance is exactly σ² in every direction, about `centre`.
fn round(centre: Vector2<f64>, sigma: f64) -> Vec<Vector2<f64>> {
    let at = |n: i32| {
        let (sin, cos) = (f64::from(n) * std::f64::consts::FRAC_PI_3).sin_cos();
        // Six points at radius ρ have the scatter 3ρ² along each axis, over five.
        centre + sigma * (5.0_f64 / 3.0).sqrt() * Vector2::new(cos, sin)
    };
    (0..6).map(at).collect()
}

#[test]
fn a_round_group_beside_the_spot_is_noncentral_chi_squared() {
    for (centre, sigma) in [([0.0, 0.0], 40.0), ([60.0, 0.0], 40.0), ([30.0, -70.0], 65.0)] {
        let centre = Vector2::from(centre);
        let bound = PlateBound::of(round(centre, sigma), 1).unwrap();
        let beside = (centre / sigma).norm_squared();
        let outside = NoncentralChiSquared::new(2.0, beside).unwrap();
        let expected = outside.cdf((100.0_f64 / sigma).powi(2));
        assert_within(bound.chance(100.0), expected, PLATE_CHANCE);
        assert!(bound.at_least(100.0) < expected);
    }
}

#[test]
fn the_lower_bound_holds_as_often_as_it_says() {
    let worlds = [
        // Round, wide and flat, and slanting, on the spot and beside it: there the bound is tightest.
        (5, [0.0, 0.0], Matrix2::new(45.0, 0.0, 0.0, 45.0)),
        (6, [35.0, -20.0], Matrix2::new(55.0, 0.0, 0.0, 15.0)),
        (10, [60.0, 60.0], Matrix2::new(30.0, 0.0, 20.0, 30.0)),
        (10, [80.0, 0.0], Matrix2::new(20.0, 0.0, 0.0, 20.0)),
        (20, [0.0, 70.0], Matrix2::new(30.0, 0.0, 0.0, 30.0)),
    ];
    for (n, centre, half) in worlds {
        let truth = probability_within_circle(centre.into(), &(half * half.transpose()), 100.0);
        let mut archer = Archer::new(n as u64);
        let holds = (0..400).filter(|seed| {
            let hits = archer.points(n, centre.into(), half);
            PlateBound::of(hits, *seed).unwrap().at_least(100.0) <= truth
        });
        let share = holds.count() as f64 / 400.0;
        assert!(BOUND_HOLDS.contains(&share), "{n} shots about {centre:?}: {share}");
    }
}

#[test]
fn the_reach_ends_at_the_chance_or_at_the_shots() {
    let mut archer = Archer::new(7);
    let mut groups = vec![
        archer.group(18.0, "field", 20, [0.0, 0.0], 15.0),
        archer.group(27.0, "field", 20, [0.0, 0.0], 23.0),
    ];
    let near = reached(&groups, 0.9).farthest.unwrap();
    assert_eq!((near.distance, near.ended_by), (Millimetres::new(27_000.0), EndedBy::Shots));
    groups.push(archer.group(45.0, "field", 20, [10.0, 0.0], 45.0));
    let ends = reached(&groups, 0.9);
    let farthest = ends.farthest.unwrap();
    assert_eq!(farthest.ended_by, EndedBy::Chance);
    assert!((27.0..45.0).contains(&farthest.distance.metres()), "{farthest:?}");
    // At the farthest distance the bound of the shots from 45 m, shrunk in proportion, is what was asked for.
    let hits = groups[2].shots.iter().map(|shot| shot.hit.unwrap().at.from_spot());
    let hits = hits.map(|hit| Vector2::new(hit.x_mm, hit.y_mm)).collect();
    let shrunk = farthest.distance.metres() / 45.0;
    let bound = PlateBound::of(hits, 1).unwrap().at_least(100.0 / shrunk);
    assert!(farthest.distance.metres() > 27.0 && (bound - 0.9).abs() < 0.003, "{bound}");
    let surer = reached(&groups, 0.97).farthest.unwrap();
    assert!(surer.distance.mm() < farthest.distance.mm());
}

#[test]
fn what_fails_near_is_not_excused_by_what_holds_far() {
    let mut archer = Archer::new(9);
    let groups = [
        archer.group(18.0, "field", 10, [60.0, 0.0], 40.0),
        archer.group(36.0, "field", 20, [0.0, 0.0], 15.0),
    ];
    let farthest = reached(&groups, 0.9).farthest.unwrap();
    assert!(farthest.distance.metres() < 18.0 && farthest.ended_by == EndedBy::Chance);
}

#[test]
fn the_worst_kind_counts_and_the_others_are_told() {
    let mut archer = Archer::new(11);
    let mut groups = vec![
        archer.group(18.0, "field", 12, [0.0, 0.0], 20.0),
        archer.group(18.0, "head A", 6, [60.0, 0.0], 25.0),
    ];
    for seed in 0..5 {
        let [x, y] = [[30.0, 90.0], [-95.0, 10.0], [40.0, 70.0], [-20.0, 99.0], [15.0, 30.0]][seed];
        let mut cold = group(18.0, "field", &[Vector2::new(x, y)]);
        cold.start = Start::Cold;
        groups.push(cold);
    }
    groups[0].shots.push(shot(20, None));
    groups[0].shots.push(shot(21, Some(Vector2::new(900.0, 0.0))));
    groups[0].shots[13].call = Some(Call::Poor);
    let rung = reached(&groups, 0.9).rungs.remove(0);
    let told: Vec<_> =
        rung.kinds.iter().map(|kind| (kind.head.to_string(), kind.start, kind.n)).collect();
    assert_eq!(
        told,
        [
            ("field".into(), Start::Warm, 12),
            ("field".into(), Start::Cold, 5),
            ("head A".into(), Start::Warm, 6)
        ]
    );
    assert_eq!((rung.kinds[0].without_a_hit, rung.kinds[0].on_plate), (1, 12));
    assert_eq!(rung.kinds[1].on_plate, 4);
    let chance = |place: usize| rung.kinds[place].chance.unwrap();
    assert_eq!(rung.worst, Some(1));
    assert!(chance(1).estimate < chance(2).estimate && chance(2).estimate < chance(0).estimate);
    assert!(
        rung.kinds.iter().all(|kind| kind.chance.unwrap().at_least < kind.chance.unwrap().estimate)
    );
}

#[test]
fn four_shots_are_too_few_and_so_is_a_line() {
    let mut archer = Archer::new(13);
    let few = [archer.group(18.0, "field", 4, [0.0, 0.0], 20.0)];
    let reach = reached(&few, 0.9);
    assert_eq!((reach.farthest, reach.rungs[0].worst), (None, None));
    let line: Vec<_> = (0..6).map(|n| Vector2::new(f64::from(n), 0.0)).collect();
    assert_eq!(reached(&[group(18.0, "field", &line)], 0.9).farthest, None);
    assert_eq!(reached(&[], 0.9).rungs, []);
}
