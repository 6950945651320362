//! A chart of one quantity over another: points in order, joined where that says something.

use super::block::{Block, INNER_MM};
use super::canvas::Canvas;
use super::paper_box::PaperBox;
use super::paper_point::PaperPoint;
use super::segment::Segment;
use super::shape::Anchor;
use super::text_width::{MIDDLE, width_mm};

const TITLE_MM: f64 = 4.0;
const TEXT_MM: f64 = 3.0;
const GUTTER_MM: f64 = 13.5;
/// Room for the names of the lines, mm.
const NAMES_MM: f64 = 20.0;
const HEAD_MM: f64 = 8.0;
const FOOT_MM: f64 = 9.5;

/// A range with the places that are named on it.
#[derive(Clone, Debug, PartialEq)]
pub struct Axis {
    /// What it is of.
    pub name: String,
    /// Its ends.
    pub range: [f64; 2],
    /// Where it is named, and how.
    pub ticks: Vec<(f64, String)>,
}

/// How a point looks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Look {
    /// A disc.
    Disc,
    /// A square.
    Square,
    /// A diamond.
    Diamond,
}

/// Whether the points of a line are joined.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Joined {
    /// One to the next.
    Line,
    /// Not at all.
    No,
}

/// Points of one kind.
#[derive(Clone, Debug, PartialEq)]
pub struct Series {
    /// What they are, said at the last of them.
    pub name: String,
    /// The class of their shapes.
    pub class: &'static str,
    /// How each looks.
    pub look: Look,
    /// Whether they are joined.
    pub joined: Joined,
    /// Where they are.
    pub points: Vec<[f64; 2]>,
}

/// The chart.
#[derive(Clone, Debug, PartialEq)]
pub struct Chart {
    /// What it shows.
    pub title: String,
    /// Along the lower edge.
    pub across: Axis,
    /// Along the left edge.
    pub up: Axis,
    /// Lines across the whole chart at these places of `across`, with a word each.
    pub breaks: Vec<(f64, String)>,
    /// What is drawn.
    pub series: Vec<Series>,
    /// The height of its area, mm.
    pub area_mm: f64,
}

impl Axis {
    /// From 0 to `most`, named at whole numbers, at most ten of them.
    pub fn counting(name: &str, most: usize) -> Self {
        let steps = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];
        let step = steps.into_iter().find(|step| most / step <= 10).unwrap_or(most.max(1));
        let ticks = (0..=most).step_by(step).map(|n| (n as f64, n.to_string()));
        Self { name: name.to_owned(), range: [0.0, most.max(1) as f64], ticks: ticks.collect() }
    }

    /// Where a value lies between the ends, from 0 to 1.
    fn share(&self, value: f64) -> f64 {
        let [from, to] = self.range;
        (value - from) / (to - from)
    }
}

impl Chart {
    fn area(&self, corner: PaperPoint) -> PaperBox {
        PaperBox {
            left_mm: corner.x_mm + GUTTER_MM,
            right_mm: corner.x_mm + INNER_MM - NAMES_MM,
            top_mm: corner.y_mm - HEAD_MM,
            bottom_mm: corner.y_mm - HEAD_MM - self.area_mm,
        }
    }

    fn place(&self, area: PaperBox, [x, y]: [f64; 2]) -> PaperPoint {
        PaperPoint::new(
            area.left_mm + self.across.share(x) * (area.right_mm - area.left_mm),
            area.bottom_mm + self.up.share(y) * (area.top_mm - area.bottom_mm),
        )
    }

