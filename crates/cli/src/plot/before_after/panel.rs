//! The face of before and after, both in one scale.

use quarterturn_geometry::{Millimetres, Offset};
use quarterturn_tuning::Miss;

use super::landing::Landing;
use crate::plot::block::Block;
use crate::plot::canvas::Canvas;
use crate::plot::ground::Ground;
use crate::plot::layout::Layout;
use crate::plot::named_mark::{Look, NamedMark, short};
use crate::plot::paper_point::PaperPoint;
use crate::plot::scale::Scale;
use crate::plot::segment::Segment;
use crate::plot::target_plot::hits::HitKind;
use crate::plot::target_plot::{glyphs, region};
use crate::plot::window;
use crate::wording::{Ruler, mark, verdict};

/// The regions of more shafts than this lie over one another: only the target shows them.
pub const MOST_REGIONS: usize = 12;

/// At so many places of its way a shaft keeps names away.
const ON_A_WAY: u8 = 12;

/// All shafts from the reference.
pub struct Panel<'a> {
    /// The shafts.
    pub landings: Vec<Landing<'a>>,
    /// Where they are wanted.
    pub wanted: Offset,
    /// How far from there a shaft may land.
    pub tolerance: Millimetres,
    /// The reader's unit.
    pub ruler: Ruler,
}

impl Panel<'_> {
    fn ground(&self) -> Ground {
        let first = self.landings.iter().filter_map(|landing| landing.first).map(|hit| hit.at);
        let now = self.landings.iter().filter_map(|landing| landing.now);
        let seen: Vec<Offset> = first.chain(now).collect();
        Ground::about_reference(window::half_width(self.tolerance, &seen), self.ruler)
    }

    fn inside(&self, canvas: &mut Canvas, scale: Scale) {
        canvas.circle("tolerance", scale.point(self.wanted), scale.length_mm(self.tolerance));
        glyphs::reference(canvas, scale.point(Offset::ZERO));
        if self.landings.len() <= MOST_REGIONS {
            self.regions(canvas, scale);
        }
        for landing in &self.landings {
            Self::way(canvas, scale, landing);
        }
        for landing in &self.landings {
            if let Some(now) = landing.now.filter(|now| scale.shows(*now)) {
                glyphs::small_shaft(canvas, landing.report.verdict, scale.point(now));
            }
        }
    }

    fn regions(&self, canvas: &mut Canvas, scale: Scale) {
        for (landing, now) in self.landings.iter().filter_map(|one| Some((one, one.now?))) {
            let class = verdict(landing.report.verdict);
            if let Some(ellipse) = region(Miss { mean: now, ..landing.report.miss }) {
                canvas.ellipse(&format!("region {class} thin"), scale.ellipse(ellipse));
            }
        }
    }

    /// Its way from before to after, and its last hit.
    fn way(canvas: &mut Canvas, scale: Scale, landing: &Landing) {
        let Some(now) = landing.now else { return };
        if let Some(first) = landing.first {
            canvas.line("way", Segment { from: scale.point(first.at), to: scale.point(now) });
        }
        if let Some(last) = landing.last {
            glyphs::hit(canvas, HitKind::Other, scale.point(last.at), None);
        }
    }

    /// The first hits, each with its name beside the ways.
    fn layout(&self, scale: Scale) -> Layout {
        let marks = self.landings.iter().filter_map(|landing| self.mark(landing, scale)).collect();
        let ways = self.landings.iter().filter_map(|one| Some([one.first?.at, one.now?]));
        let on_way = |[first, now]: [Offset; 2]| {
            (0..=ON_A_WAY)
                .map(move |step| first + (now - first) * (f64::from(step) / f64::from(ON_A_WAY)))
        };
        let ways: Vec<PaperPoint> = ways.flat_map(on_way).map(|at| scale.point(at)).collect();
        Layout::of(marks, std::iter::once(scale.point(Offset::ZERO)), ways, scale)
    }

    /// Its name stands at its first hit; where it has none, at where it lands now.
    fn mark(&self, landing: &Landing, scale: Scale) -> Option<NamedMark> {
        let (name, told) = (short(&landing.report.shaft), self.told(landing));
        let (at, look, class) = match (landing.first, landing.now) {
            (Some(first), _) => (first.at, Look::First, "first"),
            (None, Some(now)) => (now, Look::Drawn, verdict(landing.report.verdict)),
            (None, None) => return None,
        };
        if scale.shows(at) {
            return Some(NamedMark { at: scale.point(at), look, name, told });
        }
        Some(NamedMark::outside(scale, at, class, &name, told, self.ruler))
    }

    /// "7: 31 right at 12 o'clock; keep, 3 left at 3 o'clock (mm)".
    fn told(&self, landing: &Landing) -> String {
        let Landing { report, as_built, first, now, .. } = landing;
        let at = |at: Offset, index| format!("{} at {}", self.ruler.miss_bare(at), mark(index));
        let first = first.map_or("never shot as built".to_owned(), |hit| at(hit.at, *as_built));
        let now = now.map_or(String::new(), |now| format!(", {}", at(now, report.index)));
        let symbol = self.ruler.unit().symbol;
        format!("{}: {first}; {}{now} ({symbol})", report.shaft, verdict(report.verdict))
    }
}

impl Block for Panel<'_> {
    fn height_mm(&self) -> f64 {
        Ground::HEIGHT_MM
    }

    fn draw(&self, canvas: &mut Canvas, corner: PaperPoint) {
        let ground = self.ground();
        ground
            .draw(canvas, corner, "before-after-face", |canvas, scale| self.inside(canvas, scale));
        self.layout(ground.scale(corner)).draw(canvas);
    }
}
