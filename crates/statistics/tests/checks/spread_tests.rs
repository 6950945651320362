//! Tests of equal spread against the handbook, other programs, and by invariance.

use nalgebra::{Rotation2, Vector2};
use proptest::prelude::{ProptestConfig, prop_assert, proptest};
use quarterturn_statistics::{
    Level, PlanarSample, PooledSpread, Sample, bartlett_test, brown_forsythe_test,
    planar_brown_forsythe_test, scatter_excess, spread_ratio,
};

use crate::fixture::Fixture;
use crate::group_values::{Values, group};
use crate::groups::sample;
use crate::tolerance::{ALGEBRA, FIVE_DECIMALS, SIX_DECIMALS, assert_close, assert_relative};

fn batches() -> Vec<Sample> {
    let rows = Fixture::read("gear.csv").numbers();
    let batches = rows.chunk_by(|a, b| a[0].total_cmp(&b[0]).is_eq());
    batches.map(|batch| Sample::new(batch.iter().map(|row| row[1]).collect()).unwrap()).collect()
}

// Source: NIST/SEMATECH e-Handbook of Statistical Methods 1.3.5.7 and 1.3.5.10 (medians). The same about means gives 2.15946: the
// centre must be stated.
#[test]
fn ten_batches_of_gears() {
    let batches = batches();
    assert_eq!(batches.len(), 10);
    let spreads: Vec<_> = batches.iter().map(PooledSpread::from).collect();
    let bartlett = bartlett_test(&spreads).unwrap();
    assert_close(bartlett.statistic, 20.785_873_43, SIX_DECIMALS);
    assert_close(bartlett.p_value, 0.013_635_863, SIX_DECIMALS);
    assert!(bartlett.rejects_at(Level::P95) && !bartlett.rejects_at(Level::P99));
    let brown_forsythe = brown_forsythe_test(&batches).unwrap();
    assert_close(brown_forsythe.statistic, 1.705_917_693, SIX_DECIMALS);
    assert_close(brown_forsythe.p_value, 0.099_082_976, SIX_DECIMALS);
    assert_eq!((bartlett.n, brown_forsythe.n), (100, 100));
}

// Source: the same, 1.3.5.9: two sets of 240 with standard deviations 65.54909 and 61.85425.
#[test]
fn two_deviations() {
    let spread = |deviation: f64| PooledSpread {
        sum_of_squares: 239.0 * deviation * deviation,
        degrees_of_freedom: 239,
        points: 240,
    };
    let ratio = spread_ratio(&spread(65.549_09), &spread(61.854_25), Level::P95).unwrap();
    assert_close(ratio.test.statistic, 1.123_037_46, SIX_DECIMALS);
    let f = |bound: f64| ratio.test.statistic / (bound * bound);
    assert_close(f(ratio.interval.upper), 0.775_563_903, SIX_DECIMALS);
    assert_close(f(ratio.interval.lower), 1.289_384_402, SIX_DECIMALS);
    assert!(!ratio.test.rejects_at(Level::P95));
}

#[test]
fn tests_as_other_programs_find_them() {
    let values = Values::read();
    let names = ["round", "long", "tails"];
    let groups = names.map(group);
    let across =
        |group: &PlanarSample| Sample::new(group.points().iter().map(|p| p.x).collect()).unwrap();
    let columns = groups.each_ref().map(across);
    let spreads = columns.each_ref().map(PooledSpread::from);
    for (test, name) in [
        (bartlett_test(&spreads), "bartlett"),
        (brown_forsythe_test(&columns), "brown_forsythe"),
        (planar_brown_forsythe_test(&groups), "planar_brown_forsythe"),
    ] {
        let test = test.unwrap();
        let of = |what: &str| values.of("round long tails", &format!("{name}_{what}"));
        assert_relative(test.statistic, of("statistic"), 1e-9);
        assert_relative(test.p_value, of("p"), 1e-9);
    }
    let ratio = spread_ratio(&spreads[1], &spreads[0], Level::P95).unwrap();
    let of = |what: &str| values.of("long round", what);
    assert_relative(ratio.ratio, of("ratio"), 1e-9);
    assert_relative(ratio.test.p_value, of("ratio_p"), 1e-9);
    assert_relative(ratio.interval.lower, of("ratio_lower"), 1e-9);
    assert_relative(ratio.interval.upper, of("ratio_upper"), 1e-9);
}

