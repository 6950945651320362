//! Sentences that only a rare evening brings about, as they are read.
//!
//! They are kept in `golden.txt`; with `QUARTERTURN_REWRITE` in the environment it is written anew.

use std::path::Path;

use nalgebra::{Matrix2, Vector2};
use quarterturn_entry::quantity::Unit;
use quarterturn_geometry::{Index, Offset, Point};
use quarterturn_statistics::{DistanceBound, PlanarEstimate};
use quarterturn_tuning::{
    Advice, Aim, Ending, FromTheOthers, Improbable, MeasuredFrom, Miss, OpenReason, PlannedShot,
    Purpose, RetireReason, Slip, Step, TogetherVerdict, Verdict,
};

use super::*;
use crate::plot::invented::Evening;
use crate::workshop::{BenchSide, Found, Predicted};

const MM: Ruler = Ruler::new(Unit::MILLIMETRE);

#[test]
fn every_rare_sentence_is_as_it_was_read() {
    let advice = Evening::with(4).shoot().advice;
    let seen = [
        reasons(&advice),
        steps(&advice),
        slips(),
        sides(),
        vec![open_far().unwrap(), MM.hit_estimate(Offset::ZERO), MM.shift(Offset::ZERO)],
        arrows(),
    ];
    let seen = seen.concat().join("\n") + "\n";
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/wording/golden.txt");
    if std::env::var_os("QUARTERTURN_REWRITE").is_some() {
        std::fs::write(&path, &seen).unwrap();
    }
    assert_eq!(seen, std::fs::read_to_string(path).unwrap());
}

/// Every reason of a verdict, and what is to be looked at.
fn reasons(advice: &Advice) -> Vec<String> {
    let opened = [
        OpenReason::NotShot,
        OpenReason::MoreShots(1),
        OpenReason::MoreShots(5),
        OpenReason::NotWorthMore(19),
        OpenReason::CannotTell,
        OpenReason::BowOff,
        OpenReason::NoReference,
    ];
    let retired = [
        RetireReason::CircleTooBig,
        RetireReason::CentreOff,
        RetireReason::DoesNotRepeat,
        RetireReason::SetAside,
        RetireReason::Lost,
        RetireReason::Broken,
    ];
    let mut report = advice.shafts[0].clone();
    let mut said = |verdict| {
        report.verdict = verdict;
        format!("{}: {}", super::verdict(verdict), reason(&report, MM))
    };
    let opened = opened.map(|reason| said(Verdict::Open(reason)));
    let retired = retired.map(|reason| {
        let steps = inspection(reason).iter().map(|step| format!("\n  - {step}"));
        said(Verdict::Retire(reason)) + &steps.collect::<String>()
    });
    opened.into_iter().chain(retired).collect()
}

/// Every step that is no ordinary end.
fn steps(advice: &Advice) -> Vec<String> {
    let mut advice = advice.clone();
    let mut said = |step| {
        advice.step = step;
        why(&advice, MM)
    };
    let aims = [Aim::FirstLook, Aim::Try, Aim::NewBow, Aim::Confirm, Aim::Doubt];
    let shot = |aim| PlannedShot {
        shaft: "7".parse().unwrap(),
        purpose: Purpose::Bare { aim, index: Index::from_hour(3.0), from: Index::TWELVE },
    };
    let reference = PlannedShot { shaft: "R".parse().unwrap(), purpose: Purpose::Reference };
    let endings = [Ending::AllDecided, Ending::NotWorthMore, Ending::NoReference, Ending::NoShafts];
    let mut all = vec![said(Step::MoveBow), said(Step::Shoot(vec![reference]))];
    all.push(said(Step::Shoot(aims.map(shot).to_vec())));
    all.extend(endings.map(|ending| said(Step::Finished(ending))));
    all.extend(aims.map(|aim| purpose(shot(aim).purpose).to_owned()));
    let covariance_mm2 = Matrix2::new(24.0, 2.0, 2.0, 22.0);
    for mean in [Offset::new(60.0, -3.0), Offset::ZERO] {
        advice.measured_from = MeasuredFrom::CommonPoint(Miss { mean, covariance_mm2 });
        advice.step = Step::Finished(Ending::AllDecided);
        all.push(why(&advice, MM));
    }
    all
}

/// Every question about a hit that hardly can be.
fn slips() -> Vec<String> {
    let number = Slip::Number("9".parse().unwrap());
    let slips = [Slip::Sides, Slip::Heights, Slip::DecimalPoint, Slip::Inches, number].map(Some);
    let said = |slip| {
        let shaft = "7".parse().unwrap();
        let (at, expected) = (Point::new(-62.0, 27.0), Point::new(58.4, 30.0));
        improbable_here(&Improbable { shaft, at, expected, probability: 0.004, slip }, MM)
    };
    slips.into_iter().chain([None]).map(said).collect()
}

/// Whether a side goes with the index found, by what there is to tell it from.
fn sides() -> Vec<String> {
    let found = |by_chance| {
        Some(Found { stands: Some(Index::from_hour(4.0)), resultant_length: 0.9, by_chance })
    };
    [None, found(0.01), found(0.3), found(1.0)]
        .map(|found| goes_with(&Predicted { side: BenchSide::Stiff, kept: 9, turned: 7, found }))
        .to_vec()
}

fn open_far() -> Option<String> {
    let estimate = PlanarEstimate {
        value: Vector2::new(20.0, 5.0),
        covariance: Matrix2::identity(),
        degrees_of_freedom: 9.0,
        n: 12,
    };
    let at_most = DistanceBound { distance: 20.6, at_most: 30.0, level: 0.95, n: 12 };
    let verdict = Some(TogetherVerdict::Open { more: None });
    let beside = FromTheOthers { estimate, at_least_mm: 11.0, at_most, verdict };
    open_beside("20 m", &[("7".to_owned(), beside)])
}

/// The quiver without an arrow that limits could be held to.
fn arrows() -> Vec<String> {
    let limits = quarterturn_journal::Limits {
        read_on: "2027-07-30".to_owned(),
        least_arrow_gr: Some(300.0),
        least_width_mm: None,
        least_draw_lb: Some(40.0),
        draw_lb: Some(35.0),
    };
    compared(&limits, &[], &[], MM)
}
