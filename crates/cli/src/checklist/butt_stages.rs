//! The stages at the butt, and what follows on them.

use quarterturn_journal::GluedPart;
use quarterturn_tuning::{Head, ShaftName, ShaftReport, Step, Verdict};

use super::bench_stages::waiting;
use super::facts::Facts;
use super::stage::{Stage, Stands};

/// Fewer ends of the reference say little of the archer.
const ENDS_OF_A_REFERENCE: usize = 2;
/// A finished arrow is verified by so many shots with a field point; common practice.
const SHOTS_TO_VERIFY: usize = 3;

const NOTHING_FLETCHED: &str = "nothing is fletched yet";

/// They, in order.
pub fn stages(facts: &Facts<'_>) -> Vec<Stage> {
    let reports = || facts.advice.shafts.iter().filter(|r| facts.bare.contains(&r.shaft));
    let named = |wanted: &dyn Fn(&ShaftReport) -> bool| -> Vec<ShaftName> {
        reports().filter(|report| wanted(report)).map(|report| report.shaft.clone()).collect()
    };
    let n = facts.bare.len();
    vec![
        bow(facts),
        Stage::lacking(
            "first-look",
            "a first look at every shaft",
            named(&|r| r.shots_total == 0),
            n,
        ),
        Stage::lacking(
            "turn",
            "turn, shoot, confirm: a verdict for each",
            named(&|r| matches!(r.verdict, Verdict::Open(_))),
            n,
        ),
        Stage::lacking("nocks", "renew worn nocks", named(&ShaftReport::nock_is_worn), n),
        fletch(facts, named(&|r| r.verdict == Verdict::Keep)),
        vanes(facts),
        verified(facts),
    ]
}

fn bow(facts: &Facts<'_>) -> Stage {
    let ends = facts.state.ends().filter(|end| {
        let is_reference = |name: &ShaftName| facts.state.history().setup.references.contains(name);
        end.shots.iter().any(|shot| is_reference(&shot.shaft))
    });
    let ends = ends.count();
    let (stands, said) = if facts.advice.step == Step::MoveBow {
        (Stands::Missing, "it is off for all shafts: see next".to_owned())
    } else if ends < ENDS_OF_A_REFERENCE {
        (Stands::Missing, format!("{ends} of {ENDS_OF_A_REFERENCE} ends with a reference"))
    } else {
        (Stands::Done, String::new())
    };
    Stage { word: "bow", what: "bow and archer ready", stands, missing: Vec::new(), said }
}

fn fletch(facts: &Facts<'_>, kept: Vec<ShaftName>) -> Stage {
    let (word, what) = ("fletch", "fletch those to keep");
    if kept.is_empty() && facts.fletched.is_empty() {
        return Stage::later(word, what, "none is to keep yet");
    }
    Stage::lacking(word, what, kept, facts.bare.len())
}

fn vanes(facts: &Facts<'_>) -> Stage {
    let (word, what) = ("cure", "glue the vanes and let them cure");
    if facts.fletched.is_empty() {
        return Stage::later(word, what, NOTHING_FLETCHED);
    }
    let (vanes, until) = facts.not_cured(&facts.fletched, GluedPart::Vanes);
    waiting(Stage::lacking(word, what, vanes, facts.fletched.len()), until)
}

fn verified(facts: &Facts<'_>) -> Stage {
    let shots = |name: &ShaftName| {
        let field = facts.state.groups().filter(|group| group.head == Head::Field);
        let shots = field.flat_map(|group| &group.shots);
        shots.filter(|shot| shot.shaft == *name && shot.counts()).count()
    };
    let missing: Vec<ShaftName> =
        facts.fletched.iter().filter(|name| shots(name) < SHOTS_TO_VERIFY).cloned().collect();
    let what = "verify each finished arrow, three shots";
    if facts.fletched.is_empty() {
        return Stage::later("verify", what, NOTHING_FLETCHED);
    }
    Stage::lacking("verify", what, missing, facts.fletched.len())
}
