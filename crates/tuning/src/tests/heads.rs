//! Broadheads against field points: what is said of planted differences, and how often it is wrong.

use nalgebra::{Matrix2, Vector2};
use quarterturn_geometry::Millimetres;
use quarterturn_statistics::distributions::StudentT;
use serde_json::Value;

use super::finished_shots::{Archer, group};
use crate::tolerance::{ANOTHER_ROAD, ROUNDING, WRONG_IN_TWENTY, assert_within};
use crate::{Call, Comparison, Grows, Growth, Head, Start, TogetherVerdict, compare_heads};

const TOGETHER: Option<Millimetres> = Some(Millimetres::new(50.0));

/// One end of each head at each distance, drawn by `seed`: [distance, n, scatter of field points and of broadheads, centre].
type Planted = (f64, usize, [f64; 2], [f64; 2]);

fn compared(seed: u64, planted: &[Planted]) -> Comparison {
    let mut archer = Archer::new(seed);
    let mut groups = Vec::new();
    for (at_m, n, [field, heads], centre) in planted {
        groups.push(archer.group(*at_m, "field", *n, [5.0, -3.0], *field));
        let centre = [centre[0] + 5.0, centre[1] - 3.0];
        groups.push(archer.group(*at_m, "head A", *n, centre, *heads));
    }
    let groups: Vec<_> = groups.iter().collect();
    compare_heads(&groups, TOGETHER).remove(0)
}

fn verdict(seed: u64, planted: Planted) -> TogetherVerdict {
    compared(seed, &[planted]).distances[0].difference.unwrap().verdict.unwrap()
}

/// How often, of `of` seeds, something is so.
fn share(of: u64, is_so: impl Fn(u64) -> bool) -> f64 {
    (0..of).filter(|seed| is_so(*seed)).count() as f64 / of as f64
}

#[test]
fn together_and_apart_are_said_wrongly_once_in_twenty_at_most() {
    // The true distance is just what is called together: either word is wrong, at every direction and scatter.
    for (n, spreads) in
        [(3, [15.0, 15.0]), (5, [15.0, 25.0]), (8, [10.0, 10.0]), (12, [20.0, 35.0])]
    {
        for centre in [[50.0, 0.0], [30.0, -40.0]] {
            let said = |what| share(800, |seed| verdict(seed, (27.0, n, spreads, centre)) == what);
            let (together, apart) = (said(TogetherVerdict::Together), said(TogetherVerdict::Apart));
            assert!(together <= WRONG_IN_TWENTY, "together with {n} of each: {together}");
            assert!(apart <= WRONG_IN_TWENTY, "apart with {n} of each: {apart}");
        }
    }
}

#[test]
fn what_is_clear_is_said() {
    let near = share(200, |seed| {
        verdict(seed, (27.0, 12, [15.0, 20.0], [10.0, 5.0])) == TogetherVerdict::Together
    });
    let far = share(200, |seed| {
        verdict(seed, (27.0, 12, [15.0, 20.0], [90.0, 5.0])) == TogetherVerdict::Apart
    });
    assert!(near > 0.95 && far > 0.95, "{near} {far}");
}

#[test]
fn about_as_many_more_shots_as_are_said_decide() {
    let (mut asked, mut decided) = (0, 0_u32);
    for seed in 0..400 {
        let before = verdict(seed, (27.0, 5, [25.0, 25.0], [15.0, 10.0]));
        if let TogetherVerdict::Open { more: Some(more) } = before {
            asked += 1;
            let after = verdict(seed, (27.0, 5 + more, [25.0, 25.0], [15.0, 10.0]));
            decided += u32::from(!matches!(after, TogetherVerdict::Open { .. }));
        }
    }
    let share = f64::from(decided) / f64::from(asked);
    assert!(asked > 150 && (0.4..0.95).contains(&share), "{share} of {asked}");
}

