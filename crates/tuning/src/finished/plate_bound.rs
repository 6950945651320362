//! The chance of landing on a plate, with its lower bound.

use nalgebra::{Matrix2, Vector2};
use quarterturn_statistics::{
    Level, PlanarSample, approximate_probability_within_circle, probability_within_circle,
};
use rand::SeedableRng;
use rand_distr::{ChiSquared, Distribution, StandardNormal};
use rand_pcg::Pcg64;

/// Enough that the bound is right to half a percent of its level.
const DRAWS: usize = 2000;

/// How many of them lie below a bound at 95 %.
const DRAWS_BELOW: usize = DRAWS / 20;

/// Fewer shots leave the covariance to chance.
pub const FEWEST_SHOTS: usize = 5;

/// The chance that one more shot lands on a plate, at one place or with everything grown in proportion.
#[derive(Clone, Debug, PartialEq)]
pub struct PlateBound {
    /// Number of shots.
    pub n: usize,
    mean: Vector2<f64>,
    covariance: Matrix2<f64>,
    /// Means and covariances that the shots leave possible.
    drawn: Vec<(Vector2<f64>, Matrix2<f64>)>,
}

impl PlateBound {
    /// Of shots at `hits`, mm from the spot, which is the middle of the plate; nothing for fewer than five, or where all
    /// lie on one line. The draws begin at `seed`.
    ///
    /// # Formula
    /// The chance is that of a normal point within the plate's radius of the spot, at the mean m and the covariance
    /// S = A/(n − 1) of the hits. For its lower bound Σ* = L (B Bᵀ)⁻¹ Lᵀ is drawn, A = L Lᵀ, B lower triangular with
    /// B₁₁² ~ χ²(n − 1), B₂₂² ~ χ²(n − 2), B₂₁ normal; then m* = m + Σ*^½ z/√n; the bound is the quantile of the chances
    /// at (m*, Σ*): a generalized confidence bound, the same as with Jeffreys' independence prior.
    ///
    /// # Assumptions
    /// Independent normal shots, as wide and as slanting as they are.
    ///
    /// # Errors
    /// Simulated over round, flat and offset groups of 5 to 20 shots, the bound at 95 % holds in 96 % to all of them: it
    /// is on the careful side, most of all for few shots on the spot, and one round σ would not be for a flat group.
    ///
    /// # Source
    /// S. Weerahandi, 1993, Generalized confidence intervals, Journal of the American Statistical Association 88, 899;
    /// the triangular B: M. S. Bartlett, 1933, On the theory of statistical regression, Proceedings of the Royal Society of
    /// Edinburgh 53, 260 (both from memory).
    pub fn of(hits: Vec<Vector2<f64>>, seed: u64) -> Option<Self> {
        let n = hits.len();
        if n < FEWEST_SHOTS {
            return None;
        }
        let sample = PlanarSample::new(hits).ok()?;
        let (mean, covariance) = (sample.centroid(), sample.covariance()?);
        let root = (covariance * (n - 1) as f64).cholesky()?.l();
        let mut random = Pcg64::seed_from_u64(seed);
        let first = ChiSquared::new((n - 1) as f64).ok()?;
        let second = ChiSquared::new((n - 2) as f64).ok()?;
        let mut draw = || {
            let across: f64 = StandardNormal.sample(&mut random);
            let (one, two) = (first.sample(&mut random).sqrt(), second.sample(&mut random).sqrt());
            // (BBᵀ)⁻¹ = CᵀC with C = B⁻¹.
            let inverse = Matrix2::new(one.recip(), 0.0, -across / (one * two), two.recip());
            let half = root * inverse.transpose();
            let z = Vector2::from_fn(|_, _| StandardNormal.sample(&mut random));
            (mean + half * z / (n as f64).sqrt(), half * half.transpose())
        };
        let drawn = (0..DRAWS).map(|_| draw()).collect();
        Some(Self { n, mean, covariance, drawn })
    }

    /// The estimated chance on a plate of this radius.
    pub fn chance(&self, radius_mm: f64) -> f64 {
        probability_within_circle(self.mean, &self.covariance, radius_mm)
    }

    /// The chance that there is at least, at 95 %.
    pub fn at_least(&self, radius_mm: f64) -> f64 {
        let chance = |(mean, covariance): &(Vector2<f64>, Matrix2<f64>)| {
            approximate_probability_within_circle(*mean, covariance, radius_mm)
        };
        let mut chances: Vec<f64> = self.drawn.iter().map(chance).collect();
        let (_, bound, _) = chances.select_nth_unstable_by(DRAWS_BELOW, f64::total_cmp);
        *bound
    }

    /// How much everything may grow in proportion, or must shrink, for the chance to be `chance` at least, at 95 %.
    pub fn growth_to(&self, radius_mm: f64, chance: Level) -> f64 {
        let holds = |times: f64| self.at_least(radius_mm / times) >= chance.probability();
        let (mut lower, mut upper) = (0.0, FARTHEST_GROWTH);
        // To a thousandth: nobody paces a distance out better.
        while upper - lower > 1e-3 {
            let times = 0.5 * (lower + upper);
            if holds(times) { lower = times } else { upper = times }
        }
        lower
    }
}

/// No distance that is asked about is so many times another.
const FARTHEST_GROWTH: f64 = 8.0;
