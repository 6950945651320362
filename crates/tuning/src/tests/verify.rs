//! Finished arrows by number: against R, planted truth, and how often what is said is wrong.

use nalgebra::{Matrix2, Vector2};
use quarterturn_geometry::Millimetres;
use quarterturn_statistics::{Level, PlanarSample};
use serde_json::Value;

use super::finished_shots::{Archer, group, shot};
use crate::tolerance::{
    ANOTHER_ROAD, LARGEST_OF_INTERVALS, SIMULATED_POWER, WRONG_IN_TWENTY, assert_within,
};
use crate::{
    Call, DrawnOut, Group, GroupShape, SightMove, Start, TogetherVerdict, Verified, verify,
};

const TOLERANCE: Millimetres = Millimetres::new(25.0);
const AT: Millimetres = Millimetres::new(18_000.0);

/// Rounds of arrows that stand so far from the spot, each shot as `sd_mm` scatters.
fn rounds(
    archer: &mut Archer,
    at_m: f64,
    rounds: usize,
    own: &[[f64; 2]],
    sd_mm: f64,
) -> Vec<Group> {
    let mut round = || {
        let hit = |own: &[f64; 2]| archer.points(1, (*own).into(), Matrix2::identity() * sd_mm)[0];
        group(at_m, "field", &own.iter().map(hit).collect::<Vec<_>>())
    };
    (0..rounds).map(|_| round()).collect()
}

fn verified(groups: &[Group]) -> Vec<Verified> {
    verify(&groups.iter().collect::<Vec<_>>(), TOLERANCE, AT)
}

fn verdict(at: &Verified, arrow: usize) -> TogetherVerdict {
    at.arrows[arrow].from_the_others.unwrap().verdict.unwrap()
}

fn fixture() -> Value {
    serde_json::from_str(include_str!("../../../../fixtures/tuning/finished.json")).unwrap()
}

fn numbers(value: &Value) -> Vec<f64> {
    value.as_array().unwrap().iter().map(|number| number.as_f64().unwrap()).collect()
}

/// The hits of the fixture, one group a round.
fn of_the_fixture(fixture: &Value) -> Group {
    let arrows = fixture["arrows"].as_array().unwrap();
    let hits = fixture["hits"].as_array().unwrap().iter().map(numbers);
    let shots = arrows.iter().zip(hits);
    let shots = shots.map(|(arrow, hit)| {
        shot(
            usize::try_from(arrow.as_u64().unwrap()).unwrap() - 1,
            Some(Vector2::new(hit[0], hit[1])),
        )
    });
    Group { shots: shots.collect(), ..group(18.0, "field", &[]) }
}

#[test]
fn each_arrow_beside_the_others_as_r_has_it() {
    let fixture = fixture();
    let at = verified(&[of_the_fixture(&fixture)]).remove(0);
    let expected = fixture["contrasts"].as_array().unwrap();
    assert_eq!(at.arrows.len(), expected.len());
    for (arrow, expected) in at.arrows.iter().zip(expected) {
        let (beside, expected) = (arrow.from_the_others.unwrap(), numbers(expected));
        let estimate = beside.estimate;
        let covariance = estimate.covariance;
        let found =
            [estimate.value.x, estimate.value.y, covariance.m11, covariance.m12, covariance.m22];
        for (found, expected) in found.iter().zip(&expected) {
            assert_within(*found, *expected, ANOTHER_ROAD * expected.abs().max(1.0));
        }
        assert_within(beside.at_most.at_most, expected[5], LARGEST_OF_INTERVALS);
        assert_within(
            estimate.degrees_of_freedom,
            fixture["degrees_of_freedom"].as_f64().unwrap(),
            0.0,
        );
    }
    let shape = at.shape.unwrap();
    let w = fixture["sphericity_w"].as_f64().unwrap();
    assert_within(shape.p_value, w.powf(0.5 * 7.0), ANOTHER_ROAD);
}

