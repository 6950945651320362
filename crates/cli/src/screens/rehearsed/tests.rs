//! Every sentence of the screen, on planted figures.

use quarterturn_geometry::Millimetres;
use quarterturn_statistics::{Count, Level, share};
use quarterturn_tuning::{Figures, Leans};

use super::*;
use crate::rehearsal::Conditions;
use quarterturn_entry::quantity::Unit;

const MM: Ruler = Ruler::new(Unit::MILLIMETRE);

const ASKED: Conditions = Conditions {
    group: Millimetres::new(80.0),
    distance: Millimetres::new(18_000.0),
    tolerance: Millimetres::new(24.0),
    shafts: 12,
    arrows_per_end: 4,
    leans: Leans::NotRead,
};

/// So many shots, and so many of a hundred shafts open.
fn found(what: Alternative, conditions: Conditions, shots: usize, open: usize) -> Found {
    let range = Range { median: shots, from: shots - 1, to: shots + 1 };
    let open = share(&[Count { held: open, of: 100 }], Level::P95);
    let figures = Figures { open, ..Figures::of(&[], conditions.tolerance) };
    Found { what, conditions, shots: range, ends: range, evenings: range, figures }
}

fn asked(shots: usize, open: usize) -> Found {
    found(Alternative::AsAsked, ASKED, shots, open)
}

fn closer(shots: usize, open: usize) -> Found {
    let distance = Millimetres::new(12_000.0);
    found(Alternative::Closer, Conditions { distance, ..ASKED }, shots, open)
}

fn wider(shots: usize, open: usize) -> Found {
    let tolerance = Millimetres::new(36.0);
    found(Alternative::Wider, Conditions { tolerance, ..ASKED }, shots, open)
}

#[test]
fn what_each_alternative_buys() {
    assert_eq!(
        buys(&asked(90, 20), &closer(50, 4), MM),
        "Coming closer, to 12 m with the same tolerance (as if it were 36 mm from where you are), saves \
         about 40 shots and leaves 4 % open instead of 20 %."
    );
    assert_eq!(
        buys(&asked(90, 20), &wider(91, 20), MM),
        "Accepting a tolerance of 36 mm takes about 1 shot more and leaves 20 % open instead of 20 %."
    );
    let read = found(Alternative::ReadLeans, ASKED, 90, 10);
    assert_eq!(
        buys(&asked(90, 20), &read, MM),
        "Reading how the arrows lean takes as many shots and leaves 10 % open instead of 20 %."
    );
}

#[test]
fn what_to_do() {
    let said = |asked: Found, others: &[Found]| advice(&asked, others);
    assert!(said(asked(90, 4), &[closer(20, 0)]).starts_with("Shoot it as you asked"));
    assert_eq!(
        said(asked(90, 20), &[closer(50, 20), wider(90, 10), closer(89, 11)]),
        "It is worth it to come closer or accept the wider tolerance, whichever your hunting allows."
    );
    assert_eq!(
        said(asked(90, 20), &[closer(50, 20)]),
        "It is worth it to come closer, if your hunting allows."
    );
    assert_eq!(
        said(asked(90, 20), &[found(Alternative::ReadLeans, ASKED, 50, 20)]),
        "It is worth it to read the leans, if your hunting allows."
    );
    assert_eq!(
        said(asked(90, 20), &[closer(89, 19)]),
        "Nothing of this helps much: what would is a smaller group of your own."
    );
}

#[test]
fn a_share_of_nothing_is_not_known() {
    assert_eq!(name(&found(Alternative::ReadLeans, ASKED, 50, 20), MM), "with leans read");
    assert_eq!(share_said(None), "not known, there was none");
    let screen = rehearsed(&[asked(90, 20), closer(50, 4)], MM);
    assert!(screen.lines().all(|line| line.chars().count() <= 80), "{screen}");
    let text = screen.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(text.contains("12 shafts at 18 m, tolerance 24 mm, 4 arrows"), "{text}");
    assert!(text.contains("leans not read"), "{text}");
    assert!(text.contains("nine out of ten fletched shots in a circle 80 mm"), "{text}");
    assert!(text.contains("a spread of 19 mm"), "{text}");
    assert!(text.contains("20 % (13 to 29 %)"), "{text}");
}
