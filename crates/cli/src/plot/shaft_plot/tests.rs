//! The picture of a shaft: its curve is the one that was planted, and it can be read whatever the shaft does.

use nalgebra::Matrix2;
use quarterturn_geometry::{Index, Offset, Positions};
use quarterturn_tuning::{Miss, Prediction, ShaftReport};
use roxmltree::Document;

use super::ShaftPlot;
use super::curve::curve;
use crate::plot::on_page::assert_texts_apart;
use crate::plot::target_plot::invented::{Dozen, Evening};
use crate::plot::{Hits, StyledBy};
use crate::wording::Ruler;
use quarterturn_entry::quantity::Unit;

/// A dozen operations on tens of millimetres, each right to 1e-16 of them; mm.
const ROUNDING_MM: f64 = 1e-10;

/// What turns once and twice with the mark, and what does not turn.
fn planted(index: Index) -> Offset {
    let mark = index.angle();
    Offset::new(-9.0, 14.0)
        + Offset::new(11.0, -4.0).rotated(-mark)
        + Offset::new(2.0, 1.0).rotated(mark)
        + Offset::new(-3.0, 6.0).rotated(mark * -2.0)
}

fn predicted(positions: u16, miss: impl Fn(Index) -> Offset) -> Vec<Prediction> {
    let at = |index: Index| Prediction {
        index,
        miss: Miss { mean: miss(index), covariance_mm2: Matrix2::new(60.0, 15.0, 15.0, 90.0) },
        within: (1.0 - miss(index).length().mm() / 60.0).clamp(0.0, 1.0),
    };
    Positions::new(positions).unwrap().iter().map(at).collect()
}

#[test]
fn five_positions_or_more_tell_the_whole_curve() {
    for positions in [5, 8, 12, 72] {
        for (step, at) in curve(&predicted(positions, planted)).into_iter().enumerate() {
            let truth = planted(Index::from_degrees(5.0 * step as f64));
            let off = (at - truth).length().mm();
            assert!(off < ROUNDING_MM, "{positions} positions, step {step}: {off}");
        }
    }
    for positions in [3, 4] {
        assert!(curve(&predicted(positions, planted)).is_empty(), "{positions} do not tell it");
    }
}

fn drawn(dozen: &Dozen, positions: u16, miss: impl Fn(Index) -> Offset) -> String {
    let report = ShaftReport {
        positions: predicted(positions, &miss),
        miss: predicted(positions, &miss)[0].miss,
        ..dozen.advice.shafts[0].clone()
    };
    let Dozen { history, advice } = dozen;
    let (hits, report) = (&Hits::of(history, advice), &report);
    let (ruler, styled) = (Ruler::new(Unit::MILLIMETRE), StyledBy::Itself);
    ShaftPlot { history, advice, hits, report, ruler, id: "shaft", styled }.svg()
}

#[test]
fn texts_stay_on_the_page_and_off_each_other() {
    let far = |index: Index| planted(index) + Offset::new(-2900.0, 30.0);
    let all_in_one_place = |_| Offset::new(1.0, 1.0);
    for seed in 1..=6 {
        let dozen = Evening { seed, ..Evening::with(6) }.shoot();
        for positions in [3, 4, 8, 12, 72] {
            assert_texts_apart(&drawn(&dozen, positions, planted));
            assert_texts_apart(&drawn(&dozen, positions, far));
            assert_texts_apart(&drawn(&dozen, positions, all_in_one_place));
        }
    }
}

#[test]
fn every_hour_has_its_number_twice() {
    let svg = drawn(&Evening::with(6).shoot(), 12, planted);
    let document = Document::parse(&svg).unwrap();
    for hour in 1..=12 {
        let named = document.descendants().filter(|node| {
            node.has_tag_name("text") && node.text() == Some(hour.to_string().as_str())
        });
        assert!(named.count() >= 2, "{hour}: on the face and on the clock of chances");
    }
}

#[test]
fn a_shaft_that_was_never_shot_has_a_picture_too() {
    let unshot = Evening { rounds: 0, ..Evening::with(3) }.shoot();
    let svg = drawn(&unshot, 12, planted);
    assert!(svg.contains("not shot yet") && !svg.contains("NaN"), "{svg}");
    assert_texts_apart(&svg);
}
