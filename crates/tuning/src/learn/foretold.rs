//! The hits of a shaft as everything else foretells them.

use nalgebra::{DMatrix, DVector};

use crate::evidence::Evidence;

/// A few hits as all other shots foretell them: two coordinates each, one shot after the other.
#[derive(Clone, Debug)]
pub struct Foretold {
    /// Which shots, counted in the observations.
    pub shots: Vec<usize>,
    /// What was read less what is foretold, mm.
    pub off: DVector<f64>,
    /// The covariance of what is foretold, the noise of these shots apart, mm².
    pub known: DMatrix<f64>,
    /// Of the noise of each coordinate the variance of its reading, mm².
    pub read_mm2: Vec<f64>,
}

impl Foretold {
    /// Takes the hits of `shots` out of the posterior; nothing where they cannot be told from it.
    ///
    /// # Formula
    /// With S the covariance of what the posterior expects of them, R that of their noise and d what was read less what is expected:
    /// what is foretold has the covariance S + S (R − S)⁻¹ S, and what was read differs from it by R (R − S)⁻¹ d.
    ///
    /// # Source
    /// Hager (1989), SIAM Review 31, 221.
    pub fn of(evidence: &Evidence<'_>, shots: &[usize]) -> Option<Self> {
        let rows = evidence.hits(shots);
        let readings = evidence.hit_readings(shots);
        let n = rows.off.len();
        let expected = evidence.covariance(&[&rows]);
        let noise = DVector::from_iterator(n, readings.iter().map(|one| one.weight.recip()));
        let noise = DMatrix::from_diagonal(&noise);
        let taken_out = (&noise - &expected).try_inverse()?;
        let read_mm2 = readings.iter().map(|one| (1.0 - one.scatter_share) / one.weight);
        Some(Self {
            shots: shots.to_vec(),
            off: noise * (&taken_out * rows.off),
            known: &expected + &expected * taken_out * &expected,
            read_mm2: read_mm2.collect(),
        })
    }
}
