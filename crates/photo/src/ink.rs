//! Which pixels are ink: darker than what is round about them.

use crate::Luminance;

/// Ink is darker than the mean round about by at least this share of it: paper in a shadow is not ink.
const DARKER: u32 = 12;
const OF: u32 = 100;
/// And by so much, because dark noise is not ink either.
const LEAST: u32 = 6;

/// For each pixel whether it is ink, where `window` is how far the look round about reaches to each side.
///
/// # Source
/// D. Bradley, G. Roth, 2007, Adaptive thresholding using the integral image, Journal of Graphics Tools 12, 2 (from
/// memory).
pub(crate) fn ink(picture: &Luminance, window: usize) -> Vec<bool> {
    let (width, height) = (picture.width(), picture.height());
    let sums = Sums::of(picture);
    let mut ink = Vec::with_capacity(width * height);
    for (y, row) in picture.rows().enumerate() {
        let (top, bottom) = (y.saturating_sub(window), (y + window + 1).min(height));
        for (x, &value) in row.iter().enumerate() {
            let (left, right) = (x.saturating_sub(window), (x + window + 1).min(width));
            // No window has so many pixels that its sum would not fit.
            let count = u32::try_from((right - left) * (bottom - top)).unwrap_or(u32::MAX);
            let mean = sums.within(left..right, top..bottom) / count;
            ink.push(u32::from(value) + (mean * DARKER / OF).max(LEAST) < mean);
        }
    }
    ink
}

/// The same of a small part of a picture, with a `window` in which there is ink and paper everywhere: ink is darker than
/// midway between the darkest and the lightest there.
pub(crate) fn ink_midway(part: &Luminance, window: usize) -> Vec<bool> {
    let (width, height) = (part.width(), part.height());
    let around = |at: usize, most: usize| at.saturating_sub(window)..(at + window + 1).min(most);
    let both =
        |(low, high): (u8, u8), (lower, higher): (u8, u8)| (low.min(lower), high.max(higher));
    let none = (u8::MAX, u8::MIN);
    let in_row = |x: usize, y: usize| {
        around(x, width).map(|x| (part.at(x, y), part.at(x, y))).fold(none, both)
    };
    let rows: Vec<_> = (0..width * height).map(|at| in_row(at % width, at / width)).collect();
    let is_ink = |at: usize| {
        let (x, y) = (at % width, at / width);
        let (low, high) = around(y, height).map(|y| rows[y * width + x]).fold(none, both);
        u16::from(part.at(x, y)) * 2 < u16::from(low) + u16::from(high)
    };
    (0..width * height).map(is_ink).collect()
}

/// Sums of all that lies above and to the left. They wrap round; differences of them over a window do not.
struct Sums {
    across: usize,
    sums: Vec<u32>,
}

impl Sums {
    fn of(picture: &Luminance) -> Self {
        let across = picture.width() + 1;
        let mut sums = vec![0_u32; across];
        sums.reserve(across * picture.height());
        for row in picture.rows() {
            let above = sums.len() - across;
            sums.push(0);
            let mut so_far = 0_u32;
            for (x, &value) in row.iter().enumerate() {
                so_far += u32::from(value);
                sums.push(so_far.wrapping_add(sums[above + x + 1]));
            }
        }
        Self { across, sums }
    }

    fn within(&self, x: std::ops::Range<usize>, y: std::ops::Range<usize>) -> u32 {
        let at = |x: usize, y: usize| self.sums[y * self.across + x];
        let rest = at(x.start, y.end).wrapping_add(at(x.end, y.start));
        at(x.end, y.end).wrapping_add(at(x.start, y.start)).wrapping_sub(rest)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_dark_line_is_ink_in_light_and_in_shadow() {
        let (width, height) = (60, 20);
        let value = |at: usize| match (at % width, at % width < 30) {
            (10 | 45, true) => 60,
            (10 | 45, false) => 20,
            (_, true) => 220,
            (_, false) => 80,
        };
        let picture = Luminance::new(width, height, (0..width * height).map(value).collect());
        let ink = ink(&picture.unwrap(), 6);
        let middle: Vec<_> = (0..width).filter(|x| ink[10 * width + x]).collect();
        assert!(middle.contains(&10) && middle.contains(&45), "{middle:?}");
        assert!(middle.iter().all(|x| matches!(x, 10 | 45 | 30..37)), "{middle:?}");
    }
}
