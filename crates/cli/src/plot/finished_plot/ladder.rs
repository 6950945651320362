//! The distance ladder: the chance on the plate, and its lower bound, over the distance.

use quarterturn_geometry::Millimetres;
use quarterturn_tuning::{Chance, Reach};

use crate::plot::axis::Axis;
use crate::plot::chart::Chart;
use crate::plot::series::{Joined, Look, Series};
use crate::wording::Ruler;

/// The height of the chart, mm.
const AREA_MM: f64 = 50.0;

/// The chart; nothing where no distance has a chance.
pub fn ladder(reach: &Reach, ruler: Ruler) -> Option<Chart> {
    let worst = reach.rungs.iter().filter_map(|rung| {
        let chance = rung.kinds.get(rung.worst?)?.chance?;
        Some((rung.distance, chance))
    });
    let worst: Vec<(Millimetres, Chance)> = worst.collect();
    let (first, last) = (worst.first()?.0.metres(), worst.last()?.0.metres());
    let series = |name: &str, class, look, value: fn(&Chance) -> f64| Series {
        name: name.to_owned(),
        class,
        look,
        joined: Joined::Line,
        points: worst.iter().map(|(at, chance)| [at.metres(), 100.0 * value(chance)]).collect(),
    };
    let ticks = worst.iter().map(|(at, _)| (at.metres(), ruler.distance(*at))).collect();
    let tenths = (0..=10).step_by(2).map(|n| (f64::from(n) * 10.0, (n * 10).to_string()));
    Some(Chart {
        title: "The chance of each arrow on the plate".to_owned(),
        across: Axis { name: "from".to_owned(), range: [first - 2.0, last + 2.0], ticks },
        up: Axis {
            name: "%, of the kind with the least".to_owned(),
            range: [0.0, 100.0],
            ticks: tenths.collect(),
        },
        breaks: Vec::new(),
        series: vec![
            series("estimate", "judged", Look::Disc, |chance| chance.estimate),
            series("at least", "retire", Look::Diamond, |chance| chance.at_least),
        ],
        area_mm: AREA_MM,
    })
}
