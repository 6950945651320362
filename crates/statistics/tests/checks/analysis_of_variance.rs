//! One-way analysis of variance against certified values and by its level.

use proptest::prelude::{ProptestConfig, prop_assert, proptest};
use quarterturn_statistics::{AnalysisOfVariance, AnovaError, Level, Sample};
use rand::SeedableRng;
use rand_distr::{Distribution, StandardNormal};
use rand_pcg::Pcg64;

use crate::fixture::Fixture;
use crate::tolerance::{
    ALGEBRA, SEVEN_SHARED_DIGITS, SIX_DECIMALS, SPREAD_OF_A_MILLIONTH, STANDARD_ERRORS,
    THIRTEEN_SHARED_DIGITS, assert_close, assert_relative,
};

fn sample(values: impl IntoIterator<Item = f64>) -> Sample {
    Sample::new(values.into_iter().collect()).unwrap()
}

/// The last two columns: group and value.
fn grouped(rows: &[Vec<String>]) -> Vec<Sample> {
    let cell = |row: &[String], from_end: usize| row[row.len() - from_end].clone();
    let groups = rows.chunk_by(|a, b| cell(a, 2) == cell(b, 2));
    groups.map(|group| sample(group.iter().map(|row| cell(row, 1).parse().unwrap()))).collect()
}

// Source: NIST Statistical Reference Datasets, analysis of variance, SiRstv and AtmWtAg: certified sums of squares, F
// and residual standard deviation.
#[test]
fn certified_resistivities_and_silver() {
    let certified = [
        (
            "SiRstv",
            [5.114_626_160e-2, 0.216_636_56, 1.180_462_374_402_55, 0.104_076_068_334_656],
            5e-9,
        ),
        (
            "AtmWtAg",
            [3.638_341_875e-9, 1.049_517_291_666_67e-8, 15.946_733_567_793, 1.510_483_144_464_1e-5],
            1e-6,
        ),
    ];
    let rows = Fixture::read("nist_anova.csv").rows;
    for (name, [between, within, f, deviation], tolerance) in certified {
        let rows: Vec<_> = rows.iter().filter(|row| row[0] == name).cloned().collect();
        let analysis = AnalysisOfVariance::of(&grouped(&rows)).unwrap();
        assert_relative(analysis.between, between, tolerance);
        assert_relative(analysis.within, within, tolerance);
        assert_relative(analysis.test().unwrap().statistic, f, tolerance);
        assert_relative(analysis.residual_deviation(), deviation, tolerance);
    }
}

// Source: the same, SmLs01 to SmLs09, whose values follow a rule: nine groups, each of a middle value and as many a
// tenth below as above it; F is their number, the residual standard deviation 0.1. All values share one, seven or
// thirteen leading digits.
#[test]
fn certified_simon_and_lesage() {
    let middles = [4, 3, 5, 3, 5, 3, 5, 3, 5].map(|tenths| 0.1 * f64::from(tenths));
    let mut sets = 0;
    for (shared, tolerance) in
        [(1.0, ALGEBRA), (1e6, SEVEN_SHARED_DIGITS), (1e12, THIRTEEN_SHARED_DIGITS)]
    {
        for pairs in [10_u16, 100, 1000] {
            let group = |middle: f64| {
                let pair = [middle - 0.1, middle + 0.1].map(|value| shared + value);
                sample([shared + middle].into_iter().chain((0..pairs).flat_map(|_| pair)))
            };
            let groups: Vec<_> = middles.into_iter().map(group).collect();
            let analysis = AnalysisOfVariance::of(&groups).unwrap();
            let f = analysis.test().unwrap().statistic;
            assert_relative(f, f64::from(2 * pairs + 1), tolerance);
            assert_relative(analysis.residual_deviation(), 0.1, tolerance);
            sets += 1;
        }
    }
    assert_eq!(sets, 9);
}

