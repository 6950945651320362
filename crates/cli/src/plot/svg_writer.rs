//! The shapes of a picture as SVG; the one place in the program where y is turned over.
//!
//! What follows one another and looks alike is written together: lines and closed shapes as one path, other shapes in a
//! group that says once how they look.

use super::escape::escape;
use super::paper_box::PaperBox;
use super::paper_ellipse::PaperEllipse;
use super::paper_point::PaperPoint;
use super::segment::Segment;
use super::shape::{Anchor, PLAIN, Shape};
use super::svg_number::{hundredths, number, told};
use super::svg_path::SvgPath;

/// The size of a text that says none of its own, mm.
pub const USUAL_MM: f64 = 3.0;

/// Writes the shapes of a sheet of this height.
pub struct Writer {
    /// The height of the sheet, mm.
    pub height_mm: f64,
}

impl Writer {
    /// Writes shapes, the lowest first.
    pub fn shapes(&self, file: &mut String, shapes: &[Shape]) {
        for run in shapes.chunk_by(are_alike) {
            *file += &self.run(run);
            file.push('\n');
        }
    }

    /// Shapes that look alike.
    fn run(&self, run: &[Shape]) -> String {
        match run {
            [Shape::Line { .. } | Shape::Polygon { .. }, ..] => self.path(run),
            [one] => self.shape(one, &look(one)),
            _ => {
                let look = run.first().map(look).unwrap_or_default();
                let inner: String = run.iter().map(|one| self.shape(one, "") + "\n").collect();
                format!("<g{look}>\n{inner}</g>")
            }
        }
    }

    fn path(&self, run: &[Shape]) -> String {
        let mut path = SvgPath::default();
        for shape in run {
            match shape {
                Shape::Line { along: Segment { from, to }, .. } => {
                    path.through(&[self.place(*from), self.place(*to)]);
                }
                Shape::Polygon { corners, .. } => {
                    let corners: Vec<_> = corners.iter().map(|&at| self.place(at)).collect();
                    path.about(&corners);
                }
                _ => {}
            }
        }
        let look = run.first().map(look).unwrap_or_default();
        format!("<path{look} d=\"{}\"/>", path.data())
    }

    /// A shape with what is said of its look.
    fn shape(&self, shape: &Shape, look: &str) -> String {
        match shape {
            Shape::Line { .. } | Shape::Polygon { .. } => self.path(std::slice::from_ref(shape)),
            Shape::Circle { centre, radius_mm, .. } => {
                let [x, y] = self.said(*centre);
                format!("<circle{look} cx=\"{x}\" cy=\"{y}\" r=\"{}\"/>", number(*radius_mm))
            }
            Shape::Ellipse { ellipse, .. } => self.ellipse(look, *ellipse),
            Shape::Rectangle { area, .. } => format!("<rect{look} {}/>", self.area(*area)),
            Shape::Photo { area, href } => {
                let area = self.area(*area);
                format!("<image {area} preserveAspectRatio=\"none\" href=\"{href}\"/>")
            }
            Shape::Text { at, text, .. } => {
                let [x, y] = self.said(*at);
                format!("<text{look} x=\"{x}\" y=\"{y}\">{}</text>", escape(text))
            }
            Shape::Group { title, shapes } => {
                self.within(&format!("<g><title>{}</title>", escape(title)), shapes)
            }
            Shape::Clipped { id, area, shapes } => {
                let window = self.area(*area);
                let opening = format!(
                    "<clipPath id=\"{id}\"><rect {window}/></clipPath>\n<g clip-path=\"url(#{id})\">"
                );
                self.within(&opening, shapes)
            }
        }
    }

    fn within(&self, opening: &str, shapes: &[Shape]) -> String {
        let mut group = format!("{opening}\n");
        self.shapes(&mut group, shapes);
        group + "</g>"
    }

    fn ellipse(&self, look: &str, ellipse: PaperEllipse) -> String {
        let [x, y] = self.said(ellipse.centre);
        let (rx, ry) = (number(ellipse.semi_minor_mm), number(ellipse.semi_major_mm));
        // SVG turns clockwise as it is seen, and so does the clock.
        let turn = number(ellipse.orientation.degrees());
        format!(
            "<ellipse{look} cx=\"{x}\" cy=\"{y}\" rx=\"{rx}\" ry=\"{ry}\" \
             transform=\"rotate({turn} {x} {y})\"/>"
        )
    }

