//! A picture as an SVG file in millimetres of paper.

use super::canvas::Canvas;
use super::escape::escape;
use super::svg_number::number;
use super::svg_writer::{USUAL_MM, Writer};

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
    Writer { height_mm: canvas.height_mm }.shapes(&mut file, &canvas.shapes);
    file.push_str("</svg>\n");
    file
}

#[cfg(test)]
mod tests {
    use quarterturn_geometry::Angle;

    use super::*;
    use crate::plot::paper_ellipse::PaperEllipse;
    use crate::plot::paper_point::PaperPoint;

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
}