// Source: NIST/SEMATECH e-Handbook 1.3.5.4 (GEAR), sums of squares, F and p.
#[test]
fn published_gears() {
    let analysis = AnalysisOfVariance::of(&grouped(&Fixture::read("gear.csv").rows)).unwrap();
    assert_relative(analysis.between, 0.000_729_040, SPREAD_OF_A_MILLIONTH);
    assert_relative(analysis.within, 0.003_174_000, SPREAD_OF_A_MILLIONTH);
    let test = analysis.test().unwrap();
    assert_close(test.statistic, 2.296_912_4, SIX_DECIMALS);
    assert_close(test.p_value, 0.022_660_8, SIX_DECIMALS);
    assert_eq!((analysis.between_freedom, analysis.within_freedom, test.n), (9, 90, 100));
}

// Source: NIST/SEMATECH e-Handbook 7.4.3.3: sums of squares 27.897 and 17.452, F 9.591107, p 0.00324822.
#[test]
fn a_published_comparison_of_three() {
    let groups = [[6.9, 5.4, 5.8, 4.6, 4.0], [8.3, 6.8, 7.8, 9.2, 6.5], [8.0, 10.5, 8.1, 6.9, 9.3]];
    let analysis = AnalysisOfVariance::of(&groups.map(sample)).unwrap();
    assert_relative(analysis.within, 17.452, ALGEBRA);
    assert_close(analysis.between, 27.897, crate::tolerance::THREE_DECIMALS);
    let test = analysis.test().unwrap();
    assert_close(test.statistic, 9.591_107, SIX_DECIMALS);
    assert_close(test.p_value, 0.003_248_22, SIX_DECIMALS);
}

#[test]
fn what_cannot_be_analysed() {
    let refusal = |groups: &[Sample]| AnalysisOfVariance::of(groups).unwrap_err();
    assert_eq!(refusal(&[]), AnovaError::TooFewGroups { groups: 0 });
    assert_eq!(refusal(&[sample([1.0, 2.0])]), AnovaError::TooFewGroups { groups: 1 });
    let single = [sample([1.0]), sample([2.0])];
    assert_eq!(refusal(&single), AnovaError::NoReplicates { groups: 2 });
    let way_on = "2 groups of one value each; at least one group needs two to tell the scatter";
    assert_eq!(refusal(&single).to_string(), way_on);
    assert_eq!(refusal(&[sample([0.1; 3]), sample([0.7; 3])]), AnovaError::NoScatter);
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn moving_stretching_and_order_do_not_matter(
        values in proptest::collection::vec(-10.0..10.0, 9), shift in -100.0_f64..100.0, factor in 0.1_f64..10.0,
    ) {
        let groups = |f: &dyn Fn(f64) -> f64| -> Vec<Sample> {
            values.chunks(3).map(|three| sample(three.iter().map(|v| f(*v)))).collect()
        };
        let f = |groups: &[Sample]| AnalysisOfVariance::of(groups).unwrap().test().unwrap();
        let plain = f(&groups(&|v| v));
        let mut moved = groups(&|v| shift + factor * v);
        moved.reverse();
        prop_assert!((f(&moved).p_value - plain.p_value).abs() < 1e-9);
    }
}

#[test]
fn the_test_keeps_its_level() {
    const DRAWS: usize = 5000;
    let mut random = Pcg64::seed_from_u64(33);
    let mut normal = || Distribution::<f64>::sample(&StandardNormal, &mut random);
    for n in [3, 5, 10, 30] {
        let mut rejected = 0.0;
        for _ in 0..DRAWS {
            let groups: Vec<_> =
                (0..3).map(|_| sample((0..n).map(|_| normal()).collect::<Vec<_>>())).collect();
            let test = AnalysisOfVariance::of(&groups).unwrap().test().unwrap();
            rejected += f64::from(u8::from(test.rejects_at(Level::P95)));
        }
        let allowed = STANDARD_ERRORS * (0.05 * 0.95 / DRAWS as f64).sqrt();
        assert_close(rejected / DRAWS as f64, 0.05, allowed);
    }
}
