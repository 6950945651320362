//! The course can be read for any number of shafts, and ends where the advice does.

use quarterturn_tuning::{Event, History, Policy, Verdict, advise_with_course};
use roxmltree::Document;

use super::settled::settled;
use super::{CoursePlot, places};
use crate::plot::block::StyledBy;
use crate::plot::on_page::{self, assert_texts_apart};
use crate::plot::target_plot::invented::{Dozen, Evening};
use crate::wording::Ruler;
use quarterturn_entry::quantity::Unit;

fn drawn(dozen: &Dozen, unit: &'static Unit) -> String {
    let Dozen { history, advice } = dozen;
    let (stood, ruler) = (&stood(history), Ruler::new(unit));
    CoursePlot { history, advice, stood, ruler, title: "Fen", styled: StyledBy::Itself }.svg()
}

fn stood(history: &History) -> Vec<Vec<Verdict>> {
    advise_with_course(history, &Policy::default(), &places(history)).1
}

#[test]
fn texts_stay_on_the_page_and_off_each_other() {
    for shafts in [1, 3, 6] {
        for rounds in [0, 1, 4] {
            let dozen = Evening { rounds, ..Evening::with(shafts) }.shoot();
            for unit in [Unit::MILLIMETRE, Unit::INCH] {
                let svg = drawn(&dozen, unit);
                assert!(!svg.contains("NaN") && Document::parse(&svg).is_ok());
                assert_texts_apart(&svg);
            }
        }
    }
}

#[test]
fn evenings_that_follow_close_on_each_other_keep_their_lines() {
    let mut dozen = Evening::with(3).shoot();
    for (at, event) in dozen.history.events.iter_mut().enumerate() {
        if let Event::End(end) = event {
            end.evening = format!("2027-03-{at:02}");
        }
    }
    let svg = drawn(&dozen, Unit::MILLIMETRE);
    assert_eq!(on_page::drawn(&svg, "break"), dozen.history.events.len() - 1);
    assert_texts_apart(&svg);
}

#[test]
fn every_shaft_has_a_verdict_at_every_place_and_the_last_are_those_of_the_advice() {
    let Dozen { history, advice } = Evening { rounds: 12, ..Evening::with(4) }.shoot();
    let chart = settled(&history, &advice, &stood(&history));
    let points = chart.series[0].points.len();
    assert_eq!(points, places(&history).len() + 2, "the beginning and the end are there too");
    for at in 0..points {
        let sum: f64 = chart.series.iter().map(|series| series.points[at][1]).sum();
        assert!((sum - 4.0).abs() < f64::EPSILON, "{sum} of 4 shafts");
    }
    let shots: usize = history.events.iter().map(super::settled::shots).sum();
    let [kept, ..] = chart.series.as_slice() else { panic!("{chart:?}") };
    let keeps = advice.shafts.iter().filter(|one| one.verdict == Verdict::Keep).count();
    assert_eq!(kept.points.last(), Some(&[shots as f64, keeps as f64]));
}

#[test]
fn few_places_are_drawn_the_last_end_never_twice() {
    let places = |ends: usize| {
        let history = Evening { rounds: ends, ..Evening::with(3) }.shoot().history;
        assert_eq!(history.events.len(), ends);
        places(&history)
    };
    assert_eq!(places(1), Vec::<usize>::new());
    assert_eq!(places(4), [1, 2, 3]);
    assert_eq!(places(52), [4, 10, 16, 22, 28, 34, 40, 46]);
}
