//! Broadheads against field points, as JSON.

use quarterturn_geometry::Millimetres;
use quarterturn_journal::Quiver;
use quarterturn_tuning::{AtDistance, Comparison, Difference, Grows, Growth, Pair};
use serde::Serialize;

use super::apart_answer::ApartAnswer;
use crate::failure::Failure;
use crate::opened::Opened;
use crate::wording;

#[derive(Serialize)]
struct HeadsAnswer {
    schema: &'static str,
    groups: usize,
    groups_left_out: usize,
    #[serde(skip_serializing_if = "Option::is_none")]
    together_mm: Option<f64>,
    heads: Vec<HeadAnswer>,
    cautions: &'static [&'static str],
}

#[derive(Serialize)]
struct HeadAnswer {
    head: String,
    distances: Vec<DistanceAnswer>,
    #[serde(skip_serializing_if = "Option::is_none")]
    growth: Option<GrowthAnswer>,
}

#[derive(Serialize)]
struct DistanceAnswer {
    distance_m: f64,
    field_shots: usize,
    broadhead_shots: usize,
    #[serde(flatten)]
    difference: Option<DifferenceAnswer>,
    pairs: Vec<PairAnswer>,
    text: String,
}

#[derive(Serialize)]
struct PairAnswer {
    shaft: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    carries: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    mass_gr: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    runout_mm: Option<f64>,
    field_shots: usize,
    broadhead_shots: usize,
    #[serde(flatten)]
    beside: Option<super::BesideAnswer>,
}

#[derive(Serialize)]
struct DifferenceAnswer {
    difference_mm: [f64; 2],
    difference_cov_mm2: [[f64; 2]; 2],
    region_mm2: [[f64; 2]; 2],
    #[serde(flatten)]
    apart: ApartAnswer,
}

#[derive(Serialize)]
struct GrowthAnswer {
    from_m: f64,
    to_m: f64,
    direction: [f64; 2],
    excess_mm: f64,
    interval_mm: [f64; 2],
    level: f64,
    faster: f64,
    grows: &'static str,
    text: String,
}

/// The answer of `heads --json`.
pub fn heads(
    opened: &Opened,
    compared: &[Comparison],
    together: Option<Millimetres>,
    quiver: &Quiver,
) -> Result<String, Failure> {
    let state = opened.journal.state();
    let groups = state.groups_beside_this_bow().count();
    let ruler = opened.ruler();
    let distance = |at: &AtDistance| DistanceAnswer {
        distance_m: at.distance.metres(),
        field_shots: at.field,
        broadhead_shots: at.broadheads,
        difference: at.difference.as_ref().map(DifferenceAnswer::from),
        pairs: at.pairs.iter().map(|pair| PairAnswer::of(pair, quiver)).collect(),
        text: wording::head_verdict(at, together, ruler),
    };
    let growth = |growth: &Growth| GrowthAnswer {
        text: wording::growth(growth, together, ruler),
        ..GrowthAnswer::from(growth)
    };
    let head = |one: &Comparison| HeadAnswer {
        head: one.head.to_string(),
        distances: one.distances.iter().map(distance).collect(),
        growth: one.growth.as_ref().map(growth),
    };
    super::finite_line(&HeadsAnswer {
        schema: "quarterturn.heads/1",
        groups,
        groups_left_out: state.groups().count() - groups,
        together_mm: together.map(Millimetres::mm),
        heads: compared.iter().map(head).collect(),
        cautions: &wording::WITH_BROADHEADS,
    })
}

impl PairAnswer {
    fn of(pair: &Pair, quiver: &Quiver) -> Self {
        let head = pair.piece.as_deref().and_then(|piece| quiver.head(piece));
        Self {
            shaft: pair.arrow.to_string(),
            carries: pair.piece.clone(),
            mass_gr: head.and_then(|head| head.mass_gr),
            runout_mm: head.and_then(|head| head.runout_mm),
            field_shots: pair.field,
            broadhead_shots: pair.broadheads,
            beside: pair.from_the_others.as_ref().map(super::BesideAnswer::from),
        }
    }
}

impl From<&Difference> for DifferenceAnswer {
    fn from(difference: &Difference) -> Self {
        Self {
            // Columns of a symmetric matrix are its rows.
            difference_mm: difference.estimate.value.into(),
            difference_cov_mm2: difference.estimate.covariance.into(),
            region_mm2: difference.region.matrix.into(),
            apart: ApartAnswer::new(
                &difference.estimate,
                difference.at_least_mm,
                &difference.at_most,
                difference.verdict,
            ),
        }
    }
}

impl From<&Growth> for GrowthAnswer {
    fn from(growth: &Growth) -> Self {
        let interval = growth.excess_mm.interval;
        Self {
            from_m: growth.between[0].metres(),
            to_m: growth.between[1].metres(),
            direction: growth.along.into(),
            excess_mm: growth.excess_mm.value,
            interval_mm: [interval.lower, interval.upper],
            level: interval.level,
            faster: growth.faster,
            grows: match growth.grows {
                Grows::NoDifference => "no difference",
                Grows::Faster => "faster",
                Grows::Slower => "slower",
                Grows::InProportion => "in proportion",
                Grows::Open => "open",
            },
            text: String::new(),
        }
    }
}
