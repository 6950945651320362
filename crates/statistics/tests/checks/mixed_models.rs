//! Mixed models against published fits and against lme4.

use nalgebra::DMatrix;
use quarterturn_statistics::distributions::StudentT;
use quarterturn_statistics::{
    Estimate, Level, MixedDesign, MixedError, MixedFit, MixedModel, Sample,
};

use crate::fixture::Fixture;
use crate::tolerance::{
    ALGEBRA, DEGREES_OF_FREEDOM, FLAT_TOP, LIKELIHOOD, OPTIMUM, TABLE, THREE_DECIMALS,
    VARIANCE_AT_ZERO, assert_close, assert_relative,
};

/// The covariates of each row, its labels and a response.
struct Table {
    design: MixedDesign,
    response: Vec<f64>,
}

impl Table {
    fn fit(&self) -> Result<MixedFit, MixedError> {
        let response = Sample::new(self.response.clone()).unwrap();
        MixedModel::new(&self.design)?.fit(&response, Level::P95)
    }
}

#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "labels are whole numbers"
)]
fn labels(rows: &[Vec<f64>], column: usize) -> Vec<u64> {
    rows.iter().map(|row| row[column] as u64).collect()
}

/// A table of `fixed` and `random` covariates made of each row's cells; its last column is the response.
fn table<const P: usize, const Q: usize>(
    name: &str,
    level: usize,
    fixed: impl Fn(&[f64]) -> [f64; P],
    random: impl Fn(&[f64]) -> [f64; Q],
) -> Table {
    let rows = Fixture::read(name).numbers();
    let design = MixedDesign {
        fixed: DMatrix::from_row_iterator(rows.len(), P, rows.iter().flat_map(|row| fixed(row))),
        blocks: labels(&rows, 0),
        levels: labels(&rows, level),
        random: DMatrix::from_row_iterator(rows.len(), Q, rows.iter().flat_map(|row| random(row))),
    };
    Table { design, response: rows.iter().map(|row| *row.last().unwrap()).collect() }
}

fn one_factor(name: &str) -> Table {
    table(name, 0, |_| [1.0], |_| [])
}

fn crossed(terms: usize, response: usize) -> Table {
    let harmonics = |row: &[f64]| {
        let t = row[3].to_radians();
        [t.cos(), t.sin(), 1.0, (2.0 * t).cos(), (2.0 * t).sin()]
    };
    let mut all = table("crossed_blocks.csv", 1, |row| [1.0, row[2]], harmonics);
    all.design.random = all.design.random.columns(0, terms).into_owned();
    let rows = Fixture::read("crossed_blocks.csv").numbers();
    all.response = rows.iter().map(|row| row[response]).collect();
    all
}

/// Holds a fit against what lme4 makes of the same model.
fn check(set: &str, table: &Table) -> MixedFit {
    let fit = table.fit().unwrap();
    let mut checked = 0;
    for row in Fixture::read("mixed_models.csv").rows.iter().filter(|row| row[0] == set) {
        let expected: f64 = row[2].parse().unwrap();
        let (quantity, place) = row[1].rsplit_once('_').unwrap_or((&row[1], "0"));
        let place: usize = place.parse().unwrap_or_default();
        match quantity {
            "log" => {
                // lme4 comes as near to the optimum as its steps allow; it cannot be above.
                assert_close(fit.log_likelihood, expected, LIKELIHOOD);
            }
            "residual" => assert_relative(fit.residual_variance.value, expected, OPTIMUM),
            "block" => variance(&fit.block_variance, expected),
            "coefficient" => variance(&fit.coefficient_variances[place], expected),
            "fixed" => assert_relative(fit.fixed[place].value, expected, OPTIMUM),
            "standard_error" => assert_relative(fit.fixed[place].standard_error, expected, OPTIMUM),
            "degrees_of_freedom" => degrees_of_freedom(&fit.fixed[place], expected),
            other => panic!("nothing is called {other}"),
        }
        checked += 1;
    }
    assert!(checked >= 5, "{set}");
    fit
}

fn variance(estimate: &Estimate, expected: f64) {
    assert_close(estimate.value, expected, (OPTIMUM * expected).max(VARIANCE_AT_ZERO));
}

