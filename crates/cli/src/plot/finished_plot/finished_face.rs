//! What was hit from one distance: field points and broadheads with their centres, on the plate.

use quarterturn_geometry::{Ellipse, Millimetres, Offset, Point};
use quarterturn_tuning::{Head, HitsAt, HitsOfKind, Start};

use crate::plot::backdrop::Backdrop;
use crate::plot::block::Block;
use crate::plot::canvas::Canvas;
use crate::plot::ground::Ground;
use crate::plot::paper_point::PaperPoint;
use crate::plot::scale::Scale;
use crate::plot::series::Look;
use crate::plot::shape::Anchor;
use crate::plot::text_width::{MIDDLE, shortened};
use crate::plot::window;
use crate::wording::{Ruler, visible};

const TITLE_MM: f64 = 4.0;
const TEXT_MM: f64 = 3.2;
const HEAD_MM: f64 = 6.5;
/// The height of a line of the legend, mm.
const LINE_MM: f64 = 4.6;

/// The face from one distance.
pub struct FinishedFace<'a> {
    /// What was hit.
    pub at: &'a HitsAt,
    /// How wide the plate is.
    pub plate: Millimetres,
    /// How lengths are said.
    pub ruler: Ruler,
}

impl FinishedFace<'_> {
    fn ground(&self) -> Ground {
        let hits = self.at.kinds.iter().flat_map(|kind| &kind.hits);
        let marks: Vec<Offset> = hits.map(|(_, hit)| Offset::new(hit.x, hit.y)).collect();
        Ground::about_reference(window::half_width(self.plate * 0.5, &marks), self.ruler)
    }

    fn draw_kind(&self, canvas: &mut Canvas, scale: Scale, kind: &HitsOfKind, style: Style) {
        for (arrow, hit) in &kind.hits {
            let at = Offset::new(hit.x, hit.y);
            let told = format!("{arrow}: {}", self.ruler.hit_estimate(at));
            canvas.group(&told, |canvas| style.look.draw(canvas, style.hit, scale.point(at)));
        }
        let region = kind.centre.and_then(|centre| {
            let middle = Point::SPOT + Offset::new(centre.centre.x, centre.centre.y);
            Ellipse::new(middle, &centre.matrix, 1.0).ok()
        });
        if let Some(region) = region {
            canvas.ellipse(style.region, scale.ellipse(region));
        }
    }

    fn named(&self, kind: &HitsOfKind) -> String {
        let head = match &kind.head {
            Head::Field => "field points".to_owned(),
            Head::Broadhead(name) => visible(name),
        };
        let cold = if kind.start == Start::Cold { ", cold first shots" } else { "" };
        let centre = kind.centre.map(|centre| {
            let at = Offset::new(centre.centre.x, centre.centre.y);
            format!(": centre {}", self.ruler.hit_estimate(at))
        });
        let edge_mm = self.ground().half_width.mm();
        let outside = kind.hits.iter().filter(|(_, hit)| hit.amax() > edge_mm).count();
        let outside = if outside > 0 { format!("; {outside} outside") } else { String::new() };
        format!("{head}{cold}, {}{}{outside}", kind.hits.len(), centre.unwrap_or_default())
    }
}

/// How a kind of shots is drawn: by its shape first, by its colour beside.
#[derive(Clone, Copy)]
struct Style {
    look: Look,
    hit: &'static str,
    region: &'static str,
}

impl Style {
    /// Field points, the first broadhead, and everything else.
    fn of(head: &Head, start: Start, heads_before: usize) -> Self {
        match (head, start, heads_before) {
            (Head::Field, Start::Warm, _) => {
                Self { look: Look::Disc, hit: "judged", region: "region curve" }
            }
            (Head::Broadhead(_), Start::Warm, 0) => {
                Self { look: Look::Diamond, hit: "retire", region: "region retire" }
            }
            (_, Start::Warm, _) => Self { look: Look::Square, hit: "sky", region: "region open" },
            (_, Start::Cold, _) => {
                Self { look: Look::Square, hit: "left-out", region: "region hour" }
            }
        }
    }
}

impl Block for FinishedFace<'_> {
    fn height_mm(&self) -> f64 {
        HEAD_MM + Ground::HEIGHT_MM + LINE_MM * self.at.kinds.len() as f64
    }

    fn draw(&self, canvas: &mut Canvas, corner: PaperPoint) {
        let title = format!("From {}", self.ruler.distance(self.at.distance));
        canvas.text("strong", corner.moved(0.0, -TITLE_MM), Anchor::Start, TITLE_MM, &title);
        let id = format!("from-{:.0}", self.at.distance.mm());
        let kinds = || {
            let is_head =
                |kind: &&HitsOfKind| kind.head != Head::Field && kind.start == Start::Warm;
            let kinds = self.at.kinds.iter().enumerate();
            kinds.map(move |(at, kind)| {
                let heads_before = self.at.kinds.iter().take(at).filter(is_head).count();
                (kind, Style::of(&kind.head, kind.start, heads_before))
            })
        };
        self.ground().draw(canvas, corner.moved(0.0, -HEAD_MM), &id, |canvas, scale| {
            Backdrop::Plate(self.plate).draw(canvas, scale, Offset::ZERO);
            for (kind, style) in kinds() {
                self.draw_kind(canvas, scale, kind, style);
            }
        });
        let mut line = corner.moved(0.0, -HEAD_MM - Ground::HEIGHT_MM);
        for (kind, style) in kinds() {
            line = line.moved(0.0, -LINE_MM);
            style.look.draw(canvas, style.hit, line.moved(2.0, MIDDLE * TEXT_MM));
            let text = shortened(&self.named(kind), TEXT_MM, 120.0);
            canvas.text("plain", line.moved(5.0, 0.0), Anchor::Start, TEXT_MM, &text);
        }
    }
}