#[test]
fn few_shots_cold_ones_and_poor_ones_say_nothing() {
    let at = |x: f64, y: f64| Vector2::new(x, y);
    let hits = [at(0.0, 1.0), at(3.0, -2.0), at(-4.0, 0.0)];
    let field = group(18.0, "field", &hits);
    let mut heads = group(18.3, "head A", &hits);
    let verdict = |heads: &crate::Group| {
        let compared = compare_heads(&[&field, heads], TOGETHER).remove(0);
        assert_eq!(compared.distances.len(), 1);
        compared.distances[0].difference.map(|difference| difference.verdict)
    };
    assert_eq!(verdict(&heads), Some(Some(TogetherVerdict::Together)));
    heads.shots[1].call = Some(Call::Poor);
    assert_eq!(verdict(&heads), None);
    heads.start = Start::Cold;
    assert_eq!(compare_heads(&[&field, &heads], TOGETHER), []);
    assert_eq!(compare_heads(&[&field], TOGETHER), []);
}

#[test]
fn heads_are_parted_by_name_and_distances_by_a_metre() {
    let mut archer = Archer::new(3);
    let mut groups = Vec::new();
    for (at_m, head) in [(18.0, "Field"), (18.3, "head A"), (19.5, "head A"), (18.1, "head B")] {
        groups.push(archer.group(at_m, head, 4, [0.0, 0.0], 10.0));
    }
    let groups: Vec<_> = groups.iter().collect();
    let compared = compare_heads(&groups, None);
    let named: Vec<_> = compared.iter().map(|one| one.head.to_string()).collect();
    assert_eq!(named, ["head A", "head B"]);
    let counts: Vec<_> = compared[0].distances.iter().map(|at| (at.field, at.broadheads)).collect();
    assert_eq!(counts, [(4, 4), (0, 4)]);
    assert_eq!(compared[0].distances[0].difference.unwrap().verdict, None);
    assert_eq!(groups[0].head, Head::Field);
}

fn grows(seed: u64, far: [f64; 2]) -> Option<Grows> {
    let planted = [(18.0, 8, [12.0, 15.0], [20.0, -10.0]), (36.0, 8, [24.0, 30.0], far)];
    Some(compared(seed, &planted).growth?.grows)
}

#[test]
fn growth_in_proportion_is_called_planing_once_in_twenty_at_most_and_planing_is_seen() {
    let false_alarm = share(1500, |seed| grows(seed, [40.0, -20.0]) == Some(Grows::Faster));
    assert!(false_alarm <= WRONG_IN_TWENTY, "{false_alarm}");
    let seen = share(300, |seed| grows(seed, [160.0, -80.0]) == Some(Grows::Faster));
    assert!(seen > 0.9, "{seen}");
    let slower = share(300, |seed| grows(seed, [-120.0, 60.0]) == Some(Grows::Slower));
    assert!(slower < 0.01, "what grows the other way grows: {slower}");
}

#[test]
fn in_proportion_is_shown_and_not_assumed() {
    let said = |n, far| {
        share(400, |seed| {
            let near = (18.0, n, [8.0, 8.0], [40.0, 0.0]);
            let planted = [near, (36.0, n, [16.0, 16.0], [far, 0.0])];
            compared(seed, &planted).growth.unwrap().grows == Grows::InProportion
        })
    };
    assert!(said(12, 80.0) > 0.9);
    // Few shots do not show it, and just as much more than what is called together is not called so.
    assert!(said(3, 80.0) < 0.85, "{}", said(3, 80.0));
    assert!(said(6, 130.0) < WRONG_IN_TWENTY, "{}", said(6, 130.0));
    let none = |seed| {
        let same = [(18.0, 4, [20.0, 20.0], [0.0, 0.0]), (36.0, 4, [40.0, 40.0], [0.0, 0.0])];
        compared(seed, &same).growth.unwrap().grows == Grows::NoDifference
    };
    assert!(share(300, none) > 0.9, "{}", share(300, none));
    let shrinks = |seed| {
        let planted = [(18.0, 12, [8.0, 8.0], [60.0, 0.0]), (36.0, 12, [16.0, 16.0], [30.0, 0.0])];
        compared(seed, &planted).growth.unwrap().grows == Grows::Slower
    };
    assert!(share(200, shrinks) > 0.9, "{}", share(200, shrinks));
    assert!(compared(1, &[(18.0, 4, [20.0, 20.0], [0.0, 0.0])]).growth.is_none());
}

