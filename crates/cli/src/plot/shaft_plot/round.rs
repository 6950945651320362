//! The face of a shaft's picture: its predicted hits round the clock, and its shots.

use quarterturn_geometry::{Millimetres, Offset};
use quarterturn_tuning::{Miss, Prediction, ShaftReport};

use super::curve::curve;
use crate::plot::block::Block;
use crate::plot::canvas::Canvas;
use crate::plot::ground::Ground;
use crate::plot::layout::Layout;
use crate::plot::named_mark::{Look, NamedMark};
use crate::plot::paper_point::PaperPoint;
use crate::plot::scale::Scale;
use crate::plot::target_plot::hits::{HitKind, HitMark};
use crate::plot::target_plot::{glyphs, region};
use crate::plot::window;
use crate::wording::{Ruler, mark, verdict};

const DOT_MM: f64 = 0.6;
/// Beyond so many positions only the whole hours are named.
const ALL_NAMED: usize = 12;

/// A shaft with its mark at every position.
pub struct Round<'a> {
    /// What is known of it.
    pub report: &'a ShaftReport,
    /// Its hits.
    pub hits: Vec<&'a HitMark>,
    /// Where it is wanted, from the reference.
    pub wanted: Offset,
    /// How far from there it may land.
    pub tolerance: Millimetres,
    /// The reader's unit.
    pub ruler: Ruler,
    /// A word that no other picture on a page has.
    pub clip: String,
}

impl Round<'_> {
    fn ground(&self) -> Ground {
        let hits = self.hits.iter().map(|hit| hit.at);
        let means = self.report.positions.iter().map(|at| at.miss.mean + self.wanted);
        let seen: Vec<Offset> = hits.chain(means).collect();
        Ground::about_reference(window::half_width(self.tolerance, &seen), self.ruler)
    }

    fn placed(&self, miss: Miss) -> Miss {
        Miss { mean: miss.mean + self.wanted, ..miss }
    }

    fn inside(&self, canvas: &mut Canvas, scale: Scale) {
        canvas.circle("tolerance", scale.point(self.wanted), scale.length_mm(self.tolerance));
        glyphs::reference(canvas, scale.point(Offset::ZERO));
        for position in self.named() {
            self.region(canvas, scale, "region hour", position.miss);
        }
        let curve = curve(&self.report.positions);
        let corners: Vec<PaperPoint> =
            curve.into_iter().map(|at| scale.point(at + self.wanted)).collect();
        if !corners.is_empty() {
            canvas.polygon("curve", &corners);
        }
        for kind in [HitKind::LeftOut, HitKind::Other, HitKind::Judged] {
            let of_kind = self.hits.iter().filter(|hit| hit.kind == kind && scale.shows(hit.at));
            let of_kind: Vec<_> = of_kind.map(|hit| (scale.point(hit.at), hit.tail)).collect();
            for (at, tail) in &of_kind {
                if let Some(lean) = *tail {
                    glyphs::tail(canvas, kind, *at, lean);
                }
            }
            for (at, _) in &of_kind {
                glyphs::dot(canvas, kind, *at);
            }
        }
        for position in self.named() {
            let at = scale.point(position.miss.mean + self.wanted);
            canvas.circle("judged", at, DOT_MM);
        }
        self.judged(canvas, scale);
    }

    /// The hours beside their points and what lies outside at the edge, no name over another.
    fn layout(&self, scale: Scale) -> Layout {
        let shown = self.named().map(|at| (at, at.miss.mean + self.wanted));
        let hours = shown.filter(|(_, at)| scale.shows(*at)).map(|(position, at)| NamedMark {
            at: scale.point(at),
            look: Look::Drawn,
            name: hour(position),
            told: mark(position.index),
        });
        let outside = |at: Offset, class: &'static str, name: &str| {
            let told = format!("{name}: {}", self.ruler.hit_estimate(at));
            NamedMark::outside(scale, at, class, name, told, self.ruler)
        };
        let strays = self.hits.iter().filter(|hit| !scale.shows(hit.at));
        let strays = strays.map(|hit| outside(hit.at, hit.kind.class(), "hit"));
        let centre = self.report.miss.mean + self.wanted;
        let far = (!scale.shows(centre))
            .then(|| outside(centre, verdict(self.report.verdict), &mark(self.report.index)));
        let hits = self.hits.iter().map(|hit| scale.point(hit.at)).collect();
        let marks = hours.chain(strays).chain(far).collect();
        Layout::of(marks, std::iter::empty(), hits, scale)
    }

    /// The index that is judged: its region, and the mark of its verdict.
    fn judged(&self, canvas: &mut Canvas, scale: Scale) {
        let class = format!("region {}", verdict(self.report.verdict));
        self.region(canvas, scale, &class, self.report.miss);
        let at = scale.point(self.report.miss.mean + self.wanted);
        glyphs::shaft(canvas, self.report.verdict, at);
    }

    fn region(&self, canvas: &mut Canvas, scale: Scale, class: &str, miss: Miss) {
        if let Some(ellipse) = region(self.placed(miss)) {
            canvas.ellipse(class, scale.ellipse(ellipse));
        }
    }

    /// The positions that are drawn.
    fn named(&self) -> impl Iterator<Item = &Prediction> {
        let many = self.report.positions.len() > ALL_NAMED;
        let whole = |at: &&Prediction| at.index.hours().fract() < 1e-9;
        self.report.positions.iter().filter(move |at| !many || whole(at))
    }
}

/// "12", "1", "1½" or degrees.
fn hour(position: &Prediction) -> String {
    let hours = position.index.hours();
    let whole = if hours < 1.0 { 12.0 } else { hours.floor() };
    match hours.fract() {
        fract if fract < 1e-9 => format!("{whole}"),
        fract if (fract - 0.5).abs() < 1e-9 => format!("{whole}½"),
        _ => format!("{:.0}°", position.index.degrees()),
    }
}

impl Block for Round<'_> {
    fn height_mm(&self) -> f64 {
        Ground::HEIGHT_MM
    }

    fn draw(&self, canvas: &mut Canvas, corner: PaperPoint) {
        let ground = self.ground();
        ground.draw(canvas, corner, &self.clip, |canvas, scale| self.inside(canvas, scale));
        self.layout(ground.scale(corner)).draw(canvas);
    }
}
