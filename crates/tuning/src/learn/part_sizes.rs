//! How large the parts of the shafts are, all in the same proportion, from how likely that makes what was observed.

use super::build::Build;
use super::discrepancy::over_shafts;
use super::scatter::root_mean;
use crate::Scales;
use crate::layout::shaft;
use crate::observation::Observations;
use crate::posterior::Posterior;
use crate::readings::Reader;

/// How many times as large as expected the parts may be: each half as large again as the one before.
const TIMES: [f64; 7] = [0.2, 0.3, 0.45, 0.67, 1.0, 1.5, 2.25];

/// What is known of it before the first shot: the logarithm of the factor is normal about zero, so that a dozen is rarely built
/// three times as well or as badly as usual.
const SD_BEFORE: f64 = 0.6;

/// The size of each part weighs as much as so many coordinates at the size that all have in common.
const PART_PRIOR: f64 = 24.0;

/// The sizes of the shafts' parts, and how well the factor is known that they have in common.
#[derive(Clone, Copy, Debug)]
pub struct PartSizes {
    /// Centre, what turns once, what turns twice: each as expected, times the common factor, mm.
    common_mm: [f64; 3],
    /// The standard deviation of the natural logarithm of the factor.
    log_sd: f64,
}

impl PartSizes {
    /// Before the first shot.
    pub fn before(expected: &Scales) -> Self {
        Self {
            common_mm: [expected.centre_mm, expected.turning_mm, expected.stiff_mm],
            log_sd: SD_BEFORE,
        }
    }

    /// Mean and standard deviation of the logarithm over the factors of [`TIMES`], all else as the reader has it.
    ///
    /// # Formula
    /// The factor k has the weight exp(−D(k)/2 − (ln k)²/2v), D(k) = −2 ln of the marginal likelihood, v = 0.6².
    ///
    /// # Source
    /// Naylor and Smith (1982), Applied Statistics 31, 214 (posteriors by quadrature; from memory).
    pub fn of(reader: &Reader<'_>, expected: &Scales) -> Self {
        let before = Self::before(expected);
        let equations = reader.equations();
        let logs = TIMES.map(f64::ln);
        let likely = logs.map(|log| {
            let scales = before.times(log.exp()).put(reader.scales);
            let deviance = reader.posterior(&equations, &scales).deviance;
            -0.5 * (deviance + (log / SD_BEFORE).powi(2))
        });
        let most = likely.into_iter().fold(f64::MIN, f64::max);
        let weights = likely.map(|one| (one - most).exp());
        let all: f64 = weights.iter().sum();
        let mean_of = |value: &dyn Fn(f64) -> f64| {
            logs.iter().zip(weights).map(|(&log, weight)| weight * value(log)).sum::<f64>() / all
        };
        let mean = mean_of(&|log| log);
        let log_sd = mean_of(&|log| (log - mean).powi(2)).sqrt();
        Self { log_sd, ..before.times(mean.exp()) }
    }

    fn times(self, factor: f64) -> Self {
        Self { common_mm: self.common_mm.map(|mm| mm * factor), ..self }
    }

    /// `scales` with parts of these sizes.
    pub fn put(self, scales: &Scales) -> Scales {
        let [centre_mm, turning_mm, stiff_mm] = self.common_mm;
        Scales { centre_mm, turning_mm, stiff_mm, ..*scales }
    }

    /// `scales` with parts that are larger by so many standard deviations of the factor.
    pub fn larger(self, by: f64, scales: &Scales) -> Scales {
        Self::before(scales).times((by * self.log_sd).exp()).put(scales)
    }

    /// Moves the size of each part to where the unknowns put it; those of a badly built shaft weigh less.
    pub fn update(
        self,
        scales: &mut Scales,
        seen: &Observations,
        posterior: &Posterior,
        builds: &[Build],
    ) {
        let [centre, turning, stiff] = self.common_mm;
        let size = |part: usize, common_mm: f64| {
            let sum = over_shafts(seen, posterior, part, |life| builds[life].miss);
            root_mean(sum, PART_PRIOR, common_mm)
        };
        scales.centre_mm = size(shaft::CENTRE, centre);
        scales.turning_mm = size(shaft::TURNING, turning);
        scales.stiff_mm = size(shaft::STIFF, stiff);
    }
}
