//! A chart of one quantity over another: points in order, joined where that says something.

use std::convert::Infallible;

use plotters::prelude::{
    ChartBuilder, Circle, DrawingAreaErrorKind, IntoDrawingArea, IntoTextStyle, LabelAreaPosition,
    LineSeries, TRANSPARENT,
};

use super::axis::Axis;
use super::block::{Block, INNER_MM};
use super::canvas::Canvas;
use super::paper_box::PaperBox;
use super::paper_point::PaperPoint;
use super::segment::Segment;
use super::series::{Joined, Look, Series};
use super::shape::{Anchor, PLAIN};
use super::sheet_backend::{Ink, SheetBackend, TEXT_MM, colour, units};
use super::text_width::{MIDDLE, width_mm};

const TITLE_MM: f64 = 4.0;
/// What the first colours of plotters stand for; the series come after them.
const GRID: usize = 0;
const AXIS: usize = 1;
const QUIET: usize = 2;
const OWN: usize = 3;

/// Why plotters might not draw: no sheet gives it a reason.
type Fault = DrawingAreaErrorKind<Infallible>;

const GUTTER_MM: f64 = 13.5;
/// Room for the names of the lines, mm.
const NAMES_MM: f64 = 20.0;
/// From one name to the next, mm.
const NAME_STEP_MM: f64 = 3.75;
/// Between a line across the chart and its name, mm.
const BREAK_AIR_MM: f64 = 0.8;
const HEAD_MM: f64 = 8.0;
const FOOT_MM: f64 = 9.5;

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

    /// The grid with its numbers, and the series.
    fn plot(&self, canvas: &mut Canvas, area: PaperBox) -> Result<(), Fault> {
        let high_mm = canvas.height_mm;
        let inks = self.inks();
        let root = SheetBackend { canvas, inks }.into_drawing_area();
        let corner = (units(area.left_mm - GUTTER_MM), units(high_mm - area.top_mm));
        let wide = units(area.right_mm - area.left_mm + GUTTER_MM);
        let sheet = root.shrink(corner, (wide, units(self.area_mm + FOOT_MM)));
        let mut chart = ChartBuilder::on(&sheet)
            .set_label_area_size(LabelAreaPosition::Left, units(GUTTER_MM))
            .set_label_area_size(LabelAreaPosition::Bottom, units(FOOT_MM))
            .build_cartesian_2d(self.across.clone(), self.up.clone())?;
        let numbers = ("sans-serif", TEXT_MM).with_color(colour(QUIET));
        chart
            .configure_mesh()
            .disable_x_mesh()
            .bold_line_style(colour(GRID))
            .light_line_style(TRANSPARENT)
            .axis_style(colour(AXIS))
            .set_tick_mark_size(LabelAreaPosition::Left, units(0.7))
            .set_tick_mark_size(LabelAreaPosition::Bottom, units(1.0))
            .label_style(numbers)
            .draw()?;
        let [[left, right], [low, high]] = [self.across.range, self.up.range];
        let upright = self.across.is_both_ways().then_some([(0.0, low), (0.0, high)]);
        let level = self.up.is_both_ways().then_some([(left, 0.0), (right, 0.0)]);
        for through_nothing in upright.into_iter().chain(level) {
            chart.draw_series(LineSeries::new(through_nothing, colour(AXIS)))?;
        }
        for (number, series) in self.series.iter().enumerate() {
            let (points, ink) = (series.points.iter().map(|&[x, y]| (x, y)), colour(OWN + number));
            if series.joined == Joined::Line {
                chart.draw_series(LineSeries::new(points.clone(), ink))?;
            }
            chart.draw_series(points.map(|at| Circle::new(at, 1, ink)))?;
        }
        Ok(())
    }

    /// What the colours of plotters stand for.
    fn inks(&self) -> Vec<Ink> {
        let plain = |class: &str| Ink { line: class.to_owned(), mark: "", look: Look::Unseen };
        let series = self.series.iter().map(|series| Ink {
            line: format!("line {}", series.class),
            mark: series.class,
            look: series.look,
        });
        ["grid", "axis", "quiet"].map(plain).into_iter().chain(series).collect()
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

impl Block for Chart {
    fn height_mm(&self) -> f64 {
        HEAD_MM + self.area_mm + FOOT_MM
    }

    fn draw(&self, canvas: &mut Canvas, corner: PaperPoint) {
        let area = self.area(corner);
        canvas.text("strong", corner.moved(0.0, -TITLE_MM), Anchor::Start, TITLE_MM, &self.title);
        self.name_breaks(canvas, area);
        // A sheet refuses nothing; what plotters could say is of its own backends.
        if self.plot(canvas, area).is_err() {
            let middle = area.centre();
            canvas.text("strong", middle, Anchor::Middle, TEXT_MM, "This chart could not be drawn");
        }
        canvas.rectangle("face", area);
        self.names(canvas, area);
        let below = PaperPoint::new(area.right_mm, area.bottom_mm - FOOT_MM + 1.0);
        canvas.text("quiet", below, Anchor::End, TEXT_MM, &self.across.name);
        let above = PaperPoint::new(corner.x_mm, area.bottom_mm - FOOT_MM + 1.0);
        canvas.text("quiet", above, Anchor::Start, TEXT_MM, &self.up.name);
    }
}
