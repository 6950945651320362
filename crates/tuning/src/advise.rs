//! From a history to advice.

use crate::archer_group::archer_group;
use crate::judge::{Candidate, Judge};
use crate::observation::{Kind, Observations};
use crate::posterior::Posterior;
use crate::roster::{Roster, ShaftState};
use crate::{
    Advice, BowReport, Ending, Event, History, OpenReason, Policy, Scales, Step, Verdict,
};
use quarterturn_geometry::Offset;

/// Reads a history and says what to do now; asked twice it says the same.
pub fn advise(history: &History, policy: &Policy) -> Advice {
    let seen = Observations::of(history);
    let roster = Roster::of(history);
    let scales = Scales::at(history.setup.distance);
    let Some(posterior) = Posterior::fit(&seen, &scales) else { unreachable!() };
    let lives = |names: &[&crate::roster::Standing]| -> Vec<usize> {
        names.iter().filter_map(|one| seen.life_of(&one.name)).collect()
    };
    let references = lives(&roster.references_in_use().collect::<Vec<_>>());
    let shafts = lives(&roster.shafts.iter().collect::<Vec<_>>());
    let judge = Judge {
        setup: &history.setup,
        policy,
        scales: &scales,
        posterior: &posterior,
        roster: &roster,
        references,
        bow: seen.bow_changes_mm.len(),
    };
    let candidates = judge.candidates(&shafts);
    let bow = judge.bow_report(&candidates);
    let move_bow = bow_speaks(history, policy, &judge, &bow, &seen);
    let left = bow_was_left(history).is_some();
    let shift = if left { Offset::ZERO } else { bow.wanted_shift };
    let judged: Vec<(Candidate<'_>, Verdict)> = candidates
        .into_iter()
        .map(|candidate| {
            let verdict = judge.verdict(&candidate, shift);
            (candidate, verdict)
        })
        .collect();
    let step = step(history, &judge, &judged, &seen, move_bow);
    let ended = matches!(step, Step::Finished(_));
    Advice {
        step,
        shafts: judged
            .iter()
            .map(|(candidate, verdict)| judge.report(candidate, close(*verdict, ended)))
            .collect(),
        bow,
        archer: archer_group(&seen),
        pause: None,
    }
}

/// Where nothing more is worth shooting, an open shaft says so.
fn close(verdict: Verdict, ended: bool) -> Verdict {
    match verdict {
        Verdict::Open(OpenReason::MoreShots(shots)) if ended => {
            Verdict::Open(OpenReason::NotWorthMore(shots))
        }
        other => other,
    }
}

fn step(
    history: &History,
    judge: &Judge<'_>,
    judged: &[(Candidate<'_>, Verdict)],
    seen: &Observations,
    move_bow: bool,
) -> Step {
    if judged.iter().all(|(one, _)| one.standing.state != ShaftState::InUse) {
        return Step::Finished(Ending::NoShafts);
    }
    if judge.references.is_empty() {
        return Step::Finished(Ending::NoReference);
    }
    if move_bow {
        return Step::MoveBow;
    }
    let seed = history.events.len() as u64;
    if let Some(shots) = judge.next_end(judged, leans_are_read(seen), seed) {
        return Step::Shoot(shots);
    }
    let open = judged.iter().any(|(_, verdict)| matches!(verdict, Verdict::Open(_)));
    Step::Finished(if open { Ending::NotWorthMore } else { Ending::AllDecided })
}

/// Whether most bare shots came with a lean; before the first shot it is hoped for.
fn leans_are_read(seen: &Observations) -> bool {
    let bare = || seen.shots.iter().filter(|shot| seen.lives[shot.life].kind == Kind::Bare);
    2 * bare().filter(|shot| shot.lean_deg.is_some()).count() >= bare().count()
}

/// The events up to the last time the bow was left as it is, if it was not changed since.
fn bow_was_left(history: &History) -> Option<usize> {
    let last = history
        .events
        .iter()
        .rposition(|event| matches!(event, Event::BowLeft | Event::Bow(_)))?;
    matches!(history.events[last], Event::BowLeft).then_some(last)
}

/// Whether the bow must be moved now.
fn bow_speaks(
    history: &History,
    policy: &Policy,
    judge: &Judge<'_>,
    bow: &BowReport,
    seen: &Observations,
) -> bool {
    let _ = (history, policy, seen);
    judge.must_move(bow)
}
