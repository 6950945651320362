//! The picture of what an advice costs.

use std::error::Error;
use std::time::Duration;

use plotters::prelude::{
    ChartBuilder, Circle, Color, IntoDrawingArea, IntoFont, LineSeries, RGBColor, SVGBackend, WHITE,
};

/// Width and height, pixels.
const SIZE: (u32, u32) = (720, 420);
const INK: RGBColor = RGBColor(27, 77, 96);
const LINE: RGBColor = RGBColor(190, 110, 40);

/// Draws the times over the shots, with the straight line of least squares through them.
pub fn draw(file: &str, timed: &[(usize, Duration)]) -> Result<(), Box<dyn Error>> {
    let points: Vec<_> =
        timed.iter().map(|(shots, took)| (*shots as f64, 1000.0 * took.as_secs_f64())).collect();
    let most = |of: fn(&(f64, f64)) -> f64| 1.1 * points.iter().map(of).fold(0.0, f64::max);
    let (right, top) = (most(|point| point.0), most(|point| point.1));
    let (at_none, per_shot) = line(&points);
    let root = SVGBackend::new(file, SIZE).into_drawing_area();
    root.fill(&WHITE)?;
    let caption = format!(
        "one advice, 12 shafts: {at_none:.0} ms and {:.0} ms for each 1000 shots",
        1000.0 * per_shot
    );
    let mut chart = ChartBuilder::on(&root)
        .margin(16)
        .caption(caption, ("sans-serif", 18).into_font())
        .x_label_area_size(44)
        .y_label_area_size(60)
        .build_cartesian_2d(0.0..right, 0.0..top)?;
    let whole = |value: &f64| format!("{value:.0}");
    chart
        .configure_mesh()
        .light_line_style(WHITE)
        .x_label_formatter(&whole)
        .y_label_formatter(&whole)
        .x_desc("counted shots")
        .y_desc("ms, one core")
        .draw()?;
    let ends = [0.0, right].map(|shots| (shots, at_none + per_shot * shots));
    chart.draw_series(LineSeries::new(ends, LINE.stroke_width(2)))?;
    chart.draw_series(points.iter().map(|&point| Circle::new(point, 5, INK.filled())))?;
    root.present()?;
    Ok(())
}

/// The straight line of least squares: its height at none, and its slope.
fn line(points: &[(f64, f64)]) -> (f64, f64) {
    let n = points.len() as f64;
    let mean = |of: &dyn Fn(&(f64, f64)) -> f64| points.iter().map(of).sum::<f64>() / n;
    let (x, y) = (mean(&|point| point.0), mean(&|point| point.1));
    let along = mean(&|point| (point.0 - x) * (point.1 - y));
    let slope = along / mean(&|point| (point.0 - x).powi(2));
    (y - slope * x, slope)
}
