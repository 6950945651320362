//! A non-empty sample of points on a plane.

use nalgebra::{Matrix2, Vector2};

use crate::sample::check;
use crate::strands::summed;
use crate::{Sample, SampleError};

/// At least one point, all coordinates finite and within [`Sample::LARGEST`].
///
/// Centroid and scatter are computed once, when the sample is made. What else a sample can tell stands in the other files:
/// its group, its mean with what is known of it, and which of its points stand out.
#[derive(Clone, Debug, PartialEq)]
pub struct PlanarSample {
    points: Vec<Vector2<f64>>,
    centroid: Vector2<f64>,
    scatter: Matrix2<f64>,
}

impl PlanarSample {
    /// A sample of `points`.
    ///
    /// # Errors
    /// [`SampleError`] where there is no point, or a coordinate that is not finite or too large.
    pub fn new(points: Vec<Vector2<f64>>) -> Result<Self, SampleError> {
        let fits = |p: &Vector2<f64>| p.x.abs() <= Sample::LARGEST && p.y.abs() <= Sample::LARGEST;
        if !points.iter().all(fits) {
            check(points.iter().enumerate().flat_map(|(i, p)| [(i, p.x), (i, p.y)]))?;
        }
        let first = *points.first().ok_or(SampleError::Empty)?;
        let n = points.len() as f64;
        let [x, y] = summed(&points, |p| [p.x - first.x, p.y - first.y]);
        let near = first + Vector2::new(x, y) / n;
        let [x, y, xx, xy, yy] = summed(&points, |p| {
            let d = p - near;
            [d.x, d.y, d.x * d.x, d.x * d.y, d.y * d.y]
        });
        let scatter = Matrix2::new(xx - x * x / n, xy - x * y / n, xy - x * y / n, yy - y * y / n);
        let centroid = near + Vector2::new(x, y) / n;
        Ok(Self { points, centroid, scatter })
    }

    /// The points in the order given.
    pub fn points(&self) -> &[Vector2<f64>] {
        &self.points
    }

    /// How many points there are, at least one.
    pub fn n(&self) -> usize {
        self.points.len()
    }

    /// The mean point, computed as [`Sample::mean`] is.
    pub fn centroid(&self) -> Vector2<f64> {
        self.centroid
    }

    /// The covariance matrix about the centroid; `None` for a single point.
    ///
    /// # Formula
    /// S = (Σ dᵢ dᵢᵀ − (Σdᵢ)(Σdᵢ)ᵀ/n)/(n − 1), dᵢ = pᵢ − p̄.
    ///
    /// # Source
    /// As in [`Sample::variance`].
    pub fn covariance(&self) -> Option<Matrix2<f64>> {
        (self.n() > 1).then(|| self.scatter / (self.n() - 1) as f64)
    }

    /// The same points without those at `positions`, counted from 0; `None` where no point would be left.
    ///
    /// Positions that the sample does not have are passed over.
    #[must_use]
    pub fn without(&self, positions: &[usize]) -> Option<Self> {
        let points = self.points.iter().enumerate();
        let left = points.filter(|(at, _)| !positions.contains(at)).map(|(_, point)| *point);
        Self::new(left.collect()).ok()
    }

    /// Σ dᵢ dᵢᵀ about the centroid; its trace is the sum of squared distances.
    pub(crate) fn scatter(&self) -> Matrix2<f64> {
        self.scatter
    }

    /// Squared distances from `centre`, in the order of the points.
    pub(crate) fn squared_distances(&self, centre: Vector2<f64>) -> Vec<f64> {
        self.points.iter().map(|p| (p - centre).norm_squared()).collect()
    }
}
