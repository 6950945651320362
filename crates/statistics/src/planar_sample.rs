//! A non-empty sample of points on a plane.

use nalgebra::{Matrix2, Vector2};

use crate::SampleError;
use crate::sample::check;

/// At least one point, all coordinates finite and within [`Sample::LARGEST`](crate::Sample::LARGEST).
#[derive(Clone, Debug, PartialEq)]
pub struct PlanarSample(Vec<Vector2<f64>>);

impl PlanarSample {
    /// A sample of `points`.
    ///
    /// # Errors
    /// [`SampleError`] where there is no point, or a coordinate that is not finite or too large.
    pub fn new(points: Vec<Vector2<f64>>) -> Result<Self, SampleError> {
        check(points.iter().enumerate().flat_map(|(i, p)| [(i, p.x), (i, p.y)]))?;
        if points.is_empty() { Err(SampleError::Empty) } else { Ok(Self(points)) }
    }

    /// The points in the order given.
    pub fn points(&self) -> &[Vector2<f64>] {
        &self.0
    }

    /// How many points there are, at least one.
    pub fn n(&self) -> usize {
        self.0.len()
    }

    /// The mean point, computed as [`Sample::mean`](crate::Sample::mean) is.
    pub fn centroid(&self) -> Vector2<f64> {
        let about = |c: Vector2<f64>| {
            c + self.0.iter().map(|p| p - c).sum::<Vector2<f64>>() / self.n() as f64
        };
        about(about(self.0.first().copied().unwrap_or_default()))
    }

    /// The covariance matrix about the centroid; `None` for a single point.
    ///
    /// # Formula
    /// S = (Σ dᵢ dᵢᵀ − (Σdᵢ)(Σdᵢ)ᵀ/n)/(n − 1), dᵢ = pᵢ − p̄.
    ///
    /// # Source
    /// As in [`Sample::variance`](crate::Sample::variance).
    pub fn covariance(&self) -> Option<Matrix2<f64>> {
        (self.n() > 1).then(|| self.scatter() / (self.n() - 1) as f64)
    }

    /// Σ dᵢ dᵢᵀ about the centroid; its trace is the sum of squared distances.
    pub(crate) fn scatter(&self) -> Matrix2<f64> {
        let centroid = self.centroid();
        let sum = self.0.iter().map(|p| p - centroid).sum::<Vector2<f64>>();
        let squares = self.0.iter().map(|p| (p - centroid) * (p - centroid).transpose());
        squares.sum::<Matrix2<f64>>() - sum * sum.transpose() / self.n() as f64
    }
}
