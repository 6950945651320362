//! Whether one direction goes with another, against another program, planted truth, and by chance.

use std::f64::consts::TAU;

use quarterturn_statistics::{Level, Sample, SharedTurn, StatisticError};
use rand::{RngExt, SeedableRng};
use rand_pcg::Pcg64;

use crate::fixture::Fixture;
use crate::tolerance::{ALGEBRA, STANDARD_ERRORS, assert_close};

fn degrees(angles: impl IntoIterator<Item = f64>) -> Sample {
    Sample::new(angles.into_iter().map(f64::to_radians).collect()).unwrap()
}

fn shared(pairs: &[(f64, f64)]) -> SharedTurn {
    let from = degrees(pairs.iter().map(|pair| pair.0));
    SharedTurn::of(&from, &degrees(pairs.iter().map(|pair| pair.1)), 7).unwrap()
}

// Source: scipy 1.17.1 permutation_test over every order; fixtures/statistics/make_shared_turn.py.
#[test]
fn orders_as_in_scipy() {
    let rows = Fixture::read("shared_turn.csv").rows;
    let number = |row: &Vec<String>, column: usize| row[column].parse::<f64>().unwrap();
    let mut sets = 0;
    for set in rows.chunk_by(|a, b| a[0] == b[0]) {
        let pairs: Vec<_> = set.iter().map(|row| (number(row, 1), number(row, 2))).collect();
        let found = shared(&pairs);
        assert_close(found.test.statistic, number(&set[0], 3), ALGEBRA);
        let p = number(&set[0], 4);
        // Nine pairs are drawn, not tried in full.
        let drawn = STANDARD_ERRORS * (p * (1.0 - p) / 1e4).sqrt() + 1e-4;
        let allowed = if pairs.len() > 8 { drawn } else { ALGEBRA };
        assert_close(found.test.p_value, p, allowed);
        assert_eq!(found.test.n, pairs.len());
        sets += 1;
    }
    assert_eq!(sets, 8);
}

/// A planted turn of 150 degrees is found, and with four pairs at its best no p is below 1/4!.
#[test]
fn a_planted_turn_is_found() {
    let pairs = [10.0, 80.0, 150.0, 200.0, 300.0, 330.0].map(|from| (from, from + 150.0));
    let found = shared(&pairs);
    assert_close(found.turn.direction_rad.unwrap().to_degrees(), 150.0, 1e-9);
    assert_close(found.test.p_value, 1.0 / 720.0, ALGEBRA);
    assert_close(shared(&pairs[..4]).test.p_value, 1.0 / 24.0, ALGEBRA);
}

/// What does not differ tells nothing, however well it agrees.
#[test]
fn directions_that_are_all_the_same_tell_nothing() {
    for n in [4_u8, 12] {
        let pairs: Vec<_> = (0..n).map(|n| (0.0, 90.0 + f64::from(n))).collect();
        let found = shared(&pairs);
        assert!(found.test.statistic > 0.99);
        assert_close(found.test.p_value, 1.0, 0.0);
    }
}

#[test]
fn what_makes_no_pairs_is_refused() {
    let of = |from: &[f64], to: &[f64]| {
        SharedTurn::of(&degrees(from.to_vec()), &degrees(to.to_vec()), 1).unwrap_err()
    };
    let differ = StatisticError::CountsDiffer { first: 2, second: 1 };
    assert_eq!(of(&[1.0, 2.0], &[1.0]), differ);
    assert_eq!(of(&[1.0], &[1.0]), StatisticError::TooFew { n: 1, needed: 2 });
}

/// Of directions that have nothing to do with each other, and do not spread evenly, as many as stated are rejected.
#[test]
fn the_test_keeps_its_level() {
    const DRAWS: u32 = 1500;
    let mut random = Pcg64::seed_from_u64(33);
    for n in [5, 7] {
        let rejected = (0..DRAWS).filter(|_| {
            let mut draw = |width: f64| {
                Sample::new((0..n).map(|_| width * random.random::<f64>()).collect()).unwrap()
            };
            let found = SharedTurn::of(&draw(0.2 * TAU), &draw(TAU), 1).unwrap();
            found.test.rejects_at(Level::P95)
        });
        let share = rejected.count() as f64 / f64::from(DRAWS);
        let chance = STANDARD_ERRORS * (0.05 * 0.95 / f64::from(DRAWS)).sqrt();
        assert!((0.05 - chance - 1.0 / 120.0..=0.05 + chance).contains(&share), "{n}: {share}");
    }
}
