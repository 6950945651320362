//! The face of the target plot: what was hit and what is estimated, from the fletched reference.

use quarterturn_geometry::{Ellipse, Millimetres, Offset, Point};
use quarterturn_tuning::{Miss, ShaftReport, StandingOut};

use super::core::Core;
use super::glyphs;
use super::hits::{HitMark, Hits};
use super::layout::layout;
use crate::plot::backdrop::Backdrop;
use crate::plot::block::Block;
use crate::plot::canvas::Canvas;
use crate::plot::ground::Ground;
use crate::plot::paper_point::PaperPoint;
use crate::plot::scale::Scale;
use crate::plot::shape::Anchor;
use crate::plot::ticks::Ticks;
use crate::plot::window;
use crate::wording::{Ruler, mark, verdict};

/// The level of every region in the picture.
pub const LEVEL: f64 = 0.90;

/// The regions of more shafts than this are drawn thin and empty: they lie over one another.
const FEW: usize = 6;

/// What is drawn on the face.
pub struct Face<'a> {
    /// The hits.
    pub hits: &'a Hits,
    /// What stands out from its like, the references included.
    pub standing_out: &'a StandingOut,
    /// The shafts with counted shots, their misses from the reference.
    pub shafts: Vec<ShaftReport>,
    /// Where they are wanted, from the reference.
    pub wanted: Offset,
    /// The common offset, where a bare shaft was shot.
    pub common: Option<Miss>,
    /// How far from there a shaft may land.
    pub tolerance: Millimetres,
    /// The reader's unit.
    pub ruler: Ruler,
    /// What lies under it all.
    pub backdrop: Backdrop,
}

/// The ellipse that holds a mean with probability [`LEVEL`].
pub fn region(miss: Miss) -> Option<Ellipse> {
    Ellipse::new(Point::SPOT + miss.mean, &miss.covariance_mm2, radius()).ok()
}

/// The radius of a region in standard deviations.
///
/// # Formula
/// √q with q = −2 ln(1 − level), the quantile of chi-square with two degrees of freedom (4.605 at 0.90).
fn radius() -> f64 {
    (-2.0 * (1.0 - LEVEL).ln()).sqrt()
}

impl Face<'_> {
    /// The scale of a face drawn below and to the right of `corner`.
    pub fn scale(&self, corner: PaperPoint) -> Scale {
        self.ground().scale(corner)
    }

    /// The lines of its grid.
    pub fn ticks(&self, scale: Scale) -> Ticks {
        self.ground().ticks(scale)
    }

    fn ground(&self) -> Ground {
        let half_width = window::half_width(self.tolerance, &self.extent());
        Ground::about_reference(half_width, self.ruler)
    }

    /// What the picture has to show, the far sides of the regions included.
    fn extent(&self) -> Vec<Offset> {
        let hits = self.hits.marks.iter().map(|hit| hit.at);
        let misses = self.shafts.iter().map(|report| report.miss).chain(self.common);
        let far_sides = misses.map(|Miss { mean, covariance_mm2 }| {
            let reach = |mean_mm: f64, variance_mm2: f64| {
                mean_mm.abs() + radius() * variance_mm2.max(0.0).sqrt()
            };
            Offset::new(reach(mean.x_mm, covariance_mm2.m11), reach(mean.y_mm, covariance_mm2.m22))
        });
        let tolerance_mm = self.tolerance.mm();
        let far = |mm: f64| mm.abs() + tolerance_mm;
        let elsewhere = (self.wanted != Offset::ZERO)
            .then(|| Offset::new(far(self.wanted.x_mm), far(self.wanted.y_mm)));
        hits.chain(far_sides).chain(elsewhere).collect()
    }

    fn estimates(&self, canvas: &mut Canvas, scale: Scale) {
        canvas.circle("tolerance", scale.point(self.wanted), scale.length_mm(self.tolerance));
        if let Some(ellipse) = self.common.and_then(region) {
            canvas.ellipse("region common", scale.ellipse(ellipse));
        }
        for report in &self.shafts {
            if let Some(ellipse) = region(report.miss) {
                let thin = if self.shafts.len() > FEW { " thin" } else { "" };
                let class = format!("region {}{thin}", verdict(report.verdict));
                canvas.ellipse(&class, scale.ellipse(ellipse));
            }
        }
    }

    fn places(&self, canvas: &mut Canvas, scale: Scale) {
        if self.hits.marks.is_empty() {
            let below = scale.point(Offset::ZERO).moved(0.0, -12.0);
            canvas.text("strong", below, Anchor::Middle, 5.0, "No bare shot to show yet");
        }
        let spot = self.hits.spot().filter(|&spot| scale.shows(spot));
        if let Some(spot) = spot {
            glyphs::spot(canvas, scale.point(spot));
        }
        glyphs::reference(canvas, scale.point(Offset::ZERO));
        for hit in self.hits.marks.iter().filter(|hit| scale.shows(hit.at)) {
            canvas.group(&self.told(hit), |canvas| {
                glyphs::hit(canvas, hit.kind, scale.point(hit.at), hit.tail);
                if self.is_far(hit) {
                    glyphs::far(canvas, scale.point(hit.at));
                }
            });
        }
        if let Some(common) = self.common.filter(|common| scale.shows(common.mean)) {
            glyphs::common(canvas, scale.point(common.mean));
        }
    }

    /// The frame about the core, and its shafts without their names.
    fn framed(&self, canvas: &mut Canvas, scale: Scale, core: &Core) {
        for report in self.shafts.iter().filter(|report| core.shows(report)) {
            glyphs::small_shaft(canvas, report.verdict, scale.point(report.miss.mean));
        }
        canvas.rectangle("frame", core.frame(scale));
    }

    /// Whether a drawn shot lies far from the others of its shaft at that mark.
    pub fn is_far(&self, hit: &HitMark) -> bool {
        let mut far = self.standing_out.shots.iter();
        far.any(|shot| shot.shaft == hit.shaft && shot.end == hit.end)
    }

    /// "7 at 3 o'clock: 31 right, 8 high".
    pub fn told(&self, hit: &HitMark) -> String {
        let miss = self.ruler.miss_bare(hit.at);
        format!("{} at {}: {miss}", hit.shaft, mark(hit.index))
    }
}

impl Block for Face<'_> {
    fn height_mm(&self) -> f64 {
        Ground::HEIGHT_MM
    }

    fn draw(&self, canvas: &mut Canvas, corner: PaperPoint) {
        self.ground().draw(canvas, corner, "target-face", |canvas, scale| {
            let spot = self.hits.spot().unwrap_or(Offset::ZERO);
            self.backdrop.draw(canvas, scale, spot);
            self.estimates(canvas, scale);
            self.places(canvas, scale);
            if let Some(core) = Core::of(self) {
                self.framed(canvas, scale, &core);
            }
        });
        layout(self, self.scale(corner)).draw(canvas);
    }
}