/// Two distances by hand: of a square of hits about its centre, the excess is δ₂ − 2 δ₁ along the way they go.
#[test]
fn two_distances_by_hand() {
    let square = |centre: [f64; 2], half: f64| {
        let corners = [[1.0, 1.0], [1.0, -1.0], [-1.0, 1.0], [-1.0, -1.0]];
        corners.map(|corner| Vector2::from(centre) + half * Vector2::from(corner))
    };
    let groups = [
        group(20.0, "field", &square([0.0, 0.0], 3.0)),
        group(20.0, "head A", &square([30.0, 0.0], 3.0)),
        group(40.0, "field", &square([0.0, 0.0], 6.0)),
        group(40.0, "head A", &square([100.0, 0.0], 6.0)),
    ];
    let groups: Vec<_> = groups.iter().collect();
    let growth = compare_heads(&groups, TOGETHER)[0].growth.unwrap();
    assert_within((growth.along - Vector2::x()).norm(), 0.0, ROUNDING);
    assert_within(growth.excess_mm.value, 40.0, 40.0 * ROUNDING);
    // Each corner lies half a side off in x: S = 4/3 h², and V is that of two means of four, 2/3 h².
    let variance: f64 = 24.0 + 4.0 * 6.0;
    assert_within(growth.excess_mm.standard_error, variance.sqrt(), 7.0 * ROUNDING);
    assert_eq!(growth.grows, Grows::Faster);
    assert!(growth.faster > 0.999);
    let identity = Matrix2::identity() * 6.0;
    let near = compare_heads(&groups, TOGETHER)[0].distances[0].difference.unwrap();
    assert_within((near.estimate.covariance - identity).norm(), 0.0, 10.0 * ROUNDING);
}

#[test]
fn three_distances_as_numpy_fits_them() {
    let text = include_str!("../../../../fixtures/tuning/growth.json");
    let fixture: Value = serde_json::from_str(text).unwrap();
    let number = |value: &Value| value.as_f64().unwrap();
    let points = |value: &Value| -> Vec<Vector2<f64>> {
        let pairs = value.as_array().unwrap().iter();
        pairs.map(|pair| Vector2::new(number(&pair[0]), number(&pair[1]))).collect()
    };
    let groups: Vec<_> = fixture["groups"].as_array().unwrap().iter().collect();
    let groups: Vec<_> = groups
        .iter()
        .flat_map(|at| {
            [("field", "field"), ("head A", "heads")]
                .map(|(head, member)| group(number(&at["distance_m"]), head, &points(&at[member])))
        })
        .collect();
    let groups: Vec<_> = groups.iter().collect();
    let Growth { along, excess_mm, faster, .. } =
        compare_heads(&groups, TOGETHER)[0].growth.unwrap();
    let expected = |member: &str| number(&fixture[member]);
    assert_within(along.x, number(&fixture["along"][0]), ANOTHER_ROAD);
    assert_within(along.y, number(&fixture["along"][1]), ANOTHER_ROAD);
    assert_within(excess_mm.value, expected("excess_mm"), 100.0 * ANOTHER_ROAD);
    assert_within(excess_mm.standard_error, expected("standard_error_mm"), 100.0 * ANOTHER_ROAD);
    let student = StudentT::new(expected("degrees_of_freedom")).unwrap();
    let t = expected("excess_mm") / expected("standard_error_mm");
    assert_within(faster, student.cdf(t), ANOTHER_ROAD);
}
