//! Distributions against tables, closed forms and 200 digits, and at the ends of their range.

use proptest::prelude::{ProptestConfig, prop_assert, proptest};
use quarterturn_statistics::Level;
use quarterturn_statistics::distributions::{
    ChiSquared, FisherF, NoncentralChiSquared, StudentT, normal,
};

use crate::fixture::Fixture;
use crate::tolerance::{
    DISTRIBUTION, FOUR_DECIMALS, QUANTILE, SEVEN_DECIMALS, SIX_DECIMALS, THREE_DECIMALS,
    TWELVE_DIGITS, assert_close, assert_relative,
};

fn level(p: f64) -> Level {
    Level::new(p).unwrap()
}

// Source: the usual tables, recomputed with scipy 1.17.1 (fixtures/statistics/README.md).
#[test]
fn printed_tables() {
    for cell in Fixture::read("chi_squared_table.csv").two_way() {
        let quantile = ChiSquared::new(cell.row).unwrap().quantile(level(cell.column));
        assert_close(quantile, cell.value, SIX_DECIMALS);
    }
    for cell in Fixture::read("student_t_table.csv").two_way() {
        let quantile = StudentT::new(cell.row).unwrap().quantile(level(cell.column));
        assert_close(quantile, cell.value, SIX_DECIMALS);
    }
    for row in Fixture::read("normal_table.csv").numbers() {
        assert_relative(normal::cdf(row[0]), row[1], TWELVE_DIGITS);
    }
}

/// One line of the table: what lies to both sides of a point, and the double that has its quantile near there.
struct Line {
    cdf: f64,
    upper_tail: f64,
    level: Option<Level>,
    quantile: f64,
}

impl Line {
    fn check(&self, [cdf, upper_tail]: [f64; 2], quantile: impl Fn(Level) -> f64) {
        assert_relative(cdf, self.cdf, DISTRIBUTION);
        assert_relative(upper_tail, self.upper_tail, DISTRIBUTION);
        if let Some(level) = self.level {
            assert_relative(quantile(level), self.quantile, QUANTILE);
        }
    }
}

// Source: mpmath in 200 digits, fixtures/statistics/make_distributions.py.
#[test]
fn tails_and_quantiles_in_two_hundred_digits() {
    let table = Fixture::read("distributions.csv").rows;
    assert!(table.len() > 1000);
    for row in &table {
        let n: Vec<f64> = row[1..].iter().map(|cell| cell.parse().unwrap()).collect();
        let [first, second, x, cdf, upper_tail, level, quantile] = n[..] else { panic!("{row:?}") };
        let line = Line { cdf, upper_tail, level: Level::new(level).ok(), quantile };
        match row[0].as_str() {
            "normal" => line.check([normal::cdf(x), normal::cdf(-x)], normal::quantile),
            "chi_squared" => {
                let d = ChiSquared::new(first).unwrap();
                line.check([d.cdf(x), d.upper_tail(x)], |level| d.quantile(level));
            }
            "student_t" => {
                let d = StudentT::new(first).unwrap();
                line.check([d.cdf(x), d.upper_tail(x)], |level| d.quantile(level));
            }
            "fisher_f" => {
                let d = FisherF::new(first, second).unwrap();
                line.check([d.cdf(x), d.upper_tail(x)], |level| d.quantile(level));
            }
            "noncentral_chi_squared" => {
                let d = NoncentralChiSquared::new(first, second).unwrap();
                line.check([d.cdf(x), d.upper_tail(x)], |level| d.quantile(level));
            }
            other => panic!("no distribution is called {other}"),
        }
    }
}

#[test]
fn two_degrees_of_freedom_in_closed_form() {
    let chi_squared = ChiSquared::new(2.0).unwrap();
    for p in [1e-12, 1e-3, 0.5, 0.95, 1.0 - 1e-12] {
        assert_relative(chi_squared.quantile(level(p)), -2.0 * (-p).ln_1p(), QUANTILE);
    }
}

/// Source: NIST/SEMATECH e-Handbook 1.3.6.7.3; the printed value lies within half of its last digit of the quantile.
#[test]
fn printed_table_of_f() {
    let table = Fixture::read("fisher_f_table.csv").numbers();
    for (row, tail) in table.iter().flat_map(|row| [(row, 0.05), (row, 0.01)]) {
        let printed = row[if tail > 0.02 { 2 } else { 3 }];
        let f = FisherF::new(row[0], row[1]).unwrap();
        assert!(f.upper_tail(printed - THREE_DECIMALS) >= tail, "{row:?}");
        assert!(f.upper_tail(printed + THREE_DECIMALS) <= tail, "{row:?}");
    }
}

// Source: NIST/SEMATECH e-Handbook of Statistical Methods: limits of the F test 1.3.5.9 (239 and 239 degrees of
// freedom), of the analysis of variance 1.3.5.4 (9 and 90), of the χ² test 1.3.5.8 (99), of the t test 1.3.5.3 (326).
#[test]
fn published_limits() {
    let f = FisherF::new(239.0, 239.0).unwrap();
    assert_close(f.quantile(level(0.025)), 0.775_564, SIX_DECIMALS);
    assert_close(f.quantile(level(0.975)), 1.289_384, SIX_DECIMALS);
    let gears = FisherF::new(9.0, 90.0).unwrap().quantile(level(0.95));
    assert_close(gears, 1.9856, FOUR_DECIMALS);
    let chi_squared = ChiSquared::new(99.0).unwrap();
    assert_close(chi_squared.quantile(level(0.025)), 73.3611, FOUR_DECIMALS);
    assert_close(chi_squared.quantile(level(0.975)), 128.4220, FOUR_DECIMALS);
    let t = StudentT::new(326.0).unwrap().quantile(level(0.975));
    assert_close(t, 1.967_267_5, SEVEN_DECIMALS);
    // −2 ln 0.05, and 2/17 degrees of freedom from any table.
    assert_close(FisherF::new(2.0, 17.0).unwrap().quantile(level(0.95)), 3.591_531, SIX_DECIMALS);
}

