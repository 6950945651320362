//! The course can be read for any number of shafts, and ends where the advice does.

use quarterturn_tuning::{Event, Policy};
use roxmltree::Document;

use super::CoursePlot;
use super::settled::settled;
use crate::plot::block::StyledBy;
use crate::plot::on_page::assert_texts_apart;
use crate::plot::target_plot::invented::{Dozen, Evening};
use crate::wording::Ruler;
use quarterturn_entry::quantity::Unit;

fn drawn(dozen: &Dozen, unit: &'static Unit) -> String {
    let (Dozen { history, advice }, policy) = (dozen, &Policy::default());
    let ruler = Ruler::new(unit);
    CoursePlot { history, advice, policy, ruler, title: "Fen", styled: StyledBy::Itself }.svg()
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
    assert_eq!(svg.matches("class=\"break\"").count(), dozen.history.events.len() - 1);
    assert_texts_apart(&svg);
}

#[test]
fn every_shaft_has_a_verdict_at_every_shot() {
    let history = Evening::with(4).shoot().history;
    let chart = settled(&history, &Policy::default());
    let shots: usize = history.events.iter().map(super::settled::shots).sum();
    for at in 0..chart.series[0].points.len() {
        let sum: f64 = chart.series.iter().map(|series| series.points[at][1]).sum();
        assert!((sum - 4.0).abs() < f64::EPSILON, "{sum} of 4 shafts");
    }
    for series in &chart.series {
        assert!((series.points.last().unwrap()[0] - shots as f64).abs() < f64::EPSILON);
    }
}
