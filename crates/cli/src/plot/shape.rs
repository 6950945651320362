//! What is drawn on a sheet, before it is written in any format.

use super::paper_box::PaperBox;
use super::paper_ellipse::PaperEllipse;
use super::paper_point::PaperPoint;
use super::segment::Segment;

/// One thing that is drawn. How it looks is said by its class.
#[derive(Clone, Debug, PartialEq)]
pub enum Shape {
    /// A line.
    Line { class: String, along: Segment },
    /// A circle.
    Circle { class: String, centre: PaperPoint, radius_mm: f64 },
    /// An ellipse.
    Ellipse { class: String, ellipse: PaperEllipse },
    /// A closed shape.
    Polygon { class: String, corners: Vec<PaperPoint> },
    /// An upright rectangle.
    Rectangle { class: String, area: PaperBox },
    /// A line of text, its base line at `at`.
    Text { class: String, at: PaperPoint, anchor: Anchor, size_mm: f64, text: String },
    /// A photo, stretched over `area`; `href` holds all of it.
    Photo { area: PaperBox, href: String },
    /// Shapes that belong together and what they are called.
    Group { title: String, shapes: Vec<Shape> },
    /// Shapes that are cut off at the edges of `area`; `id` is the only one on the page.
    Clipped { id: String, area: PaperBox, shapes: Vec<Shape> },
}

/// Which end of a text stands at its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Anchor {
    /// It begins there.
    Start,
    /// It is centred there.
    Middle,
    /// It ends there.
    End,
}

/// The class of text that looks like any text.
pub const PLAIN: &str = "";
