//! Whether directions prefer one of them.

use std::f64::consts::{FRAC_2_PI, PI};

use crate::{MeanDirection, TestResult};

/// From here on an approximation is as good as anyone can see.
const MANY: usize = 100;

/// Terms of the series at most: for three directions they fall off slowest, as 1/k².
const MOST_TERMS: u32 = 2000;

impl MeanDirection {
    /// Rayleigh's test of directions that are all as likely, against one that is preferred. The statistic is nR̄².
    ///
    /// It is blind to directions that are preferred with their opposites.
    ///
    /// # Formula
    /// p = P(R ≥ r) for a walk of n steps of length 1 in random directions: 1 − Σₖ 2R̄ J₁(jₖR̄) J₀(jₖ/n)ⁿ/(jₖ J₁(jₖ)²)
    /// with jₖ the zeros of J₀; for two directions (2/π) arccos R̄; for more than a hundred exp(√(1 + 4n + 4(n² − r²))
    /// − (1 + 2n)), r = nR̄. Right to 1e-5; one direction tells nothing: p = 1.
    ///
    /// # Assumptions
    /// Independent directions.
    ///
    /// # Source
    /// Lord Rayleigh, 1919, Philosophical Magazine 37, 321. The density in a disc as a Fourier-Bessel series: W. R.
    /// Bennett, 1948, Quarterly of Applied Mathematics 5, 385. The approximation: D. Wilkie, 1983, Rayleigh test for
    /// randomness of circular data, Applied Statistics 32, 311 (all from memory).
    pub fn rayleigh_test(&self) -> TestResult {
        let (n, length) = (self.n as f64, self.resultant_length);
        let p_value = match self.n {
            0 | 1 => 1.0,
            2 => FRAC_2_PI * length.acos(),
            3..=MANY => 1.0 - shorter_walk(self.n, length),
            _ => {
                let r = n * length;
                ((1.0 + 4.0 * n + 4.0 * (n - r) * (n + r)).sqrt() - (1.0 + 2.0 * n)).exp()
            }
        };
        TestResult { statistic: n * length * length, p_value: p_value.clamp(0.0, 1.0), n: self.n }
    }
}

/// The probability that a walk of n random unit steps ends within n times `length`.
fn shorter_walk(n: usize, length: f64) -> f64 {
    let steps = n as f64;
    let mut sum = 0.0;
    for k in 1..=MOST_TERMS {
        let zero = zero_of_j0(f64::from(k));
        let slope = libm::j1(zero);
        let envelope = libm::j0(zero / steps).powf(steps) / (zero * slope * slope);
        sum += 2.0 * length * libm::j1(zero * length) * envelope;
        // Beyond this the Bessel function is of the size of its own envelope √(2n/πjₖ), which shrinks.
        if (2.0 * steps / (PI * zero)).powf(0.5 * steps) * f64::from(k).sqrt() < 1e-10 {
            break;
        }
    }
    sum
}

/// The kth zero of J₀: the first terms of its expansion in 1/k and two of Newton's steps (M. Abramowitz, I. A. Stegun,
/// 1964, Handbook of Mathematical Functions, 9.5.12, from memory).
fn zero_of_j0(k: f64) -> f64 {
    let beta = (k - 0.25) * PI;
    let mut zero = beta + 1.0 / (8.0 * beta);
    for _ in 0..2 {
        zero += libm::j0(zero) / libm::j1(zero);
    }
    zero
}
