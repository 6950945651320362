//! A picture in shades of grey.

use std::ops::Range;

/// How light each pixel is, row by row from the top left; pixel (0, 0) has its middle at the place (0, 0).
#[derive(Clone, Debug, PartialEq)]
pub struct Luminance {
    width: usize,
    height: usize,
    values: Vec<u8>,
}

impl Luminance {
    /// A picture of `width` × `height` values from 0, black, to 255, white; `None` for any other number of values or none.
    pub fn new(width: usize, height: usize, values: Vec<u8>) -> Option<Self> {
        let fits = width > 0 && height > 0 && width.checked_mul(height) == Some(values.len());
        fits.then_some(Self { width, height, values })
    }

    /// Pixels across.
    pub const fn width(&self) -> usize {
        self.width
    }

    /// Pixels up and down.
    pub const fn height(&self) -> usize {
        self.height
    }

    /// All values, row by row from the top left.
    pub fn values(&self) -> &[u8] {
        &self.values
    }

    /// The rows from the top.
    pub(crate) fn rows(&self) -> impl Iterator<Item = &[u8]> {
        self.values.chunks_exact(self.width)
    }

    /// The part within these columns and rows, as far as they are in the picture.
    pub(crate) fn part(&self, columns: Range<usize>, rows: Range<usize>) -> Option<Self> {
        let columns = columns.start..columns.end.min(self.width);
        let rows = rows.start..rows.end.min(self.height);
        let cut = rows.clone().filter_map(|y| {
            self.values.get(y * self.width + columns.start..y * self.width + columns.end)
        });
        Self::new(columns.len(), rows.len(), cut.flatten().copied().collect())
    }

    /// The value of a pixel of the picture.
    pub(crate) fn at(&self, x: usize, y: usize) -> u8 {
        self.values[y * self.width + x]
    }

    /// The picture made smaller: means over squares of `by` × `by` pixels; what is left over at the edges is dropped.
    pub(crate) fn shrunk(&self, by: usize) -> Option<Self> {
        let (width, height) = (self.width / by, self.height / by);
        let mut values = Vec::with_capacity(width * height);
        let mut sums = vec![0_u32; width];
        let count = u32::try_from(by * by).ok()?;
        for band in self.values.chunks_exact(self.width * by) {
            sums.fill(0);
            for row in band.chunks_exact(self.width) {
                for (sum, square) in sums.iter_mut().zip(row.chunks_exact(by)) {
                    *sum += square.iter().copied().map(u32::from).sum::<u32>();
                }
            }
            values.extend(sums.iter().map(|sum| u8::try_from(sum / count).unwrap_or(u8::MAX)));
        }
        Self::new(width, height, values)
    }
}

#[cfg(test)]
mod tests {
    use super::Luminance;

    #[test]
    fn only_whole_pictures_are_pictures() {
        assert!(Luminance::new(2, 2, vec![0; 4]).is_some());
        for (width, height, count) in [(2, 2, 3), (0, 2, 0), (usize::MAX, 2, 4)] {
            assert!(Luminance::new(width, height, vec![0; count]).is_none());
        }
    }

    #[test]
    fn a_smaller_picture_is_one_of_means() {
        let picture = Luminance::new(5, 4, (0..20).collect()).unwrap();
        let shrunk = picture.shrunk(2).unwrap();
        assert_eq!(shrunk, Luminance::new(2, 2, vec![3, 5, 13, 15]).unwrap());
        assert_eq!(picture.shrunk(6), None);
    }
}
