//! A measure that looks as if it were in another unit than the others'.

use quarterturn_journal::BenchMeasures;
use quarterturn_statistics::Sample;
use quarterturn_tuning::ShaftName;

use super::{Gauge, Workshop};

/// Fewer others make no usual size.
const FEWEST_OTHERS: usize = 2;
/// How near a factor must come to that of two units.
const NEAR: f64 = 0.1;

/// What one unit is in another, of masses and of lengths.
const MASSES: [(f64, &str); 2] = [(15.432_358, "grams and grains"), (437.5, "ounces and grains")];
const LENGTHS: [(f64, &str); 3] = [
    (25.4, "inches and millimetres"),
    (10.0, "centimetres and millimetres"),
    (2.54, "inches and centimetres"),
];

/// What of `measures` is to the other shafts' as one unit is to another; each a sentence.
pub fn unit_slip(workshop: &Workshop, shaft: &ShaftName, measures: &BenchMeasures) -> Vec<String> {
    Gauge::ALL
        .into_iter()
        .filter_map(|gauge| slip(workshop, shaft, gauge, gauge.of(measures)?))
        .collect()
}

fn slip(workshop: &Workshop, shaft: &ShaftName, gauge: Gauge, value: f64) -> Option<String> {
    let units: &[(f64, &str)] = match gauge {
        Gauge::Mass | Gauge::BareMass | Gauge::FinishedMass => &MASSES,
        Gauge::Length | Gauge::Balance | Gauge::Spine => &LENGTHS,
        _ => return None,
    };
    let others = workshop.shafts.iter().filter(|bench| bench.shaft != *shaft);
    let others: Vec<f64> = others.filter_map(|bench| gauge.of(&bench.measures)).collect();
    if others.len() < FEWEST_OTHERS {
        return None;
    }
    let median = Sample::new(others).ok()?.median();
    let times = (value / median).max(median / value);
    let (_, units) = units.iter().find(|(factor, _)| (times / factor - 1.0).abs() < NEAR)?;
    Some(format!(
        "the {} of {shaft}, {}, is to the others' {} as {units} are to each other: if the unit was wrong, take it back \
         with undo",
        gauge.said().name,
        gauge.value(value),
        gauge.value(median)
    ))
}
