//! The answer of `show`.

use quarterturn_journal::Word;
use quarterturn_tuning::{Doubt, ShaftReport, Standing};
use serde::Serialize;

use super::aim_answer::AimAnswer;
use super::archer_answer::ArcherAnswer;
use super::bow_answer::BowAnswer;
use super::doubt_answer::DoubtAnswer;
use super::hint_answer::HintAnswer;
use super::lean_relation_answer::LeanRelationAnswer;
use super::shaft_answer::{PositionAnswer, ShaftAnswer};
use super::standing_out_answer::StandingOutAnswer;
use crate::failure::Failure;
use crate::opened::Opened;
use crate::wording::{self, Ruler};

#[derive(Serialize)]
struct ShowAnswer<'a> {
    schema: &'static str,
    units: &'static str,
    distance_m: f64,
    tolerance_mm: f64,
    positions: u16,
    arrows_per_end: usize,
    shots_per_evening: usize,
    turns_per_nock: usize,
    #[serde(flatten)]
    aim: AimAnswer,
    evenings: Vec<&'a str>,
    references: Vec<ReferenceAnswer<'a>>,
    shafts: Vec<ShaftShown<'a>>,
    bow: BowAnswer,
    #[serde(skip_serializing_if = "Option::is_none")]
    archer: Option<ArcherAnswer>,
    #[serde(skip_serializing_if = "Option::is_none")]
    lean_relation: Option<LeanRelationAnswer>,
    #[serde(skip_serializing_if = "Option::is_none")]
    standing_out: Option<StandingOutAnswer<'a>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    older_shots: Option<usize>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pause: Option<String>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    hints: Vec<HintAnswer<'a>>,
}

#[derive(Serialize)]
struct ReferenceAnswer<'a> {
    shaft: &'a str,
    state: &'static str,
    shots_total: usize,
    shots_left_out: usize,
}

#[derive(Serialize)]
struct ShaftShown<'a> {
    #[serde(flatten)]
    known: ShaftAnswer<'a>,
    state: &'static str,
    at_positions: Vec<PositionAnswer>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    doubts: Vec<DoubtAnswer>,
}

/// How everything stands, as JSON.
pub fn show(opened: &Opened, doubts: &[Doubt]) -> Result<String, Failure> {
    let (advice, relation) = opened.advice_with_leans();
    let (state, ruler) = (opened.journal.state(), opened.ruler());
    let (setup, roster) = (&state.history().setup, state.roster());
    let shown = |report| ShaftShown::new(report, doubts, ruler);
    let standing_out = opened.standing_out();
    super::finite_line(&ShowAnswer {
        schema: "quarterturn.show/1",
        units: state.unit().word(),
        distance_m: setup.distance.metres(),
        tolerance_mm: setup.tolerance.mm(),
        positions: setup.positions.count(),
        arrows_per_end: setup.arrows_per_end,
        shots_per_evening: state.policy().evening_shots,
        turns_per_nock: state.policy().nock_turns,
        aim: AimAnswer::from(advice.measured_from),
        evenings: state.evenings(),
        references: roster.references.iter().map(ReferenceAnswer::from).collect(),
        shafts: advice.shafts.iter().map(shown).collect(),
        bow: BowAnswer::from(&advice.bow),
        archer: advice.archer.spread.as_ref().map(ArcherAnswer::from),
        lean_relation: relation.as_ref().map(LeanRelationAnswer::from),
        standing_out: StandingOutAnswer::of(&standing_out, ruler),
        older_shots: Some(advice.older_shots).filter(|&shots| shots > 0),
        pause: advice.pause.map(|pause| wording::pause(pause, ruler)),
        hints: advice.hints.iter().map(HintAnswer::from).collect(),
    })
}

impl<'a> From<&'a Standing> for ReferenceAnswer<'a> {
    fn from(standing: &'a Standing) -> Self {
        Self {
            shaft: standing.name.as_str(),
            state: standing.state.word(),
            shots_total: standing.counted.len(),
            shots_left_out: standing.left_out,
        }
    }
}

impl<'a> ShaftShown<'a> {
    fn new(report: &'a ShaftReport, doubts: &[Doubt], ruler: Ruler) -> Self {
        let of_shaft = doubts.iter().filter(|doubt| doubt.shaft == report.shaft);
        Self {
            known: ShaftAnswer::new(report, ruler),
            state: report.state.word(),
            at_positions: report.positions.iter().map(PositionAnswer::from).collect(),
            doubts: of_shaft.map(|doubt| DoubtAnswer::new(doubt, ruler)).collect(),
        }
    }
}
