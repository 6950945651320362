//! How many cells of one size fit on a sheet.

use crate::plot::PaperBox;

/// No sheet has more either way.
const MOST: u16 = 1000;

/// Columns and rows of cells of this width and height, at least one of each.
pub fn cells(area: PaperBox, [wide_mm, high_mm]: [f64; 2]) -> [usize; 2] {
    let fit = |room_mm: f64, size_mm: f64| {
        (1..=MOST).take_while(|&n| f64::from(n) * size_mm <= room_mm).count().max(1)
    };
    [fit(area.right_mm - area.left_mm, wide_mm), fit(area.top_mm - area.bottom_mm, high_mm)]
}