#[test]
fn equivalence_has_the_power_that_t_tests_in_all_directions_have() {
    let mut archer = Archer::new(7);
    let half = Matrix2::new(15.0, 0.0, 0.0, 10.0);
    let within = (0..3000).filter(|_| {
        let points = archer.points(6, Vector2::new(12.0, -9.0), half);
        let mean = PlanarSample::new(points).unwrap().mean_estimate().unwrap();
        mean.distance(Level::P95).unwrap().is_within(30.0)
    });
    let power = within.count() as f64 / 3000.0;
    assert_within(power, fixture()["power"].as_f64().unwrap(), SIMULATED_POWER);
}

#[test]
fn a_promise_is_called_kept_or_broken_wrongly_once_in_twenty_at_most() {
    // Arrow 1 lies just as far from the others as is promised: either word of it is wrong.
    for (n, sd_mm) in [(2, 8.0), (3, 12.0), (6, 20.0)] {
        let own = [[25.0, 0.0], [0.0, 0.0], [3.0, 4.0], [-3.0, -4.0], [0.0, 0.0], [0.0, 0.0]];
        let (mut kept, mut broken, mut any) = (0, 0, 0);
        for seed in 0..600 {
            let at = verified(&rounds(&mut Archer::new(seed), 18.0, n, &own, sd_mm)).remove(0);
            kept += u32::from(verdict(&at, 0) == TogetherVerdict::Together);
            broken += u32::from(verdict(&at, 0) == TogetherVerdict::Apart);
            let is_apart = |arrow| verdict(&at, arrow) == TogetherVerdict::Apart;
            any += u32::from((1..6).any(is_apart));
        }
        for said in [kept, broken, any] {
            assert!(f64::from(said) / 600.0 <= WRONG_IN_TWENTY, "{n} rounds: {said} of 600");
        }
    }
}

#[test]
fn what_is_clear_is_said_and_about_as_many_more_rounds_as_are_said_settle_the_rest() {
    let own = [[90.0, -10.0], [4.0, 2.0], [-5.0, 0.0], [0.0, 6.0], [2.0, -4.0]];
    let at = verified(&rounds(&mut Archer::new(4), 18.0, 4, &own, 8.0)).remove(0);
    assert_eq!(verdict(&at, 0), TogetherVerdict::Apart);
    let (mut asked, mut settled) = (0, 0_u32);
    for seed in 0..150 {
        let own = [[8.0, 0.0], [0.0, 0.0], [0.0, 0.0], [0.0, 0.0]];
        let at = verified(&rounds(&mut Archer::new(seed), 18.0, 2, &own, 12.0)).remove(0);
        if let TogetherVerdict::Open { more: Some(more) } = verdict(&at, 0) {
            asked += 1;
            let again = rounds(&mut Archer::new(seed), 18.0, 2 + more, &own, 12.0);
            let later = verdict(&verified(&again).remove(0), 0);
            settled += u32::from(!matches!(later, TogetherVerdict::Open { .. }));
        }
    }
    let share = f64::from(settled) / f64::from(asked);
    assert!(asked > 60 && (0.4..1.0).contains(&share), "{share} of {asked}");
}

#[test]
fn distances_out_of_order_one_arrow_and_one_shot_each_say_what_they_can() {
    let at = |x: f64, y: f64| Vector2::new(x, y);
    let three = [at(3.0, 4.0), at(-2.0, 1.0), at(5.0, -9.0)];
    let far = group(37.0, "field", &three);
    let near = group(18.0, "field", &three);
    let heads = group(27.0, "head A", &three);
    let cold = Group { start: Start::Cold, ..group(9.0, "field", &three[..1]) };
    let found = verified(&[far, heads, near.clone(), cold]);
    let distances: Vec<_> = found.iter().map(|at| at.distance.metres()).collect();
    assert_eq!(distances, [18.0, 37.0]);
    assert_within(found[1].tolerance.mm(), 25.0 * 37.0 / 18.0, ANOTHER_ROAD);
    // One shot of each arrow: no arrow repeats itself, and the sight is judged all the same.
    assert!(found[0].arrows.iter().all(|arrow| arrow.from_the_others.is_none()));
    assert!(found[0].centre.is_some() && found[0].shape.is_none());
    let alone = group(18.0, "field", &three[..1]);
    let found = verified(&[alone.clone(), alone.clone(), alone]).remove(0);
    assert_eq!((found.arrows.len(), found.arrows[0].shots), (1, 3));
    assert_eq!((found.arrows[0].from_the_others, found.centre), (None, None));
    // What was called poor is left out, and an arrow without another shot is not there.
    let mut poor = near.clone();
    poor.shots[1].call = Some(Call::Poor);
    assert_eq!(verified(&[poor.clone()])[0].arrows.len(), 2);
    assert_eq!(verified(&[near, poor])[0].arrows[1].shots, 1);
}

