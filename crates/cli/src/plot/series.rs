//! The points of a chart, and how they look.

use super::canvas::Canvas;
use super::paper_box::PaperBox;
use super::paper_point::PaperPoint;
use super::segment::Segment;

/// How a point looks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Look {
    /// A disc.
    Disc,
    /// A square.
    Square,
    /// A diamond.
    Diamond,
    /// Nothing: the line says it all.
    Unseen,
}

/// Whether the points of a line are joined.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Joined {
    /// One to the next.
    Line,
    /// Not at all.
    No,
}

/// Points of one kind.
#[derive(Clone, Debug, PartialEq)]
pub struct Series {
    /// What they are, said beside the chart; nothing where another series says it.
    pub name: String,
    /// The class of their shapes.
    pub class: &'static str,
    /// How each looks.
    pub look: Look,
    /// Whether they are joined.
    pub joined: Joined,
    /// Where they are.
    pub points: Vec<[f64; 2]>,
}

impl Series {
    /// What stands before its name.
    pub fn sample(&self, canvas: &mut Canvas, at: PaperPoint) {
        if self.joined == Joined::Line {
            let [from, to] = [-1.8, 1.8].map(|right_mm| at.moved(right_mm, 0.0));
            canvas.line(&format!("line {}", self.class), Segment { from, to });
        }
        self.look.draw(canvas, self.class, at);
    }
}

impl Look {
    /// Draws a point that looks so.
    pub fn draw(self, canvas: &mut Canvas, class: &str, at: PaperPoint) {
        match self {
            Self::Disc => canvas.circle(class, at, 0.9),
            Self::Square => canvas.rectangle(class, PaperBox::around(at, 1.7, 1.7)),
            Self::Diamond => {
                let corners = [(0.0, 1.2), (1.2, 0.0), (0.0, -1.2), (-1.2, 0.0)];
                canvas.polygon(class, &corners.map(|(right, up)| at.moved(right, up)));
            }
            Self::Unseen => {}
        }
    }
}
