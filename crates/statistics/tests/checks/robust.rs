//! The minimum covariance determinant against robustbase, planted outliers, brute force, and by invariance.

use nalgebra::{Matrix2, Rotation2, Vector2};
use proptest::prelude::{ProptestConfig, prop_assert, prop_assert_eq, proptest};
use quarterturn_statistics::{
    Coverage, MinimumCovarianceDeterminant, PlanarSample, StatisticError,
};
use rand::SeedableRng;
use rand_distr::{Distribution, StandardNormal};
use rand_pcg::Pcg64;

use crate::fixture::Fixture;
use crate::group_values::{Values, group};
use crate::groups::sample;
use crate::tolerance::{
    SEVEN_DECIMALS, SIMULATED_CALIBRATION, SIX_DECIMALS, STANDARD_ERRORS, assert_close,
    assert_relative,
};

fn robust(sample: &PlanarSample, coverage: Coverage) -> MinimumCovarianceDeterminant<'_> {
    MinimumCovarianceDeterminant::new(sample, coverage, 1).unwrap()
}

fn part(sample: &PlanarSample, positions: &[usize]) -> PlanarSample {
    PlanarSample::new(positions.iter().map(|&at| sample.points()[at]).collect()).unwrap()
}

fn from_one(positions: impl IntoIterator<Item = usize>) -> Vec<usize> {
    positions.into_iter().map(|at| at + 1).collect()
}

fn stars() -> PlanarSample {
    let rows = Fixture::read("stars.csv").numbers();
    sample(&rows.iter().map(|row| (row[0], row[1])).collect::<Vec<_>>())
}

#[track_caller]
fn assert_matrix(matrix: Matrix2<f64>, [xx, xy, yy]: [f64; 3], tolerance: f64) {
    for (value, expected) in
        [(matrix.m11, xx), (matrix.m12, xy), (matrix.m21, xy), (matrix.m22, yy)]
    {
        assert_close(value, expected, tolerance);
    }
}

// Source: robustbase 0.95-0 in R 4.2.2, covMcd(nsamp = "exact") of the star cluster CYG OB1: four giants and two more stand off.
#[test]
fn forty_seven_stars() {
    let stars = stars();
    let found = robust(&stars, Coverage::Half);
    assert_eq!(found.subset.len(), 25);
    assert_close(found.log_determinant, -8.031_215_197_72, 1e-9);
    let chosen = part(&stars, &found.subset);
    assert_close((chosen.centroid() - Vector2::new(4.4648, 5.1884)).norm(), 0.0, SEVEN_DECIMALS);
    let inner = [0.004_301, 0.010_320_5, 0.100_364];
    assert_matrix(chosen.covariance().unwrap(), inner, SEVEN_DECIMALS);
    let left_out: Vec<_> = (0..47).filter(|at| !found.kept.contains(at)).collect();
    assert_eq!(from_one(left_out), [7, 11, 14, 20, 30, 34]);
    let centre = Vector2::new(4.409_024_390_24, 4.949_024_390_24);
    assert_close((found.centre - centre).norm(), 0.0, 1e-9);
    // DIFFERENCE: robustbase's factors of the covariance kept, 1.43108 and 1.01435, are from the share that was kept; ours are for the
    // share that a clean sample keeps and from our own simulation. What they multiply is the same.
    let kept = part(&stars, &found.kept).covariance().unwrap();
    let theirs = kept * (1.431_080_995_89 * 1.014_350_688_28);
    let expected = [0.017_113_159_926_7, 0.051_066_504_786_8, 0.355_456_281_772_8];
    assert_matrix(theirs, expected, SEVEN_DECIMALS);
    // The plain covariance has the wrong sign: −0.21 where the stars that belong together have 0.65.
    let correlation = |c: Matrix2<f64>| c.m12 / (c.m11 * c.m22).sqrt();
    assert_close(correlation(stars.covariance().unwrap()), -0.210_413_27, SEVEN_DECIMALS);
    assert_close(correlation(found.covariance), 0.654_7, 1e-4);
    assert_eq!(from_one(found.flags().map(|flag| flag.position)), [7, 11, 20, 30, 34]);
}

// Source: the same with alpha = 0.75.
#[test]
fn three_quarters_of_the_stars() {
    let stars = stars();
    let found = robust(&stars, Coverage::ThreeQuarters);
    assert_eq!(found.subset.len(), 36);
    assert_close(found.log_determinant, -7.014_974_291_55, 1e-9);
    assert_close(
        (part(&stars, &found.subset).centroid() - Vector2::new(4.425, 4.975)).norm(),
        0.0,
        SIX_DECIMALS,
    );
    let left_out: Vec<_> = (0..47).filter(|at| !found.kept.contains(at)).collect();
    assert_eq!(from_one(left_out), [7, 9, 11, 14, 20, 30, 34]);
    assert_close((found.centre - Vector2::new(4.412_75, 4.9335)).norm(), 0.0, SEVEN_DECIMALS);
}

