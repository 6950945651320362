//! Lean against hit: the line is the one that was learned, and the charts can be read for any dozen.

use quarterturn_geometry::{Lean, Offset};
use quarterturn_statistics::Interval;
use quarterturn_tuning::LeanRelation;
use roxmltree::Document;

use super::{LeanPlot, relation_said};
use crate::plot::block::StyledBy;
use crate::plot::on_page::{assert_texts_apart, number, places, said};
use crate::plot::target_plot::hits::Hits;
use crate::plot::target_plot::invented::{Dozen, Evening};
use crate::wording::Ruler;
use quarterturn_entry::quantity::Unit;

const LEARNED: LeanRelation = LeanRelation {
    slope_deg_per_mm: -0.094,
    interval: Interval { lower: -0.12, upper: -0.07, level: 0.9 },
    common: Lean::from_degrees(0.2, -0.3),
    shots: 42,
};

fn drawn(dozen: &Dozen, relation: Option<LeanRelation>, unit: &'static Unit) -> String {
    let Dozen { history, advice } = dozen;
    let hits = &Hits::of(history, advice);
    let (ruler, styled) = (Ruler::new(unit), StyledBy::Itself);
    LeanPlot { advice, hits, relation, ruler, title: "Fen <b>", styled }.svg()
}

#[test]
fn texts_stay_on_the_page_and_off_each_other() {
    for shafts in 1..=24 {
        let dozen = Evening::with(shafts).shoot();
        for unit in [Unit::MILLIMETRE, Unit::INCH] {
            let svg = drawn(&dozen, Some(LEARNED), unit);
            assert!(!svg.contains("NaN") && Document::parse(&svg).is_ok());
            assert_texts_apart(&svg);
        }
    }
}

#[test]
fn bad_dozens_have_a_picture_too() {
    for (dozen, relation) in [
        (Evening { rounds: 0, ..Evening::with(3) }.shoot(), None),
        (Evening { rounds: 1, ..Evening::with(1) }.shoot(), Some(LEARNED)),
        (Evening::with(60).shoot(), Some(LEARNED)),
        (Evening::with(12).shoot().stray(Offset::new(-2000.0, 900.0)), Some(LEARNED)),
    ] {
        let svg = drawn(&dozen, relation, Unit::MILLIMETRE);
        assert!(!svg.contains("NaN") && !svg.contains("<b>"), "{svg}");
        Document::parse(&svg).unwrap();
        assert_texts_apart(&svg);
    }
    let Dozen { history, advice } = &Evening::with(3).shoot();
    let (hits, styled) = (&Hits::of(history, advice), StyledBy::Itself);
    let (relation, ruler) = (Some(LEARNED), Ruler::new(Unit::MILLIMETRE));
    let title = &"箭".repeat(64);
    assert_texts_apart(&LeanPlot { advice, hits, relation, ruler, title, styled }.svg());
    let stray = Evening::with(12).shoot().stray(Offset::new(-2000.0, 900.0));
    let svg = drawn(&stray, Some(LEARNED), Unit::MILLIMETRE);
    assert!(svg.contains("1 hit too far off to be shown"), "{svg}");
}

/// The scale of each chart is told from two of its dots, whose hit and lean are known.
#[test]
fn the_line_has_the_slope_that_was_learned() {
    let dozen = Evening::with(6).shoot();
    let hits = Hits::of(&dozen.history, &dozen.advice);
    let svg = drawn(&dozen, Some(LEARNED), Unit::MILLIMETRE);
    let document = Document::parse(&svg).unwrap();
    let all = |class: &str, tag: &str| -> Vec<_> {
        let of_tag = document.descendants().filter(|node| node.has_tag_name(tag));
        of_tag.filter(|node| said(*node, "class") == Some(class)).collect()
    };
    let counted: Vec<_> =
        hits.marks.iter().filter(|hit| hit.kind != super::HitKind::LeftOut).collect();
    let dots = all("judged", "circle");
    let line = places(all("line sky", "path")[0]);
    let wide = |of: &dyn Fn(usize) -> f64| {
        let by = |one: &usize, other: &usize| of(*one).total_cmp(&of(*other));
        let at = 0..counted.len();
        (at.clone().min_by(by).unwrap(), at.max_by(by).unwrap())
    };
    let scale = |of: &dyn Fn(usize) -> f64, drawn: &str| {
        let (least, most) = wide(of);
        (number(dots[most], drawn) - number(dots[least], drawn)) / (of(most) - of(least))
    };
    let per_mm = scale(&|at| counted[at].at.x_mm, "cx");
    let per_deg = scale(&|at| counted[at].tail.unwrap().x.degrees(), "cy");
    let rise = (line[1].1 - line[0].1) / per_deg;
    let run = (line[1].0 - line[0].0) / per_mm;
    // Places are written to a hundredth of a millimetre of paper, over some 50 of them.
    assert!((rise / run - LEARNED.slope_deg_per_mm).abs() < 1e-3, "{}", rise / run);
}

#[test]
fn the_relation_in_words() {
    let said = |unit| relation_said(Some(&LEARNED), Ruler::new(unit));
    assert_eq!(
        said(Unit::MILLIMETRE),
        "For each 10 mm that bare shafts land farther right, tails stand 0.9 deg farther left (90 % sure: 0.7 to 1.2; 42 \
         shots); and for each 10 mm higher as much lower."
    );
    assert!(
        said(Unit::INCH)
            .starts_with("For each 1 in that bare shafts land farther right, tails stand 2.4 deg")
    );
    assert!(relation_said(None, Ruler::new(Unit::MILLIMETRE)).starts_with("No counted bare shot"));
}
