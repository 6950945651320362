//! How much of a sample the robust estimate rests on.

/// The share of the points whose covariance determinant is made least; the others may lie anywhere.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Coverage {
    /// Just over half: bears nearly as many outliers as good points, and knows least of few points.
    Half,
    /// Three quarters: bears a quarter of outliers.
    ThreeQuarters,
}

impl Coverage {
    /// h, how many of `n` points that is.
    ///
    /// # Formula
    /// With m = ⌊(n + 3)/2⌋, the fewest that no half of the points can carry away: m for half, ⌊2m − n + 2 (n − m) · 3/4⌋ for
    /// three quarters.
    ///
    /// # Source
    /// P. J. Rousseeuw, K. Van Driessen, 1999, A fast algorithm for the minimum covariance determinant estimator, Technometrics
    /// 41, 212; the interpolation is that of R's robustbase.
    pub fn points(self, n: usize) -> usize {
        let least = usize::midpoint(n, 3).min(n);
        match self {
            Self::Half => least,
            Self::ThreeQuarters => usize::midpoint(4 * least - 2 * n, 3 * (n - least)),
        }
    }
}
