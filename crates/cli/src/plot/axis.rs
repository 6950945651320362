//! An axis of a chart.

use std::ops::Range;

use plotters::coord::ranged1d::{KeyPointHint, NoDefaultFormatting, Ranged, ValueFormatter};
use quarterturn_geometry::Millimetres;

use super::ticks::Ticks;
use crate::wording::Ruler;

/// Room beyond both ends of what is counted, as a share of it: no mark stands on the frame.
const COUNTING_AIR: f64 = 0.025;

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

impl Axis {
    /// From 0 to `most`, named at whole numbers, at most ten of them.
    pub fn counting(name: &str, most: usize) -> Self {
        let steps = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];
        let step = steps.into_iter().find(|step| most / step <= 10).unwrap_or(most.max(1));
        let ticks = (0..=most).step_by(step).map(|n| (n as f64, n.to_string()));
        let (most, air) = (most.max(1) as f64, COUNTING_AIR * most.max(1) as f64);
        Self { name: name.to_owned(), range: [-air, most + air], ticks: ticks.collect() }
    }

    /// Lengths to both sides of nothing, as far as `reach_mm`.
    pub fn lengths(ruler: Ruler, name: &str, reach_mm: f64) -> Self {
        let reach = Millimetres::new(reach_mm);
        let ticks = Ticks::new(ruler.unit(), reach * 0.3);
        let named = ticks.within(reach);
        Self {
            name: format!("{}, {name}", ruler.unit().symbol),
            range: [-reach_mm, reach_mm],
            ticks: named.map(|line| (line.mm(), signed(line.mm(), &ticks.name(line)))).collect(),
        }
    }

    /// Degrees to both sides of nothing, as far as `reach_deg`.
    pub fn degrees(name: &str, reach_deg: f64) -> Self {
        let steps = [0.5, 1.0, 2.0, 5.0, 10.0, 20.0];
        let step = steps.into_iter().find(|step| reach_deg / step < 4.0).unwrap_or(30.0);
        let most = (reach_deg / step).floor();
        let places = std::iter::successors(Some(-most), |&n| (n < most).then_some(n + 1.0));
        Self {
            name: format!("deg, {name}"),
            range: [-reach_deg, reach_deg],
            ticks: places.map(|n| (n * step, signed(n, &(n * step).abs().to_string()))).collect(),
        }
    }

    /// Whether it goes to both sides of nothing.
    pub fn is_both_ways(&self) -> bool {
        self.range[0] <= -self.range[1]
    }

    /// Where a value lies between the ends, from 0 to 1.
    pub fn share(&self, value: f64) -> f64 {
        let [from, to] = self.range;
        (value - from) / (to - from)
    }
}

impl Ranged for Axis {
    type FormatOption = NoDefaultFormatting;
    type ValueType = f64;

    fn map(&self, value: &f64, (from, to): (i32, i32)) -> i32 {
        #[expect(clippy::cast_possible_truncation, reason = "it lies within the sheet")]
        let at = (self.share(*value) * f64::from(to - from)).round() as i32;
        from + at
    }

    fn key_points<Hint: KeyPointHint>(&self, hint: Hint) -> Vec<f64> {
        let light = hint.weight().allow_light_points();
        self.ticks.iter().filter(|_| !light).map(|(at, _)| *at).collect()
    }

    fn range(&self) -> Range<f64> {
        self.range[0]..self.range[1]
    }
}

impl ValueFormatter<f64> for Axis {
    fn format_ext(&self, value: &f64) -> String {
        let named = self.ticks.iter().find(|(at, _)| at.total_cmp(value).is_eq());
        named.map_or(String::new(), |(_, name)| name.clone())
    }
}

/// A name with a minus where the value is below zero.
fn signed(value: f64, name: &str) -> String {
    if value < 0.0 { format!("−{name}") } else { name.to_owned() }
}
