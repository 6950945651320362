//! The hits of an end, from the spot.

use quarterturn_geometry::{Millimetres, Offset};
use quarterturn_tuning::{End, Hit, Setup, Shot};

use crate::plot::backdrop::Backdrop;
use crate::plot::block::Block;
use crate::plot::canvas::Canvas;
use crate::plot::ground::Ground;
use crate::plot::layout::Layout;
use crate::plot::named_mark::{Look, NamedMark, short};
use crate::plot::paper_point::PaperPoint;
use crate::plot::scale::Scale;
use crate::plot::shape::Anchor;
use crate::plot::target_plot::glyphs;
use crate::plot::target_plot::hits::HitKind;
use crate::plot::target_plot::middle::Middle;
use crate::plot::window;
use crate::wording::{Ruler, mark, tail};

/// The face of an end.
pub struct Face<'a> {
    /// How the journal was begun.
    pub setup: &'a Setup,
    /// The end.
    pub end: &'a End,
    /// Where its references landed.
    pub middle: Option<Middle>,
    /// The reader's unit.
    pub ruler: Ruler,
    /// What lies under the hits.
    pub backdrop: Backdrop,
}

impl Face<'_> {
    fn hits(&self) -> impl Iterator<Item = (&Shot, Hit)> {
        self.end.shots.iter().filter_map(|shot| Some((shot, shot.hit?)))
    }

    fn ground(&self) -> Ground {
        let tolerance = self.setup.tolerance;
        let at: Vec<Offset> = self.hits().map(|(_, hit)| hit.at.from_spot()).collect();
        let about = self.middle.map_or(Offset::ZERO, |middle| middle.at);
        let far = Millimetres::new(about.x_mm.abs().max(about.y_mm.abs()));
        let least = window::half_width(tolerance, &at);
        let half_width = least.mm().max((far + tolerance * 1.1).mm().min(4.0 * least.mm()));
        Ground::about_reference(Millimetres::new(half_width), self.ruler)
    }

    fn inside(&self, canvas: &mut Canvas, scale: Scale) {
        self.backdrop.draw(canvas, scale, Offset::ZERO);
        if let Some(middle) = self.middle {
            let radius_mm = scale.length_mm(self.setup.tolerance);
            canvas.circle("tolerance", scale.point(middle.at), radius_mm);
        }
        glyphs::spot(canvas, scale.point(Offset::ZERO));
        let mut drawn = self.hits().peekable();
        if drawn.peek().is_none() {
            let below = scale.point(Offset::ZERO).moved(0.0, -12.0);
            canvas.text("strong", below, Anchor::Middle, 5.0, "No hit to show");
        }
        for (shot, hit) in drawn.filter(|(_, hit)| scale.shows(hit.at.from_spot())) {
            let at = scale.point(hit.at.from_spot());
            glyphs::hit(canvas, kind(shot), at, hit.lean);
            if self.setup.references.contains(&shot.shaft) {
                glyphs::reference(canvas, at);
            }
        }
    }

    fn layout(&self, scale: Scale) -> Layout {
        let marks = self.hits().map(|(shot, hit)| {
            let (at, name) = (hit.at.from_spot(), short(&shot.shaft));
            let said = self.ruler.hit(at);
            let told =
                format!("{} at {}: {said}, {}", shot.shaft, mark(shot.index), tail(hit.lean));
            if scale.shows(at) {
                return NamedMark { at: scale.point(at), look: Look::Drawn, name, told };
            }
            NamedMark::outside(scale, at, kind(shot).class(), &name, told, self.ruler)
        });
        let spot = scale.point(Offset::ZERO);
        Layout::of(marks.collect(), std::iter::once(spot), Vec::new(), scale)
    }
}

fn kind(shot: &Shot) -> HitKind {
    if shot.counts() { HitKind::Judged } else { HitKind::LeftOut }
}

impl Block for Face<'_> {
    fn height_mm(&self) -> f64 {
        Ground::HEIGHT_MM
    }

    fn draw(&self, canvas: &mut Canvas, corner: PaperPoint) {
        let ground = self.ground();
        ground.draw(canvas, corner, "end-face", |canvas, scale| self.inside(canvas, scale));
        self.layout(ground.scale(corner)).draw(canvas);
    }
}
