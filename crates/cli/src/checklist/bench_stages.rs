//! The stages on the bench, before the first bare shot.

use quarterturn_journal::GluedPart;

use super::facts::Facts;
use super::stage::{Stage, Stands};
use crate::curing::NOT_BEFORE;
use crate::wording::all;
use crate::workshop::{Gate, Gauge};

/// They, in order.
pub fn stages(facts: &Facts<'_>) -> Vec<Stage> {
    let n = facts.bare.len();
    let measured = |word, what, gauges: &[Gauge]| {
        let missing = facts.unmeasured(|m| gauges.iter().all(|gauge| gauge.of(m).is_some()));
        Stage::lacking(word, what, missing, n)
    };
    let sides = facts.unmeasured(|m| {
        Gauge::Spine.of(m).is_some() || m.stiff_side_deg.is_some() || m.heavy_side_deg.is_some()
    });
    let mut stages = vec![
        measured("weigh", "number and weigh the shafts", &[Gauge::Mass]),
        measured(
            "straightness",
            "straightness at both ends, rolled",
            &[Gauge::StraightnessPoint, Gauge::StraightnessNock],
        ),
        Stage::lacking("sides", "spine, stiff side or heavy side", sides, n),
        cut(facts),
        measured("square", "square the ends", &[Gauge::Square]),
        measured("insert", "fit the inserts and spin them", &[Gauge::Wobble]),
        glued(facts),
        Stage::by_hand(
            "mark",
            "nock fit, and the ink mark",
            "a line on the shaft, a dot on the nock",
        ),
        missing_vanes(facts),
        reference(facts),
        Stage::by_hand("flex", "flex test and nocks", "every shaft, every evening"),
    ];
    if all_were_shot(facts) {
        stages.iter_mut().for_each(pass);
    }
    stages
}

/// Whether the butt has spoken of every shaft: then the bench is no longer asked for.
fn all_were_shot(facts: &Facts<'_>) -> bool {
    facts
        .advice
        .shafts
        .iter()
        .all(|report| report.shots_total > 0 || !facts.bare.contains(&report.shaft))
}

/// What nobody did is passed by; what still cures is not.
fn pass(stage: &mut Stage) {
    let shot_without = stage.word != "reference" && !stage.said.contains(NOT_BEFORE);
    if stage.stands == Stands::Missing && shot_without {
        stage.stands = Stands::Passed;
    }
}

fn cut(facts: &Facts<'_>) -> Stage {
    let missing = facts.unmeasured(|m| m.cut_point_mm.is_some() || m.cut_nock_mm.is_some());
    let (word, what) = ("cut", "cut to length");
    let said = match (missing.len(), Gate::of(facts.state)) {
        (0, _) => String::new(),
        (_, Gate::CutOne) => "cut one, shoot it bare, then cut the rest".to_owned(),
        (_, Gate::ShootIt(cut)) => format!("shoot {} bare, then cut the rest", all(cut)),
        (n, Gate::CutTheRest(_)) => format!("the other {n}"),
    };
    Stage::saying(word, what, missing, said)
}

fn glued(facts: &Facts<'_>) -> Stage {
    let (missing, until) = facts.not_cured(&facts.bare, GluedPart::Insert);
    let stage =
        Stage::lacking("glue", "glue the inserts and let them cure", missing, facts.bare.len());
    waiting(stage, until)
}

/// The same with the time before which nothing is shot.
pub(super) fn waiting(mut stage: Stage, until: Option<String>) -> Stage {
    if let Some(until) = until {
        stage.said = format!("{}, {until}", stage.said);
    }
    stage
}

/// What makes up for the vanes' mass: it was told to `new`, or each is weighed beside a reference.
fn missing_vanes(facts: &Facts<'_>) -> Stage {
    let (word, what) = ("tape", "tape for the missing vanes");
    if facts.state.history().setup.bare_lighter.is_some() {
        return Stage::saying(
            word,
            what,
            Vec::new(),
            "the journal takes it off instead".to_owned(),
        );
    }
    if facts.workshop.references.iter().all(|bench| bench.measures.finished_mass_gr.is_none()) {
        let missing = facts.bare.clone();
        return Stage::saying(word, what, missing, "the reference is not weighed".to_owned());
    }
    let missing = facts.unmeasured(|m| m.bare_mass_gr.is_some());
    Stage::lacking(word, what, missing, facts.bare.len())
}

fn reference(facts: &Facts<'_>) -> Stage {
    let in_use: Vec<_> = facts.state.roster().references_in_use().map(|one| &one.name).collect();
    let (stands, said) = match in_use.len() {
        0 => (Stands::Missing, "none is left".to_owned()),
        1 => (Stands::Done, format!("{}; a second one saves the evening if it bends", all(in_use))),
        _ => (Stands::Done, all(in_use)),
    };
    let what = "a fletched reference that is trusted";
    Stage { word: "reference", what, stands, missing: Vec::new(), said }
}
