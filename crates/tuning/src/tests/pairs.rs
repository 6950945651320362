//! Which head on which arrow: a head that steers its arrow away is found, and only that one.

use nalgebra::{Matrix2, Vector2};
use quarterturn_geometry::Millimetres;

use super::finished_shots::{Archer, group};
use crate::tolerance::WRONG_IN_TWENTY;
use crate::{Group, Pair, TogetherVerdict, compare_heads};

const TOGETHER: Option<Millimetres> = Some(Millimetres::new(40.0));

/// `n` rounds of six arrows, each with field points and with its own head; all heads land 30 left, that of the last arrow
/// `low_mm` lower too.
fn shoot(seed: u64, n: usize, low_mm: f64) -> Vec<Group> {
    let mut archer = Archer::new(seed);
    let mut groups = Vec::new();
    for _ in 0..n {
        for head in ["field", "fixed"] {
            let mut hit = |arrow: i32| {
                let own = Vector2::new(f64::from(arrow) * 4.0, f64::from(arrow % 2) * 9.0);
                let low = if arrow == 5 { -low_mm } else { 0.0 };
                let turned =
                    if head == "fixed" { Vector2::new(-30.0, low) } else { Vector2::zeros() };
                archer.points(1, own + turned, Matrix2::identity() * 12.0)[0]
            };
            let hits: Vec<_> = (0..6).map(&mut hit).collect();
            let mut shot = group(37.0, head, &hits);
            shot.mounted =
                (1..=6).map(|n| (n.to_string().parse().unwrap(), format!("H{n}"))).collect();
            groups.push(shot);
        }
    }
    groups
}

fn pairs(groups: &[Group]) -> Vec<Pair> {
    let groups: Vec<_> = groups.iter().collect();
    compare_heads(&groups, TOGETHER)[0].distances[0].pairs.clone()
}

fn is_apart(pair: &Pair) -> bool {
    pair.from_the_others.unwrap().verdict == Some(TogetherVerdict::Apart)
}

#[test]
fn the_arrow_whose_head_steers_it_is_named_with_its_head() {
    let found = pairs(&shoot(3, 6, 130.0));
    let apart: Vec<_> = found.iter().filter(|pair| is_apart(pair)).collect();
    assert_eq!(apart.len(), 1);
    assert_eq!((apart[0].arrow.as_str(), apart[0].piece.as_deref()), ("6", Some("H6")));
    assert_eq!((apart[0].field, apart[0].broadheads), (6, 6));
    let away = apart[0].from_the_others.unwrap().estimate.value;
    assert!(away.y < -100.0 && away.x.abs() < 30.0, "{away}");
}

#[test]
fn heads_that_all_land_alike_are_named_once_in_twenty_dozens_at_most() {
    // Just as far as is called together.
    let named = (0..400).filter(|seed| pairs(&shoot(*seed, 3, 40.0)).iter().any(is_apart)).count();
    assert!(named as f64 / 400.0 <= WRONG_IN_TWENTY, "{named} of 400");
}

#[test]
fn a_head_on_another_arrow_is_another_pair_and_an_arrow_without_field_points_is_none() {
    let mut groups = shoot(1, 2, 0.0);
    groups[3].mounted.insert("1".parse().unwrap(), "H9".into());
    let field = groups[0].shots.iter().chain(&groups[2].shots).filter(|s| s.shaft.as_str() == "2");
    assert_eq!(field.count(), 2);
    for group in [0, 2] {
        groups[group].shots.retain(|shot| shot.shaft.as_str() != "2");
    }
    let told: Vec<_> = pairs(&groups)
        .iter()
        .map(|pair| format!("{} {} {}", pair.arrow, pair.piece.as_ref().unwrap(), pair.broadheads))
        .collect();
    assert_eq!(told, ["1 H1 1", "1 H9 1", "3 H3 2", "4 H4 2", "5 H5 2", "6 H6 2"]);
    // One round: no arrow was shot twice, so that nothing tells its scatter.
    assert!(pairs(&shoot(1, 1, 0.0)).iter().all(|pair| pair.from_the_others.is_none()));
}