    fn area(&self, area: PaperBox) -> String {
        let [x, y] = self.said(PaperPoint::new(area.left_mm, area.top_mm));
        let (w, h) = (number(area.right_mm - area.left_mm), number(area.top_mm - area.bottom_mm));
        format!("x=\"{x}\" y=\"{y}\" width=\"{w}\" height=\"{h}\"")
    }

    fn said(&self, at: PaperPoint) -> [String; 2] {
        self.place(at).map(told)
    }

    /// The coordinates in the file, where y runs down.
    fn place(&self, at: PaperPoint) -> [i64; 2] {
        [hundredths(at.x_mm), hundredths(self.height_mm - at.y_mm)]
    }
}

/// Whether two shapes differ in nothing but where they are.
fn are_alike(one: &Shape, other: &Shape) -> bool {
    let alone = |shape: &Shape| {
        matches!(shape, Shape::Photo { .. } | Shape::Group { .. } | Shape::Clipped { .. })
    };
    std::mem::discriminant(one) == std::mem::discriminant(other)
        && !alone(one)
        && look(one) == look(other)
}

/// How a shape looks, as attributes.
fn look(shape: &Shape) -> String {
    match shape {
        Shape::Line { class, .. }
        | Shape::Circle { class, .. }
        | Shape::Ellipse { class, .. }
        | Shape::Polygon { class, .. }
        | Shape::Rectangle { class, .. } => classed(class),
        Shape::Text { class, anchor, size_mm, .. } => {
            let usual = (size_mm - USUAL_MM).abs() < 0.005;
            let size =
                if usual { String::new() } else { format!(" font-size=\"{}\"", number(*size_mm)) };
            classed(class) + &size + anchor.said()
        }
        Shape::Photo { .. } | Shape::Group { .. } | Shape::Clipped { .. } => String::new(),
    }
}

fn classed(class: &str) -> String {
    if class == PLAIN { String::new() } else { format!(" class=\"{class}\"") }
}

impl Anchor {
    /// As an attribute; to begin at its place is what every text does.
    const fn said(self) -> &'static str {
        match self {
            Self::Start => "",
            Self::Middle => " text-anchor=\"middle\"",
            Self::End => " text-anchor=\"end\"",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn written(shapes: &[Shape]) -> String {
        let mut file = String::new();
        Writer { height_mm: 50.0 }.shapes(&mut file, shapes);
        file
    }

    fn line(class: &str, y_mm: f64) -> Shape {
        let [from, to] = [0.0, 10.0].map(|x_mm| PaperPoint::new(x_mm, y_mm));
        Shape::Line { class: class.to_owned(), along: Segment { from, to } }
    }

    fn dot(class: &str, x_mm: f64) -> Shape {
        let centre = PaperPoint::new(x_mm, 49.0);
        Shape::Circle { class: class.to_owned(), centre, radius_mm: 0.5 }
    }

    #[test]
    fn what_looks_alike_is_written_together_and_in_its_order() {
        let shapes =
            [line("a", 50.0), line("a", 40.0), line("b", 50.0), dot("a", 1.0), dot("a", 2.0)];
        assert_eq!(
            written(&shapes),
            "<path class=\"a\" d=\"M0 0h10M0 10h10\"/>\n<path class=\"b\" d=\"M0 0h10\"/>\n\
             <g class=\"a\">\n<circle cx=\"1\" cy=\"1\" r=\".5\"/>\n<circle cx=\"2\" cy=\"1\" r=\".5\"/>\n</g>\n"
        );
    }

    #[test]
    fn texts_of_one_look_say_it_once() {
        let text = |x_mm: f64, size_mm: f64| Shape::Text {
            class: "quiet".to_owned(),
            at: PaperPoint::new(x_mm, 50.0),
            anchor: Anchor::End,
            size_mm,
            text: "a<b".to_owned(),
        };
        assert_eq!(
            written(&[text(1.0, 2.6), text(2.0, 2.6), text(3.0, USUAL_MM)]),
            "<g class=\"quiet\" font-size=\"2.6\" text-anchor=\"end\">\n\
             <text x=\"1\" y=\"0\">a&lt;b</text>\n<text x=\"2\" y=\"0\">a&lt;b</text>\n</g>\n\
             <text class=\"quiet\" text-anchor=\"end\" x=\"3\" y=\"0\">a&lt;b</text>\n"
        );
    }
}
