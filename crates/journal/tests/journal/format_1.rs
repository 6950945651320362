//! Format 1 is read for ever, and means what it meant.

use std::path::Path;

use quarterturn_geometry::{Angle, Index, Lean, Millimetres, Offset, Point, Positions};
use quarterturn_journal::{FaceUnit, Journal, State};
use quarterturn_tuning::{
    BowChange, BowPart, Call, End, Event, Flag, Hit, Matching, MissingMass, Setup, ShaftChange,
    ShaftName, Shot,
};

use crate::scene::Scene;

fn state() -> State {
    state_of("format-1.jsonl")
}

fn state_of(name: &str) -> State {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../../fixtures/journal");
    let journal = Journal::open(&Path::new(folder).join(name)).unwrap();
    assert_eq!(journal.torn(), None);
    journal.state().clone()
}

fn name(name: &str) -> ShaftName {
    name.parse().unwrap()
}

#[test]
fn how_it_was_begun() {
    let state = state();
    let expected = Setup {
        shafts: vec![
            (name("1"), Index::TWELVE),
            (name("2"), Index::from_degrees(30.0)),
            (name("B-3"), Index::from_degrees(247.5)),
        ],
        references: vec![name("R"), name("S")],
        distance: Millimetres::from_metres(18.288),
        tolerance: Millimetres::new(25.4),
        arrows_per_end: 4,
        positions: Positions::new(8).unwrap(),
        matching: Matching::Reference,
        bare_lighter: Some(MissingMass { lighter_gr: 21.5, arrow_gr: 412.3, speed_m_s: 58.7 }),
    };
    assert_eq!(state.history().setup, expected);
    assert_eq!(state.unit(), FaceUnit::Inches);
    assert_eq!(state.beginning().bow.as_deref(), Some("a recurve of 66 in, \"Ōkami\""));
    assert_eq!(state.beginning().release.as_deref(), Some("fingers"));
    assert_eq!(state.beginning().hand.as_deref(), Some("right"));
}

fn first_end() -> End {
    End {
        shots: vec![
            Shot {
                shaft: name("R"),
                index: Index::TWELVE,
                hit: Some(Hit {
                    at: Point::new(3.0, -12.7),
                    lean: Some(Lean::from_degrees(0.5, 0.0)),
                    read_sd: None,
                    lean_sd: None,
                }),
                call: None,
                flags: vec![],
            },
            Shot {
                shaft: name("B-3"),
                index: Index::from_degrees(247.5),
                hit: Some(Hit {
                    at: Point::new(0.1 + 0.2, 1.797_693_134_862_315_7e-300),
                    lean: Some(Lean::from_degrees(-f64::MIN_POSITIVE, 59.999_999_999_999_99)),
                    read_sd: Some(Millimetres::new(4.35)),
                    lean_sd: Some(Angle::from_degrees(0.7)),
                }),
                call: Some(Call::Good),
                flags: vec![Flag::Doubtful],
            },
        ],
        evening: "2027-03-02".to_owned(),
        distance: None,
    }
}

fn last_end() -> End {
    End {
        shots: vec![
            Shot {
                shaft: name("S"),
                index: Index::TWELVE,
                hit: Some(Hit {
                    at: Point::new(8.0, 1.0),
                    lean: None,
                    read_sd: None,
                    lean_sd: None,
                }),
                call: None,
                flags: vec![],
            },
            Shot {
                shaft: name("1"),
                index: Index::from_degrees(45.0),
                hit: None,
                call: None,
                flags: vec![Flag::Lost],
            },
        ],
        evening: "Thursday".to_owned(),
        distance: Some(Millimetres::from_metres(9.0)),
    }
}

#[test]
fn what_happened_since() {
    let rest = BowChange { part: BowPart::Rest, moved: Some(Offset::new(0.5, -0.25)) };
    let string = BowChange { part: BowPart::Other, moved: None };
    let expected = [
        Event::End(first_end()),
        Event::Bow(rest),
        Event::Shaft(name("2"), ShaftChange::SetAside),
        Event::End(last_end()),
        Event::Bow(string),
    ];
    let state = state();
    assert_eq!(state.history().events, expected);
    assert_eq!(state.evenings(), ["2027-03-02", "Thursday"]);
    assert_eq!(state.records(), 12);
    // By zlib of Python, of the last line without its line feed.
    assert_eq!(format!("{:08x}", state.seed()), "ad9aad16");
}

/// One record is lost, which was the first move of the bow; all others say what they said.
#[test]
fn a_mended_journal() {
    let (whole, mended) = (state(), state_of("format-1-mended.jsonl"));
    let mut events = whole.history().events.clone();
    events.remove(1);
    assert_eq!(mended.history().events, events);
    assert_eq!(mended.history().setup, whole.history().setup);
    assert_eq!(mended.records(), 12);
}

/// The bench, the glue, the quiver and the groups of a season.
#[test]
fn a_season() {
    let state = state_of("format-1-season.jsonl");
    assert_eq!((state.records(), state.standing(), state.ends().count()), (21, 18, 1));
    let bench = state.measures(&name("1"));
    assert_eq!(
        (bench.mass_gr, bench.length_mm, bench.crooked_side_deg),
        (Some(312.4), Some(762.0), Some(120.0))
    );
    assert_eq!(state.glued().map(|glue| glue.shafts.len()).collect::<Vec<_>>(), [4]);
    assert_eq!(state.groups().map(|group| group.shots.len()).collect::<Vec<_>>(), [2, 1, 1]);
    assert_eq!(state.groups_beside_this_bow().count(), 0);
    let fletched = state.groups().next().unwrap().shots[0].index;
    assert_eq!(fletched, Index::from_degrees(90.0));
}

#[test]
fn the_example_of_the_documents() {
    let page = include_str!("../../../../docs/journal-format.md");
    let example = page.split_once("```json\n").unwrap().1.split_once("```").unwrap().0;
    let scene = Scene::of(example.as_bytes());
    let journal = scene.open();
    assert_eq!(journal.state().records(), 3);
    assert_eq!(journal.state().history().events.last(), None);
    assert_eq!(journal.torn(), None);
}
