//! The set as the workshop knows it, as JSON.

use quarterturn_geometry::{Index, Millimetres};
use quarterturn_journal::{BenchMeasures, Word};
use quarterturn_tuning::{Setup, ShaftName};
use serde::Serialize;
use serde_json::{Map, Value};

use crate::failure::Failure;
use crate::wording;
use crate::workshop::{Asked, Bench, Chosen, Gauge, Predicted, Workshop, spine};

#[derive(Serialize)]
struct BenchAnswer<'a> {
    schema: &'static str,
    shafts: Vec<BenchedShaft<'a>>,
    references: Vec<BenchedShaft<'a>>,
    median: Map<String, Value>,
    standing_out: Vec<Outlier<'a>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    best: Option<Best<'a>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    carried: Option<Carried>,
    #[serde(skip_serializing_if = "Option::is_none")]
    grains_per_pound: Option<PerPound<'a>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    ends_out_of_square: Option<Vec<Thrown<'a>>>,
    tape: Vec<TapeAnswer<'a>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    height_without_tape_mm: Option<f64>,
    bench_and_butt: Vec<PredictedAnswer>,
    cautions: [&'static str; 2],
}

/// Grains of tape for a bare arrow.
#[derive(Serialize)]
struct TapeAnswer<'a> {
    shaft: &'a str,
    tape_gr: f64,
}

/// Whether a side goes with the index that was found.
#[derive(Serialize)]
struct PredictedAnswer {
    side: &'static str,
    kept: usize,
    turned: usize,
    #[serde(skip_serializing_if = "Option::is_none")]
    stands_deg: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    resultant_length: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    by_chance: Option<f64>,
    text: String,
}

#[derive(Serialize)]
struct BenchedShaft<'a> {
    shaft: &'a str,
    state: &'static str,
    nock_turns: usize,
    measured: &'a BenchMeasures,
    derived: Map<String, Value>,
    #[serde(skip_serializing_if = "Option::is_none")]
    stiff_side_found_deg: Option<f64>,
}

#[derive(Serialize)]
struct Outlier<'a> {
    shaft: &'a str,
    measure: &'static str,
    value: f64,
    above_median: f64,
    shafts: usize,
}

#[derive(Serialize)]
struct Best<'a> {
    shafts: Vec<&'a str>,
    largest_spread_sd: f64,
    compared: Vec<Compared>,
    not_compared: Vec<Lacking<'a>>,
}

#[derive(Serialize)]
struct Compared {
    measure: &'static str,
    least: f64,
    most: f64,
}

#[derive(Serialize)]
struct Lacking<'a> {
    measure: &'static str,
    missing_on: Vec<&'a str>,
}

#[derive(Serialize)]
struct Carried {
    mass_gr: f64,
    speed_m_s: f64,
    energy_j: f64,
    energy_ftlbf: f64,
    momentum_n_s: f64,
    momentum_slug_ft_s: f64,
}

#[derive(Serialize)]
struct PerPound<'a> {
    draw_lbf: f64,
    #[serde(skip_serializing_if = "Option::is_none")]
    least_gr_lb: Option<f64>,
    arrows: Vec<ArrowPerPound<'a>>,
}

#[derive(Serialize)]
struct ArrowPerPound<'a> {
    shaft: &'a str,
    gr_lb: f64,
}

#[derive(Serialize)]
struct Thrown<'a> {
    shaft: &'a str,
    square_runout_mm: f64,
    tilt_deg: f64,
    point_throw_mm: f64,
}

/// The set, what stands out in it, and what was asked of it.
pub fn bench(
    setup: &Setup,
    workshop: &Workshop,
    asked: &Asked,
    chosen: Option<&Chosen>,
    predicted: &[Predicted],
) -> Result<String, Failure> {
    let median =
        |gauge: Gauge| Some((gauge.said().member.to_owned(), workshop.median(gauge)?.into()));
    let tape = workshop.tape(setup, asked);
    super::finite_line(&BenchAnswer {
        schema: "quarterturn.bench-set/1",
        shafts: workshop.shafts.iter().map(benched).collect(),
        references: workshop.references.iter().map(benched).collect(),
        median: Gauge::ALL.into_iter().filter_map(median).collect(),
        standing_out: outliers(workshop),
        best: chosen.map(best),
        carried: carried(workshop, asked),
        grains_per_pound: per_pound(workshop, asked),
        ends_out_of_square: thrown(workshop, asked),
        tape: tape.iter().flat_map(|tape| tape.each.iter().map(taped)).collect(),
        height_without_tape_mm: tape.as_ref().and_then(|tape| tape.height).map(Millimetres::mm),
        bench_and_butt: predicted.iter().map(goes_with).collect(),
        cautions: [wording::CUTTING, wording::LEAST_MASS],
    })
}

