//! Where shafts are cut: by hand, and what is left is the target.

use proptest::prelude::*;
use quarterturn_geometry::Millimetres;

use crate::tolerance::{ROUNDING, assert_within};
use crate::{BenchError, CrookedEnds, CutPlan, Saw, Trim};

const SAW: Saw = Saw { kerf: Millimetres::new(1.2), squaring: Millimetres::new(0.3) };

fn mm(mm: f64) -> Millimetres {
    Millimetres::new(mm)
}

fn ends(point: f64, nock: f64) -> CrookedEnds {
    CrookedEnds { point: Some(mm(point)), nock: Some(mm(nock)) }
}

fn plan(length: f64, crooked: CrookedEnds) -> CutPlan {
    CutPlan::of(mm(length), mm(724.0), SAW, crooked).unwrap()
}

/// Of 754 mm 30 come off; a cut 1.2 mm wide and 0.3 for squaring leave the stop at 28.5.
#[test]
fn the_crooked_end_comes_off() {
    let all = |off: f64, stop: f64| Some(Trim { off: mm(off), stop: Some(mm(stop)) });
    let point = plan(754.0, ends(0.20, 0.05));
    assert_eq!((point.point.map(|t| t.off), point.nock), (Some(mm(30.0)), None));
    assert_within(point.point.unwrap().stop.unwrap().mm(), 28.5, 1e-12);
    let nock = plan(754.0, ends(0.05, 0.20));
    assert_eq!((nock.point, nock.nock.map(|t| t.off)), (None, Some(mm(30.0))));
    for alike in [ends(0.10, 0.12), CrookedEnds::default()] {
        let both = plan(754.0, alike);
        assert_eq!(both.point, both.nock);
        assert_eq!(both.point.map(|t| t.off), all(15.0, 13.5).map(|t| t.off));
    }
}

#[test]
fn what_is_too_little_for_two_cuts_comes_off_the_point() {
    let two = plan(726.0, CrookedEnds::default());
    assert_eq!((two.point.map(|t| t.off), two.nock), (Some(mm(2.0)), None));
    let little = plan(725.0, ends(0.05, 0.20)).nock.unwrap();
    assert_eq!((little.off, little.stop), (mm(1.0), None), "squared away");
    assert_eq!(plan(724.0, ends(0.3, 0.0)), CutPlan::default());
}

#[test]
fn what_cannot_be_cut_is_refused() {
    let of = |length, target, saw| CutPlan::of(mm(length), mm(target), saw, CrookedEnds::default());
    let short = of(700.0, 724.0, SAW).unwrap_err();
    assert_eq!(short.to_string(), "a shaft of 700 mm cannot be cut to 724 mm");
    let not = |value| Err(BenchError::NotAboveZero { value });
    assert_eq!(of(0.0, 724.0, SAW), not(0.0));
    assert_eq!(of(754.0, -1.0, SAW), not(-1.0));
    assert_eq!(of(754.0, 724.0, Saw { kerf: mm(-1.0), ..SAW }), not(-1.0));
    assert!(of(754.0, 724.0, Saw { squaring: mm(f64::NAN), ..SAW }).is_err());
}

proptest! {
    #[test]
    fn what_is_left_is_the_target(
        more in 0.0..200.0, kerf in 0.0..3.0, squaring in 0.0..2.0, point in 0.0..0.5, nock in 0.0..0.5,
    ) {
        let saw = Saw { kerf: mm(kerf), squaring: mm(squaring) };
        let plan = CutPlan::of(mm(724.0 + more), mm(724.0), saw, ends(point, nock)).unwrap();
        let trims: Vec<Trim> = plan.point.into_iter().chain(plan.nock).collect();
        let off: f64 = trims.iter().map(|trim| trim.off.mm()).sum();
        assert_within(off, more, 1000.0 * ROUNDING);
        for trim in trims {
            if let Some(stop) = trim.stop {
                assert_within((stop + saw.kerf + saw.squaring).mm(), trim.off.mm(), 1000.0 * ROUNDING);
            } else {
                prop_assert!(trim.off < saw.kerf + saw.squaring);
            }
        }
    }
}
