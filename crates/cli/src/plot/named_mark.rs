//! A mark on a face with a name beside it.

use quarterturn_geometry::{Angle, Offset};
use quarterturn_tuning::{ShaftName, Verdict};

use super::canvas::Canvas;
use super::labels::{Label, Wish};
use super::paper_point::PaperPoint;
use super::scale::Scale;
use super::shape::Anchor;
use super::target_plot::glyphs;
use super::text_width::{BOLD, MIDDLE, shortened, width_mm};
use crate::wording::Ruler;

/// The size of a name, mm.
const NAME_MM: f64 = 3.9;
/// The longest name beside a mark, mm.
const LONGEST_MM: f64 = 20.0;
/// How far inside the edge an arrow stands for what lies outside, mm.
const INSET_MM: f64 = 3.0;

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
    /// The same among many.
    Small(Verdict),
    /// Where a shaft first landed.
    First,
    /// Something that is drawn already.
    Drawn,
    /// An arrow at the edge, toward what lies outside.
    Outside {
        /// The class of what lies there.
        class: &'static str,
        /// Its clock angle from the middle.
        toward: Angle,
    },
}

impl NamedMark {
    /// An arrow where the way from the middle to `to` leaves the picture, with how far `to` is.
    pub fn outside(
        scale: Scale,
        to: Offset,
        class: &'static str,
        name: &str,
        told: String,
        ruler: Ruler,
    ) -> Self {
        let edge = scale.half_width() - scale.face(INSET_MM);
        let at = scale.point(to * (edge.mm() / to.x_mm.abs().max(to.y_mm.abs())));
        let name = format!("{name}: {}", ruler.estimate(to.length()));
        Self { at, look: Look::Outside { class, toward: to.clock_angle() }, name, told }
    }

    /// Makes it small, where many stand close together.
    pub fn shrink(&mut self) {
        if let Look::Shaft(verdict) = self.look {
            self.look = Look::Small(verdict);
        }
    }

    /// The room that its name wants.
    pub fn wish(&self) -> Wish {
        let width_mm = BOLD * width_mm(&self.name, NAME_MM) + 0.6;
        Wish { mark: self.at, width_mm, height_mm: NAME_MM + 0.4 }
    }

    /// Draws it, and its name where there is room for that.
    pub fn draw(&self, canvas: &mut Canvas, label: Option<Label>) {
        match self.look {
            Look::Shaft(verdict) => glyphs::shaft(canvas, verdict, self.at),
            Look::Small(verdict) => glyphs::small_shaft(canvas, verdict, self.at),
            Look::First => glyphs::first(canvas, self.at),
            Look::Drawn => {}
            Look::Outside { class, toward } => glyphs::outward(canvas, class, self.at, toward),
        }
        if let Some(Label { area, .. }) = label {
            let base = area.centre().moved(0.0, -MIDDLE * NAME_MM);
            canvas.rectangle("behind", area);
            canvas.text("strong", base, Anchor::Middle, NAME_MM, &self.name);
        }
    }
}

/// The name of a shaft, short enough to stand beside a mark.
pub fn short(shaft: &ShaftName) -> String {
    shortened(shaft.as_str(), NAME_MM, LONGEST_MM / BOLD)
}
