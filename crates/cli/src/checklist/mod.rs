//! Every stage from raw shaft to quiver, what is still missing, and what to look at on what was retired.

mod bench_stages;
mod butt_stages;
mod facts;
mod stage;

use jiff::Timestamp;
use quarterturn_journal::State;
use quarterturn_tuning::{Advice, RetireReason, ShaftName, Verdict};

use crate::wording;
use crate::workshop::Gauge;
use facts::Facts;
pub use stage::{Stage, Stands};

/// Where a journal stands.
pub struct Checklist {
    /// In the order of the work.
    pub stages: Vec<Stage>,
    /// The shafts that were retired for what can be looked at.
    pub inspections: Vec<Inspection>,
}

/// What to look at on a shaft.
pub struct Inspection {
    pub shaft: ShaftName,
    pub reason: RetireReason,
    /// What is done, in order.
    pub look: &'static [&'static str],
    /// What was measured of it that tells, with the set's median where there is one.
    pub measured: Vec<Told>,
}

/// A measure beside the set's.
pub struct Told {
    pub gauge: Gauge,
    pub value: f64,
    pub median: Option<f64>,
}

impl Checklist {
    /// Reads where a journal stands at a moment.
    pub fn of(state: &State, advice: &Advice, now: Timestamp) -> Self {
        let facts = Facts::of(state, advice, now);
        let mut stages = bench_stages::stages(&facts);
        stages.extend(butt_stages::stages(&facts));
        let retired = advice.shafts.iter().filter_map(|report| match report.verdict {
            Verdict::Retire(reason) => facts.inspection(&report.shaft, reason),
            _ => None,
        });
        Self { inspections: retired.collect(), stages }
    }

    /// What belongs beside what is still to be done.
    pub fn cautions(&self) -> Vec<&'static str> {
        let cut = self.stages.iter().any(|s| s.word == "cut" && s.stands == Stands::Missing);
        cut.then_some(wording::CUTTING).into_iter().chain([wording::FLEX_AND_LOOK]).collect()
    }

    /// The first stage that is missing something, with its number.
    pub fn now(&self) -> Option<(usize, &Stage)> {
        let missing = |(_, stage): &(usize, &Stage)| stage.stands == Stands::Missing;
        (1..).zip(&self.stages).find(missing)
    }
}

impl Facts<'_> {
    fn inspection(&self, shaft: &ShaftName, reason: RetireReason) -> Option<Inspection> {
        let look = wording::inspection(reason);
        let measures = self.state.measures(shaft);
        let told = |gauge: &Gauge| {
            let median = self.workshop.median(*gauge);
            Some(Told { gauge: *gauge, value: gauge.of(&measures)?, median })
        };
        let measured = wording::to_measure(reason).iter().filter_map(told).collect();
        (!look.is_empty()).then(|| Inspection { shaft: shaft.clone(), reason, look, measured })
    }
}
