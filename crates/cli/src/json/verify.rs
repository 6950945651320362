//! Finished arrows by number, as JSON.

use quarterturn_geometry::Millimetres;
use quarterturn_statistics::Estimate;
use quarterturn_tuning::{
    Centre, DrawnOut, FromTheOthers, GroupShape, ShaftReport, Verified, VerifiedArrow,
};
use serde::Serialize;

use super::apart_answer::ApartAnswer;
use crate::failure::Failure;
use crate::opened::Opened;
use crate::wording;

#[derive(Serialize)]
struct VerifyAnswer {
    schema: &'static str,
    groups: usize,
    groups_left_out: usize,
    distances: Vec<VerifiedAnswer>,
}

#[derive(Serialize)]
struct VerifiedAnswer {
    distance_m: f64,
    tolerance_mm: f64,
    arrows: Vec<ArrowAnswer>,
    #[serde(skip_serializing_if = "Option::is_none")]
    centre: Option<CentreAnswer>,
    sight: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    shape: Option<ShapeAnswer>,
    texts: Vec<String>,
}

#[derive(Serialize)]
struct ArrowAnswer {
    shaft: String,
    shots: usize,
    centre_mm: [f64; 2],
    #[serde(flatten)]
    beside: Option<BesideAnswer>,
    #[serde(skip_serializing_if = "Option::is_none")]
    bare_miss_mm: Option<[f64; 2]>,
    #[serde(skip_serializing_if = "Option::is_none")]
    bare_within: Option<f64>,
}

/// Where something lands beside the others.
#[derive(Serialize)]
pub struct BesideAnswer {
    from_others_mm: [f64; 2],
    from_others_cov_mm2: [[f64; 2]; 2],
    #[serde(flatten)]
    apart: ApartAnswer,
}

#[derive(Serialize)]
struct CentreAnswer {
    shots: usize,
    miss_mm: [f64; 2],
    miss_cov_mm2: [[f64; 2]; 2],
    level: f64,
    x: AxisAnswer,
    y: AxisAnswer,
}

#[derive(Serialize)]
struct AxisAnswer {
    interval_mm: [f64; 2],
    sure: bool,
    #[serde(skip_serializing_if = "Option::is_none")]
    pin_mm: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pin_interval_mm: Option<[f64; 2]>,
}

#[derive(Serialize)]
struct ShapeAnswer {
    longer_sd_mm: f64,
    shorter_sd_mm: f64,
    degrees_of_freedom: usize,
    p_value: f64,
    #[serde(skip_serializing_if = "Option::is_none")]
    drawn_out: Option<&'static str>,
}

/// The answer of `verify --json`.
pub fn verify(
    opened: &Opened,
    verified: &[Verified],
    promised: &[ShaftReport],
    eye_to_pin: Option<Millimetres>,
) -> Result<String, Failure> {
    let state = opened.journal.state();
    let groups = state.groups_beside_this_bow().count();
    let ruler = opened.ruler();
    let distance = |at: &Verified| VerifiedAnswer {
        distance_m: at.distance.metres(),
        tolerance_mm: at.tolerance.mm(),
        arrows: at.arrows.iter().map(|arrow| ArrowAnswer::of(arrow, promised)).collect(),
        centre: at.centre.map(|centre| CentreAnswer::of(&centre, at.distance, eye_to_pin)),
        sight: wording::sight(at, eye_to_pin, ruler),
        shape: at.shape.as_ref().map(ShapeAnswer::from),
        texts: wording::verified(at, ruler),
    };
    super::finite_line(&VerifyAnswer {
        schema: "quarterturn.verify/1",
        groups,
        groups_left_out: state.groups().count() - groups,
        distances: verified.iter().map(distance).collect(),
    })
}

impl ArrowAnswer {
    fn of(arrow: &VerifiedArrow, promised: &[ShaftReport]) -> Self {
        let report = promised.iter().find(|report| report.shaft == arrow.arrow);
        Self {
            shaft: arrow.arrow.to_string(),
            shots: arrow.shots,
            centre_mm: arrow.centre.into(),
            beside: arrow.from_the_others.as_ref().map(BesideAnswer::from),
            bare_miss_mm: report.map(|report| [report.miss.mean.x_mm, report.miss.mean.y_mm]),
            bare_within: report.map(|report| report.within),
        }
    }
}

impl From<&FromTheOthers> for BesideAnswer {
    fn from(beside: &FromTheOthers) -> Self {
        Self {
            // Columns of a symmetric matrix are its rows.
            from_others_mm: beside.estimate.value.into(),
            from_others_cov_mm2: beside.estimate.covariance.into(),
            apart: ApartAnswer::new(
                &beside.estimate,
                beside.at_least_mm,
                &beside.at_most,
                beside.verdict,
            ),
        }
    }
}

impl CentreAnswer {
    fn of(centre: &Centre, distance: Millimetres, eye_to_pin: Option<Millimetres>) -> Self {
        let pin = eye_to_pin.map(|eye_to_pin| centre.miss.of_pin(eye_to_pin, distance));
        let [(across, sure_across), (up, sure_up)] = centre.miss.parts();
        let axis = |miss: Estimate, sure, pin: Option<Estimate>| AxisAnswer {
            interval_mm: [miss.interval.lower, miss.interval.upper],
            sure,
            pin_mm: pin.map(|pin| pin.value),
            pin_interval_mm: pin.map(|pin| [pin.interval.lower, pin.interval.upper]),
        };
        Self {
            shots: centre.estimate.n,
            miss_mm: centre.estimate.value.into(),
            miss_cov_mm2: centre.estimate.covariance.into(),
            level: centre.region.level,
            x: axis(across, sure_across, pin.map(|pin| pin.x)),
            y: axis(up, sure_up, pin.map(|pin| pin.y)),
        }
    }
}

impl From<&GroupShape> for ShapeAnswer {
    fn from(shape: &GroupShape) -> Self {
        Self {
            longer_sd_mm: shape.longer_sd_mm,
            shorter_sd_mm: shape.shorter_sd_mm,
            degrees_of_freedom: shape.degrees_of_freedom,
            p_value: shape.p_value,
            drawn_out: shape.drawn_out.map(|drawn_out| match drawn_out {
                DrawnOut::Wide => "wide",
                DrawnOut::Tall => "tall",
                DrawnOut::RisingRight => "rising right",
                DrawnOut::RisingLeft => "rising left",
            }),
        }
    }
}