#[test]
fn a_pin_goes_toward_the_miss_by_similar_triangles() {
    // The corners of a square of half side 3 about 10 right and 20 low: S = 12, V = 3 on each axis, 3 degrees of freedom.
    let hits = [[7.0, -17.0], [13.0, -17.0], [7.0, -23.0], [13.0, -23.0]].map(Vector2::from);
    let centre = verified(&[group(18.3, "field", &hits)])[0].centre.unwrap();
    let pin = centre.miss.of_pin(Millimetres::new(850.0), Millimetres::new(18_300.0));
    // 1 cm at 18.3 m with 0.85 m from eye to pin is 10 · 0.85/18.3 = 0.464 mm.
    assert_within(pin.x.value, 0.464_481, 1e-6);
    assert_within(pin.y.value, -0.928_962, 1e-6);
    assert_within(pin.x.standard_error, 3.0_f64.sqrt() * 850.0 / 18_300.0, ANOTHER_ROAD);
    // Both axes together: Student's quantile at 1 − 0.05/4 with 3 degrees of freedom, 4.1765 (a printed table).
    let reach = pin.x.interval.upper - pin.x.value;
    assert_within(reach / pin.x.standard_error, 4.1765, 5e-5);
    let [(_, right), (_, up)] = pin.parts();
    assert!(right && up);
    let nearly = SightMove { x: centre.miss.y, ..centre.miss };
    assert!(nearly.parts()[0].1);
}

#[test]
fn a_group_is_called_drawn_out_only_where_it_is() {
    let shape = |half: Matrix2<f64>, seed: u64| {
        let points = Archer::new(seed).points(12, Vector2::zeros(), half);
        let sample = PlanarSample::new(points).unwrap();
        GroupShape::of(&(sample.covariance().unwrap() * 11.0), 11, 0.05).unwrap()
    };
    let round = Matrix2::identity() * 12.0;
    let wrong = (0..800).filter(|seed| shape(round, *seed).drawn_out.is_some()).count();
    assert!((0.03..WRONG_IN_TWENTY).contains(&(wrong as f64 / 800.0)), "{wrong} of 800");
    let slant = |sign: f64| Matrix2::new(30.0, 0.0, sign * 30.0, 5.0);
    for (half, drawn_out) in [
        (Matrix2::new(30.0, 0.0, 0.0, 6.0), DrawnOut::Wide),
        (Matrix2::new(6.0, 0.0, 0.0, 30.0), DrawnOut::Tall),
        (slant(1.0), DrawnOut::RisingRight),
        (slant(-1.0), DrawnOut::RisingLeft),
    ] {
        for seed in 0..20 {
            assert_eq!(shape(half, seed).drawn_out, Some(drawn_out));
        }
    }
    assert_eq!(GroupShape::of(&round, 2, 0.05), None);
    // As the test of one sample has it.
    let sample = PlanarSample::new(Archer::new(1).points(9, Vector2::zeros(), round)).unwrap();
    let found = GroupShape::of(&(sample.covariance().unwrap() * 8.0), 8, 0.05).unwrap();
    assert_within(found.p_value, sample.sphericity_test().unwrap().p_value, ANOTHER_ROAD);
}
