//! How far each bare shot landed from where its shaft is expected now, in the order they were shot.

use quarterturn_geometry::Millimetres;
use quarterturn_tuning::{Advice, History};

use crate::plot::axis::Axis;
use crate::plot::chart::Chart;
use crate::plot::series::{Joined, Look, Series};
use crate::plot::target_plot::hits::{HitKind, HitMark, Hits};
use crate::plot::ticks::Ticks;
use crate::wording::Ruler;

/// The chart; nothing where no shot can be held against an expectation.
pub fn shot_course(history: &History, advice: &Advice, ruler: Ruler) -> Option<Chart> {
    let hits = Hits::of(history, advice);
    let numbered = (1..).zip(&hits.marks);
    let off: Vec<(usize, &HitMark, f64)> =
        numbered.filter_map(|(at, hit)| Some((at, hit, off_mm(hit, advice)?))).collect();
    let last = off.last()?.0;
    let kind = |name: &str, class, look, is: fn(HitKind) -> bool| Series {
        name: name.to_owned(),
        class,
        look,
        joined: Joined::No,
        points: off
            .iter()
            .filter(|(_, hit, _)| is(hit.kind))
            .map(|&(at, _, mm)| [at as f64, mm])
            .collect(),
    };
    let reach = Millimetres::new(1.1 * off.iter().map(|(.., mm)| *mm).fold(10.0, f64::max));
    let ticks = Ticks::new(ruler.unit(), reach * 0.18);
    let named = ticks.within(reach).filter(|line| *line >= Millimetres::ZERO);
    Some(Chart {
        title: "How far each bare shot was from what is expected now".to_owned(),
        across: Axis::counting("bare shot", last),
        up: Axis {
            name: ruler.unit().symbol.to_owned(),
            range: [0.0, reach.mm()],
            ticks: named.map(|line| (line.mm(), ticks.name(line))).collect(),
        },
        breaks: Vec::new(),
        series: vec![
            kind("counted", "judged", Look::Disc, |kind| kind != HitKind::LeftOut),
            kind("left out", "left-out", Look::Square, |kind| kind == HitKind::LeftOut),
        ],
        area_mm: 42.0,
    })
}

/// How far a hit is from the nearest position that is predicted.
fn off_mm(hit: &HitMark, advice: &Advice) -> Option<f64> {
    let report = advice.shafts.iter().find(|report| report.shaft == hit.shaft)?;
    let away = |at: &&quarterturn_tuning::Prediction| at.index.turn_to(hit.index).degrees().abs();
    let nearest = report.positions.iter().min_by(|one, other| away(one).total_cmp(&away(other)))?;
    let expected = nearest.miss.mean + advice.measured_from.at();
    Some((hit.at - expected).length().mm())
}
