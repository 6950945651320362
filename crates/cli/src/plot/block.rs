//! Pictures are stacks of blocks: a heading, a face, a legend, a table.

use super::canvas::Canvas;
use super::paper_box::PaperBox;
use super::paper_point::PaperPoint;
use super::svg::{About, Stretch, svg};

/// How the shapes of a picture look.
pub const PICTURE_STYLE: &str = include_str!("style.css");

/// Where it is said how the shapes of a picture look.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StyledBy {
    /// In the picture, which stands alone.
    Itself,
    /// On the page in which it stands.
    Page,
}

/// The width of every sheet, mm: the target plot of a dozen fits on A4 and on Letter within margins of 10 mm, and the
/// text can be read on a phone held upright.
pub const WIDTH_MM: f64 = 140.0;
/// The width between the margins, mm.
pub const INNER_MM: f64 = WIDTH_MM - 2.0 * MARGIN_MM;
const MARGIN_MM: f64 = 4.5;
const BETWEEN_MM: f64 = 2.5;

/// A part of a picture that knows how high it is, as wide as the sheet between its margins.
pub trait Block {
    /// Its height, mm.
    fn height_mm(&self) -> f64;

    /// Draws it below and to the right of `corner`.
    fn draw(&self, canvas: &mut Canvas, corner: PaperPoint);
}

/// The blocks on one sheet, from top to bottom.
pub fn stack(blocks: &[&dyn Block], styled: StyledBy, about: About) -> String {
    let heights: f64 = blocks.iter().map(|block| block.height_mm()).sum();
    let gaps = blocks.len().saturating_sub(1) as f64;
    let height_mm = heights + gaps * BETWEEN_MM + 2.0 * MARGIN_MM;
    let mut canvas = Canvas::new(WIDTH_MM, height_mm);
    let middle = PaperPoint::new(WIDTH_MM / 2.0, height_mm / 2.0);
    canvas.rectangle("paper", PaperBox::around(middle, WIDTH_MM, height_mm));
    let mut corner = PaperPoint::new(MARGIN_MM, height_mm - MARGIN_MM);
    for block in blocks {
        block.draw(&mut canvas, corner);
        corner = corner.moved(0.0, -block.height_mm() - BETWEEN_MM);
    }
    let style = match styled {
        StyledBy::Itself => PICTURE_STYLE,
        StyledBy::Page => "",
    };
    svg(&canvas, Stretch::NONE, style, about)
}
