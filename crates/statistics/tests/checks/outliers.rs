//! Outliers of numbers against the handbook, tables, and by invariance.

use proptest::prelude::{ProptestConfig, prop_assert, prop_assert_eq, proptest};
use quarterturn_statistics::{
    Level, Sample, Side, StatisticError, generalized_esd, grubbs_critical_value, grubbs_test,
};

use crate::fixture::Fixture;
use crate::tolerance::{
    ALGEBRA, FIVE_DECIMALS, SEVEN_DECIMALS, SIX_DECIMALS, THREE_DECIMALS, assert_close,
    assert_relative,
};

fn numbers(values: &[f64]) -> Sample {
    Sample::new(values.to_vec()).unwrap()
}

// Source: NIST/SEMATECH e-Handbook of Statistical Methods 1.3.5.17.1. The trap: 2.032 is the critical value of one side, 2.127 that
// of either.
#[test]
fn eight_masses() {
    let masses = numbers(&[199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57]);
    let either = grubbs_test(&masses, Side::Either).unwrap();
    assert_eq!(either.position, 7);
    assert_close(either.test.statistic, 2.468_764_611, SEVEN_DECIMALS);
    let critical = |side| grubbs_critical_value(8, side, Level::P95).unwrap();
    assert_close(critical(Side::Largest), 2.031_652_0, SEVEN_DECIMALS);
    assert_close(critical(Side::Smallest), 2.031_652_0, SEVEN_DECIMALS);
    assert_close(critical(Side::Either), 2.126_645_087, SEVEN_DECIMALS);
    let largest = grubbs_test(&masses, Side::Largest).unwrap();
    assert_relative(either.test.p_value, 2.0 * largest.test.p_value, ALGEBRA);
    assert!(either.test.rejects_at(Level::P99));
    // The lightest lies 0.45 deviations below the mean: nothing to see on that side.
    let smallest = grubbs_test(&masses, Side::Smallest).unwrap();
    assert_eq!((smallest.position, smallest.test.p_value.to_bits()), (0, 1.0_f64.to_bits()));
    // What would change: the mean of the other seven is 5.9 of 7 above 200.
    let influence = either.influence;
    assert_close(influence.without.centre, 200.0 + 5.9 / 7.0, SEVEN_DECIMALS);
    assert_close(influence.with.centre, 206.433_75, SEVEN_DECIMALS);
    assert_eq!((influence.with.n, influence.without.n), (8, 7));
    assert!(influence.without.spread < 1.3 && influence.with.spread > 15.0);
}

// Source: table of ASTM E178 by its formula, five decimals.
#[test]
fn critical_values_of_grubbs() {
    let rows = Fixture::read("grubbs_table.csv").numbers();
    for row in &rows {
        let n = format!("{}", row[0]).parse().unwrap();
        let levels = [0.90, 0.95, 0.975, 0.99].map(|level| (Side::Largest, level));
        let either = [0.90, 0.95, 0.99].map(|level| (Side::Either, level));
        for ((side, level), expected) in levels.into_iter().chain(either).zip(&row[1..]) {
            let level = Level::new(level).unwrap();
            assert_close(grubbs_critical_value(n, side, level).unwrap(), *expected, FIVE_DECIMALS);
        }
    }
    assert_eq!(rows.len(), 37);
    assert_eq!([0, 1, 2].map(|n| grubbs_critical_value(n, Side::Either, Level::P95)), [None; 3]);
}

// Source: ASTM E178 and F. E. Grubbs, 1969 (from memory): breaking strength of wire, and residuals of Venus.
#[test]
fn wire_and_venus() {
    let wire = numbers(&[568.0, 570.0, 570.0, 570.0, 572.0, 572.0, 572.0, 578.0, 584.0, 596.0]);
    let test = grubbs_test(&wire, Side::Largest).unwrap();
    assert_close(test.test.statistic, 2.390_120_5, SEVEN_DECIMALS);
    assert_close(
        grubbs_critical_value(10, Side::Largest, Level::P95).unwrap(),
        2.176,
        THREE_DECIMALS,
    );
    assert!(test.test.rejects_at(Level::P95) && !test.test.rejects_at(Level::P99));
    let venus = numbers(&[
        -1.40, -0.44, -0.30, -0.24, -0.22, -0.13, -0.05, 0.06, 0.10, 0.18, 0.20, 0.39, 0.48, 0.63,
        1.01,
    ]);
    let [low, high] =
        [Side::Smallest, Side::Largest].map(|side| grubbs_test(&venus, side).unwrap());
    assert_close(low.test.statistic, 2.573_737_07, SEVEN_DECIMALS);
    assert_close(high.test.statistic, 1.800_526_92, SEVEN_DECIMALS);
    assert!(low.test.rejects_at(Level::new(0.975).unwrap()));
}

// Source: the same handbook, 1.3.5.7: no outlier among a hundred gears.
#[test]
fn a_hundred_gears() {
    let rows = Fixture::read("gear.csv").numbers();
    let gears = numbers(&rows.iter().map(|row| row[1]).collect::<Vec<_>>());
    let test = grubbs_test(&gears, Side::Either).unwrap().test;
    assert_close(test.statistic, 3.242_603_67, SEVEN_DECIMALS);
    assert_close(
        grubbs_critical_value(100, Side::Either, Level::P95).unwrap(),
        3.384_082_9,
        SEVEN_DECIMALS,
    );
    assert!(!test.rejects_at(Level::P95));
}

