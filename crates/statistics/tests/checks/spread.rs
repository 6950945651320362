//! The pooled spread against printed values and by simulation.

use nalgebra::Vector2;
use quarterturn_statistics::{Level, PlanarSample, PooledSpread};
use rand::SeedableRng;
use rand_distr::{Distribution, StandardNormal};
use rand_pcg::Pcg64;

use crate::tolerance::{ALGEBRA, SIX_DECIMALS, STANDARD_ERRORS, assert_close, assert_relative};

// Source: chi-squared quantiles with 8 degrees of freedom and c₄(9) from any quality-control table: five points, squared
// distances summing to 8.
#[test]
fn five_points() {
    let spread = PooledSpread { sum_of_squares: 8.0, degrees_of_freedom: 8, points: 5 };
    let sigma = spread.estimate(Level::P95).unwrap();
    assert_close(sigma.value, 1.031_661, SIX_DECIMALS);
    assert_close(sigma.interval.lower, 0.675_457, SIX_DECIMALS);
    assert_close(sigma.interval.upper, 1.915_771, SIX_DECIMALS);
    assert_eq!(sigma.n, 5);
}

// Source: c₄(n) of quality-control tables at n = 2, 3, 5, 10, 25, one less degrees of freedom.
#[test]
fn small_samples_fall_short_as_tabulated() {
    for (freedom, shortfall) in
        [(1, 0.797_885), (2, 0.886_227), (4, 0.939_986), (9, 0.972_659), (24, 0.989_640)]
    {
        let sum_of_squares = f64::from(freedom);
        let degrees_of_freedom = usize::try_from(freedom).unwrap();
        let spread = PooledSpread { sum_of_squares, degrees_of_freedom, points: 99 };
        let sigma = spread.estimate(Level::P90).unwrap();
        assert_close(1.0 / sigma.value, shortfall, SIX_DECIMALS);
        let error = (1.0 - shortfall * shortfall).sqrt() / shortfall / shortfall;
        // Three decimals of error in c leave five in √(1 − c²).
        assert_close(sigma.standard_error, error, 10.0 * SIX_DECIMALS);
    }
}

/// The exact form and the expansion meet at 100 degrees of freedom.
#[test]
fn the_correction_has_no_step() {
    let correction = |degrees_of_freedom: usize| {
        let sum_of_squares = degrees_of_freedom as f64;
        let spread = PooledSpread { sum_of_squares, degrees_of_freedom, points: 99 };
        spread.estimate(Level::P90).unwrap().value
    };
    let [a, b, c, d] = [98, 99, 100, 101].map(correction);
    // Third differences of 1/4ν at ν = 100: 6/4ν⁴.
    assert_close(d - 3.0 * c + 3.0 * b - a, -1.5e-8, 1e-9);
}

#[test]
fn groups_are_pooled_about_their_own_centres() {
    let group = |x: f64, half_width: f64| {
        let points = vec![Vector2::new(x - half_width, 7.0), Vector2::new(x + half_width, 7.0)];
        PlanarSample::new(points).unwrap()
    };
    let single = PlanarSample::new(vec![Vector2::new(500.0, 500.0)]).unwrap();
    let spread = PooledSpread::of([&group(0.0, 1.0), &group(100.0, 2.0), &single]);
    assert_eq!((spread.degrees_of_freedom, spread.points), (4, 5));
    assert_relative(spread.sum_of_squares, 10.0, ALGEBRA);
}

/// Planted truth: two groups of three points and one of four, σ = 3.
#[test]
fn the_interval_covers_and_the_estimate_is_right_on_average() {
    const SESSIONS: usize = 20_000;
    const SIGMA: f64 = 3.0;
    let mut random = Pcg64::seed_from_u64(2);
    let mut normal = move || -> f64 { StandardNormal.sample(&mut random) };
    let (mut covered, mut sum, mut squares) = (0_usize, 0.0, 0.0);
    for _ in 0..SESSIONS {
        let groups = [3, 3, 4].map(|n| {
            let centre = Vector2::new(40.0 * normal(), 40.0 * normal());
            let points = (0..n).map(|_| centre + SIGMA * Vector2::new(normal(), normal()));
            PlanarSample::new(points.collect()).unwrap()
        });
        let sigma = PooledSpread::of(&groups).estimate(Level::P90).unwrap();
        covered += usize::from(sigma.interval.lower <= SIGMA && SIGMA <= sigma.interval.upper);
        sum += sigma.value;
        squares += (sigma.value - SIGMA).powi(2);
    }
    let n = SESSIONS as f64;
    assert_close(covered as f64 / n, 0.90, STANDARD_ERRORS * (0.9 * 0.1 / n).sqrt());
    assert_close(sum / n, SIGMA, STANDARD_ERRORS * (squares / n).sqrt() / n.sqrt());
}