fn degrees_of_freedom(effect: &Estimate, expected: f64) {
    let quantile = StudentT::new(expected).unwrap().quantile(Level::P95.upper_end());
    let reach = effect.interval.upper - effect.value;
    assert_relative(reach, quantile * effect.standard_error, DEGREES_OF_FREEDOM);
}

// Source: lme4 1.1-31, fixtures/statistics/make_mixed.py; two of the four have a variance at zero.
#[test]
fn blocks_crossed_with_levels() {
    let zeros =
        [("y1_two", 2, 4, 0), ("y1_five", 5, 4, 1), ("y2_two", 2, 5, 0), ("y2_five", 5, 5, 1)];
    for (set, terms, response, zeros) in zeros {
        assert_eq!(check(set, &crossed(terms, response)).at_boundary(), zeros, "{set}");
    }
}

// Source: Davies and Goldsmith 1972, section 6.4. Six batches of five: mean squares 11271.5 between and 2451.25 within, so that
// the variance between is their difference over five; lme4's documentation prints 1764, 2451, 1527.50 and 19.38.
#[test]
fn dyestuff_is_its_mean_squares() {
    let fit = check("dyestuff", &one_factor("dyestuff.csv"));
    assert_relative(fit.residual_variance.value, 2451.25, FLAT_TOP);
    assert_relative(fit.block_variance.value, (11271.5 - 2451.25) / 5.0, FLAT_TOP);
    assert_relative(fit.fixed[0].value, 1527.5, ALGEBRA);
    assert_relative(fit.fixed[0].standard_error, (11271.5_f64 / 30.0).sqrt(), FLAT_TOP);
    assert_eq!((fit.fixed[0].n, fit.block_variance.n, fit.at_boundary()), (30, 6, 0));
    // 24 · 2451.25 over the quantiles of chi-squared with 24 degrees of freedom, 12.401150 and 39.364077 in any table.
    assert_relative(fit.residual_variance.interval.lower, 24.0 * 2451.25 / 39.364_077, TABLE);
    assert_relative(fit.residual_variance.interval.upper, 24.0 * 2451.25 / 12.401_150, TABLE);
}

// Source: Box and Tiao 1973, section 5.1.2: less variance between batches than chance gives, so that it is zero.
#[test]
fn dyestuff_without_variance_between_batches() {
    let fit = check("dyestuff2", &one_factor("dyestuff2.csv"));
    assert_eq!((fit.block_variance.value.to_bits(), fit.at_boundary()), (0, 1));
    let interval = fit.block_variance.interval;
    assert!(interval.lower.to_bits() == 0 && interval.upper > 1.0, "{interval:?}");
}

// Source: Davies and Goldsmith 1972, section 6.5: casks within batches. lme4's documentation prints 8.434, 1.657, 0.678.
#[test]
fn pastes_are_nested() {
    let fit = check("pastes", &table("pastes.csv", 1, |_| [1.0], |_| [1.0]));
    assert_close(fit.block_variance.value, 8.434, THREE_DECIMALS);
    assert_close(fit.coefficient_variances[0].value, 1.657, THREE_DECIMALS);
    assert_close(fit.residual_variance.value, 0.678, THREE_DECIMALS);
}

// Source: Belenky and others 2003. D. Bates and others, 2015, Fitting linear mixed-effects models using lme4, Journal of
// Statistical Software 67 (1), prints for independent intercepts and slopes 627.57, 35.86, 653.58, 251.405 (6.885) and 10.467
// (1.560).
#[test]
fn sleepstudy_with_independent_slopes() {
    let fit = check("sleepstudy", &table("sleepstudy.csv", 0, |row| [1.0, row[1]], |row| [row[1]]));
    assert_close(fit.block_variance.value, 627.57, 10.0 * THREE_DECIMALS);
    assert_close(fit.coefficient_variances[0].value, 35.86, 10.0 * THREE_DECIMALS);
    assert_close(fit.residual_variance.value, 653.58, 10.0 * THREE_DECIMALS);
    let printed = [(251.405, 6.885), (10.467, 1.560)];
    for (effect, (value, standard_error)) in fit.fixed.iter().zip(printed) {
        assert_close(effect.value, value, THREE_DECIMALS);
        assert_close(effect.standard_error, standard_error, THREE_DECIMALS);
    }
}
