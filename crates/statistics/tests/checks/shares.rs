//! Shares against printed values and by simulation.

use quarterturn_statistics::{Count, Level, share};
use rand::{RngExt, SeedableRng};
use rand_pcg::Pcg64;

use crate::tolerance::{ALGEBRA, FOUR_DECIMALS, STANDARD_ERRORS, assert_close};

fn alone(held: usize, of: usize) -> Vec<Count> {
    (0..of).map(|case| Count { held: usize::from(case < held), of: 1 }).collect()
}

// Source: R. G. Newcombe, 1998, Two-sided confidence intervals for the single proportion, Statistics in Medicine 17, 857,
// table I, method 3.
#[test]
fn single_cases_give_the_printed_intervals() {
    for (held, of, lower, upper) in [
        (81, 263, 0.2553, 0.3662),
        (15, 148, 0.0624, 0.1605),
        (0, 20, 0.0, 0.1611),
        (1, 29, 0.0061, 0.1718),
    ] {
        let estimate = share(&alone(held, of), Level::P95).unwrap();
        assert_close(estimate.interval.lower, lower, FOUR_DECIMALS);
        assert_close(estimate.interval.upper, upper, FOUR_DECIMALS);
        assert_eq!(estimate.n, of);
    }
}

/// Ten cases that all go together are one.
#[test]
fn cases_that_go_together_count_once() {
    let tenfold: Vec<_> =
        alone(7, 30).iter().map(|one| Count { held: 10 * one.held, of: 10 }).collect();
    let (together, single) =
        (share(&tenfold, Level::P95).unwrap(), share(&alone(7, 30), Level::P95).unwrap());
    assert_close(together.value, single.value, ALGEBRA);
    // The thirty groups are compared with their own mean, which costs one of them.
    assert!(together.interval.lower <= single.interval.lower);
    assert_close(together.interval.upper, single.interval.upper, 0.01);
}

#[test]
fn of_nothing_there_is_no_share() {
    assert_eq!(share(&[], Level::P95), None);
    assert_eq!(share(&[Count::default()], Level::P95), None);
    assert_eq!(Count::of([true, false, true]), Count { held: 2, of: 3 });
}

/// Planted truth: forty groups of twelve, each with a share of its own between 0 and 0.4.
#[test]
fn the_interval_covers_where_cases_go_together() {
    const TIMES: usize = 4_000;
    let mut random = Pcg64::seed_from_u64(5);
    let mut covered = 0_usize;
    for _ in 0..TIMES {
        let groups: Vec<_> = (0..40)
            .map(|_| {
                let own = 0.4 * random.random::<f64>();
                Count::of((0..12).map(|_| random.random::<f64>() < own))
            })
            .collect();
        let interval = share(&groups, Level::P90).unwrap().interval;
        covered += usize::from(interval.lower <= 0.2 && 0.2 <= interval.upper);
    }
    let error = (0.9 * 0.1 / TIMES as f64).sqrt();
    // The variance between forty groups is itself estimated: a hundredth is lost to that.
    assert_close(covered as f64 / TIMES as f64, 0.89, STANDARD_ERRORS * error);
}
