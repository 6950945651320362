//! The archer's word that the bow stays as it is.

use std::collections::BTreeSet;

use crate::assessment::Assessment;
use crate::{BowReport, Event, History, Policy, ShaftName};

/// After the archer left the bow, so many shafts must speak anew before he is asked again.
const SPEAKING_SHAFTS: usize = 3;

/// The last time the archer left the bow as it is, if he has not changed it since.
#[derive(Clone, Copy, Debug)]
pub struct Leave<'a> {
    history: &'a History,
    at: usize,
}

/// The leave that is in force.
pub fn last_leave(history: &History) -> Option<Leave<'_>> {
    let at =
        history.events.iter().rposition(|event| matches!(event, Event::BowLeft | Event::Bow(_)))?;
    matches!(history.events[at], Event::BowLeft).then_some(Leave { history, at })
}

impl Leave<'_> {
    /// Whether new shots of several shafts ask for a move more strongly than before the leave.
    pub fn is_outspoken(&self, policy: &Policy, bow: &BowReport) -> bool {
        self.shafts_since().len() >= SPEAKING_SHAFTS
            && bow.distance() > self.distance_before(policy)
    }

    /// The bare shafts with a counted shot since.
    fn shafts_since(&self) -> BTreeSet<&ShaftName> {
        let ends = self.history.events[self.at..].iter().filter_map(|event| match event {
            Event::End(end) if end.distance.is_none() => Some(end),
            _ => None,
        });
        let bare = |name: &ShaftName| self.history.setup.shafts.iter().any(|(one, _)| one == name);
        ends.flat_map(|end| &end.shots)
            .filter(|shot| shot.counts() && bare(&shot.shaft))
            .map(|shot| &shot.shaft)
            .collect()
    }

    fn distance_before(&self, policy: &Policy) -> f64 {
        let before = self.history.after(self.at);
        let assessment = Assessment::of(&before);
        let judge = assessment.judge(policy);
        judge.bow_report(&judge.candidates()).distance()
    }
}
