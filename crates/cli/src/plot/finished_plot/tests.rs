//! What the picture of finished arrows shows, and that nothing lies over anything.

use std::collections::BTreeMap;

use quarterturn_entry::quantity::Unit;
use quarterturn_geometry::{Index, Millimetres, Point};
use quarterturn_statistics::Level;
use quarterturn_tuning::{Group, Head, Hit, Shot, Start, hits_at, reach};

use super::FinishedPlot;
use crate::plot::on_page::{self, assert_texts_apart};
use crate::wording::Ruler;

/// Eight shots round `middle`, as far as 30 mm off.
fn group(at_m: f64, head: &str, start: Start, middle: [f64; 2]) -> Group {
    let shot = |n: u32| {
        let (sin, cos) = f64::from(n).sin_cos();
        let at = Point::new(middle[0] + 30.0 * cos, middle[1] + 25.0 * sin);
        let hit = Some(Hit { at, lean: None, read_sd: None, lean_sd: None });
        let shaft = (n + 1).to_string().parse().unwrap();
        Shot { shaft, index: Index::TWELVE, hit, call: None, flags: Vec::new() }
    };
    Group {
        distance: Millimetres::from_metres(at_m),
        head: head.parse::<Head>().unwrap(),
        start,
        mounted: BTreeMap::new(),
        shots: (0..8).map(shot).collect(),
    }
}

fn drawn(groups: &[Group]) -> String {
    let groups: Vec<_> = groups.iter().collect();
    let plate = Millimetres::new(200.0);
    FinishedPlot {
        distances: &hits_at(&groups),
        reach: &reach(&groups, plate, Level::P90, 1),
        plate,
        ruler: Ruler::new(Unit::MILLIMETRE),
        title: "fen.journal",
    }
    .svg()
}

#[test]
fn every_kind_has_its_own_shape_its_centre_and_a_line_below() {
    let svg = drawn(&[
        group(18.0, "field", Start::Warm, [0.0, 0.0]),
        group(18.0, "fixed <blades>", Start::Warm, [-40.0, 5.0]),
        group(37.0, "field", Start::Warm, [3.0, 2.0]),
        group(37.0, "other", Start::Warm, [30.0, 5.0]),
        group(37.0, "field", Start::Cold, [50.0, 5.0]),
    ]);
    assert_texts_apart(&svg);
    let of = |class: &str| on_page::drawn(&svg, class);
    // Each hit, one in a legend, and in the chart its points and its name.
    assert_eq!(of("judged"), 2 * 9 + 3);
    assert_eq!(of("retire"), 2 * 9 + 3);
    assert_eq!(of("left-out"), 9);
    assert_eq!(["region curve", "region retire", "region hour"].map(of), [2, 2, 1]);
    for part in ["fixed &lt;blades&gt;, 8: centre", "cold first shots", "From 37 m", "at least"] {
        assert!(svg.contains(part), "{part}");
    }
}

#[test]
fn hits_outside_the_picture_are_counted_below_it() {
    let mut stray = group(18.0, "field", Start::Warm, [0.0, 0.0]);
    stray.shots[3].hit.as_mut().unwrap().at = Point::new(0.0, -900.0);
    assert!(drawn(&[stray]).contains("; 1 outside"));
    assert!(!drawn(&[group(18.0, "field", Start::Warm, [0.0, 0.0])]).contains("outside"));
}

#[test]
fn before_anything_was_shot_there_is_a_heading_alone() {
    let svg = drawn(&[]);
    assert_texts_apart(&svg);
    assert!(svg.contains("0 shots of finished arrows from 0 distances"), "{svg}");
}
