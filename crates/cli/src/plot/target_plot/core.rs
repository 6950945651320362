//! The core of the target plot: where many shafts stand close together, once more and enlarged, with their names.

use quarterturn_geometry::{Millimetres, Offset};
use quarterturn_tuning::ShaftReport;

use super::face::Face;
use super::glyphs::{self, SHAFT_MM};
use super::layout::named;
use crate::plot::block::Block;
use crate::plot::canvas::Canvas;
use crate::plot::ground::Ground;
use crate::plot::layout::Layout;
use crate::plot::paper_box::PaperBox;
use crate::plot::paper_point::PaperPoint;
use crate::plot::scale::Scale;
use crate::plot::shape::Anchor;

/// So many marks that touch another, or half of them where that is more, cannot be read any more.
const FEWEST: usize = 5;
/// The height of the enlarged part, mm.
const HIGH_MM: f64 = 84.0;
/// Enlarged less than this it would show nothing new; and more than this, differences that nobody can shoot.
const LEAST: f64 = 1.5;
const MOST: f64 = 8.0;

const TITLE_MM: f64 = 3.4;
const TITLE_ROOM_MM: f64 = 5.4;

/// A part of the face.
pub struct Core<'a> {
    face: &'a Face<'a>,
    ground: Ground,
    times: f64,
}

impl<'a> Core<'a> {
    /// The part where marks touch one another; nothing where few do, or where they lie too far apart to be enlarged together.
    pub fn of(face: &'a Face<'a>) -> Option<Self> {
        let scale = face.scale(PaperPoint::default());
        let mut touching = touching(face, scale.face(SHAFT_MM));
        touching.retain(|&at| scale.shows(at));
        let ends = |of: fn(&Offset) -> f64| {
            let least = touching.iter().map(of).reduce(f64::min)?;
            Some([least, touching.iter().map(of).reduce(f64::max)?])
        };
        let [[left, right], [low, high]] = [ends(|at| at.x_mm)?, ends(|at| at.y_mm)?];
        let middle = Offset::new(f64::midpoint(left, right), f64::midpoint(low, high));
        let edge_mm = scale.face(SHAFT_MM).mm();
        let half_high_mm = (high - low) / 2.0 + edge_mm;
        let half_width_mm =
            ((right - left) / 2.0 + edge_mm).max(half_high_mm * Ground::SIDE_MM / HIGH_MM);
        let times = (scale.half_width().mm() / half_width_mm).min(MOST);
        let fewest = FEWEST.max(face.shafts.len().div_ceil(2));
        (touching.len() >= fewest && times >= LEAST).then(|| {
            let half_width = scale.half_width() * times.recip();
            Self { face, ground: Ground::about(middle, half_width, HIGH_MM, face.ruler), times }
        })
    }

    /// Whether a shaft is shown here, its whole mark.
    pub fn shows(&self, report: &ShaftReport) -> bool {
        let scale = self.ground.scale(PaperPoint::default());
        scale.area().grown(-SHAFT_MM / 2.0).has(scale.point(report.miss.mean))
    }

    /// Its edge on the whole face.
    pub fn frame(&self, whole: Scale) -> PaperBox {
        let [[left, right], [low, high]] = self.ground.scale(PaperPoint::default()).ends();
        let corner = |x: Millimetres, y: Millimetres| whole.point(Offset::new(x.mm(), y.mm()));
        let (lower, upper) = (corner(left, low), corner(right, high));
        PaperBox {
            left_mm: lower.x_mm,
            bottom_mm: lower.y_mm,
            right_mm: upper.x_mm,
            top_mm: upper.y_mm,
        }
    }

    /// The shafts in it, each with a place for its name, drawn below and to the right of `corner`.
    pub fn layout(&self, corner: PaperPoint) -> Layout {
        let scale = self.ground.scale(corner.moved(0.0, -TITLE_ROOM_MM));
        let shafts = self.face.shafts.iter().filter(|report| self.shows(report));
        let marks = shafts.map(|report| named(self.face, report, scale)).collect();
        let common = self.face.common.map(|common| common.mean);
        let others = [Offset::ZERO].into_iter().chain(common).filter(|&at| scale.shows(at));
        Layout::of(marks, others.map(|at| scale.point(at)), Vec::new(), scale)
    }

    fn inside(&self, canvas: &mut Canvas, scale: Scale) {
        let Face { wanted, tolerance, common, .. } = *self.face;
        canvas.circle("tolerance", scale.point(wanted), scale.length_mm(tolerance));
        glyphs::reference(canvas, scale.point(Offset::ZERO));
        if let Some(common) = common {
            glyphs::common(canvas, scale.point(common.mean));
        }
    }
}

/// Where the shafts are that stand nearer than `near` to another.
fn touching(face: &Face, near: Millimetres) -> Vec<Offset> {
    let means: Vec<Offset> = face.shafts.iter().map(|report| report.miss.mean).collect();
    let touched = |&(at, mean): &(usize, &Offset)| {
        let others = means.iter().enumerate().filter(|(other, _)| *other != at);
        others.into_iter().any(|(_, other)| (*mean - *other).length() < near)
    };
    means.iter().enumerate().filter(touched).map(|(_, mean)| *mean).collect()
}

impl Block for Core<'_> {
    fn height_mm(&self) -> f64 {
        TITLE_ROOM_MM + self.ground.height_mm()
    }

    fn draw(&self, canvas: &mut Canvas, corner: PaperPoint) {
        let title =
            format!("The frame {:.1} times as large: the mean of each shaft in it", self.times);
        let base = corner.moved(0.0, -TITLE_MM);
        canvas.text("strong", base, Anchor::Start, TITLE_MM, &title);
        let below = corner.moved(0.0, -TITLE_ROOM_MM);
        self.ground.draw(canvas, below, "target-core", |canvas, scale| self.inside(canvas, scale));
        self.layout(corner).draw(canvas);
    }
}
