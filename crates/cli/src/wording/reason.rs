//! Why a shaft has its verdict.

use quarterturn_tuning::{OpenReason, RetireReason, ShaftReport, Verdict};

use super::{Ruler, count, mark, percent};

/// The verdict in a word.
pub const fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Keep => "keep",
        Verdict::Open(_) => "open",
        Verdict::Retire(_) => "retire",
    }
}

/// The reason of a verdict: a phrase without a full stop.
pub fn reason(report: &ShaftReport, ruler: Ruler) -> String {
    let reason = match report.verdict {
        Verdict::Keep => kept(report),
        Verdict::Open(reason) => open(reason, report),
        Verdict::Retire(reason) => retired(reason, report, ruler),
    };
    if report.nock_is_worn() {
        format!("{reason}; renew its nock, turned {}", count(report.turns, "time"))
    } else {
        reason
    }
}

fn kept(report: &ShaftReport) -> String {
    let elsewhere = report.shots_total - report.shots_here.min(report.shots_total);
    let here = format!("{} at {}", count(report.shots_here, "shot"), mark(report.index));
    let shots = match (report.shots_here, elsewhere) {
        (_, 0) => here,
        (0, _) => format!("{} at other marks", count(elsewhere, "shot")),
        (_, _) => format!("{here} and {elsewhere} elsewhere"),
    };
    format!("{} sure to be inside, from {shots}", percent(report.within))
}

fn open(reason: OpenReason, report: &ShaftReport) -> String {
    let mark = mark(report.index);
    match reason {
        OpenReason::NotShot => "not shot yet".to_owned(),
        OpenReason::MoreShots(1) => format!("one more shot at {mark} decides it, as likely as not"),
        OpenReason::MoreShots(shots) => {
            format!("about {shots} more shots at {mark} would decide it")
        }
        OpenReason::NotWorthMore(shots) => {
            format!("not worth more shots: about {shots} more at {mark} would decide it")
        }
        OpenReason::CannotTell => {
            "with your group at this distance no number of shots decides it".to_owned()
        }
        OpenReason::BowOff => "only a move of the bow can bring it in".to_owned(),
        OpenReason::NoReference => "no fletched reference is left to measure it from".to_owned(),
    }
}

/// The reason for which a shaft was retired, in a word or two.
pub const fn retire_reason(reason: RetireReason) -> &'static str {
    match reason {
        RetireReason::CircleTooBig => "circle too big",
        RetireReason::CentreOff => "centre off",
        RetireReason::DoesNotRepeat => "does not repeat",
        RetireReason::SetAside => "set aside",
        RetireReason::Lost => "lost",
        RetireReason::Broken => "broken",
    }
}

fn retired(reason: RetireReason, report: &ShaftReport, ruler: Ruler) -> String {
    let best = || {
        let miss = ruler.miss_of(report.miss.mean);
        let (mark, within) = (mark(report.index), percent(report.within));
        format!(
            "at {mark}, its best mark, it still lands {miss} where it should, {within} sure to be inside"
        )
    };
    match reason {
        RetireReason::CircleTooBig => format!("circle too big: {}", best()),
        RetireReason::CentreOff => format!("centre off: {}", best()),
        RetireReason::DoesNotRepeat => {
            "does not repeat: it scatters more than the archer does; flex and inspect it first"
                .into()
        }
        RetireReason::SetAside => "set aside: laid by until it is readmitted".to_owned(),
        RetireReason::Lost => "lost: it was not found".to_owned(),
        RetireReason::Broken => "broken: not to be shot until it is repaired".to_owned(),
    }
}
