//! The photo with the grid and the hits drawn over it: a person sees at once whether the marks were right.

use quarterturn_geometry::{Homography, Millimetres, Pixel, Point};

use super::canvas::Canvas;
use super::paper_box::PaperBox;
use super::paper_point::PaperPoint;
use super::segment::Segment;
use super::shape::Anchor;
use super::svg::{About, Stretch, svg};

/// How wide the drawing is.
const WIDTH_MM: f64 = 240.0;
const TEXT_MM: f64 = 3.6;
const HIT_MM: f64 = 1.6;
/// Half the arm of the cross that stands in a hit or a mark.
const CROSS_MM: f64 = 3.2;

/// Light over dark, so that it is seen on paper and on straw.
const STYLE: &str = "\
line { stroke: #00b4d8; stroke-width: 0.18; stroke-opacity: 0.75 }
.bold { stroke-width: 0.4; stroke-opacity: 1 }
.mark { stroke: #ffd60a; stroke-width: 0.5; stroke-opacity: 1 }
.shaft { stroke: #9ef01a; stroke-width: 0.45; stroke-opacity: 1 }
.hit { stroke: #ff006e; stroke-width: 0.45; stroke-opacity: 1; fill: none }
text { font-family: Helvetica, Arial, \"Liberation Sans\", sans-serif; font-weight: bold; fill: #ff006e; \
stroke: #ffffff; stroke-width: 0.7; paint-order: stroke }
.quiet { fill: #0077b6 }
";

/// What is drawn over a photo.
pub struct PhotoOverlay<'a> {
    /// What it is called.
    pub title: &'a str,
    /// What is to be said of it.
    pub finding: &'a str,
    /// The photo without its notes, perhaps smaller.
    pub jpeg: &'a [u8],
    /// Pixels across and up and down of the whole photo, in which everything else is counted.
    pub size: [u32; 2],
    /// The view of the face.
    pub view: &'a Homography,
    /// How far out on the face the grid is drawn.
    pub reach: Millimetres,
    /// The lines of the grid to one side: how far out, and the number of a bold one.
    pub lines: &'a [(Millimetres, Option<String>)],
    /// Where the marks are.
    pub marks: &'a [Pixel],
    /// Where each arrow hit.
    pub hits: &'a [(String, Pixel)],
    /// The hole and the tail of each arrow whose tail was read.
    pub tails: &'a [[Pixel; 2]],
}

impl PhotoOverlay<'_> {
    /// The drawing as an SVG file.
    pub fn svg(&self) -> String {
        let [width, height] = self.size.map(f64::from);
        let mut canvas = Canvas::new(WIDTH_MM, WIDTH_MM * height / width);
        let (wide_mm, high_mm) = (canvas.width_mm, canvas.height_mm);
        let whole = PaperBox { left_mm: 0.0, bottom_mm: 0.0, right_mm: wide_mm, top_mm: high_mm };
        canvas.photo(whole, self.jpeg);
        self.grid(&mut canvas);
        for mark in self.marks {
            self.cross(&mut canvas, "mark", *mark);
        }
        for [hole, tail] in self.tails {
            let [from, to] = [hole, tail].map(|end| self.place(*end));
            canvas.line("shaft", Segment { from, to });
            self.cross(&mut canvas, "shaft", *tail);
        }
        for (name, pixel) in self.hits {
            let at = self.place(*pixel);
            canvas.circle("hit", at, HIT_MM);
            self.cross(&mut canvas, "hit", *pixel);
            canvas.text("name", at.moved(2.2, 2.2), Anchor::Start, TEXT_MM, name);
        }
        let about = About { id: "photo", title: self.title, finding: self.finding };
        svg(&canvas, Stretch::NONE, STYLE, about)
    }

    fn grid(&self, canvas: &mut Canvas) {
        let reach_mm = self.reach.mm();
        for (out, number) in self.lines {
            let class = if number.is_some() { "bold" } else { "fine" };
            let sides: &[f64] = if *out == Millimetres::ZERO { &[0.0] } else { &[-1.0, 1.0] };
            for at_mm in sides.iter().map(|side| side * out.mm()) {
                let ends = [-reach_mm, reach_mm];
                self.line(canvas, class, ends.map(|y_mm| Point::new(at_mm, y_mm)));
                self.line(canvas, class, ends.map(|x_mm| Point::new(x_mm, at_mm)));
            }
        }
        if let Some(top) = self.view.pixel_of(Point::new(0.0, reach_mm)) {
            canvas.text("quiet", self.place(top), Anchor::Middle, TEXT_MM, "12 o\u{2019}clock");
        }
    }

    fn line(&self, canvas: &mut Canvas, class: &str, ends: [Point; 2]) {
        let [from, to] = ends.map(|end| self.view.pixel_of(end).map(|pixel| self.place(pixel)));
        if let (Some(from), Some(to)) = (from, to) {
            canvas.line(class, Segment { from, to });
        }
    }

    fn cross(&self, canvas: &mut Canvas, class: &str, pixel: Pixel) {
        let at = self.place(pixel);
        for (right, up) in [(CROSS_MM, 0.0), (0.0, CROSS_MM)] {
            canvas.line(class, Segment { from: at.moved(-right, -up), to: at.moved(right, up) });
        }
    }

    /// Where a pixel is on the drawing: its middle, where pictures count from the middle of the first.
    fn place(&self, pixel: Pixel) -> PaperPoint {
        let [width, height] = self.size.map(f64::from);
        let mm = WIDTH_MM / width;
        PaperPoint::new((pixel.x_px + 0.5) * mm, (height - pixel.y_px - 0.5) * mm)
    }
}