fn taped<'a>((bench, tape_gr): &(&'a Bench, f64)) -> TapeAnswer<'a> {
    TapeAnswer { shaft: bench.shaft.as_str(), tape_gr: *tape_gr }
}

fn goes_with(predicted: &Predicted) -> PredictedAnswer {
    let found = predicted.found.as_ref();
    PredictedAnswer {
        side: predicted.side.word(),
        kept: predicted.kept,
        turned: predicted.turned,
        stands_deg: found.and_then(|found| found.stands).map(Index::degrees),
        resultant_length: found.map(|found| found.resultant_length),
        by_chance: found.map(|found| found.by_chance),
        text: wording::goes_with(predicted),
    }
}

fn benched(bench: &Bench) -> BenchedShaft<'_> {
    let worked_out = [Gauge::Spine, Gauge::SpineSpread, Gauge::FrontOfCentre];
    let derived =
        |gauge: Gauge| Some((gauge.said().member.to_owned(), gauge.of(&bench.measures)?.into()));
    BenchedShaft {
        shaft: bench.shaft.as_str(),
        state: bench.state.word(),
        nock_turns: bench.turns,
        measured: &bench.measures,
        derived: worked_out.into_iter().filter_map(derived).collect(),
        stiff_side_found_deg: spine(&bench.measures)
            .and_then(|round| round.stiff_side)
            .map(Index::degrees),
    }
}

fn outliers(workshop: &Workshop) -> Vec<Outlier<'_>> {
    let outliers = workshop.standing_out().into_iter().map(|one| Outlier {
        shaft: one.bench.shaft.as_str(),
        measure: one.gauge.said().member,
        value: one.value,
        above_median: one.above_median,
        shafts: one.n,
    });
    outliers.collect()
}

fn best(chosen: &Chosen) -> Best<'_> {
    let compared = chosen.compared.iter().map(|(gauge, least, most)| Compared {
        measure: gauge.said().member,
        least: *least,
        most: *most,
    });
    let lacking = chosen.lacking.iter().map(|(gauge, names)| Lacking {
        measure: gauge.said().member,
        missing_on: names.iter().map(ShaftName::as_str).collect(),
    });
    Best {
        shafts: chosen.shafts.iter().map(ShaftName::as_str).collect(),
        largest_spread_sd: chosen.largest_spread,
        compared: compared.collect(),
        not_compared: lacking.collect(),
    }
}

fn carried(workshop: &Workshop, asked: &Asked) -> Option<Carried> {
    workshop.carried(asked).map(|carried| Carried {
        mass_gr: carried.mass_gr,
        speed_m_s: carried.speed_m_s,
        energy_j: carried.energy_j,
        energy_ftlbf: carried.energy_ftlbf,
        momentum_n_s: carried.momentum_n_s,
        momentum_slug_ft_s: carried.momentum_slug_ft_s,
    })
}

fn per_pound<'a>(workshop: &'a Workshop, asked: &Asked) -> Option<PerPound<'a>> {
    let limit = asked.limit?;
    let arrow =
        |(bench, gr_lb): (&'a Bench, f64)| ArrowPerPound { shaft: bench.shaft.as_str(), gr_lb };
    Some(PerPound {
        draw_lbf: limit.draw_lbf,
        least_gr_lb: limit.least_gr_lb,
        arrows: workshop.per_pound(limit).into_iter().map(arrow).collect(),
    })
}

fn thrown<'a>(workshop: &'a Workshop, asked: &Asked) -> Option<Vec<Thrown<'a>>> {
    let thrown = workshop.thrown(asked.crooked?).into_iter().map(|thrown| Thrown {
        shaft: thrown.bench.shaft.as_str(),
        square_runout_mm: thrown.runout_mm,
        tilt_deg: thrown.tilt.degrees(),
        point_throw_mm: thrown.throw.mm(),
    });
    Some(thrown.collect())
}
