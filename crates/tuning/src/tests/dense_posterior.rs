//! The posterior against a dense computation in numpy, which shares neither code nor route.

use quarterturn_geometry::{Angle, Index, Millimetres, Offset, Point};
use serde_json::Value;

use super::journal::{Journal, flagged, leaning, name, shot};
use crate::at_scales::AtScales;
use crate::tolerance::{DENSE, assert_within};
use crate::{BowChange, BowPart, Event, Flag, Miss, MissingMass, Scales, Shot};

/// Source: numpy 2.4.6 `linalg.solve`; `fixtures/tuning/dense_posterior.py`.
#[test]
fn the_posterior_agrees_with_numpy() {
    let fixture = fixture();
    let read = AtScales::read(&journal(&fixture).history, &of(&fixture["scales"]), |_| 1.0);
    let expected = fixture["expected"].as_array().unwrap();
    assert_eq!(expected.len(), 3 * 4 + 1);
    for one in expected {
        let miss = match one["shaft"].as_str() {
            Some(shaft) => {
                read.miss(&name(shaft), Index::from_degrees(number(&one["index_deg"]))).unwrap()
            }
            None => read.common_offset(),
        };
        assert_miss(&miss, one);
    }
}

/// What the learning of the sizes rests on. Source: numpy 2.4.6 `linalg.slogdet` and `linalg.solve`; the same script.
#[test]
fn the_likelihood_of_other_sizes_agrees_with_numpy() {
    let fixture = fixture();
    let history = journal(&fixture).history;
    let deviance = |scales: &Value| AtScales::read(&history, &of(scales), |_| 1.0).deviance();
    let stated = deviance(&fixture["scales"]);
    let changes = fixture["deviances"].as_array().unwrap();
    assert_eq!(changes.len(), 5);
    for change in changes {
        let mut scales = fixture["scales"].clone();
        for (name, value) in change["scales"].as_object().unwrap() {
            scales[name] = value.clone();
        }
        assert_within(deviance(&scales) - stated, number(&change["more"]), DENSE * stated.abs());
    }
}

#[track_caller]
fn assert_miss(miss: &Miss, expected: &Value) {
    let variance = number(&expected["covariance_mm2"][0][0]);
    let mean = [miss.mean.x_mm, miss.mean.y_mm];
    for (axis, &mean_mm) in mean.iter().enumerate() {
        assert_within(mean_mm, number(&expected["mean_mm"][axis]), DENSE * variance.sqrt());
        for other in 0..2 {
            let covariance = miss.covariance_mm2[(axis, other)];
            let expected = number(&expected["covariance_mm2"][axis][other]);
            assert_within(covariance, expected, DENSE * variance);
        }
    }
}

fn fixture() -> Value {
    serde_json::from_str(include_str!("../../../../fixtures/tuning/dense_posterior.json")).unwrap()
}

fn journal(fixture: &Value) -> Journal {
    let Value::Object(lacks) = &fixture["setup"]["bare_lighter"] else { panic!("no mass") };
    let lacks = MissingMass {
        lighter_gr: number(&lacks["lighter_gr"]),
        arrow_gr: number(&lacks["arrow_gr"]),
        speed_m_s: number(&lacks["speed_m_s"]),
    };
    let references = fixture["setup"]["references"].as_array().unwrap();
    let mut journal = Journal::of(3).with(|setup| {
        setup.references = references.iter().map(|one| name(one.as_str().unwrap())).collect();
        setup.distance = Millimetres::from_metres(number(&fixture["setup"]["distance_m"]));
        setup.bare_lighter = Some(lacks);
    });
    for event in fixture["events"].as_array().unwrap() {
        journal = match planar(&event["bow_moved_mm"]) {
            Some(moved) => {
                journal.then(Event::Bow(BowChange { part: BowPart::Rest, moved: Some(moved) }))
            }
            None => journal
                .evening(event["evening"].as_str().unwrap())
                .end_of(event["shots"].as_array().unwrap().iter().map(read_shot).collect()),
        };
    }
    journal
}

fn read_shot(value: &Value) -> Shot {
    let index = Index::from_degrees(number(&value["index_deg"]));
    let mut one = shot(value["shaft"].as_str().unwrap(), 0.0, Offset::ZERO);
    one.index = index;
    if let Some(lean) = planar(&value["lean_deg"]) {
        one = leaning(one, lean.x_mm, lean.y_mm);
    }
    let hit = one.hit.as_mut().unwrap();
    hit.at = Point::SPOT + planar(&value["hit_mm"]).unwrap();
    hit.read_sd = value["read_sd_mm"].as_f64().map(Millimetres::new);
    hit.lean_sd = value["lean_sd_deg"].as_f64().map(Angle::from_degrees);
    if value["doubtful"] == true { flagged(one, Flag::Doubtful) } else { one }
}

fn of(value: &Value) -> Scales {
    let sd = |name: &str| number(&value[name]);
    Scales {
        reference_mm: sd("reference_mm"),
        bare_mm: sd("bare_mm"),
        taller: sd("taller"),
        aim_mm: [0, 1].map(|axis| number(&value["aim_mm"][axis])),
        read_mm: sd("read_mm"),
        bare_lean_deg: sd("bare_lean_deg"),
        reference_lean_deg: sd("reference_lean_deg"),
        read_lean_deg: sd("read_lean_deg"),
        frame_deg: sd("frame_deg"),
        common_mm: sd("common_mm"),
        common_lean_deg: sd("common_lean_deg"),
        centre_mm: sd("centre_mm"),
        turning_mm: sd("turning_mm"),
        stiff_mm: sd("stiff_mm"),
        against_share: sd("against_share"),
        set_share: sd("set_share"),
        between_references_mm: sd("between_references_mm"),
        between_references_deg: sd("between_references_deg"),
        lean_per_miss_deg_per_mm: sd("lean_per_miss_deg_per_mm"),
        discrepancy_deg: sd("discrepancy_deg"),
        stiff_change_share: sd("stiff_change_share"),
    }
}

#[track_caller]
fn number(value: &Value) -> f64 {
    value.as_f64().unwrap()
}

fn planar(value: &Value) -> Option<Offset> {
    Some(Offset::new(value.get(0)?.as_f64()?, value.get(1)?.as_f64()?))
}
