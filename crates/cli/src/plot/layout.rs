//! The named marks of a face and where their names go.

use quarterturn_geometry::Millimetres;

use super::canvas::Canvas;
use super::labels::{self, Label, Room, Wish};
use super::named_mark::{Look, NamedMark};
use super::paper_box::PaperBox;
use super::paper_point::PaperPoint;
use super::scale::Scale;
use super::segment::Segment;
use super::shape::Anchor;
use super::target_plot::glyphs::SHAFT_MM;
use super::text_width::{MIDDLE, width_mm};

/// Air between a name and the edge, mm.
const EDGE_MM: f64 = 0.8;
/// The size of the names of the sides, mm.
const SIDE_TEXT_MM: f64 = 3.1;

/// So many marks make a crowd where each has less room than this, mm².
const FEWEST_IN_A_CROWD: usize = 5;
const CLOSE_MM2: f64 = 70.0;

/// The named marks and their labels, in the same order.
#[derive(Clone, Debug, PartialEq)]
pub struct Layout {
    /// The marks.
    pub marks: Vec<NamedMark>,
    /// Their labels; nothing where no room is left.
    pub labels: Vec<Option<Label>>,
    /// The names of the sides and where they stand; one that a mark stands on is left away.
    pub sides: Vec<(&'static str, PaperBox)>,
}

impl Layout {
    /// Finds a place for every name of `marks` in the window: never over these marks and the places `taken`, and rather
    /// not over the `hits`.
    pub fn of(
        marks: Vec<NamedMark>,
        taken: impl Iterator<Item = PaperPoint>,
        hits: Vec<PaperPoint>,
        scale: Scale,
    ) -> Self {
        let taken: Vec<PaperBox> = marks
            .iter()
            .map(|mark| mark.at)
            .chain(taken)
            .map(|at| PaperBox::around(at, SHAFT_MM, SHAFT_MM))
            .collect();
        let mut sides = sides(scale);
        sides.retain(|(_, side)| {
            !taken.iter().any(|mark| mark.overlaps(*side)) && !hits.iter().any(|hit| side.has(*hit))
        });
        let room = Room {
            area: scale.area().grown(-EDGE_MM),
            kept_free: taken.into_iter().chain(sides.iter().map(|(_, side)| *side)).collect(),
            hits,
            crowd: crowd(&marks),
        };
        let mut marks = marks;
        if room.crowd.is_some() {
            marks.iter_mut().for_each(NamedMark::shrink);
        }
        let wishes: Vec<Wish> = marks.iter().map(NamedMark::wish).collect();
        Self { labels: labels::place(&wishes, &room), marks, sides }
    }

    /// Draws lines, marks and names.
    pub fn draw(&self, canvas: &mut Canvas) {
        for (_, area) in &self.sides {
            canvas.rectangle("behind", *area);
        }
        for (side, area) in &self.sides {
            let at = area.centre().moved(0.0, -MIDDLE * SIDE_TEXT_MM);
            canvas.text("quiet", at, Anchor::Middle, SIDE_TEXT_MM, side);
        }
        for (mark, label) in self.marks.iter().zip(&self.labels) {
            canvas.group(&mark.told, |canvas| mark.draw(canvas, *label));
        }
        for (mark, label) in self.marks.iter().zip(&self.labels) {
            if let Some(line) = label.and_then(|label| self.visible(mark, label.leader)) {
                canvas.line("casing", line);
                canvas.line("leader", line);
            }
        }
    }

    /// The part of a leader that is drawn: from the edge of a mark that stands alone, and nothing where its name is
    /// close to it; from the middle of one among others, so that it is seen whose line it is.
    fn visible(&self, mark: &NamedMark, leader: Segment) -> Option<Segment> {
        let close = |other: &&NamedMark| other.at.distance_mm(mark.at) < 1.2 * SHAFT_MM;
        if self.marks.iter().filter(close).count() > 1 {
            return Some(leader);
        }
        (leader.length_mm() > SHAFT_MM).then(|| leader.after(SHAFT_MM / 2.0))
    }
}

/// The box about marks of which there are many for the room they take; nothing where they stand apart.
fn crowd(marks: &[NamedMark]) -> Option<PaperBox> {
    let within = |edge: fn(&PaperPoint) -> f64, far: fn(f64, f64) -> f64| {
        let inside = marks.iter().filter(|mark| !matches!(mark.look, Look::Outside { .. }));
        inside.map(|mark| edge(&mark.at)).reduce(far)
    };
    let about = PaperBox {
        left_mm: within(|at| at.x_mm, f64::min)?,
        right_mm: within(|at| at.x_mm, f64::max)?,
        bottom_mm: within(|at| at.y_mm, f64::min)?,
        top_mm: within(|at| at.y_mm, f64::max)?,
    }
    .grown(SHAFT_MM);
    let room_mm2 = (about.right_mm - about.left_mm) * (about.top_mm - about.bottom_mm);
    (marks.len() >= FEWEST_IN_A_CROWD && room_mm2 < CLOSE_MM2 * marks.len() as f64).then_some(about)
}

/// The names of the sides, at the edges of the window; where the reference lies beyond an edge, what is said at it would
/// be wrong.
fn sides(scale: Scale) -> Vec<(&'static str, PaperBox)> {
    let PaperBox { left_mm, bottom_mm, right_mm, top_mm } = scale.area();
    let middle = scale.area().centre();
    let [[left, right], [low, high]] = scale.ends().map(|ends| ends.map(Millimetres::mm));
    let words = [
        (high > 0.0, "high", PaperPoint::new(middle.x_mm, top_mm), [1.0, -1.0]),
        (right > 0.0, "right", PaperPoint::new(right_mm, middle.y_mm), [-1.0, 1.0]),
        (low < 0.0, "low", PaperPoint::new(middle.x_mm, bottom_mm), [1.0, 1.0]),
        (left < 0.0, "left", PaperPoint::new(left_mm, middle.y_mm), [1.0, 1.0]),
    ];
    let place = |(_, word, at, [right, up]): (bool, &'static str, PaperPoint, [f64; 2])| {
        let (width, height) = (width_mm(word, SIDE_TEXT_MM) + 0.6, SIDE_TEXT_MM + 0.8);
        let centre = at.moved(right * (width / 2.0 + 0.6), up * (height / 2.0 + 0.6));
        (word, PaperBox::around(centre, width, height))
    };
    words.into_iter().filter(|(is_true, ..)| *is_true).map(place).collect()
}
