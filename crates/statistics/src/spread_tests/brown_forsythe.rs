//! Brown and Forsythe's test of equal spread, which bears long tails.

use crate::{AnalysisOfVariance, PlanarSample, Sample, StatisticError, TestResult};

/// Tests whether groups of numbers spread alike.
///
/// # Formula
/// The one-way analysis of variance of zᵢⱼ = |xᵢⱼ − x̃ᵢ|, x̃ᵢ the median of group i: F with k − 1 and N − k degrees of freedom.
///
/// # Assumptions
/// Independent observations. In groups of three to five the level is kept, mostly by rejecting too seldom.
///
/// # Errors
/// [`StatisticError::Anova`] for fewer than two groups, as many groups as values, or distances that do not differ within any group.
///
/// # Source
/// M. B. Brown, A. B. Forsythe, 1974, Robust tests for the equality of variances, Journal of the American Statistical
/// Association 69, 364 (from memory); NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.10 (Levene's test about medians).
pub fn brown_forsythe_test(groups: &[Sample]) -> Result<TestResult, StatisticError> {
    let distances = groups.iter().map(|group| {
        let median = group.median();
        group.values().iter().map(|x| (x - median).abs()).collect()
    });
    one_way(distances.collect())
}

/// The same for groups of points, by their distances from their geometric medians.
///
/// # Formula
/// As [`brown_forsythe_test`] with zᵢⱼ = |pᵢⱼ − m̃ᵢ|.
///
/// # Assumptions
/// As there.
///
/// # Errors
/// As there.
///
/// # Source
/// M. J. Anderson, 2006, Distance-based tests for homogeneity of multivariate dispersions, Biometrics 62, 245 (from memory),
/// with the F distribution in place of permutations.
pub fn planar_brown_forsythe_test(groups: &[PlanarSample]) -> Result<TestResult, StatisticError> {
    let distances = groups.iter().map(|group| {
        let squared = group.squared_distances(group.geometric_median());
        squared.into_iter().map(f64::sqrt).collect()
    });
    one_way(distances.collect())
}

/// The test that the means of groups are the same.
fn one_way(groups: Vec<Vec<f64>>) -> Result<TestResult, StatisticError> {
    let groups = groups.into_iter().map(Sample::new).collect::<Result<Vec<_>, _>>()?;
    Ok(AnalysisOfVariance::of(&groups)?.test()?)
}
