//! The named marks of the face and where their names go.

use quarterturn_geometry::{Angle, Offset};
use quarterturn_tuning::{ShaftName, Verdict};

use super::face::Face;
use super::glyphs::{self, SHAFT_MM};
use super::wording;
use crate::plot::canvas::Canvas;
use crate::plot::labels::{self, Label, Room, Wish};
use crate::plot::paper_box::PaperBox;
use crate::plot::paper_point::PaperPoint;
use crate::plot::scale::Scale;
use crate::plot::segment::Segment;
use crate::plot::shape::Anchor;
use crate::plot::text_width::{BOLD, MIDDLE, shortened, width_mm};
use crate::wording::verdict;

/// The size of a name, mm.
const NAME_MM: f64 = 3.9;
/// The longest name beside a mark, mm.
const LONGEST_MM: f64 = 20.0;
/// How far inside the edge an arrow stands for what lies outside, mm.
const INSET_MM: f64 = 3.0;
/// Air between a name and the edge, mm.
const EDGE_MM: f64 = 0.8;
/// The size of the names of the sides, mm.
const SIDE_TEXT_MM: f64 = 3.1;

/// A mark with a name.
#[derive(Clone, Debug, PartialEq)]
pub struct NamedMark {
    /// Where it stands.
    pub at: PaperPoint,
    /// What it looks like.
    pub look: Look,
    /// What is written beside it.
    pub name: String,
    /// What is said of it where a pointer rests on it.
    pub told: String,
}

/// What a named mark looks like.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Look {
    /// The estimate of a shaft.
    Shaft(Verdict),
    /// An arrow at the edge, toward what lies outside.
    Outside {
        /// The class of what lies there.
        class: &'static str,
        /// Its clock angle from the middle.
        toward: Angle,
    },
}

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
    /// Finds a place for every name.
    pub fn of(face: &Face, scale: Scale) -> Self {
        let marks: Vec<NamedMark> = shafts(face, scale).chain(strays(face, scale)).collect();
        let common = face.common.map(|common| common.mean);
        let places = [Offset::ZERO].into_iter().chain(common).map(|at| scale.point(at));
        let taken = marks.iter().map(|mark| mark.at).chain(places);
        let taken: Vec<PaperBox> =
            taken.map(|at| PaperBox::around(at, SHAFT_MM, SHAFT_MM)).collect();
        let mut sides = sides(scale.area()).to_vec();
        sides.retain(|(_, side)| !taken.iter().any(|mark| mark.overlaps(*side)));
        let shown = face.hits.marks.iter().filter(|hit| scale.shows(hit.at));
        let room = Room {
            area: scale.area().grown(-EDGE_MM),
            kept_free: taken.into_iter().chain(sides.iter().map(|(_, side)| *side)).collect(),
            hits: shown.map(|hit| scale.point(hit.at)).collect(),
        };
        let wishes: Vec<Wish> = marks.iter().map(NamedMark::wish).collect();
        Self { labels: labels::place(&wishes, &room), marks, sides }
    }

    /// Draws lines, marks and names.
    pub fn draw(&self, canvas: &mut Canvas) {
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

impl NamedMark {
    fn wish(&self) -> Wish {
        let width_mm = BOLD * width_mm(&self.name, NAME_MM) + 0.6;
        Wish { mark: self.at, width_mm, height_mm: NAME_MM + 0.4 }
    }

    fn draw(&self, canvas: &mut Canvas, label: Option<Label>) {
        match self.look {
            Look::Shaft(verdict) => glyphs::shaft(canvas, verdict, self.at),
            Look::Outside { class, toward } => glyphs::outward(canvas, class, self.at, toward),
        }
        if let Some(Label { area, .. }) = label {
            let base = area.centre().moved(0.0, -MIDDLE * NAME_MM);
            canvas.rectangle("behind", area);
            canvas.text("strong", base, Anchor::Middle, NAME_MM, &self.name);
        }
    }
}

fn shafts<'a>(face: &'a Face, scale: Scale) -> impl Iterator<Item = NamedMark> + 'a {
    face.shafts.iter().map(move |report| {
        let at = report.miss.mean;
        let miss = face.ruler.miss_bare(at - face.wanted);
        let name = short(&report.shaft);
        let told = format!(
            "{}: {}, {miss} ({})",
            report.shaft,
            wording::verdict(report, face.ruler),
            face.ruler.unit().symbol
        );
        if scale.shows(at) {
            let look = Look::Shaft(report.verdict);
            NamedMark { at: scale.point(at), look, name, told }
        } else {
            outside(face, scale, at, verdict(report.verdict), &name, told)
        }
    })
}

fn strays<'a>(face: &'a Face, scale: Scale) -> impl Iterator<Item = NamedMark> + 'a {
    face.hits.marks.iter().filter(move |hit| !scale.shows(hit.at)).map(move |hit| {
        let name = short(&hit.shaft);
        outside(face, scale, hit.at, hit.kind.class(), &name, face.told(hit))
    })
}

fn short(shaft: &ShaftName) -> String {
    shortened(shaft.as_str(), NAME_MM, LONGEST_MM / BOLD)
}

/// An arrow where the way from the middle to `to` leaves the picture.
fn outside(
    face: &Face,
    scale: Scale,
    to: Offset,
    class: &'static str,
    name: &str,
    told: String,
) -> NamedMark {
    let edge = scale.half_width() - scale.face(INSET_MM);
    let at = scale.point(to * (edge.mm() / to.x_mm.abs().max(to.y_mm.abs())));
    let name = format!("{name}: {}", face.ruler.estimate(to.length()));
    NamedMark { at, look: Look::Outside { class, toward: to.clock_angle() }, name, told }
}

fn sides(area: PaperBox) -> [(&'static str, PaperBox); 4] {
    let PaperBox { left_mm, bottom_mm, right_mm, top_mm } = area;
    let middle = area.centre();
    let word = |word: &'static str, at: PaperPoint, right: f64, up: f64| {
        let (width, height) = (width_mm(word, SIDE_TEXT_MM) + 0.6, SIDE_TEXT_MM + 0.8);
        let centre = at.moved(right * (width / 2.0 + 0.6), up * (height / 2.0 + 0.6));
        (word, PaperBox::around(centre, width, height))
    };
    [
        word("high", PaperPoint::new(middle.x_mm, top_mm), 1.0, -1.0),
        word("right", PaperPoint::new(right_mm, middle.y_mm), -1.0, 1.0),
        word("low", PaperPoint::new(middle.x_mm, bottom_mm), 1.0, 1.0),
        word("left", PaperPoint::new(left_mm, middle.y_mm), 1.0, 1.0),
    ]
}
