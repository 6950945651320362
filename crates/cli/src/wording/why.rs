//! The step in one sentence that a person can act on.

use quarterturn_geometry::{Index, Millimetres, Offset};
use quarterturn_tuning::{
    Advice, Aim, Ending, MeasuredFrom, OpenReason, PlannedShot, Purpose, ShaftName, Step, Verdict,
};

use super::{Ruler, all, mark, tally, what_to_move};

/// Why this step, in one sentence with its full stop.
pub fn why(advice: &Advice, ruler: Ruler) -> String {
    match &advice.step {
        Step::Shoot(shots) => format!("Shoot this end for {}.", purposes(shots)),
        Step::MoveBow => move_bow(advice, ruler),
        Step::Finished(ending) => finished(*ending, advice, ruler),
    }
}

/// What the planned end should settle, in one sentence; nothing unless an end is planned.
pub fn settles(advice: &Advice) -> Option<String> {
    let Step::Shoot(shots) = &advice.step else { return None };
    let nearly_decided = |shot: &&PlannedShot| {
        advice.shafts.iter().any(|report| {
            report.shaft == shot.shaft && report.verdict == Verdict::Open(OpenReason::MoreShots(1))
        })
    };
    let settled: Vec<&ShaftName> =
        shots.iter().filter(nearly_decided).map(|shot| &shot.shaft).collect();
    Some(if settled.is_empty() {
        "It settles no shaft yet; it tells which to look at more closely.".to_owned()
    } else {
        format!("It should settle {}.", all(settled))
    })
}

/// What a shot is for, in a few words.
pub const fn purpose(purpose: Purpose) -> &'static str {
    match purpose {
        Purpose::Reference => "to measure from",
        Purpose::Bare { aim: Aim::FirstLook, .. } => "first look",
        Purpose::Bare { aim: Aim::Try, .. } => "try it there",
        Purpose::Bare { aim: Aim::NewBow, .. } => "see the bow",
        Purpose::Bare { aim: Aim::Confirm, .. } => "confirm it",
        Purpose::Bare { aim: Aim::Doubt, .. } => "make sure",
    }
}

/// The purposes of an end: each aim once, with its shafts.
fn purposes(shots: &[PlannedShot]) -> String {
    let aims = [
        (Aim::FirstLook, "a first look at"),
        (Aim::Try, "a try of"),
        (Aim::NewBow, "a look at the changed bow with"),
        (Aim::Confirm, "a confirming shot of"),
        (Aim::Doubt, "another look, before it is retired, at"),
    ];
    let purpose = |(aim, words): (Aim, &str)| {
        let named: Vec<String> = shots.iter().filter_map(|shot| named(shot, aim)).collect();
        (!named.is_empty()).then(|| format!("{words} {}", all(named)))
    };
    // Each has an "and" of its own, so they are parted by more than that.
    let said: Vec<String> = aims.into_iter().filter_map(purpose).collect();
    if said.is_empty() {
        "a better look at the reference".to_owned()
    } else {
        said.join(", and for ")
    }
}

/// "7 at 3 o'clock", where the shot has this aim.
fn named(shot: &PlannedShot, wanted: Aim) -> Option<String> {
    match shot.purpose {
        Purpose::Bare { aim, index, .. } if aim == wanted => Some(placed(&shot.shaft, aim, index)),
        _ => None,
    }
}

fn placed(shaft: &ShaftName, aim: Aim, index: Index) -> String {
    match aim {
        Aim::FirstLook => shaft.to_string(),
        Aim::Try | Aim::NewBow | Aim::Confirm | Aim::Doubt => format!("{shaft} at {}", mark(index)),
    }
}

fn move_bow(advice: &Advice, ruler: Ruler) -> String {
    let bow = &advice.bow;
    format!(
        "Move the bow before more nock work: bare shafts as a whole land {} the reference, and \
         bringing them {} should put about {:.0} of {} inside the tolerance instead of {:.0}; {}.",
        ruler.miss_of(bow.offset.mean),
        ruler.shift(bow.wanted_shift),
        bow.expected_within_if_moved,
        bow.shafts,
        bow.expected_within_now,
        what_to_move(bow, ruler)
    )
}

fn finished(ending: Ending, advice: &Advice, ruler: Ruler) -> String {
    let tally = tally(&advice.shafts);
    let brought_in = brought_in(advice, ruler);
    match ending {
        Ending::AllDecided => format!("Every shaft has its verdict: {tally}{brought_in}."),
        Ending::NotWorthMore => format!(
            "Nothing is left that is worth shooting: {tally}; what is open would cost more shots \
             than the answer is worth{brought_in}."
        ),
        Ending::NoReference => {
            "No fletched reference is left to measure from: put a trusted arrow under its name and \
             record it as repaired."
                .to_owned()
        }
        Ending::NoShafts => "No bare shaft is left to shoot.".to_owned(),
    }
}

/// "; together they land 60 mm right of the reference ...": how a set that matches itself comes to the reference.
fn brought_in(advice: &Advice, ruler: Ruler) -> String {
    let MeasuredFrom::CommonPoint(point) = advice.measured_from else { return String::new() };
    let either_way = Millimetres::new((point.covariance_mm2.trace() / 2.0).sqrt());
    let lands = ruler.miss_of(point.mean);
    let where_now = format!(
        "; together they land {lands} the reference, give or take {}",
        ruler.estimate(either_way)
    );
    let shift = ruler.shift(-point.mean);
    if shift == ruler.shift(Offset::ZERO) {
        return where_now;
    }
    format!("{where_now}: move the bow so that they come {shift}, or set the sight by them")
}
