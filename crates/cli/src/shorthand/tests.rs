//! The shorthand: what each word means, and where each fault is shown.

use quarterturn_journal::{EndEntry, ShotEntry, read_end};
use rand::{RngExt, SeedableRng};
use rand_pcg::Pcg64;

use super::{ShorthandFault, parse, printed};
use crate::caret::{Paint, drawn};
use crate::failure::{Failure, Kind, Marked};
use crate::located::{Advising, Located};
use crate::quantity::Unit;

fn read(line: &str) -> EndEntry {
    parse(line, Unit::MILLIMETRE).unwrap().entry
}

fn shot(line: &str) -> ShotEntry {
    let shots = read(line).shots;
    assert_eq!(shots.len(), 1, "{line}");
    shots.into_iter().next().unwrap()
}

fn refused(line: &str) -> Located<ShorthandFault> {
    parse(line, Unit::MILLIMETRE).unwrap_err()
}

#[test]
fn sides_and_units() {
    let at = |line: &str| shot(line).x_mm.zip(shot(line).y_mm).unwrap();
    assert_eq!(at("7 r31 u8"), (31.0, 8.0));
    assert_eq!(at("7 u1.5 l3"), (-3.0, 1.5));
    assert_eq!(at("7 d12"), (0.0, -12.0));
    assert_eq!(at("7 R1in D2CM"), (25.4, -20.0));
    assert_eq!(at("7 0"), (0.0, 0.0));
}

#[test]
fn a_clock_and_a_distance() {
    let at = |line: &str| shot(line).x_mm.zip(shot(line).y_mm).unwrap();
    assert_eq!(at("8 3h8"), (8.0, 0.0));
    assert_eq!(at("8 12h8"), (0.0, 8.0));
    assert_eq!(at("8 6h2cm"), (0.0, -20.0));
    // Half past one is 45 degrees: both sides are 8 / sqrt(2).
    assert_eq!(at("8 1.5h8"), (5.657, 5.657));
}

#[test]
fn an_unknown_tail_is_not_a_straight_one() {
    let tail = |line: &str| (shot(line).lean_x_deg, shot(line).lean_y_deg);
    assert_eq!(tail("7 0"), (None, None));
    assert_eq!(tail("7 0 t0"), (Some(0.0), Some(0.0)));
    assert_eq!(tail("7 0 tl2.5 tu1"), (Some(-2.5), Some(1.0)));
    assert_eq!(tail("7 0 td1deg"), (Some(0.0), Some(-1.0)));
}

#[test]
fn marks_calls_and_flags() {
    assert_eq!(shot("3 i4 r2").index_deg, Some(120.0));
    assert_eq!(shot("3 i12 r2").index_deg, Some(0.0));
    assert_eq!(shot("3 i135deg r2").index_deg, Some(135.0));
    assert_eq!(shot("3 r2").index_deg, None);
    assert_eq!(shot("3 r2 p").call.as_deref(), Some("poor"));
    assert_eq!(shot("3 r2 g w k").flags, ["wind", "contact"]);
    assert_eq!(shot("3 x").flags, ["lost"]);
    assert_eq!(shot("3 b n q").flags, ["broken", "nock-moved", "doubtful"]);
}

#[test]
fn arrows_are_parted_by_commas_or_lines() {
    let names = |line: &str| -> Vec<String> {
        read(line).shots.into_iter().map(|shot| shot.shaft).collect()
    };
    assert_eq!(names("R 0, 7 r31 u8,\n 9 l4,"), ["R", "7", "9"]);
    assert_eq!(names("R 0,7 r3 t0,9 x"), ["R", "7", "9"]);
    assert_eq!(names("R 0\n7 r3\r\n9 d2"), ["R", "7", "9"]);
    assert_eq!(refused(" ,, ").fault, ShorthandFault::Nothing);
}

