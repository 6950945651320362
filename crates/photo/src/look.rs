//! A picture made smaller, with places as in the whole one.

use quarterturn_geometry::Pixel;

use crate::Luminance;

/// A picture made smaller by a factor.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Look {
    /// What is looked at.
    pub picture: Luminance,
    /// How many pixels of the whole one side of its pixels is.
    pub by: usize,
}

impl Look {
    /// How light it is at a place of the whole picture, between pixels as well; `None` at its edge and beyond.
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "it is not negative"
    )]
    pub fn at(&self, place: Pixel) -> Option<f64> {
        let by = self.by as f64;
        let [x, y] = [place.x_px, place.y_px].map(|px| (px - (by - 1.0) / 2.0) / by);
        if !(x >= 0.0 && y >= 0.0) {
            return None;
        }
        let (left, top) = (x as usize, y as usize);
        if left + 1 >= self.picture.width() || top + 1 >= self.picture.height() {
            return None;
        }
        let value = |x: usize, y: usize| f64::from(self.picture.at(x, y));
        let row = |y: usize| {
            let over = x - left as f64;
            value(left, y) * (1.0 - over) + value(left + 1, y) * over
        };
        let under = y - top as f64;
        Some(row(top) * (1.0 - under) + row(top + 1) * under)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn places_are_those_of_the_whole_picture() {
        let whole = Luminance::new(8, 4, (0..32).map(|at| at % 8 * 10).collect()).unwrap();
        let look = Look { picture: whole.shrunk(2).unwrap(), by: 2 };
        for x in [0.5, 2.0, 3.75, 5.5] {
            assert_eq!(look.at(Pixel::new(x, 1.5)), Some(x * 10.0));
        }
        assert_eq!(look.at(Pixel::new(7.0, 1.0)), None);
        assert_eq!(look.at(Pixel::new(f64::NAN, 1.0)), None);
    }
}
