//! A minimal writer of SVG in millimetres of paper; the one place in the program where y is turned over.

use super::canvas::Canvas;
use super::escape::escape;
use super::paper_box::PaperBox;
use super::paper_ellipse::PaperEllipse;
use super::paper_point::PaperPoint;
use super::segment::Segment;
use super::shape::{Anchor, PLAIN, Shape};

/// What a picture is called and what it says, for people who hear it.
#[derive(Clone, Copy, Debug)]
pub struct About<'a> {
    /// A word that no other picture on a page has.
    pub id: &'a str,
    /// Its title.
    pub title: &'a str,
    /// What it shows, in a sentence or two.
    pub finding: &'a str,
}

/// How large the drawing comes out: paper millimetres for each of the canvas, across and up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stretch {
    /// Across.
    pub x: f64,
    /// Up.
    pub y: f64,
}

impl Stretch {
    /// As drawn.
    pub const NONE: Self = Self { x: 1.0, y: 1.0 };
}

/// The size of a text that says none of its own, mm.
const USUAL_MM: f64 = 3.0;

/// The file.
///
/// Numbers have at most two decimals, a hundredth of a millimetre, so the same drawing is the same bytes.
/// How a shape looks is said by its class in `style`; where that is empty, by the page that it stands in.
pub fn svg(canvas: &Canvas, stretch: Stretch, style: &str, about: About) -> String {
    let (w, h) = (number(canvas.width_mm), number(canvas.height_mm));
    let wide = number(canvas.width_mm * stretch.x);
    let high = number(canvas.height_mm * stretch.y);
    let (id, title, finding) = (about.id, escape(about.title), escape(about.finding));
    let aspect = if stretch == Stretch::NONE { "" } else { " preserveAspectRatio=\"none\"" };
    let mut file = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{wide}mm\" height=\"{high}mm\" \
         viewBox=\"0 0 {w} {h}\"{aspect} font-size=\"{USUAL_MM}\" role=\"img\" aria-labelledby=\"{id}-title {id}-desc\">\n\
         <title id=\"{id}-title\">{title}</title>\n\
         <desc id=\"{id}-desc\">{finding}</desc>\n"
    );
    if !style.is_empty() {
        file = file + "<style>\n" + style + "</style>\n";
    }
    let writer = Writer { height_mm: canvas.height_mm };
    for shape in &canvas.shapes {
        writer.shape(&mut file, shape);
    }
    file.push_str("</svg>\n");
    file
}

/// Writes the shapes of a sheet of this height.
struct Writer {
    height_mm: f64,
}

impl Writer {
    fn shape(&self, file: &mut String, shape: &Shape) {
        let element = match shape {
            Shape::Line { class, along } => self.line(class, *along),
            Shape::Circle { class, centre, radius_mm } => self.circle(class, *centre, *radius_mm),
            Shape::Ellipse { class, ellipse } => self.ellipse(class, *ellipse),
            Shape::Polygon { class, corners } => self.polygon(class, corners),
            Shape::Rectangle { class, area } => self.rectangle(class, *area),
            Shape::Photo { area, href } => self.photo(*area, href),
            Shape::Text { class, at, anchor, size_mm, text } => {
                self.text(class, *at, *anchor, *size_mm, text)
            }
            Shape::Group { title, shapes } => {
                self.within(&format!("<g><title>{}</title>", escape(title)), shapes)
            }
            Shape::Clipped { id, area, shapes } => {
                let window = self.rectangle("paper", *area);
                let opening = format!(
                    "<clipPath id=\"{id}\">{window}</clipPath>\n<g clip-path=\"url(#{id})\">"
                );
                self.within(&opening, shapes)
            }
        };
        file.push_str(&element);
        file.push('\n');
    }

    fn within(&self, opening: &str, shapes: &[Shape]) -> String {
        let mut group = format!("{opening}\n");
        for shape in shapes {
            self.shape(&mut group, shape);
        }
        group + "</g>"
    }

    fn line(&self, class: &str, Segment { from, to }: Segment) -> String {
        let ([x1, y1], [x2, y2]) = (self.place(from), self.place(to));
        format!("<line class=\"{class}\" x1=\"{x1}\" y1=\"{y1}\" x2=\"{x2}\" y2=\"{y2}\"/>")
    }

    fn circle(&self, class: &str, centre: PaperPoint, radius_mm: f64) -> String {
        let ([x, y], r) = (self.place(centre), number(radius_mm));
        format!("<circle class=\"{class}\" cx=\"{x}\" cy=\"{y}\" r=\"{r}\"/>")
    }

