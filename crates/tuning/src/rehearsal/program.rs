//! This program's advice, followed to its end.

use super::session::{MOST_STEPS, Session};
use super::{Outcome, Ruling, Said};
use crate::{Advice, Policy, Setup, Step, World, advise};

/// What is said counts from this end on: before it there is little to say anything from.
const FIRST_END_COUNTED: usize = 6;

/// Plays a dozen by the advice.
pub fn play(setup: &Setup, world: World, seed: u64) -> Outcome {
    let mut session = Session::begin(setup, world, seed);
    loop {
        let advice = advise(&session.history, &Policy::default());
        session.hear(&advice);
        match &advice.step {
            _ if session.history.events.len() >= MOST_STEPS => return session.settle(&advice),
            Step::Finished(_) => return session.settle(&advice),
            Step::Shoot(planned) => {
                session.shoot(planned);
            }
            Step::MoveBow => session.move_bow(advice.bow.wanted_shift),
        }
    }
}

impl Session {
    /// Holds what is said of every shaft against the truth.
    fn hear(&mut self, advice: &Advice) {
        if self.outcome.ends >= FIRST_END_COUNTED {
            let tolerance = self.history.setup.tolerance;
            let said = advice.shafts.iter().filter_map(|report| {
                let truth = self.archer.true_miss(&report.shaft, report.index)?;
                Some(Said::of(report, truth, tolerance))
            });
            self.outcome.said.extend(said);
        }
    }

    fn settle(self, advice: &Advice) -> Outcome {
        let settled =
            advice.shafts.iter().map(|report| (Ruling::from(report.verdict), report.index));
        self.close(settled)
    }
}
