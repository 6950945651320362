//! A sheet that is drawn on, in millimetres of paper.

use super::base64::base64;
use super::paper_box::PaperBox;
use super::paper_ellipse::PaperEllipse;
use super::paper_point::PaperPoint;
use super::segment::Segment;
use super::shape::{Anchor, Shape};

/// A sheet that is drawn on: one unit is one millimetre of paper, y runs up.
#[derive(Clone, Debug)]
pub struct Canvas {
    /// Its width, mm.
    pub width_mm: f64,
    /// Its height, mm.
    pub height_mm: f64,
    /// What is drawn, the lowest first.
    pub shapes: Vec<Shape>,
}

impl Canvas {
    /// An empty sheet.
    pub fn new(width_mm: f64, height_mm: f64) -> Self {
        Self { width_mm, height_mm, shapes: Vec::new() }
    }

    /// A line.
    pub fn line(&mut self, class: &str, along: Segment) {
        self.shapes.push(Shape::Line { class: class.to_owned(), along });
    }

    /// A circle.
    pub fn circle(&mut self, class: &str, centre: PaperPoint, radius_mm: f64) {
        self.shapes.push(Shape::Circle { class: class.to_owned(), centre, radius_mm });
    }

    /// An ellipse.
    pub fn ellipse(&mut self, class: &str, ellipse: PaperEllipse) {
        self.shapes.push(Shape::Ellipse { class: class.to_owned(), ellipse });
    }

    /// A closed shape.
    pub fn polygon(&mut self, class: &str, corners: &[PaperPoint]) {
        self.shapes.push(Shape::Polygon { class: class.to_owned(), corners: corners.to_vec() });
    }

    /// An upright rectangle.
    pub fn rectangle(&mut self, class: &str, area: PaperBox) {
        self.shapes.push(Shape::Rectangle { class: class.to_owned(), area });
    }

    /// A photo from the bytes of its JPEG.
    pub fn photo(&mut self, area: PaperBox, jpeg: &[u8]) {
        let href = format!("data:image/jpeg;base64,{}", base64(jpeg));
        self.shapes.push(Shape::Photo { area, href });
    }

    /// A line of text of `size_mm` whose base line is at `at`.
    pub fn text(&mut self, class: &str, at: PaperPoint, anchor: Anchor, size_mm: f64, text: &str) {
        let (class, text) = (class.to_owned(), text.to_owned());
        self.shapes.push(Shape::Text { class, at, anchor, size_mm, text });
    }

    /// Shapes that belong together, with a title that shows where a pointer rests on them.
    pub fn group(&mut self, title: &str, draw: impl FnOnce(&mut Self)) {
        let shapes = self.drawn(draw);
        self.shapes.push(Shape::Group { title: title.to_owned(), shapes });
    }

    /// Shapes that are cut off at the edges of `area`; `id` must be the only one on the page.
    pub fn clipped(&mut self, id: &str, area: PaperBox, draw: impl FnOnce(&mut Self)) {
        let shapes = self.drawn(draw);
        self.shapes.push(Shape::Clipped { id: id.to_owned(), area, shapes });
    }

    /// What `draw` draws on an empty sheet of the same size.
    fn drawn(&self, draw: impl FnOnce(&mut Self)) -> Vec<Shape> {
        let mut inner = Self::new(self.width_mm, self.height_mm);
        draw(&mut inner);
        inner.shapes
    }
}
