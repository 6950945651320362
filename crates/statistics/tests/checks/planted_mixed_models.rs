//! Mixed models against a likelihood of dense matrices, by invariance and against planted truth.

use nalgebra::{DMatrix, DVector};
use proptest::prelude::{ProptestConfig, prop_assert, proptest};
use quarterturn_statistics::{
    Estimate, Level, MixedDesign, MixedError, MixedFit, MixedModel, Sample,
};
use rand::SeedableRng;
use rand::seq::SliceRandom;
use rand_distr::{Distribution, StandardNormal};
use rand_pcg::Pcg64;

use crate::tolerance::{LIKELIHOOD, MOVED, STANDARD_ERRORS, assert_close};

/// A design with a response.
struct Drawn {
    design: MixedDesign,
    response: Vec<f64>,
}

impl Drawn {
    fn fit(&self) -> MixedFit {
        let response = Sample::new(self.response.clone()).unwrap();
        MixedModel::new(&self.design).unwrap().fit(&response, Level::P95).unwrap()
    }
}

/// −½ ln of the restricted density by n × n matrices, nothing eliminated: an independent road.
fn dense(drawn: &Drawn, [block, residual]: [f64; 2], coefficients: &[f64]) -> f64 {
    let MixedDesign { fixed, blocks, levels, random } = &drawn.design;
    let n = blocks.len();
    let covariance = DMatrix::from_fn(n, n, |i, j| {
        let shared: f64 =
            coefficients.iter().enumerate().map(|(k, v)| v * random[(i, k)] * random[(j, k)]).sum();
        f64::from(u8::from(i == j)) * residual
            + f64::from(u8::from(blocks[i] == blocks[j])) * block
            + f64::from(u8::from(levels[i] == levels[j])) * shared
    });
    let root = covariance.cholesky().unwrap();
    let information = fixed.tr_mul(&root.solve(fixed)).cholesky().unwrap();
    let y = DVector::from_column_slice(&drawn.response);
    let residuals = &y - fixed * information.solve(&fixed.tr_mul(&root.solve(&y)));
    let log_det = |l: DMatrix<f64>| 2.0 * l.diagonal().map(f64::ln).sum();
    let squares = residuals.dot(&root.solve(&residuals));
    let freedom = (n - fixed.ncols()) as f64;
    -0.5 * (log_det(root.l())
        + log_det(information.l())
        + squares
        + freedom * std::f64::consts::TAU.ln())
}

/// A planted truth: `blocks` of `size` rows each, levels in turn, two random covariates.
#[derive(Debug)]
struct Planted {
    blocks: u64,
    size: u64,
    levels: u64,
    block_sd: f64,
    coefficient_sds: [f64; 2],
    residual_sd: f64,
}

const EFFECTS: [f64; 2] = [2.0, -5.0];

impl Planted {
    fn draw(&self, random: &mut Pcg64) -> Drawn {
        let n = usize::try_from(self.blocks * self.size).unwrap();
        let mut normal = |sd: f64| sd * Distribution::<f64>::sample(&StandardNormal, random);
        let own: Vec<_> = (0..self.blocks).map(|_| normal(self.block_sd)).collect();
        let slopes: Vec<_> =
            (0..self.levels).map(|_| self.coefficient_sds.map(&mut normal)).collect();
        let covariates = DMatrix::from_fn(n, 2, |_, _| normal(1.0));
        let noise: Vec<_> = (0..n).map(|_| normal(self.residual_sd)).collect();
        let mut levels: Vec<_> = (0..n as u64).map(|row| row % self.levels).collect();
        levels.shuffle(random);
        let index = |label: u64| usize::try_from(label).unwrap();
        let fixed =
            DMatrix::from_fn(
                n,
                2,
                |row, column| if column == 0 { 1.0 } else { (levels[row] % 2) as f64 },
            );
        let blocks: Vec<_> = (0..n as u64).map(|row| row / self.size).collect();
        let response = (0..n).map(|row| {
            let slope = slopes[index(levels[row])];
            let random = slope[0] * covariates[(row, 0)] + slope[1] * covariates[(row, 1)];
            EFFECTS[0]
                + EFFECTS[1] * fixed[(row, 1)]
                + own[index(blocks[row])]
                + random
                + noise[row]
        });
        Drawn {
            response: response.collect(),
            design: MixedDesign { fixed, blocks, levels, random: covariates },
        }
    }
}

/// Coefficients' variances, the blocks', the residual one, fixed effects.
fn estimates(fit: &MixedFit) -> impl Iterator<Item = &Estimate> {
    let variances = fit.coefficient_variances.iter();
    variances.chain([&fit.block_variance, &fit.residual_variance]).chain(&fit.fixed)
}

