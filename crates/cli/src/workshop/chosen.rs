//! The shafts that go together best, and by what they were compared.

use quarterturn_bench::{Measure, best_subset};
use quarterturn_tuning::ShaftName;

use super::{Bench, Gauge, Workshop};
use crate::failure::{Failure, Kind};

/// A choice of shafts.
pub struct Chosen {
    /// The shafts, in the order of the journal.
    pub shafts: Vec<ShaftName>,
    /// The largest spread, in standard deviations of the set.
    pub largest_spread: f64,
    /// What they were compared by, each with its least and its greatest value among the chosen.
    pub compared: Vec<(Gauge, f64, f64)>,
    /// What some lack and nobody was compared by, each with those who lack it.
    pub lacking: Vec<(Gauge, Vec<ShaftName>)>,
}

impl Workshop {
    /// The `count` shafts in use that go together best, by every measure that all measured ones have.
    pub fn best(&self, count: usize) -> Result<Chosen, Failure> {
        let candidates: Vec<&Bench> = self.candidates().collect();
        let (compared, lacking) = compared(&candidates);
        let measure = |gauge: &Gauge| {
            let values = candidates.iter().filter_map(|bench| gauge.of(&bench.measures)).collect();
            Some(Measure { wanted: gauge.wanted()?, values })
        };
        let measures: Vec<Measure> = compared.iter().filter_map(measure).collect();
        if measures.is_empty() {
            return Err(nothing_in_common(&lacking));
        }
        let best = best_subset(&measures, count).map_err(|error| {
            Failure::new(Kind::Usage, error.to_string())
                .hinting([format!("{} in use are measured", candidates.len())])
        })?;
        let members: Vec<&Bench> =
            best.members.iter().filter_map(|at| candidates.get(*at).copied()).collect();
        let spread = |gauge: Gauge| {
            let values = members.iter().filter_map(move |bench| gauge.of(&bench.measures));
            let least = values.clone().fold(f64::INFINITY, f64::min);
            (gauge, least, values.fold(f64::NEG_INFINITY, f64::max))
        };
        Ok(Chosen {
            shafts: members.iter().map(|bench| bench.shaft.clone()).collect(),
            largest_spread: best.largest_spread,
            compared: compared.into_iter().map(spread).collect(),
            lacking,
        })
    }
}

/// What all of them have and what only some have. The mass is that of the finished arrow where all are finished.
fn compared(candidates: &[&Bench]) -> (Vec<Gauge>, Vec<(Gauge, Vec<ShaftName>)>) {
    let (mut compared, mut lacking) = (Vec::new(), Vec::new());
    for gauge in Gauge::ALL.into_iter().filter(|gauge| gauge.wanted().is_some()) {
        let without: Vec<ShaftName> = candidates
            .iter()
            .filter(|bench| gauge.of(&bench.measures).is_none())
            .map(|bench| bench.shaft.clone())
            .collect();
        match without.len() {
            0 if !candidates.is_empty() => compared.push(gauge),
            n if n < candidates.len() => lacking.push((gauge, without)),
            _ => {}
        }
    }
    // Of a mass the latest that all have: the others are parts of it.
    let masses = [Gauge::FinishedMass, Gauge::BareMass, Gauge::Mass];
    if let Some(latest) = masses.into_iter().find(|gauge| compared.contains(gauge)) {
        compared.retain(|gauge| *gauge == latest || !masses.contains(gauge));
    }
    (compared, lacking)
}

fn nothing_in_common(lacking: &[(Gauge, Vec<ShaftName>)]) -> Failure {
    let lack = |(gauge, names): &(Gauge, Vec<ShaftName>)| {
        format!("{} is missing on {}", gauge.said().name, crate::wording::all(names))
    };
    let what = "the shafts in use have no measure in common to be chosen by";
    let enter = "mass, spine, straightness, wobble or balance: enter one of them for every shaft";
    Failure::new(Kind::Data, what).hinting(lacking.iter().map(lack)).hinting([enter])
}
