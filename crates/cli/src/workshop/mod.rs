//! What the workshop knows of a set: every shaft's measures, their medians, and what stands apart.

mod asked;
mod chosen;
mod cut_list;
mod gauge;
mod predicted;
mod slip;
mod tape;

use quarterturn_bench::{Apart, standing_apart};
use quarterturn_journal::{BenchMeasures, State};
use quarterturn_statistics::Sample;
use quarterturn_tuning::{ShaftName, ShaftState, Standing};

pub use asked::{Asked, Crooked, Limit, Thrown};
pub use chosen::Chosen;
pub use cut_list::{CutList, Gate, Planned};
pub use gauge::{Gauge, spine};
pub use predicted::{BenchSide, FEWEST_TURNED, Found, Predicted, predicted};
pub use slip::unit_slip;
pub use tape::Tape;

/// One shaft or reference on the bench.
pub struct Bench {
    pub shaft: ShaftName,
    pub state: ShaftState,
    /// How often its nock was turned in its present life.
    pub turns: usize,
    pub measures: BenchMeasures,
}

/// Every shaft and reference that was measured.
pub struct Workshop {
    /// The bare shafts.
    pub shafts: Vec<Bench>,
    /// The references; nothing is compared with them.
    pub references: Vec<Bench>,
}

/// A measure that stands apart from the set's median.
pub struct StandsOut<'a> {
    pub bench: &'a Bench,
    pub gauge: Gauge,
    pub value: f64,
    pub above_median: f64,
    /// How many shafts have the measure.
    pub n: usize,
}

/// The shafts that may yet become arrows of the set, or are.
fn candidates(state: &State) -> impl Iterator<Item = &Standing> {
    state.roster().shafts.iter().filter(|standing| !is_gone(standing.state))
}

/// Whether a shaft is out of the set as it stands.
fn is_gone(state: ShaftState) -> bool {
    matches!(state, ShaftState::Lost | ShaftState::Broken | ShaftState::SetAside)
}

impl Workshop {
    /// Reads what stands in a journal.
    pub fn of(state: &State) -> Self {
        let roster = state.roster();
        let measured = |standings: &[Standing]| {
            let bench = standings.iter().map(|standing| Bench {
                shaft: standing.name.clone(),
                state: standing.state,
                turns: standing.turns,
                measures: state.measures(&standing.name),
            });
            bench.filter(|bench| bench.measures != BenchMeasures::default()).collect()
        };
        Self { shafts: measured(&roster.shafts), references: measured(&roster.references) }
    }

    /// The measured shafts that may yet become arrows of the set.
    fn candidates(&self) -> impl Iterator<Item = &Bench> {
        self.shafts.iter().filter(|bench| !is_gone(bench.state))
    }

    /// Each shaft that may become an arrow and has the measure.
    fn with(&self, gauge: Gauge) -> Vec<(&Bench, f64)> {
        self.candidates().filter_map(|bench| Some((bench, gauge.of(&bench.measures)?))).collect()
    }

    /// The set's median, where anybody has the measure.
    pub fn median(&self, gauge: Gauge) -> Option<f64> {
        let values = self.with(gauge).into_iter().map(|(_, value)| value).collect();
        Sample::new(values).ok().map(|sample| sample.median())
    }

    /// What stands apart, measure by measure.
    pub fn standing_out(&self) -> Vec<StandsOut<'_>> {
        Gauge::ALL.into_iter().flat_map(|gauge| self.standing_out_in(gauge)).collect()
    }

    fn standing_out_in(&self, gauge: Gauge) -> Vec<StandsOut<'_>> {
        let with = self.with(gauge);
        let values: Vec<f64> = with.iter().map(|(_, value)| *value).collect();
        // No measure, nothing apart: the journal takes finite numbers only.
        let apart = standing_apart(&values, gauge.said().resolution).unwrap_or_default();
        let said = |Apart { at, above_median }: Apart| {
            let (bench, value) = *with.get(at)?;
            Some(StandsOut { bench, gauge, value, above_median, n: values.len() })
        };
        apart.into_iter().filter_map(said).collect()
    }
}
