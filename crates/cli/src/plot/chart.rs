//! A chart of one quantity over another: points in order, joined where that says something.

use super::axis::Axis;
use super::block::{Block, INNER_MM};
use super::canvas::Canvas;
use super::paper_box::PaperBox;
use super::paper_point::PaperPoint;
use super::segment::Segment;
use super::shape::{Anchor, PLAIN};
use super::text_width::{MIDDLE, width_mm};

const TITLE_MM: f64 = 4.0;
const TEXT_MM: f64 = 3.0;
const GUTTER_MM: f64 = 13.5;
/// Room for the names of the lines, mm.
const NAMES_MM: f64 = 20.0;
/// From one name to the next, mm.
const NAME_STEP_MM: f64 = 3.75;
/// Between a line across the chart and its name, mm.
const BREAK_AIR_MM: f64 = 0.8;
const HEAD_MM: f64 = 8.0;
const FOOT_MM: f64 = 9.5;

/// How a point looks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Look {
    /// A disc.
    Disc,
    /// A square.
    Square,
    /// A diamond.
    Diamond,
    /// Nothing: the line says it all.
    Unseen,
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
    /// What they are, said beside the chart; nothing where another series says it.
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
            canvas.line(self.up.class(*value), Segment { from, to });
            let beside = from.moved(-1.4, -MIDDLE * TEXT_MM);
            canvas.text("quiet", beside, Anchor::End, TEXT_MM, name);
        }
        for (value, name) in &self.across.ticks {
            let at = self.place(area, [*value, self.up.range[0]]);
            canvas.line("axis", Segment { from: at, to: at.moved(0.0, -1.0) });
            if self.across.class(*value) == "axis" {
                canvas
                    .line("axis", Segment { from: at, to: PaperPoint::new(at.x_mm, area.top_mm) });
            }
            canvas.text("quiet", at.moved(0.0, -4.2), Anchor::Middle, TEXT_MM, name);
        }
        self.name_breaks(canvas, area);
        canvas.rectangle("face", area);
    }

    /// Lines across the chart, each with its name to the right of it, or to the left, where that meets nothing.
    fn name_breaks(&self, canvas: &mut Canvas, area: PaperBox) {
        let at_mm = |value: f64| self.place(area, [value, self.up.range[0]]).x_mm;
        let size_mm = TEXT_MM * 0.85;
        let mut free_mm = area.left_mm;
        for (number, (value, name)) in self.breaks.iter().enumerate() {
            let line_mm = at_mm(*value);
            let from = PaperPoint::new(line_mm, area.bottom_mm);
            canvas.line("break", Segment { from, to: PaperPoint::new(line_mm, area.top_mm) });
            let next_mm = self.breaks.get(number + 1).map_or(area.right_mm, |next| at_mm(next.0));
            let wide_mm = width_mm(name, size_mm) + 2.0 * BREAK_AIR_MM;
            let base = PaperPoint::new(line_mm, area.top_mm - TEXT_MM);
            if line_mm + wide_mm <= next_mm {
                let at = base.moved(BREAK_AIR_MM, 0.0);
                canvas.text("quiet", at, Anchor::Start, size_mm, name);
                free_mm = line_mm + wide_mm;
            } else {
                if line_mm - wide_mm >= free_mm {
                    let at = base.moved(-BREAK_AIR_MM, 0.0);
                    canvas.text("quiet", at, Anchor::End, size_mm, name);
                }
                free_mm = line_mm;
            }
        }
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

    /// The names beside the chart: of lines at their last points, moved apart where they would meet; of dots from the top.
    fn names(&self, canvas: &mut Canvas, area: PaperBox) {
        let dots = self.series.iter().any(|series| series.joined == Joined::No);
        let from_top = |place: usize| area.top_mm - 2.0 - NAME_STEP_MM * place as f64;
        let drawn = self.series.iter().filter(|series| !series.name.is_empty());
        let mut named: Vec<(f64, &Series)> = drawn
            .filter_map(|series| Some((self.place(area, *series.points.last()?).y_mm, series)))
            .enumerate()
            .map(|(place, (end_mm, series))| (if dots { from_top(place) } else { end_mm }, series))
            .collect();
        named.sort_by(|one, other| one.0.total_cmp(&other.0));
        let mut lowest_mm = area.bottom_mm;
        for (y_mm, series) in named {
            let y_mm = y_mm.max(lowest_mm);
            let at = PaperPoint::new(area.right_mm + 4.0, y_mm);
            series.sample(canvas, at);
            let beside = at.moved(2.4, -MIDDLE * TEXT_MM);
            canvas.text(PLAIN, beside, Anchor::Start, TEXT_MM, &series.name);
            lowest_mm = y_mm + NAME_STEP_MM;
        }
    }
}

impl Series {
    /// What stands before its name.
    fn sample(&self, canvas: &mut Canvas, at: PaperPoint) {
        if self.joined == Joined::Line {
            let [from, to] = [-1.8, 1.8].map(|right_mm| at.moved(right_mm, 0.0));
            canvas.line(&format!("line {}", self.class), Segment { from, to });
        }
        self.look.draw(canvas, self.class, at);
    }
}

impl Look {
    fn draw(self, canvas: &mut Canvas, class: &str, at: PaperPoint) {
        match self {
            Self::Disc => canvas.circle(class, at, 0.9),
            Self::Square => canvas.rectangle(class, PaperBox::around(at, 1.7, 1.7)),
            Self::Diamond => {
                let corners = [(0.0, 1.2), (1.2, 0.0), (0.0, -1.2), (-1.2, 0.0)];
                canvas.polygon(class, &corners.map(|(right, up)| at.moved(right, up)));
            }
            Self::Unseen => {}
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