    fn grid(&self, canvas: &mut Canvas, area: PaperBox) {
        for (value, name) in &self.up.ticks {
            let from = self.place(area, [self.across.range[0], *value]);
            let to = PaperPoint::new(area.right_mm, from.y_mm);
            canvas.line("grid", Segment { from, to });
            let beside = from.moved(-1.4, -MIDDLE * TEXT_MM);
            canvas.text("quiet", beside, Anchor::End, TEXT_MM, name);
        }
        for (value, name) in &self.across.ticks {
            let at = self.place(area, [*value, self.up.range[0]]);
            canvas.line("axis", Segment { from: at, to: at.moved(0.0, -1.0) });
            canvas.text("quiet", at.moved(0.0, -4.2), Anchor::Middle, TEXT_MM, name);
        }
        let mut free_mm = area.left_mm;
        for (value, name) in &self.breaks {
            let from = self.place(area, [*value, self.up.range[0]]);
            let to = PaperPoint::new(from.x_mm, area.top_mm);
            canvas.line("break", Segment { from, to });
            let (beside, size_mm) = (to.moved(0.8, -TEXT_MM), TEXT_MM * 0.85);
            let end_mm = beside.x_mm + width_mm(name, size_mm);
            // A name that would run into the one before it or out of the chart is left out; its line stays.
            if beside.x_mm >= free_mm && end_mm <= area.right_mm {
                canvas.text("quiet", beside, Anchor::Start, size_mm, name);
                free_mm = end_mm;
            }
        }
        canvas.rectangle("face", area);
    }

    fn draw_series(&self, canvas: &mut Canvas, area: PaperBox, series: &Series) {
        let places: Vec<PaperPoint> =
            series.points.iter().map(|&point| self.place(area, point)).collect();
        if series.joined == Joined::Line {
            for pair in places.windows(2) {
                let class = format!("line {}", series.class);
                canvas.line(&class, Segment { from: pair[0], to: pair[1] });
            }
        }
        for &at in &places {
            series.look.draw(canvas, series.class, at);
        }
    }

    /// The names of the lines beside their last points, moved apart where they would meet.
    fn names(&self, canvas: &mut Canvas, area: PaperBox) {
        let last = |series: &Series| series.points.last().map(|&at| self.place(area, at).y_mm);
        let mut named: Vec<(f64, &Series)> =
            self.series.iter().filter_map(|series| Some((last(series)?, series))).collect();
        named.sort_by(|one, other| one.0.total_cmp(&other.0));
        let mut lowest_mm = area.bottom_mm;
        for (y_mm, series) in named {
            let y_mm = y_mm.max(lowest_mm);
            let at = PaperPoint::new(area.right_mm + 2.2, y_mm);
            series.look.draw(canvas, series.class, at);
            let beside = at.moved(2.2, -MIDDLE * TEXT_MM);
            canvas.text("plain", beside, Anchor::Start, TEXT_MM, &series.name);
            lowest_mm = y_mm + TEXT_MM * 1.25;
        }
    }
}

impl Look {
    /// Draws it.
    pub fn draw(self, canvas: &mut Canvas, class: &str, at: PaperPoint) {
        match self {
            Self::Disc => canvas.circle(class, at, 0.9),
            Self::Square => canvas.rectangle(class, PaperBox::around(at, 1.7, 1.7)),
            Self::Diamond => {
                let corners = [(0.0, 1.2), (1.2, 0.0), (0.0, -1.2), (-1.2, 0.0)];
                canvas.polygon(class, &corners.map(|(right, up)| at.moved(right, up)));
            }
        }
    }
}

impl Block for Chart {
    fn height_mm(&self) -> f64 {
        HEAD_MM + self.area_mm + FOOT_MM
    }

    fn draw(&self, canvas: &mut Canvas, corner: PaperPoint) {
        let area = self.area(corner);
        canvas.text("strong", corner.moved(0.0, -TITLE_MM), Anchor::Start, TITLE_MM, &self.title);
        self.grid(canvas, area);
        for series in &self.series {
            self.draw_series(canvas, area, series);
        }
        self.names(canvas, area);
        let below = PaperPoint::new(area.right_mm, area.bottom_mm - FOOT_MM + 1.0);
        canvas.text("quiet", below, Anchor::End, TEXT_MM, &self.across.name);
        let above = PaperPoint::new(corner.x_mm, area.bottom_mm - FOOT_MM + 1.0);
        canvas.text("quiet", above, Anchor::Start, TEXT_MM, &self.up.name);
    }
}
