//! The middle and the spread of a set of pixels: an oval, if it is one.

use nalgebra::{Matrix2, Vector2};

/// Sums over pixels from which their middle and spread follow.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct Oval {
    /// How many pixels.
    pub area: f64,
    sum: Vector2<f64>,
    squares: Matrix2<f64>,
}

impl Oval {
    /// The pixels from `start` up to `end`, left out, of row `y`.
    pub fn run(start: u32, end: u32, y: u32) -> Self {
        let (from, count, y) = (f64::from(start), f64::from(end - start), f64::from(y));
        let last = from + count - 1.0;
        let sum_x = count * f64::midpoint(from, last);
        // Σx² = n x̄² + n (n² − 1)/12; a pixel itself spreads by another 1/12.
        let squares_x = sum_x * sum_x / count + count * count * count / 12.0;
        let xy = sum_x * y;
        Self {
            area: count,
            sum: Vector2::new(sum_x, count * y),
            squares: Matrix2::new(squares_x, xy, xy, count * (y * y + 1.0 / 12.0)),
        }
    }

    /// Both together.
    pub fn and(self, other: Self) -> Self {
        Self {
            area: self.area + other.area,
            sum: self.sum + other.sum,
            squares: self.squares + other.squares,
        }
    }

    /// The middle, px.
    pub fn middle(self) -> Vector2<f64> {
        self.sum / self.area
    }

    /// The covariance about the middle, px²: of a disc of radius r it is r²/4 along each axis.
    pub fn spread(self) -> Matrix2<f64> {
        let middle = self.middle();
        self.squares / self.area - middle * middle.transpose()
    }

    /// The area over that of the ellipse with the same spread: 1 for an ellipse, less for anything else.
    pub fn fullness(self) -> f64 {
        self.area / (4.0 * std::f64::consts::PI * self.spread().determinant().max(0.0).sqrt())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_rectangle_has_its_middle_and_its_spread() {
        let oval = (3..7).map(|y| Oval::run(10, 22, y)).reduce(Oval::and).unwrap();
        assert_eq!(oval.middle(), Vector2::new(15.5, 4.5));
        let expected = Matrix2::new(12.0, 0.0, 0.0, 4.0 / 3.0);
        assert!((oval.spread() - expected).norm() < 1e-9, "{}", oval.spread());
        assert!((oval.fullness() - 3.0 / std::f64::consts::PI).abs() < 1e-9);
    }
}