fn values(fit: &MixedFit) -> Vec<f64> {
    estimates(fit).map(|estimate| estimate.value).collect()
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, cases: 64, ..ProptestConfig::default() })]

    #[test]
    fn the_likelihood_is_that_of_dense_matrices_and_the_greatest(
        seed in 0_u64..1000,
        (blocks, size, levels) in (6_u64..10, 4_u64..6, 2_u64..6),
        (block_sd, first, second) in (0.0..3.0, 0.0..3.0, 0.0..3.0),
    ) {
        let planted = Planted { blocks, size, levels, block_sd, coefficient_sds: [first, second], residual_sd: 1.0 };
        let drawn = planted.draw(&mut Pcg64::seed_from_u64(seed));
        let fit = drawn.fit();
        let [block, residual] = [fit.block_variance.value, fit.residual_variance.value];
        let coefficients: Vec<_> = fit.coefficient_variances.iter().map(|e| e.value).collect();
        let best = dense(&drawn, [block, residual], &coefficients);
        prop_assert!((best - fit.log_likelihood).abs() <= LIKELIHOOD, "{best} {}", fit.log_likelihood);
        for factor in [0.9, 1.1] {
            for place in 0..2 + coefficients.len() {
                let mut variances = [&[block, residual], &coefficients[..]].concat();
                variances[place] = (variances[place] * factor).max(0.01);
                let other = dense(&drawn, [variances[0], variances[1]], &variances[2..]);
                prop_assert!(other <= best + LIKELIHOOD, "{other} beats {best}");
            }
        }
    }

    /// What the fixed effects can give moves them and nothing else; the order of the rows and the labels mean nothing.
    #[test]
    fn shifts_order_and_labels_do_not_matter(seed in 0_u64..1000, shift in -1e4..1e4) {
        let planted =
            Planted { blocks: 9, size: 4, levels: 4, block_sd: 1.0, coefficient_sds: [1.0, 0.5], residual_sd: 1.0 };
        let mut random = Pcg64::seed_from_u64(seed);
        let drawn = planted.draw(&mut random);
        let mut order: Vec<_> = (0..drawn.response.len()).collect();
        order.shuffle(&mut random);
        let MixedDesign { fixed, blocks, levels, random: covariates } = &drawn.design;
        let moved = Drawn {
            design: MixedDesign {
                fixed: fixed.select_rows(&order),
                blocks: order.iter().map(|&row| u64::MAX - 3 * blocks[row]).collect(),
                levels: order.iter().map(|&row| 1000 - levels[row]).collect(),
                random: covariates.select_rows(&order),
            },
            response: order.iter().map(|&row| drawn.response[row] + shift * (1.0 + fixed[(row, 1)])).collect(),
        };
        let (plain, mut other) = (values(&drawn.fit()), values(&moved.fit()));
        other.iter_mut().skip(4).for_each(|effect| *effect -= shift);
        for (a, b) in plain.iter().zip(other) {
            prop_assert!((a - b).abs() <= MOVED * (1.0 + a.abs()), "{a} {b}");
        }
    }
}

/// Whatever the sizes of what varies, the search ends at an optimum; a millionth of the scatter is none.
#[test]
fn any_sizes_have_an_optimum() {
    let sizes = [0.0, 1e-9, 1e-3, 1.0, 1e3, 1e6];
    let designs = [(3, 3, 2), (12, 2, 3), (2, 20, 9), (40, 3, 4)];
    let mut random = Pcg64::seed_from_u64(5);
    for (block_sd, first) in sizes.iter().flat_map(|a| sizes.iter().map(move |b| (*a, *b))) {
        for (blocks, size, levels) in designs {
            let coefficient_sds = [first, 1.0];
            let planted =
                Planted { blocks, size, levels, block_sd, coefficient_sds, residual_sd: 1.0 };
            let drawn = planted.draw(&mut random);
            let response = Sample::new(drawn.response).unwrap();
            match MixedModel::new(&drawn.design).unwrap().fit(&response, Level::P95) {
                Ok(fit) => assert!(values(&fit).iter().all(|value| value.is_finite()), "{fit:?}"),
                Err(error) => {
                    assert_eq!(error, MixedError::NoScatter);
                    assert!(block_sd.max(first) > 1e5, "{planted:?}");
                }
            }
        }
    }
}

/// Planted truth: fifteen levels, thirty blocks of four. Intervals cover as often as they say and estimates are right on average;
/// near zero, where a variance of 1 stands here, the intervals are wide.
#[test]
fn intervals_cover() {
    const FITS: usize = 2000;
    let planted = Planted {
        blocks: 30,
        size: 4,
        levels: 15,
        block_sd: 2.0,
        coefficient_sds: [2.0, 1.0],
        residual_sd: 3.0,
    };
    let truth = [4.0, 1.0, 4.0, 9.0, EFFECTS[0], EFFECTS[1]];
    let mut random = Pcg64::seed_from_u64(11);
    let (mut covered, mut sums, mut squares) = ([0_usize; 6], [0.0; 6], [0.0; 6]);
    for _ in 0..FITS {
        let fit = planted.draw(&mut random).fit();
        for (place, estimate) in estimates(&fit).enumerate() {
            let (interval, truth) = (estimate.interval, truth[place]);
            covered[place] += usize::from(interval.lower <= truth && truth <= interval.upper);
            sums[place] += estimate.value - truth;
            squares[place] += (estimate.value - truth).powi(2);
        }
    }
    let n = FITS as f64;
    let chance = STANDARD_ERRORS * (0.95 * 0.05 / n).sqrt();
    for place in 0..truth.len() {
        let (often, wide) = (covered[place] as f64 / n, if place == 1 { 0.02 } else { 0.0 });
        assert!((0.95 - chance..0.95 + chance + wide).contains(&often), "{place}: {often}");
        assert_close(sums[place] / n, 0.0, STANDARD_ERRORS * squares[place].sqrt() / n);
    }
}