    fn ellipse(&self, class: &str, ellipse: PaperEllipse) -> String {
        let [x, y] = self.place(ellipse.centre);
        let (rx, ry) = (number(ellipse.semi_minor_mm), number(ellipse.semi_major_mm));
        // SVG turns clockwise as it is seen, and so does the clock.
        let turn = number(ellipse.orientation.degrees());
        format!(
            "<ellipse class=\"{class}\" cx=\"{x}\" cy=\"{y}\" rx=\"{rx}\" ry=\"{ry}\" \
             transform=\"rotate({turn} {x} {y})\"/>"
        )
    }

    fn polygon(&self, class: &str, corners: &[PaperPoint]) -> String {
        let points: Vec<String> =
            corners.iter().map(|&corner| self.place(corner).join(",")).collect();
        format!("<polygon class=\"{class}\" points=\"{}\"/>", points.join(" "))
    }

    fn rectangle(&self, class: &str, area: PaperBox) -> String {
        format!("<rect class=\"{class}\" {}/>", self.area(area))
    }

    fn photo(&self, area: PaperBox, href: &str) -> String {
        format!("<image {} preserveAspectRatio=\"none\" href=\"{href}\"/>", self.area(area))
    }

    fn area(&self, area: PaperBox) -> String {
        let [x, y] = self.place(PaperPoint::new(area.left_mm, area.top_mm));
        let (w, h) = (number(area.right_mm - area.left_mm), number(area.top_mm - area.bottom_mm));
        format!("x=\"{x}\" y=\"{y}\" width=\"{w}\" height=\"{h}\"")
    }

    fn text(
        &self,
        class: &str,
        at: PaperPoint,
        anchor: Anchor,
        size_mm: f64,
        text: &str,
    ) -> String {
        let [x, y] = self.place(at);
        let size = if (size_mm - USUAL_MM).abs() < 0.005 {
            String::new()
        } else {
            format!(" font-size=\"{}\"", number(size_mm))
        };
        let (anchor, text) = (anchor.said(), escape(text));
        let class = if class == PLAIN { String::new() } else { format!(" class=\"{class}\"") };
        format!("<text{class} x=\"{x}\" y=\"{y}\"{size}{anchor}>{text}</text>")
    }

    /// The coordinates in the file, where y runs down.
    fn place(&self, at: PaperPoint) -> [String; 2] {
        [number(at.x_mm), number(self.height_mm - at.y_mm)]
    }
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

/// At most two decimals, and never a zero with a sign.
fn number(value: f64) -> String {
    let rounded = (value * 100.0).round() / 100.0 + 0.0;
    rounded.to_string()
}

#[cfg(test)]
mod tests {
    use quarterturn_geometry::Angle;

    use super::*;

    const ABOUT: About = About { id: "t", title: "A & B", finding: "nothing" };

    fn plain(canvas: &Canvas) -> String {
        svg(canvas, Stretch::NONE, "", ABOUT)
    }

    #[test]
    fn up_is_up_and_turns_stay_clockwise() {
        let mut canvas = Canvas::new(100.0, 50.0);
        canvas.circle("dot", PaperPoint::new(10.0, 49.0), 1.0);
        canvas.ellipse(
            "region",
            PaperEllipse {
                centre: PaperPoint::new(10.0, 1.0),
                semi_major_mm: 2.0,
                semi_minor_mm: 1.0,
                orientation: Angle::from_degrees(30.0),
            },
        );
        let svg = plain(&canvas);
        assert!(svg.contains("cx=\"10\" cy=\"1\" r=\"1\""), "{svg}");
        assert!(svg.contains("rotate(30 10 49)"), "{svg}");
    }

    #[test]
    fn a_unit_is_a_millimetre_and_the_picture_has_a_name() {
        let svg = plain(&Canvas::new(150.0, 99.5));
        assert!(
            svg.contains("width=\"150mm\" height=\"99.5mm\" viewBox=\"0 0 150 99.5\" font-size")
        );
        assert!(svg.contains(
            "role=\"img\" aria-labelledby=\"t-title t-desc\">\n<title id=\"t-title\">A &amp; B"
        ));
    }

    #[test]
    fn a_stretched_sheet_comes_out_larger_by_that() {
        let svg = svg(&Canvas::new(200.0, 100.0), Stretch { x: 1.05, y: 1.0 }, "", ABOUT);
        assert!(
            svg.contains(
                "width=\"210mm\" height=\"100mm\" viewBox=\"0 0 200 100\" \
            preserveAspectRatio=\"none\""
            ),
            "{svg}"
        );
    }

    #[test]
    fn numbers_have_two_decimals_at_most_and_zero_has_no_sign() {
        assert_eq!(number(-0.001), "0");
        assert_eq!(number(-0.0), "0");
        assert_eq!(number(2.0 / 3.0), "0.67");
        assert_eq!(number(-2.0 / 3.0), "-0.67");
    }
}
