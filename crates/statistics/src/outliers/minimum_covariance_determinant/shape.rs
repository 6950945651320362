//! Centre and scatter of a few points, as the search needs them.

/// The mean and the covariance of some points, divided by their number.
#[derive(Clone, Copy, Debug)]
pub(super) struct Shape {
    x: f64,
    y: f64,
    xx: f64,
    xy: f64,
    yy: f64,
}

/// Determinants below this share of the squared trace are rounding: the points lie on a line.
const FLAT: f64 = 1e-14;

impl Shape {
    /// From a number of points and their sums of x, y, x², xy and y².
    pub(super) fn of([n, x, y, xx, xy, yy]: [f64; 6]) -> Self {
        let (x, y) = (x / n, y / n);
        Self { x, y, xx: xx / n - x * x, xy: xy / n - x * y, yy: yy / n - y * y }
    }

    /// The determinant of the covariance; `None` where the points lie on a line.
    pub(super) fn determinant(&self) -> Option<f64> {
        let determinant = self.xx * self.yy - self.xy * self.xy;
        let trace = self.xx + self.yy;
        (determinant > FLAT * trace * trace).then_some(determinant)
    }

    /// The squared distance of (x, y) by this shape, times the determinant.
    #[inline]
    pub(super) fn distance(&self, x: f64, y: f64) -> f64 {
        let (x, y) = (x - self.x, y - self.y);
        self.yy * x * x - 2.0 * self.xy * x * y + self.xx * y * y
    }

    /// The distance of (x, y) from the line along which the shape spreads most.
    pub(super) fn beside_line(&self, x: f64, y: f64) -> f64 {
        let along = 0.5 * (2.0 * self.xy).atan2(self.xx - self.yy);
        ((x - self.x) * along.sin() - (y - self.y) * along.cos()).abs()
    }
}
