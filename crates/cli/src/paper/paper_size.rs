//! The sizes of household paper.

/// A size of paper, upright.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PaperSize {
    /// 210 × 297 mm.
    A4,
    /// 8½ × 11 in.
    Letter,
}

impl PaperSize {
    /// Its width and height, mm.
    ///
    /// # Source
    /// ISO 216:2007, table 1 (A4); ANSI/ASME Y14.1, size A, which is Letter: 8.5 by 11 in.
    pub const fn width_and_height_mm(self) -> [f64; 2] {
        match self {
            Self::A4 => [210.0, 297.0],
            Self::Letter => [215.9, 279.4],
        }
    }
}
