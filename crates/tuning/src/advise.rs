//! From a history to advice.

use crate::archer_group::archer_group;
use crate::assessment::Assessment;
use crate::hints::hints;
use crate::judge::{Candidate, Judge};
use crate::leave::{Leave, last_leave};
use crate::pause::pause;
use crate::roster::ShaftState;
use crate::{
    Advice, BowReport, Ending, History, LeanRelation, Matching, OpenReason, Policy, Step, Verdict,
};

/// Reads a history and says what to do now; asked twice it says the same.
pub fn advise(history: &History, policy: &Policy) -> Advice {
    from(&Assessment::of(history), history, policy)
}

/// The same with how leans go with misses, from one reading of the history; nothing of that before a counted bare shot
/// whose lean was read.
pub fn advise_with_leans(history: &History, policy: &Policy) -> (Advice, Option<LeanRelation>) {
    let assessment = Assessment::of(history);
    (from(&assessment, history, policy), assessment.lean_relation())
}

/// What follows from an assessment.
pub fn from(assessment: &Assessment<'_>, history: &History, policy: &Policy) -> Advice {
    let (judge, candidates, bow) = assessment.judge(policy).settled();
    let evidence = assessment.evidence();
    let leave = last_leave(history);
    let judged = judge.judged(candidates, &bow);
    let step = next_step(&judge, &judged, &bow, leave);
    // A part is moved only where the bow is to be moved at all.
    let proposed_move = bow.proposed_move.filter(|_| step == Step::MoveBow);
    let bow = BowReport { proposed_move, ..bow };
    let ended = matches!(step, Step::Finished(_));
    let report = |(candidate, verdict): &(Candidate<'_>, Verdict)| {
        judge.report(candidate, closed(*verdict, ended))
    };
    Advice {
        shafts: judged.iter().map(report).collect(),
        step,
        measured_from: judge.measured_from(),
        bow,
        archer: archer_group(&assessment.seen),
        older_shots: assessment.seen.older_shots,
        pause: pause(history, &evidence, policy),
        hints: hints(history, &evidence),
    }
}

/// Where nothing more is worth shooting, a shaft that could be settled says so.
fn closed(verdict: Verdict, ended: bool) -> Verdict {
    match verdict {
        Verdict::Open(OpenReason::MoreShots(shots)) if ended => {
            Verdict::Open(OpenReason::NotWorthMore(shots))
        }
        other => other,
    }
}

fn next_step(
    judge: &Judge<'_>,
    judged: &[(Candidate<'_>, Verdict)],
    bow: &BowReport,
    leave: Option<Leave<'_>>,
) -> Step {
    if judged.iter().all(|(one, _)| one.standing.state != ShaftState::InUse) {
        return Step::Finished(Ending::NoShafts);
    }
    if judge.references.is_empty() {
        return Step::Finished(Ending::NoReference);
    }
    if judge.setup.matching == Matching::Reference
        && judge.must_move(bow)
        && leave.is_none_or(|leave| leave.is_outspoken(judge.policy, bow))
    {
        return Step::MoveBow;
    }
    if let Some(shots) = judge.next_end(judged) {
        return Step::Shoot(shots);
    }
    let open = judged.iter().any(|(_, verdict)| matches!(verdict, Verdict::Open(_)));
    Step::Finished(if open { Ending::NotWorthMore } else { Ending::AllDecided })
}