/// The trap: scikit-learn 1.9.1 stops at −8.0287180 from its random starts, short of the least determinant.
#[test]
fn random_starts_do_not_do_for_few_points() {
    assert!(robust(&stars(), Coverage::Half).log_determinant < -8.028_718_0 - 0.002);
}

/// Points in groups of our own invention: robustbase tries all starts up to 64 points and 5000 beyond.
#[test]
fn least_determinants_as_robustbase_finds_them() {
    let values = Values::read();
    for name in ["outlying", "tails", "many"] {
        for (coverage, alpha) in [(Coverage::Half, "0.5"), (Coverage::ThreeQuarters, "0.75")] {
            let sample = group(name);
            let found = robust(&sample, coverage);
            let theirs = values.of(name, &format!("mcd_log_determinant_{alpha}"));
            assert_close(
                found.subset.len() as f64,
                values.of(name, &format!("mcd_h_{alpha}")),
                0.0,
            );
            if sample.n() <= 64 {
                assert_close(found.log_determinant, theirs, 1e-9);
            } else {
                assert!(
                    found.log_determinant <= theirs + 1e-9,
                    "{} {theirs}",
                    found.log_determinant
                );
            }
        }
    }
}

/// Of nine points every set of six is tried.
#[test]
fn no_set_has_a_lesser_determinant() {
    let mut random = Pcg64::seed_from_u64(3);
    for _ in 0..20 {
        let sample = normal(9, &mut random);
        let sets = (0..1_u32 << 9).filter(|mask| mask.count_ones() == 6);
        let least = sets.map(|mask| {
            let set: Vec<_> = (0..9).filter(|at| mask >> at & 1 == 1).collect();
            part(&sample, &set).covariance().unwrap().determinant().ln()
        });
        let least = least.fold(f64::INFINITY, f64::min);
        assert_close(robust(&sample, Coverage::Half).log_determinant, least, 1e-9);
    }
}

fn normal(n: usize, random: &mut Pcg64) -> PlanarSample {
    let mut normal = || -> f64 { StandardNormal.sample(random) };
    let point = |_| Vector2::new(10.0 * normal(), 4.0 * normal());
    PlanarSample::new((0..n).map(point).collect()).unwrap()
}

/// What is flagged stays, and what would change without it is said.
#[test]
fn planted_outliers() {
    let outlying = group("outlying");
    let found = robust(&outlying, Coverage::Half);
    let flags: Vec<_> = found.flags().collect();
    assert_eq!(
        flags.iter().map(|flag| flag.position).collect::<Vec<_>>(),
        [24, 25, 26, 27, 28, 29]
    );
    for flag in &flags {
        assert!(flag.distance * flag.distance > found.cutoff);
        let without = outlying.without(&[flag.position]).unwrap();
        assert_eq!(flag.influence.without.centre, without.centroid());
        assert_eq!((flag.influence.with.n, flag.influence.without.n), (30, 29));
        assert!(flag.influence.without.spread < flag.influence.with.spread);
    }
    assert_eq!(outlying.n(), 30);
    // All six together hide from the plain distances: none is beyond what a clean sample reaches.
    let inverse = outlying.covariance().unwrap().try_inverse().unwrap();
    let plain =
        |p: &Vector2<f64>| (p - outlying.centroid()).dot(&(inverse * (p - outlying.centroid())));
    assert!(outlying.points().iter().map(plain).fold(0.0, f64::max) < 9.0);
    let many = group("many");
    let flagged: Vec<_> =
        robust(&many, Coverage::ThreeQuarters).flags().map(|f| f.position).collect();
    assert!((160..200).all(|at| flagged.contains(&at)), "{flagged:?}");
}

/// Clean samples have a flag in one of twenty, and a covariance that is right on average.
#[test]
fn the_level_is_kept() {
    for (n, coverage, draws) in [
        (6, Coverage::Half, 2000),
        (7, Coverage::ThreeQuarters, 2000),
        (10, Coverage::Half, 2000),
        (12, Coverage::ThreeQuarters, 2000),
        (20, Coverage::Half, 600),
        (33, Coverage::ThreeQuarters, 200),
        (70, Coverage::Half, 600),
    ] {
        let mut random = Pcg64::seed_from_u64(n as u64 + 1_000_000);
        let (mut flagged, mut roots) = (0, Vec::new());
        for _ in 0..draws {
            let sample = normal(n, &mut random);
            let found = robust(&sample, coverage);
            flagged += usize::from(found.flags().next().is_some());
            roots.push(found.covariance.determinant().sqrt() / 40.0);
        }
        let (count, p) = (f64::from(draws), 0.05);
        // The cut-off itself is known to a few thousandths of the level.
        let margin = STANDARD_ERRORS * (p * (1.0 - p) / count).sqrt() + 0.004;
        assert_close(flagged as f64 / count, p, margin);
        let mean = roots.iter().sum::<f64>() / count;
        let off = roots.iter().map(|root| (root - mean).powi(2)).sum::<f64>().sqrt() / count;
        assert_close(mean, 1.0, STANDARD_ERRORS * off + 0.01);
    }
}