#[test]
fn every_fault_has_its_place_and_a_way_on() {
    for (line, place, sentence) in [
        ("7 r31 z8", "z8", "\"z8\" is not a word of the line"),
        ("7 31r", "31r", "\"31r\" is not a word of the line"),
        ("7 r31ix", "ix", "\"ix\" is not a unit of length here"),
        ("7 r31deg", "deg", "\"deg\" is a unit of angle, not of length"),
        ("7 r", "", "a number was expected here"),
        ("7 r-3", "-3", "the letter says the side: no sign is needed"),
        ("7 13h8", "13", "no clock has this hour"),
        ("7 0 i0", "0", "no clock has this hour"),
        ("7 0h8", "0", "no clock has this hour"),
        ("7 r3 l2", "l2", "this was said already"),
        ("7 0 r2", "r2", "this was said already"),
        ("7 0 g p", "p", "this was said already"),
        ("7 0 tl", "tl", "how many degrees?"),
        ("7 0 t10h2", "t10h2", "a tail is typed by its side and its degrees"),
        ("7 0 tl2cm", "cm", "\"cm\" is a unit of length, not of angle"),
        ("7 r3,5 u8", ",", "a new arrow, or a decimal?"),
        ("9 0, 7", "7", "where did 7 hit?"),
        ("7 tl2", "7", "where did 7 hit?"),
        ("größe r3 ü", "ü", "\"ü\" is not a word of the line"),
        ("7 rnan", "nan", "a number was expected here"),
        ("7 r1e3", "e3", "\"e3\" is not a unit of length here"),
    ] {
        let Located { fault, span } = refused(line);
        assert_eq!(fault.to_string(), sentence, "{line}");
        assert_eq!(&line[span], place, "{line}");
        assert!(fault.way_on().is_some(), "{line}");
    }
}

#[test]
fn what_was_perhaps_meant_is_offered() {
    let offered = |line: &str| refused(line).fault.way_on().unwrap();
    assert_eq!(offered("7 31r"), "did you mean \"r31\"?");
    assert_eq!(offered("7 r3 poor"), "did you mean \"p\"?");
}

#[test]
fn a_place_in_the_end_is_a_place_in_the_line() {
    let line = "R 0, 7 i4 r3100";
    let end = parse(line, Unit::MILLIMETRE).unwrap();
    let place = |json: &str| read_end(json).unwrap_err().remove(0).place;
    let x_mm = place(r#"{"shots":[{"shaft":"R"},{"shaft":"7","x_mm":"far"}]}"#);
    assert_eq!(&line[end.span(&x_mm)], "r3100");
    let lean = place(r#"{"shots":[{"shaft":"R"},{"shaft":"7","lean_x_deg":"far"}]}"#);
    assert_eq!(&line[end.span(&lean)], "7");
    let note = place(r#"{"shots":[],"note":7}"#);
    assert_eq!(&line[end.span(&note)], line);
}

#[test]
fn what_is_printed_is_read_again() {
    for line in [
        "R 0",
        "7 i3 r31 u8 tl2.5 tu1, 9 l4 d15.5 p",
        "1 i12 d0.125 t0 g w k n q",
        "2 i4.5 x, 3 i100deg b",
    ] {
        let shots = read(line).shots;
        assert_eq!(printed(&shots), line);
        assert_eq!(read(&printed(&shots)).shots, shots);
    }
}

#[test]
fn whatever_is_typed_is_read_or_shown_where_it_is_wrong() {
    let keys: Vec<char> =
        "7R r3 l2 u1.5 d6 0 2h8 tl2 t0 i4deg g,p\n,w k-n q x b mm cm½é\t\u{1b}\u{2009}"
            .chars()
            .collect();
    let mut random = Pcg64::seed_from_u64(7);
    for _ in 0..20_000 {
        let length = random.random_range(0..24);
        let line: String = (0..length).map(|_| keys[random.random_range(0..keys.len())]).collect();
        if let Err(Located { fault, span }) = parse(&line, Unit::MILLIMETRE) {
            let marked = Marked::typed(&line).wrong(span.clone(), fault.to_string());
            assert!(line.get(span).is_some(), "{line:?}");
            let failure = Failure::new(Kind::Data, "not read").marking(marked);
            let drawn = drawn(&failure, Paint::Plain);
            assert!(drawn.contains('^') && !drawn.contains('\u{1b}'), "{line:?}: {drawn}");
        }
    }
}