/// One of four groups of three spreads five times as far: F = 25 on 4 and 12 degrees of freedom. With an even number of them its
/// tail is closed, (1 + 25 · 4/12)^(−6) (1 + 6 · x), x = 100/112 by parts.
#[test]
fn the_wide_group_is_named() {
    let three = |size: f64| sample(&[(size, 0.0), (-size, size), (0.0, -size)]);
    let groups = [three(1.0), three(1.0), three(5.0), three(1.0)];
    let spreads = groups.each_ref().map(|group| PooledSpread::of([group]));
    let excess: Vec<_> = scatter_excess(&spreads).unwrap().into_iter().flatten().collect();
    assert_eq!(excess.len(), 4);
    assert_relative(excess[2].ratio, 5.0, ALGEBRA);
    let x = 12.0 / (12.0 + 4.0 * 25.0_f64);
    let tail = x.powi(6) * (1.0 + 6.0 * (1.0 - x));
    assert_relative(excess[2].test.p_value, tail, 1e-9);
    assert_relative(excess[2].adjusted_p_value, 4.0 * tail, 1e-9);
    assert!(excess.iter().enumerate().all(|(at, one)| at == 2 || one.adjusted_p_value > 0.9));
    // One point and equal points have nothing to compare.
    let bare = PooledSpread::of([&sample(&[(1.0, 1.0)])]);
    let found = scatter_excess(&[spreads[0], bare, spreads[2]]).unwrap();
    assert_eq!(found.iter().map(Option::is_some).collect::<Vec<_>>(), [true, false, true]);
}

#[test]
fn equal_groups_do_not_differ() {
    let spread = PooledSpread { sum_of_squares: 0.3, degrees_of_freedom: 7, points: 8 };
    let test = bartlett_test(&[spread; 5]).unwrap();
    assert_close(test.statistic, 0.0, FIVE_DECIMALS);
    assert_close(test.p_value, 1.0, FIVE_DECIMALS);
    let ratio = spread_ratio(&spread, &spread, Level::P90).unwrap();
    assert_relative(ratio.interval.lower * ratio.interval.upper, 1.0, 1e-9);
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn moved_turned_and_stretched_groups(
        given in proptest::collection::vec((-20.0..20.0_f64, -20.0..20.0_f64), 15),
        (shift, turn, factor) in (-500.0..500.0_f64, 0.0..6.0_f64, 0.1..10.0_f64),
    ) {
        let groups: Vec<_> = given.chunks(5).map(sample).collect();
        let moved: Vec<_> = groups.iter().rev().enumerate().map(|(at, group)| {
            let turned = |p: &Vector2<f64>| factor * (Rotation2::new(turn) * p) + Vector2::new(shift * at as f64, 1.0);
            PlanarSample::new(group.points().iter().rev().map(turned).collect()).unwrap()
        }).collect();
        let spreads = |groups: &[PlanarSample]| groups.iter().map(|g| PooledSpread::of([g])).collect::<Vec<_>>();
        let p_values = |groups: &[PlanarSample]| {
            [bartlett_test(&spreads(groups)), planar_brown_forsythe_test(groups)].map(|test| test.unwrap().p_value)
        };
        for (p, q) in p_values(&groups).into_iter().zip(p_values(&moved)) {
            prop_assert!((p - q).abs() <= 1e-7, "{p} {q}");
        }
    }
}
