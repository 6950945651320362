//! Before and after: what was planted is what is drawn, and it can be read for any dozen.

use quarterturn_geometry::Offset;
use quarterturn_tuning::{RetireReason, Verdict};
use roxmltree::Document;

use super::{BeforeAfter, finding, landings, spread};
use crate::plot::block::StyledBy;
use crate::plot::on_page::assert_texts_apart;
use crate::plot::target_plot::hits::Hits;
use crate::plot::target_plot::invented::{Dozen, Evening};
use crate::wording::Ruler;
use quarterturn_entry::quantity::Unit;

const MM: Ruler = Ruler::new(Unit::MILLIMETRE);

fn drawn(dozen: &Dozen) -> String {
    titled(dozen, "Fen <b>")
}

fn titled(dozen: &Dozen, title: &str) -> String {
    let Dozen { history, advice } = dozen;
    let hits = &Hits::of(history, advice);
    let styled = StyledBy::Itself;
    BeforeAfter { history, advice, hits, ruler: MM, title, styled }.svg()
}

#[test]
fn texts_stay_on_the_page_and_off_each_other() {
    for shafts in 1..=24 {
        let dozen = Evening::with(shafts).shoot();
        let svg = drawn(&dozen);
        assert!(!svg.contains("NaN") && Document::parse(&svg).is_ok(), "{svg}");
        assert_texts_apart(&svg);
    }
}

#[test]
fn bad_dozens_have_a_picture_too() {
    let wide = |k: usize| format!("箭箭箭箭箭箭箭箭箭箭箭箭箭箭{k:02}").parse().unwrap();
    for dozen in [
        Evening { rounds: 0, ..Evening::with(3) }.shoot(),
        Evening { rounds: 1, ..Evening::with(1) }.shoot(),
        Evening::with(60).shoot(),
        Evening::with(12).shoot().stray(Offset::new(-2000.0, 900.0)),
        Evening::with(12).shoot().renamed(wide),
    ] {
        let svg = drawn(&dozen);
        assert!(!svg.contains("NaN") && !svg.contains("<b>"), "{svg}");
        Document::parse(&svg).unwrap();
        assert_texts_apart(&svg);
    }
    assert_texts_apart(&titled(&Evening::with(3).shoot(), &"箭".repeat(64)));
    assert!(
        drawn(&Evening { rounds: 0, ..Evening::with(3) }.shoot())
            .contains("Not shot yet: 1, 2 and 3.")
    );
}

#[test]
fn every_shaft_has_its_first_hit_and_its_last() {
    let Dozen { history, advice } = Evening::with(12).shoot();
    let hits = Hits::of(&history, &advice);
    let landings = landings(&history, &advice, &hits);
    let both = landings.iter().filter_map(|one| Some((one, one.first?, one.last?)));
    for (landing, first, last) in both.clone() {
        assert!(first.index.is_at(landing.as_built) && last.index.is_at(landing.report.index));
        assert!(first.end <= last.end, "{}", landing.report.shaft);
    }
    // Of a few the only shot as built was called poor.
    assert!((9..12).contains(&both.count()));
}

/// By hand: of the corners of a square with sides of 20 mm S = 4 · 200 mm² and ν = 6; √(S/ν)/c(6) = 11.547/0.9594 mm
/// (c of 6 degrees of freedom is c₄(7) of quality control).
#[test]
fn the_spread_is_that_of_the_hits_drawn() {
    let Dozen { history, advice } = Evening::with(4).shoot();
    let mut hits = Hits::of(&history, &advice);
    for (hit, (x_mm, y_mm)) in
        hits.marks.iter_mut().zip([(0.0, 0.0), (20.0, 0.0), (0.0, 20.0), (20.0, 20.0)])
    {
        hit.at = Offset::new(x_mm, y_mm);
    }
    let corners: Vec<_> = hits.marks.iter().take(4).collect();
    let told = spread(&corners).unwrap();
    assert!((told.per_axis.mm() - 11.547 / 0.9594).abs() < 0.005, "{told:?}");
    assert_eq!((told.shots, told.degrees_of_freedom), (4, 6));
    assert_eq!(spread(&corners[..1]), None);
}

#[test]
fn what_is_retired_does_not_count_as_after() {
    let mut dozen = Evening::with(6).shoot();
    dozen.advice.shafts[0].verdict = Verdict::Retire(RetireReason::CircleTooBig);
    dozen.advice.shafts[1..].iter_mut().for_each(|report| report.verdict = Verdict::Keep);
    let Dozen { history, advice } = &dozen;
    let hits = Hits::of(history, advice);
    let said = finding(&landings(history, advice, &hits), MM);
    assert!(said.contains("6 first hits spread") && said.contains("5 last hits spread"), "{said}");
}