#[test]
fn the_calibration_is_what_was_simulated() {
    let rows = Fixture::read("robust_calibration.csv").rows;
    let mut random = Pcg64::seed_from_u64(9);
    for row in &rows {
        let coverage = if row[0] == "half" { Coverage::Half } else { Coverage::ThreeQuarters };
        let number = |at: usize| -> f64 { row[at].parse().unwrap() };
        let n: usize = row[1].parse().unwrap();
        let sample = normal(n, &mut random);
        let found = robust(&sample, coverage);
        let known = -2.0 * (1.0 - 0.95_f64.powf(1.0 / n as f64)).ln();
        assert_relative(found.cutoff, number(4) * known, SIMULATED_CALIBRATION);
        // 0.975 over what the inner 0.975 of a normal cloud have of its variance.
        let consistency = 0.975 / (0.975 + 0.025 * 0.025_f64.ln());
        let kept = part(&sample, &found.kept).covariance().unwrap() * consistency;
        assert_relative(found.covariance.trace(), kept.trace() * number(2), SIMULATED_CALIBRATION);
    }
    assert!(rows.len() > 60, "{}", rows.len());
}

#[test]
fn points_that_robust_distances_have_no_measure_for() {
    let refusal = |points: Vec<(f64, f64)>| {
        let sample = sample(&points);
        [Coverage::Half, Coverage::ThreeQuarters].map(|coverage| {
            MinimumCovarianceDeterminant::new(&sample, coverage, 1).map(drop).unwrap_err()
        })
    };
    let line = |n: i32| (0..n).map(|i| (f64::from(i), 2.0 * f64::from(i * i % 7)));
    let few = refusal(line(5).collect());
    assert_eq!(few, [StatisticError::TooFew { n: 5, needed: 6 }; 2]);
    assert_eq!(refusal(vec![(0.1, 0.7); 9]), [StatisticError::Collinear; 2]);
    assert_eq!(
        refusal((0..100).map(|i| (f64::from(i), 3.0 * f64::from(i) + 1.0)).collect()),
        [StatisticError::Collinear; 2]
    );
    // Three quarters on a line and the rest beside it.
    let mostly = |n: i32| {
        (0..n).map(|i| (f64::from(i), if i % 5 == 4 { f64::from(i * i) } else { 2.0 })).collect()
    };
    assert_eq!(refusal(mostly(20)), [StatisticError::Collinear; 2]);
    assert_eq!(refusal(mostly(200)), [StatisticError::Collinear; 2]);
    assert_eq!(
        StatisticError::Collinear.to_string(),
        "the points lie on one line; an area needs some beside it"
    );
}

/// An outlier may be as far off as a number can be.
#[test]
fn nothing_is_too_far_to_be_left_out() {
    let mut random = Pcg64::seed_from_u64(4);
    for n in [12, 100] {
        let mut points = normal(n, &mut random).points().to_vec();
        let (last, clean) = (points.len() - 1, points.clone());
        points[last] = Vector2::new(1e70, -1e70);
        let sample = PlanarSample::new(points).unwrap();
        let found = robust(&sample, Coverage::Half);
        assert!(found.flags().any(|flag| flag.position == last && flag.distance > 1e60));
        assert!(found.covariance.trace() < 1e4 && clean.len() == n);
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, cases: 60, ..ProptestConfig::default() })]

    #[test]
    fn moved_turned_and_sheared(
        given in proptest::collection::vec((-20.0..20.0_f64, -20.0..20.0_f64), 8..16),
        (shift, turn, factor) in (-500.0..500.0_f64, 0.0..6.0_f64, 0.1..10.0_f64),
    ) {
        let plain = sample(&given);
        let shear = Rotation2::new(turn).into_inner() * Matrix2::new(factor, 0.3, 0.0, 2.0);
        let moved: Vec<_> = plain.points().iter().rev().map(|p| shear * p + Vector2::new(shift, 7.0)).collect();
        let moved = PlanarSample::new(moved).unwrap();
        let [before, after] = [&plain, &moved].map(|sample| robust(sample, Coverage::Half));
        let n = plain.n();
        prop_assert!((after.log_determinant - before.log_determinant - 2.0 * shear.determinant().abs().ln()).abs() <= 1e-7);
        for (at, squared) in before.squared_distances.iter().enumerate() {
            prop_assert!((after.squared_distances[n - 1 - at] - squared).abs() <= 1e-6 * (1.0 + squared));
        }
        prop_assert_eq!(before.cutoff.to_bits(), after.cutoff.to_bits());
    }
}

/// The seed draws the starts of a large sample; of a clean one all lead to the same.
#[test]
fn seeds() {
    let sample = normal(400, &mut Pcg64::seed_from_u64(5));
    let found = [1, 2, 3].map(|seed| {
        MinimumCovarianceDeterminant::new(&sample, Coverage::Half, seed).unwrap().log_determinant
    });
    let again = MinimumCovarianceDeterminant::new(&sample, Coverage::Half, 1).unwrap();
    assert_eq!(again.log_determinant.to_bits(), found[0].to_bits());
    // Near optima differ by a few points out of two hundred.
    assert!(found.iter().all(|one| (one - found[0]).abs() < 0.01), "{found:?}");
}
