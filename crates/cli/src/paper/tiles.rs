//! A face that is larger than the paper, in parts that are glued together.

use quarterturn_geometry::{Millimetres, Offset};

use crate::plot::PaperBox;

/// How far neighbouring parts overlap, mm.
pub const OVERLAP_MM: f64 = 10.0;

/// No face has more parts either way.
const MOST: usize = 100;

/// One part of the face.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tile {
    /// Its column, counted from the left and from 1.
    column: usize,
    /// Its row, counted from the top and from 1.
    row: usize,
    /// Where its middle lies, from the spot.
    pub middle: Offset,
}

/// The fewest parts of the size of `free` that cover a face of so much both ways, by rows.
pub fn tiles(free: PaperBox, across: Millimetres) -> Vec<Tile> {
    let step_x = free.right_mm - free.left_mm - OVERLAP_MM;
    let step_y = free.top_mm - free.bottom_mm - OVERLAP_MM;
    let many = |step_mm: f64| {
        (1..=MOST).find(|&n| n as f64 * step_mm + OVERLAP_MM >= across.mm()).unwrap_or(1)
    };
    let (columns, rows) = (many(step_x), many(step_y));
    let from_middle = |at: usize, of: usize| at as f64 - f64::midpoint(1.0, of as f64);
    let tile = |row: usize, column: usize| {
        let right_mm = from_middle(column, columns) * step_x;
        let up_mm = -from_middle(row, rows) * step_y;
        Tile { column, row, middle: Offset::new(right_mm, up_mm) }
    };
    (1..=rows).flat_map(|row| (1..=columns).map(move |column| tile(row, column))).collect()
}

impl Tile {
    /// "2-1": row and column.
    pub fn name(self) -> String {
        format!("{}-{}", self.row, self.column)
    }
}
