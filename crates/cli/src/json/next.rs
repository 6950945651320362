//! The answer of `next`.

use quarterturn_tuning::{Advice, Step};
use serde::Serialize;

use super::aim_answer::AimAnswer;
use super::bow_answer::BowAnswer;
use super::hint_answer::HintAnswer;
use super::planned::Planned;
use super::shaft_answer::ShaftAnswer;
use crate::failure::Failure;
use crate::opened::Opened;
use crate::wording;

#[derive(Serialize)]
struct NextAnswer<'a> {
    schema: &'static str,
    step: &'static str,
    why: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    settles: Option<String>,
    shots: Vec<Planned<'a>>,
    #[serde(flatten)]
    aim: AimAnswer,
    shafts: Vec<ShaftAnswer<'a>>,
    bow: BowAnswer,
    #[serde(skip_serializing_if = "Option::is_none")]
    pause: Option<String>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    hints: Vec<HintAnswer<'a>>,
}

/// What to do now, as JSON.
pub fn next(opened: &Opened, advice: &Advice) -> Result<String, Failure> {
    let ruler = opened.ruler();
    let (step, shots) = match &advice.step {
        Step::Shoot(shots) => ("shoot", shots.as_slice()),
        Step::MoveBow => ("bow", [].as_slice()),
        Step::Finished(_) => ("finished", [].as_slice()),
    };
    super::finite_line(&NextAnswer {
        schema: "quarterturn.next/1",
        step,
        why: wording::why(advice, ruler),
        settles: wording::settles(advice),
        shots: shots.iter().map(Planned::from).collect(),
        aim: AimAnswer::from(advice.measured_from),
        shafts: advice.shafts.iter().map(|report| ShaftAnswer::new(report, ruler)).collect(),
        bow: BowAnswer::from(&advice.bow),
        pause: advice.pause.map(|pause| wording::pause(pause, ruler)),
        hints: advice.hints.iter().map(HintAnswer::from).collect(),
    })
}