/// With two degrees of freedom above, P(F > f) = (1 + 2 f/ν)^(−ν/2); with one, F is the square of Student's t.
#[test]
fn f_in_closed_form_and_as_the_square_of_t() {
    for (nu, x) in [(1.0, 0.3), (7.0, 2.1), (44.0, 5.0), (400.0, 9.0_f64)] {
        let two = FisherF::new(2.0, nu).unwrap();
        assert_close(two.upper_tail(x), (1.0 + 2.0 * x / nu).powf(-0.5 * nu), DISTRIBUTION);
        let one = FisherF::new(1.0, nu).unwrap();
        let t = StudentT::new(nu).unwrap();
        assert_close(one.upper_tail(x * x), 2.0 * t.upper_tail(x), DISTRIBUTION);
    }
}

#[test]
fn ends_of_the_range_of_f() {
    let f = FisherF::new(3.0, 5.0).unwrap();
    let ends = [-1.0, 0.0, f64::INFINITY].map(|x| f.upper_tail(x));
    assert_eq!(ends.map(f64::to_bits), [1.0_f64, 1.0, 0.0].map(f64::to_bits));
    assert!(f.upper_tail(f64::NAN).is_nan() && f.cdf(f64::NAN).is_nan());
    for (above, below) in [(1e-3, 1e-3), (1e-3, 1e7), (1e7, 1e-3), (1e7, 1e7), (0.1, 5.0)] {
        let f = FisherF::new(above, below).unwrap();
        for p in [f64::MIN_POSITIVE, 1e-30, 0.5, 1.0 - f64::EPSILON] {
            let quantile = f.quantile(level(p));
            assert!(quantile >= 0.0 && quantile.is_finite(), "{above} {below} {p}: {quantile}");
        }
        for x in [f64::MIN_POSITIVE, 1e-300, 1.0, 1e300] {
            assert!(
                (f.cdf(x) + f.upper_tail(x) - 1.0).abs() <= f64::EPSILON,
                "{above} {below} {x}"
            );
        }
    }
    assert!(
        FisherF::new(0.0, 5.0).is_err()
            && FisherF::new(3.0, 1e9).is_err()
            && FisherF::new(f64::NAN, 3.0).is_err()
    );
}

#[test]
fn ends_of_the_range() {
    let chi_squared = ChiSquared::new(5.0).unwrap();
    let ends = [f64::NEG_INFINITY, -1.0, 0.0, f64::INFINITY].map(|x| chi_squared.cdf(x));
    assert_eq!(ends.map(f64::to_bits), [0.0_f64, 0.0, 0.0, 1.0].map(f64::to_bits));
    let student = StudentT::new(5.0).unwrap();
    let ends = [f64::NEG_INFINITY, 0.0, f64::INFINITY].map(|t| student.cdf(t));
    assert_eq!(ends.map(f64::to_bits), [0.0_f64, 0.5, 1.0].map(f64::to_bits));
    for nan in [chi_squared.cdf(f64::NAN), student.cdf(f64::NAN), normal::cdf(f64::NAN)] {
        assert!(nan.is_nan());
    }
    for distribution in [1e-3, 0.5, 1.0, 1e4, 1e7] {
        for p in [f64::MIN_POSITIVE, 1e-30, 1.0 - f64::EPSILON] {
            assert!(ChiSquared::new(distribution).unwrap().quantile(level(p)).is_finite());
            assert!(!StudentT::new(distribution).unwrap().quantile(level(p)).is_nan());
        }
    }
}

/// Between the points of the table, too: what a quantile is the quantile of comes back, whatever the degrees of freedom.
fn comes_back(tails: [f64; 2], p: f64) -> bool {
    let beyond = 1.0 - p;
    (tails[0] - p).abs() <= DISTRIBUTION * p && (tails[1] - beyond).abs() <= DISTRIBUTION * beyond
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, cases: 1000, ..ProptestConfig::default() })]

    #[test]
    fn quantiles_come_back(
        (first, second) in (-1.0_f64..4.0, -1.0_f64..4.0), logit in -30.0_f64..30.0,
    ) {
        let [first, second] = [first, second].map(|power| 10_f64.powf(power));
        let p = 1.0 / (1.0 + (-logit).exp());
        let at = level(p);
        let z = normal::quantile(at);
        prop_assert!(comes_back([normal::cdf(z), normal::cdf(-z)], p));
        let d = ChiSquared::new(first).unwrap();
        let x = d.quantile(at);
        // A quantile below the smallest double has none to come back from.
        prop_assert!(x < 1e-300 || comes_back([d.cdf(x), d.upper_tail(x)], p), "chi {x}");
        let d = StudentT::new(first).unwrap();
        let t = d.quantile(at);
        prop_assert!(t.abs() > 1e150 || comes_back([d.cdf(t), d.upper_tail(t)], p), "t {t}");
        let d = FisherF::new(first, second).unwrap();
        let f = d.quantile(at);
        prop_assert!(!(1e-300..1e300).contains(&f) || comes_back([d.cdf(f), d.upper_tail(f)], p), "f {f}");
        let d = NoncentralChiSquared::new(first, second).unwrap();
        let x = d.quantile(at);
        prop_assert!(x < 1e-300 || comes_back([d.cdf(x), d.upper_tail(x)], p), "noncentral {x}");
    }
}