// Source: the same, 1.3.5.17.3. The trap: R₁ < λ₁ and R₂ < λ₂, so that a program that stops there finds none of the three.
#[test]
fn three_outliers_that_hide_each_other() {
    let rows = Fixture::read("rosner.csv").numbers();
    let values = numbers(&rows.iter().map(|row| row[0]).collect::<Vec<_>>());
    assert_eq!(values.n(), 54);
    let found = generalized_esd(&values, 10, Level::P95).unwrap();
    let statistics = [
        3.118_906, 2.942_973, 3.179_424, 2.810_181, 2.815_580, 2.848_172, 2.279_327, 2.310_366,
        2.101_581, 2.067_178,
    ];
    let critical = [
        3.158_794, 3.151_430, 3.143_890, 3.136_165, 3.128_247, 3.120_128, 3.111_796, 3.103_243,
        3.094_456, 3.085_425,
    ];
    assert_eq!(found.steps.len(), 10);
    for (step, (statistic, critical)) in
        found.steps.iter().zip(statistics.into_iter().zip(critical))
    {
        assert_close(step.statistic, statistic, SIX_DECIMALS);
        assert_close(step.critical, critical, SIX_DECIMALS);
    }
    assert!(found.steps[0].statistic < found.steps[0].critical);
    assert_eq!(found.outliers, 3);
    let flagged: Vec<_> = found.flagged().map(|at| format!("{}", values.values()[at])).collect();
    assert_eq!(flagged, ["6.01", "5.42", "5.34"]);
    let influence = found.influence.unwrap();
    assert_eq!((influence.with.n, influence.without.n), (54, 51));
    assert!(influence.without.centre < influence.with.centre);
}

#[test]
fn nothing_to_flag_and_nothing_left_to_look_at() {
    let even = numbers(&[1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0]);
    let found = generalized_esd(&even, 3, Level::P95).unwrap();
    assert_eq!(
        (found.steps.len(), found.outliers, found.influence, found.flagged().count()),
        (3, 0, None, 0)
    );
    // One value among equal ones: the second step has nothing that scatters.
    let one = numbers(&[2.0, 2.0, 2.0, 9.0, 2.0, 2.0, 2.0]);
    let found = generalized_esd(&one, 4, Level::P95).unwrap();
    assert_eq!((found.steps.len(), found.flagged().collect::<Vec<_>>()), (1, vec![3]));
    assert_eq!(generalized_esd(&even, 0, Level::P95).unwrap().steps, vec![]);
}

#[test]
fn too_few_and_equal_values() {
    let refusal = |values: &[f64]| {
        let sample = numbers(values);
        let [test, all] = [
            grubbs_test(&sample, Side::Either).map(drop),
            generalized_esd(&sample, 1, Level::P95).map(drop),
        ];
        assert_eq!(test, all);
        test.unwrap_err()
    };
    assert_eq!(refusal(&[1.0]), StatisticError::TooFew { n: 1, needed: 3 });
    assert_eq!(refusal(&[1.0, 2.0]).to_string(), "2 observations where at least 3 are needed");
    assert_eq!(refusal(&[0.1; 9]), StatisticError::NoScatter);
    assert_eq!(
        StatisticError::NoScatter.to_string(),
        "the observations do not scatter; some must differ"
    );
    let many = generalized_esd(&numbers(&[1.0, 2.0, 3.0, 4.0]), usize::MAX, Level::P95);
    assert_eq!(many, Err(StatisticError::TooFew { n: 4, needed: usize::MAX }));
    let far = generalized_esd(&numbers(&[1e70, -1e70, 1.0, 0.0, 1e-300]), 2, Level::P95).unwrap();
    assert!(far.steps.iter().all(|step| step.statistic.is_finite()));
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn moved_stretched_and_turned_over(
        values in proptest::collection::vec(-100.0..100.0_f64, 4..30),
        (shift, factor) in (-1000.0..1000.0_f64, 0.1..10.0_f64),
    ) {
        let plain = numbers(&values);
        let moved = numbers(&values.iter().map(|x| shift + factor * x).collect::<Vec<_>>());
        let [before, after] = [&plain, &moved].map(|s| grubbs_test(s, Side::Either).unwrap());
        prop_assert!((before.test.statistic - after.test.statistic).abs() <= 1e-9);
        prop_assert_eq!(before.position, after.position);
        let over = numbers(&values.iter().map(|x| -x).collect::<Vec<_>>());
        let [low, high] = [grubbs_test(&plain, Side::Smallest), grubbs_test(&over, Side::Largest)].map(Result::unwrap);
        prop_assert!((low.test.p_value - high.test.p_value).abs() <= 1e-9);
        // The p-value meets the level where the statistic meets the critical value.
        let level = Level::new(1.0 - before.test.p_value.clamp(1e-9, 0.5)).unwrap();
        let critical = grubbs_critical_value(plain.n(), Side::Either, level).unwrap();
        prop_assert!(before.test.p_value > 0.5 || before.test.p_value < 1e-9 || (critical - before.test.statistic).abs() <= 1e-7);
    }
}
