//! A minimal writer of SVG in millimetres of paper; the one place in the program where y is turned over.

use quarterturn_geometry::Angle;

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
        let (x1, y1, x2, y2) = (self.x(from), self.y(from), self.x(to), self.y(to));
        self.push(&format!(
            "<line class=\"{class}\" x1=\"{x1}\" y1=\"{y1}\" x2=\"{x2}\" y2=\"{y2}\"/>"
        ));
    }

    /// A circle.
    pub fn circle(&mut self, class: &str, centre: PaperPoint, radius_mm: f64) {
        let (x, y, r) = (self.x(centre), self.y(centre), number(radius_mm));
        self.push(&format!("<circle class=\"{class}\" cx=\"{x}\" cy=\"{y}\" r=\"{r}\"/>"));
    }

    /// An ellipse.
    pub fn ellipse(&mut self, class: &str, ellipse: PaperEllipse) {
        let (x, y) = (self.x(ellipse.centre), self.y(ellipse.centre));
        let (rx, ry) = (number(ellipse.semi_major_mm), number(ellipse.semi_minor_mm));
        // What turns counter-clockwise with y up turns clockwise with y down.
        let turn = number((-ellipse.orientation).degrees());
        self.push(&format!(
            "<ellipse class=\"{class}\" cx=\"{x}\" cy=\"{y}\" rx=\"{rx}\" ry=\"{ry}\" \
             transform=\"rotate({turn} {x} {y})\"/>"
        ));
    }

    /// A closed shape.
    pub fn polygon(&mut self, class: &str, corners: &[PaperPoint]) {
        let points: Vec<String> =
            corners.iter().map(|&p| format!("{},{}", self.x(p), self.y(p))).collect();
        self.push(&format!("<polygon class=\"{class}\" points=\"{}\"/>", points.join(" ")));
    }

    /// An upright rectangle.
    pub fn rectangle(&mut self, class: &str, area: PaperBox) {
        self.push(&self.rect(class, area));
    }

    /// A line of text of `size_mm` whose base line is at `at`.
    pub fn text(&mut self, class: &str, at: PaperPoint, anchor: Anchor, size_mm: f64, text: &str) {
        let (x, y, size) = (self.x(at), self.y(at), number(size_mm));
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
        let window = self.rect("window", area);
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
        let corner = PaperPoint::new(area.left_mm, area.top_mm);
        let (x, y) = (self.x(corner), self.y(corner));
        let (w, h) = (number(area.right_mm - area.left_mm), number(area.top_mm - area.bottom_mm));
        format!("<rect class=\"{class}\" x=\"{x}\" y=\"{y}\" width=\"{w}\" height=\"{h}\"/>")
    }

    fn push(&mut self, element: &str) {
        self.body.push_str(element);
        self.body.push('\n');
    }

    #[expect(clippy::unused_self, reason = "x goes the same way as y")]
    fn x(&self, at: PaperPoint) -> String {
        number(at.x_mm)
    }

    fn y(&self, at: PaperPoint) -> String {
        number(self.height_mm - at.y_mm)
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
