//! A clock of bars: the longer the bar at an hour, the likelier the shaft is inside with its mark there.

use quarterturn_geometry::{Angle, Index};
use quarterturn_tuning::{Prediction, ShaftReport};

use crate::plot::block::Block;
use crate::plot::canvas::Canvas;
use crate::plot::paper_point::PaperPoint;
use crate::plot::shape::{Anchor, PLAIN};
use crate::plot::text_width::MIDDLE;
use crate::wording::{mark, percent_short};

const RADIUS_MM: f64 = 22.0;
const NAMES_MM: f64 = 5.0;
const TEXT_MM: f64 = 3.0;
/// So many positions are told in words.
const TOLD: usize = 6;
/// Half as wide as the way to the next hour, less a gap.
const HALF_BAR_DEG: f64 = 11.0;
/// Shares at which a ring is drawn.
const RINGS: [f64; 2] = [0.5, 0.9];

/// The chances of a shaft round the clock.
pub struct Chances<'a> {
    /// What is known of it.
    pub report: &'a ShaftReport,
}

impl Chances<'_> {
    fn bar(canvas: &mut Canvas, class: &str, centre: PaperPoint, at: &Prediction, half_deg: f64) {
        let angle = at.index.angle();
        let side = Angle::from_degrees(half_deg);
        let out_mm = RADIUS_MM * at.within;
        let corners = [
            centre.toward(angle - side, 1.2),
            centre.toward(angle - side, 1.2 + out_mm),
            centre.toward(angle, 1.2 + out_mm),
            centre.toward(angle + side, 1.2 + out_mm),
            centre.toward(angle + side, 1.2),
        ];
        canvas.polygon(class, &corners);
    }

    /// The likeliest positions in words, to the right of the clock.
    fn told(&self, canvas: &mut Canvas, at: PaperPoint) {
        let mut best: Vec<&Prediction> = self.report.positions.iter().collect();
        best.sort_by(|one, other| other.within.total_cmp(&one.within));
        canvas.text("strong", at, Anchor::Start, TEXT_MM * 1.1, "Sure to be inside, mark at");
        let class = |at: &Prediction| if self.is_chosen(at) { "strong" } else { PLAIN };
        let below = |line: usize| at.moved(0.0, -5.4 * (line + 1) as f64);
        for (line, position) in best.iter().take(TOLD).enumerate() {
            let place = mark(position.index);
            canvas.text(class(position), below(line), Anchor::Start, TEXT_MM * 1.1, &place);
        }
        for (line, position) in best.iter().take(TOLD).enumerate() {
            let (share, end) = (percent_short(position.within), below(line).moved(44.0, 0.0));
            canvas.text(class(position), end, Anchor::End, TEXT_MM * 1.1, &share);
        }
    }

    /// Whether it is the index that is judged.
    fn is_chosen(&self, at: &Prediction) -> bool {
        at.index.is_at(self.report.index)
    }
}

impl Block for Chances<'_> {
    fn height_mm(&self) -> f64 {
        2.0 * (RADIUS_MM + 1.2 + NAMES_MM)
    }

    fn draw(&self, canvas: &mut Canvas, corner: PaperPoint) {
        let reach_mm = self.height_mm() / 2.0;
        let centre = corner.moved(reach_mm + 8.0, -reach_mm);
        for share in RINGS {
            canvas.circle("ring", centre, 1.2 + RADIUS_MM * share);
        }
        canvas.circle("face", centre, 1.2 + RADIUS_MM);
        let positions = &self.report.positions;
        let half_deg = HALF_BAR_DEG.min(150.0 / positions.len() as f64);
        let (chosen, others): (Vec<_>, Vec<_>) =
            positions.iter().partition(|at| self.is_chosen(at));
        for (class, bars) in [("bar", others), ("bar chosen", chosen)] {
            for at in bars {
                Self::bar(canvas, class, centre, at, half_deg);
            }
        }
        for hour in 1..=12_u32 {
            let angle = Index::from_hour(f64::from(hour)).angle();
            let name = centre.toward(angle, RADIUS_MM + 1.2 + NAMES_MM * 0.55);
            let base = name.moved(0.0, -MIDDLE * TEXT_MM);
            canvas.text(PLAIN, base, Anchor::Middle, TEXT_MM, &hour.to_string());
        }
        let rings = format!("rings at {}", RINGS.map(percent_short).join(" and "));
        let beside = corner.moved(2.0 * reach_mm + 20.0, -6.0);
        self.told(canvas, beside);
        for (line, told) in [(7.4, rings.as_str()), (8.2, "outlined, bold: the index judged")] {
            canvas.text("quiet", beside.moved(0.0, -5.4 * line), Anchor::Start, TEXT_MM, told);
        }
    }
}
