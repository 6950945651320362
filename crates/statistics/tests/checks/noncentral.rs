//! The noncentral chi-squared distribution against a table and against 50 digits.

use quarterturn_statistics::distributions::{ChiSquared, NoncentralChiSquared};

use crate::fixture::Fixture;
use crate::tolerance::{DISTRIBUTION, FOUR_DECIMALS, assert_close};

fn check(name: &str, tolerance: f64) {
    for row in Fixture::read(name).numbers() {
        let cdf = NoncentralChiSquared::new(row[0], row[1]).unwrap().cdf(row[2]);
        assert_close(cdf, row[3], tolerance);
    }
}

// Source: P. B. Patnaik, 1949, Biometrika 36.
#[test]
fn a_printed_table() {
    check("patnaik_table.csv", FOUR_DECIMALS);
}

// Source: mpmath in 50 digits, fixtures/statistics/make_distributions.py.
#[test]
fn fifty_digits() {
    check("noncentral_chi_squared.csv", DISTRIBUTION);
}

#[test]
fn without_noncentrality_it_is_central() {
    for nu in [0.5, 1.0, 2.0, 9.0] {
        let (central, other) =
            (ChiSquared::new(nu).unwrap(), NoncentralChiSquared::new(nu, 0.0).unwrap());
        for x in [-1.0, 0.0, 0.3, 2.0, 40.0, f64::INFINITY] {
            assert_close(other.cdf(x), central.cdf(x), DISTRIBUTION);
        }
    }
}
