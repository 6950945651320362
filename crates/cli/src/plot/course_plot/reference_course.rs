//! Where the reference landed, end by end.

use quarterturn_geometry::Offset;
use quarterturn_tuning::{End, Event, History};

use crate::plot::axis::Axis;
use crate::plot::chart::Chart;
use crate::plot::series::{Joined, Look, Series};
use crate::plot::target_plot::middle::own;
use crate::wording::Ruler;

/// The mean counted hit of the references from the spot, for each end that has one; nothing where none has.
pub fn reference_course(history: &History, ruler: Ruler) -> Option<Chart> {
    let ends: Vec<&End> = ends(history).collect();
    let mean =
        |(number, end): (usize, &&End)| Some((number + 1, own(end, &history.setup.references)?.at));
    let means: Vec<(usize, Offset)> = ends.iter().enumerate().filter_map(mean).collect();
    if means.is_empty() {
        return None;
    }
    let along = |name: &str, class, look, of: fn(&Offset) -> f64| Series {
        name: name.to_owned(),
        class,
        look,
        joined: Joined::Line,
        points: means.iter().map(|(end, at)| [*end as f64, of(at)]).collect(),
    };
    let reach = means.iter().map(|(_, at)| at.x_mm.abs().max(at.y_mm.abs())).fold(10.0, f64::max);
    let mut across = Axis::counting("end", ends.len());
    across.range = [0.5, ends.len() as f64 + 0.5];
    across.ticks.retain(|(end, _)| *end > 0.0);
    Some(Chart {
        title: "Where the reference landed, from the spot".to_owned(),
        across,
        up: Axis::lengths(ruler, "right and high above 0", 1.35 * reach),
        breaks: evenings(&ends),
        series: vec![
            along("right", "judged", Look::Disc, |at| at.x_mm),
            along("high", "sky", Look::Diamond, |at| at.y_mm),
        ],
        area_mm: 42.0,
    })
}

/// The ends that are pooled, in order.
fn ends(history: &History) -> impl Iterator<Item = &End> {
    history.events.iter().filter_map(|event| match event {
        Event::End(end) if end.distance.is_none() => Some(end),
        _ => None,
    })
}

/// Where evenings begin, but the first.
fn evenings(ends: &[&End]) -> Vec<(f64, String)> {
    let begins = |(at, pair): (usize, &[&End])| {
        (pair[0].evening != pair[1].evening).then(|| (at as f64 + 1.5, pair[1].evening.clone()))
    };
    ends.windows(2).enumerate().filter_map(begins).collect()
}
