//! The noncentral chi-squared distribution against a table and the central one.

use quarterturn_statistics::Level;
use quarterturn_statistics::distributions::{ChiSquared, NoncentralChiSquared};

use crate::fixture::Fixture;
use crate::tolerance::{DISTRIBUTION, FOUR_DECIMALS, assert_close};

// Source: P. B. Patnaik, 1949, Biometrika 36.
#[test]
fn a_printed_table() {
    for row in Fixture::read("patnaik_table.csv").numbers() {
        let cdf = NoncentralChiSquared::new(row[0], row[1]).unwrap().cdf(row[2]);
        assert_close(cdf, row[3], FOUR_DECIMALS);
    }
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

#[test]
fn ends_of_the_range() {
    for (nu, lambda) in [(0.5, 1e-300), (0.5, 1e4), (1e4, 1e4), (1e-300, 1.0)] {
        let d = NoncentralChiSquared::new(nu, lambda).unwrap();
        for x in [f64::MIN_POSITIVE, 1e-100, 1.0, 1e4, 1e5, 1e300] {
            let (cdf, upper_tail) = (d.cdf(x), d.upper_tail(x));
            assert!(
                (0.0..=1.0).contains(&cdf) && (0.0..=1.0).contains(&upper_tail),
                "{nu} {lambda} {x}"
            );
        }
        let ends =
            [-1.0, 0.0, f64::INFINITY].map(|x| (d.cdf(x).to_bits(), d.upper_tail(x).to_bits()));
        let [none, all] = [0.0_f64, 1.0].map(f64::to_bits);
        assert_eq!(ends, [(none, all), (none, all), (all, none)]);
        assert!(d.cdf(f64::NAN).is_nan() && d.upper_tail(f64::NAN).is_nan());
        for p in [f64::MIN_POSITIVE, 0.5, 1.0 - f64::EPSILON] {
            let quantile = d.quantile(Level::new(p).unwrap());
            assert!(quantile.is_finite(), "{nu} {lambda} {p}: {quantile}");
        }
    }
}
