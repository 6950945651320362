//! A minimal writer of SVG in millimetres of paper; the one place in the program where y is turned over.

use super::escape::escape;
use super::paper_box::PaperBox;
use super::paper_ellipse::PaperEllipse;
use super::paper_point::PaperPoint;
use super::segment::Segment;

const STYLE: &str = include_str!("style.css");

/// A sheet that is drawn on.
///
/// One unit is one millimetre of paper. Numbers have two decimals, so the same marks are the same bytes.
/// How a mark looks is said by its class, see `style.css`.
pub struct Canvas {
    width_mm: f64,
    height_mm: f64,
    body: String,
}

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

impl Canvas {
    /// An empty sheet.
    pub fn new(width_mm: f64, height_mm: f64) -> Self {
        Self { width_mm, height_mm, body: String::new() }
    }

    /// A line.
    pub fn line(&mut self, class: &str, Segment { from, to }: Segment) {
        let ([x1, y1], [x2, y2]) = (self.place(from), self.place(to));
        self.push(&format!(
            "<line class=\"{class}\" x1=\"{x1}\" y1=\"{y1}\" x2=\"{x2}\" y2=\"{y2}\"/>"
        ));
    }

    /// A circle.
    pub fn circle(&mut self, class: &str, centre: PaperPoint, radius_mm: f64) {
        let ([x, y], r) = (self.place(centre), number(radius_mm));
        self.push(&format!("<circle class=\"{class}\" cx=\"{x}\" cy=\"{y}\" r=\"{r}\"/>"));
    }

    /// An ellipse.
    pub fn ellipse(&mut self, class: &str, ellipse: PaperEllipse) {
        let [x, y] = self.place(ellipse.centre);
        let (rx, ry) = (number(ellipse.semi_minor_mm), number(ellipse.semi_major_mm));
        // SVG turns clockwise as it is seen, and so does the clock.
        let turn = number(ellipse.orientation.degrees());
        self.push(&format!(
            "<ellipse class=\"{class}\" cx=\"{x}\" cy=\"{y}\" rx=\"{rx}\" ry=\"{ry}\" \
             transform=\"rotate({turn} {x} {y})\"/>"
        ));
    }

    /// A closed shape.
    pub fn polygon(&mut self, class: &str, corners: &[PaperPoint]) {
        let points: Vec<String> =
            corners.iter().map(|&corner| self.place(corner).join(",")).collect();
        self.push(&format!("<polygon class=\"{class}\" points=\"{}\"/>", points.join(" ")));
    }

    /// An upright rectangle.
    pub fn rectangle(&mut self, class: &str, area: PaperBox) {
        self.push(&self.rect(class, area));
    }

    /// A line of text of `size_mm` whose base line is at `at`.
    pub fn text(&mut self, class: &str, at: PaperPoint, anchor: Anchor, size_mm: f64, text: &str) {
        let ([x, y], size) = (self.place(at), number(size_mm));
        let (anchor, text) = (anchor.name(), escape(text));
        self.push(&format!(
            "<text class=\"{class}\" x=\"{x}\" y=\"{y}\" font-size=\"{size}\" text-anchor=\"{anchor}\">{text}</text>"
        ));
    }

    /// Marks that belong together, with a title that shows where a pointer rests on them.
    pub fn group(&mut self, title: &str, draw: impl FnOnce(&mut Self)) {
        self.push(&format!("<g><title>{}</title>", escape(title)));
        draw(self);
        self.push("</g>");
    }

    /// Marks that are cut off at the edges of `area`; `id` must be the only one on the page.
    pub fn clipped(&mut self, id: &str, area: PaperBox, draw: impl FnOnce(&mut Self)) {
        let window = self.rect("paper", area);
        self.push(&format!("<clipPath id=\"{id}\">{window}</clipPath>"));
        self.push(&format!("<g clip-path=\"url(#{id})\">"));
        draw(self);
        self.push("</g>");
    }

    /// The finished file.
    pub fn finish(self, about: About) -> String {
        let (w, h) = (number(self.width_mm), number(self.height_mm));
        let (id, title, finding) = (about.id, escape(about.title), escape(about.finding));
        let body = self.body;
        format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{w}mm\" height=\"{h}mm\" viewBox=\"0 0 {w} {h}\" \
             role=\"img\" aria-labelledby=\"{id}-title {id}-desc\">\n\
             <title id=\"{id}-title\">{title}</title>\n\
             <desc id=\"{id}-desc\">{finding}</desc>\n\
             <style>\n{STYLE}</style>\n{body}</svg>\n"
        )
    }

    fn rect(&self, class: &str, area: PaperBox) -> String {
        let [x, y] = self.place(PaperPoint::new(area.left_mm, area.top_mm));
        let (w, h) = (number(area.right_mm - area.left_mm), number(area.top_mm - area.bottom_mm));
        format!("<rect class=\"{class}\" x=\"{x}\" y=\"{y}\" width=\"{w}\" height=\"{h}\"/>")
    }

    fn push(&mut self, element: &str) {
        self.body.push_str(element);
        self.body.push('\n');
    }

    /// The coordinates in the file, where y runs down.
    fn place(&self, at: PaperPoint) -> [String; 2] {
        [number(at.x_mm), number(self.height_mm - at.y_mm)]
    }
}

impl Anchor {
    const fn name(self) -> &'static str {
        match self {
            Self::Start => "start",
            Self::Middle => "middle",
            Self::End => "end",
        }
    }
}

/// Two decimals, a hundredth of a millimetre, and never a zero with a sign.
fn number(value: f64) -> String {
    format!("{:.2}", (value * 100.0).round() / 100.0 + 0.0)
}

#[cfg(test)]
mod tests {
    use quarterturn_geometry::Angle;

    use super::*;

    const ABOUT: About = About { id: "t", title: "A & B", finding: "nothing" };

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
        let svg = canvas.finish(ABOUT);
        assert!(svg.contains("cx=\"10.00\" cy=\"1.00\" r=\"1.00\""), "{svg}");
        assert!(svg.contains("rotate(30.00 10.00 49.00)"), "{svg}");
    }

    #[test]
    fn a_unit_is_a_millimetre_and_the_picture_has_a_name() {
        let svg = Canvas::new(150.0, 99.5).finish(ABOUT);
        assert!(svg.contains("width=\"150.00mm\" height=\"99.50mm\" viewBox=\"0 0 150.00 99.50\""));
        assert!(svg.contains(
            "role=\"img\" aria-labelledby=\"t-title t-desc\">\n<title id=\"t-title\">A &amp; B"
        ));
    }

    #[test]
    fn numbers_have_two_decimals_and_zero_has_no_sign() {
        assert_eq!(number(-0.001), "0.00");
        assert_eq!(number(-0.0), "0.00");
        assert_eq!(number(2.0 / 3.0), "0.67");
        assert_eq!(number(-2.0 / 3.0), "-0.67");
    }
}
