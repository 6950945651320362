//! An end is drawn as it was shot, whatever was shot.

use quarterturn_geometry::{Index, Millimetres, Offset, Point};
use quarterturn_tuning::{Call, End, Event, Flag, Hit, Setup, Shot};
use roxmltree::Document;

use super::EndPlot;
use crate::plot::backdrop::{Backdrop, FaceSize};
use crate::plot::on_page::{self, assert_texts_apart};
use crate::plot::target_plot::invented::{Dozen, Evening};
use crate::wording::Ruler;
use quarterturn_entry::quantity::Unit;

fn drawn(setup: &Setup, end: &End, unit: &'static Unit, backdrop: Backdrop) -> String {
    let ruler = Ruler::new(unit);
    EndPlot { setup, end, number: 3, ruler, title: "Fen <b>", backdrop }.svg()
}

#[track_caller]
fn assert_good(setup: &Setup, end: &End) -> String {
    for unit in [Unit::MILLIMETRE, Unit::INCH] {
        let svg = drawn(setup, end, unit, Backdrop::Grid);
        assert!(!svg.contains("NaN") && !svg.contains("<b>"), "{svg}");
        Document::parse(&svg).unwrap();
        assert_texts_apart(&svg);
    }
    drawn(setup, end, Unit::MILLIMETRE, Backdrop::Grid)
}

fn ends(dozen: &Dozen) -> impl Iterator<Item = &End> {
    dozen.history.events.iter().filter_map(|event| match event {
        Event::End(end) => Some(end),
        _ => None,
    })
}

/// Shots of so many shafts and the reference, in one end.
fn of(shafts: usize) -> (Setup, End) {
    let dozen = Evening { rounds: 1, ..Evening::with(shafts) }.shoot();
    let mut shots: Vec<Shot> = ends(&dozen).flat_map(|end| end.shots.clone()).collect();
    let mut seen = Vec::new();
    shots.retain(|shot| {
        let new = !seen.contains(&shot.shaft);
        seen.push(shot.shaft.clone());
        new
    });
    let end = End { shots, evening: "2027-03-02".to_owned(), distance: None };
    (dozen.history.setup, end)
}

#[test]
fn texts_stay_on_the_page_and_off_each_other() {
    for shafts in 1..=24 {
        let (setup, end) = of(shafts);
        let svg = assert_good(&setup, &end);
        assert!(svg.contains("Fen &lt;b&gt;: end 3") && svg.contains("from 18.3 m"), "{svg}");
    }
}

#[test]
fn bad_ends_have_a_picture_too() {
    let (setup, end) = of(12);
    let shots = |shots: Vec<Shot>| End { shots, ..end.clone() };
    assert!(assert_good(&setup, &shots(Vec::new())).contains("No hit to show"));
    assert_good(&setup, &shots(end.shots[1..2].to_vec()));
    let (sixty_setup, sixty) = of(60);
    assert_good(&sixty_setup, &sixty);
    let (number, ruler) = (1, Ruler::new(Unit::MILLIMETRE));
    let (title, backdrop) = (&"箭".repeat(64), Backdrop::Grid);
    let plot = EndPlot { setup: &setup, end: &end, number, ruler, title, backdrop };
    assert_texts_apart(&plot.svg());
    let mut odd = end.shots.clone();
    let at = Point::SPOT + Offset::new(-2000.0, 1900.0);
    odd[1].hit = Some(Hit { at, lean: None, read_sd: None, lean_sd: None });
    odd[2].hit = None;
    odd[2].flags = vec![Flag::Lost];
    odd[3].call = Some(Call::Poor);
    odd[4].index = Index::from_degrees(123.4);
    odd[5].shaft = "箭箭箭箭箭箭箭箭箭箭箭箭箭箭箭箭".parse().unwrap();
    let elsewhere = Some(Millimetres::from_metres(30.0));
    let svg = assert_good(&setup, &End { distance: elsewhere, ..shots(odd) });
    for said in ["no hit", ": lost", "called poor; kept, and left out", "not pooled", "not read"] {
        assert!(svg.contains(said), "{said} in {svg}");
    }
}

#[test]
fn a_face_of_the_sport_lies_about_the_spot() {
    let (setup, end) = of(3);
    let svg = drawn(&setup, &end, Unit::MILLIMETRE, Backdrop::Rings(FaceSize::Cm40));
    assert_eq!(on_page::drawn(&svg, "ring-line"), 10);
    assert!(svg.contains("Under it a face of 40 cm"), "{svg}");
}
