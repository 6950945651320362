//! What one doubtful shot changes.

mod doubt;
mod most_unlikely;
mod place;

use std::mem::discriminant;

pub use self::doubt::{Doubt, Without};
use self::most_unlikely::most_unlikely;
pub use self::place::counted_places;
use self::place::{Place, places};
use crate::assessment::Assessment;
use crate::judge::{Judge, MOST_SHOTS};
use crate::observation::Observations;
use crate::roster::ShaftState;
use crate::{Call, Event, Flag, History, OpenReason, Policy, ShaftName, ShaftReport, Verdict};

/// A shaft that as many further shots would decide is nearly decided.
const NEARLY: usize = 2;

/// For each shaft that is decided or nearly so by its shots, what leaving out one of them would change: each that the
/// archer called doubtful, and the one that is least likely. Shots that change nothing are not in it.
///
/// Every answer is computed anew from the journal without that shot.
pub fn doubts(history: &History, policy: &Policy) -> Vec<Doubt> {
    let assessment = Assessment::of(history);
    let evidence = assessment.evidence();
    let judge = assessment.judge(policy);
    let reports = reports(&judge);
    let mut doubts = Vec::new();
    for report in reports.iter().filter(|report| rests_on_shots(report)) {
        let mut suspects = doubtful(history, &assessment.seen, &report.shaft);
        let unlikely = most_unlikely(history, &evidence, &report.shaft);
        suspects.extend(unlikely.filter(|one| !suspects.contains(one)));
        doubts
            .extend(suspects.into_iter().filter_map(|place| doubt(history, policy, report, place)));
    }
    doubts
}

fn reports(judge: &Judge<'_>) -> Vec<ShaftReport> {
    let candidates = judge.candidates();
    let bow = judge.bow_report(&candidates);
    let judged = judge.judged(candidates, &bow).into_iter();
    judged.map(|(candidate, verdict)| judge.report(&candidate, verdict)).collect()
}

/// Where more were shot no single one decides, and looking would take a reading of the journal for each.
fn rests_on_shots(report: &ShaftReport) -> bool {
    report.state == ShaftState::InUse
        && report.shots_total <= MOST_SHOTS
        && match report.verdict {
            Verdict::Keep | Verdict::Retire(_) => true,
            Verdict::Open(OpenReason::MoreShots(shots)) => shots <= NEARLY,
            Verdict::Open(_) => false,
        }
}

/// The counted shots of a shaft that the archer called doubtful.
fn doubtful(history: &History, seen: &Observations, shaft: &ShaftName) -> Vec<Place> {
    places(history, seen, |end, shot| {
        end.distance.is_none() && shot.shaft == *shaft && shot.counts() && shot.has(Flag::Doubtful)
    })
}

/// What leaving out the shot at `place` changes, if it does.
fn doubt(history: &History, policy: &Policy, report: &ShaftReport, place: Place) -> Option<Doubt> {
    let mut without = history.clone();
    let Event::End(end) = without.events.get_mut(place.event)? else { return None };
    // A poor call leaves a shot out and everything else, the place of the mark among it, as it is.
    end.shots.get_mut(place.shot)?.call = Some(Call::Poor);
    let assessment = Assessment::of(&without);
    let reports = reports(&assessment.judge(policy));
    let other = reports.into_iter().find(|one| one.shaft == report.shaft)?;
    let without = changed(report, &other)?;
    let (end, miss) = (place.end(history), place.miss(history)?);
    Some(Doubt { shaft: report.shaft.clone(), end, miss, without })
}

/// What is said otherwise; a reason alone, and an index that is still open, are no change.
fn changed(report: &ShaftReport, other: &ShaftReport) -> Option<Without> {
    if discriminant(&report.verdict) != discriminant(&other.verdict) {
        return Some(Without::Verdict(other.verdict));
    }
    (other.verdict == Verdict::Keep && report.index != other.index)
        .then_some(Without::Index(other.index))
}
