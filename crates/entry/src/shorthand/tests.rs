//! The shorthand: what each word means, and where each fault is shown.

use proptest::prelude::*;
use quarterturn_journal::{EndEntry, ShotEntry, read_end};

use super::{ShorthandFault, TypedWords, parse, printed};
use crate::quantity::Unit;
use crate::{Advising, Located};

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
    let at = |line: &str| shot(line).out_mm.zip(shot(line).toward_deg).unwrap();
    assert_eq!(at("8 3h8"), (8.0, 90.0));
    assert_eq!(at("8 12h8"), (8.0, 0.0));
    assert_eq!(at("8 12.5h8"), (8.0, 15.0));
    assert_eq!(at("8 6h2cm"), (20.0, 180.0));
    assert_eq!(shot("8 3h8").x_mm, None, "it follows where it is recorded");
}

#[test]
fn a_tail_by_tape() {
    let tape = |line: &str| {
        let shot = shot(line);
        (shot.tail_x_mm, shot.tail_y_mm, shot.protruding_mm)
    };
    assert_eq!(tape("7 0 tl2cm"), (Some(-20.0), Some(0.0), None));
    assert_eq!(tape("7 0 tr12mm td1in s62cm"), (Some(12.0), Some(-25.4), Some(620.0)));
    assert_eq!(tape("7 0 t9h2cm"), (Some(-20.0), Some(0.0), None));
    assert_eq!(tape("7 0 t0mm"), (Some(0.0), Some(0.0), None));
    assert_eq!(tape("7 0 t0"), (None, None, None));
}

#[test]
fn what_protrudes_is_said_once_for_the_end() {
    let shots = read("R t0cm 0, 7 r3 tl2cm s62cm, 8 0 tl2").shots;
    let said: Vec<_> = shots.iter().map(|shot| shot.protruding_mm).collect();
    assert_eq!(said, [Some(620.0), Some(620.0), None]);
}

#[test]
fn a_tail_by_eye() {
    let seen = |line: &str| (shot(line).tail_seen.unwrap(), shot(line).tail_toward_deg);
    assert_eq!(seen("7 0 tn"), ("none".into(), None));
    assert_eq!(seen("7 0 tl"), ("side".into(), Some(270.0)));
    assert_eq!(seen("7 0 tus"), ("some".into(), Some(0.0)));
    assert_eq!(seen("7 0 trm"), ("much".into(), Some(90.0)));
    assert_eq!(seen("7 0 t10.5hm"), ("much".into(), Some(315.0)));
    assert_eq!(seen("7 0 t10h"), ("side".into(), Some(300.0)));
}

#[test]
fn words_may_run_together() {
    assert_eq!(read("R r4d6t0, 3 l9u4tr.5"), read("R r4 d6 t0, 3 l9 u4 tr0.5"));
    assert_eq!(read("7 r1inu2cmtl2cms62cm p"), read("7 r1in u2cm tl2cm s62cm p"));
}

#[test]
fn what_is_said_anew_replaces_what_was_said_of_the_same() {
    let mut amended = shot("7 i3 r31 u8 tl2cm s62cm p w");
    let say = |words: &str| TypedWords::parse(words, 0, Unit::MILLIMETRE).unwrap();
    say("l4").amend(&mut amended);
    assert_eq!(amended, shot("7 i3 l4 tl2cm s62cm p w"));
    say("tls").amend(&mut amended);
    assert_eq!(amended, shot("7 i3 l4 tls p w"));
    say("i4 g k 2h8").amend(&mut amended);
    assert_eq!(amended, shot("7 i4 2h8 tls g k"));
    assert!(say("  ").is_empty() && !say("g").is_empty());
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
        ("7 0 t2", "2", "toward which side does the tail stand off?"),
        ("7 0 tl2cm tu1", "tu1", "one tail is read one way: degrees, a tape, or an eye"),
        (
            "7 0 tl2 s62cm",
            "s62cm",
            "how far arrows stick out says something only of a tail that was read by tape",
        ),
        // Found by fuzzing: printed in millimetres it had too many digits to be read again.
        ("7 r388888888888in", "388888888888in", "this is farther than any arrow flies"),
        ("7 0 lost", "lost", "\"lost\" is not a word of the line"),
        ("7 0 tsome", "some", "toward which side does the tail stand off?"),
        ("7 0 tls tu1", "tu1", "this was said already"),
        ("7 0 tl2gr", "gr", "\"gr\" is a unit of mass, not of angle"),
        ("7 0 tul", "l", "\"tul\" is not a word of the line"),
        ("7 0 i400deg", "400", "this is more than a whole turn"),
        ("7 r3inn", "inn", "\"inn\" is not a unit of length here"),
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
    assert_eq!(offered("7 r3 por"), "did you mean \"p\"?");
    assert_eq!(offered("7 r3 tul"), "did you mean \"t10.5h\"?");
    assert_eq!(offered("7 r3 tllots"), "did you mean \"tlm\"?");
    assert_eq!(offered("7 r3 tusome"), "did you mean \"tus\"?");
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
        "7 2.5h8 tn, 8 0 tl, 9 0 t10.5hm, 10 0 trs",
        "R 0 t0mm s620mm, 7 12.25h3 tl20mm td3mm s620mm",
    ] {
        let shots = read(line).shots;
        assert_eq!(printed(&shots, Unit::MILLIMETRE), line);
        assert_eq!(read(&printed(&shots, Unit::MILLIMETRE)).shots, shots);
    }
}

/// A number as hands type it.
fn number() -> impl Strategy<Value = String> {
    prop_oneof![
        (0..400_u32).prop_map(|whole| whole.to_string()),
        (0..40_u32, 0..1000_u32).prop_map(|(whole, part)| format!("{whole}.{part:03}")),
        (0..10_u32).prop_map(|part| format!(".{part}")),
    ]
}

fn length() -> impl Strategy<Value = String> {
    (number(), prop_oneof![Just(""), Just("mm"), Just("cm"), Just("in"), Just("ft"), Just("m")])
        .prop_map(|(number, unit)| number + unit)
}

fn hit() -> impl Strategy<Value = String> {
    let across = (prop_oneof![Just("r"), Just("l")], length());
    let up = (prop_oneof![Just("u"), Just("d")], length());
    prop_oneof![
        Just("0".to_owned()),
        (across, up, prop_oneof![Just(" "), Just("")])
            .prop_map(|((a, b), (c, d), gap)| format!("{a}{b}{gap}{c}{d}")),
        (100..1299_u32, length()).prop_map(|(h, l)| format!("{}.{:02}h{l}", h / 100, h % 100)),
        Just("x".to_owned()),
    ]
}

fn tail() -> impl Strategy<Value = String> {
    let toward = prop_oneof![
        prop_oneof![Just("r"), Just("l"), Just("u"), Just("d")].prop_map(str::to_owned),
        (10..129_u32).prop_map(|h| format!("{}.{}h", h / 10, h % 10)),
    ];
    let amount = prop_oneof![
        Just(String::new()),
        Just("s".to_owned()),
        Just("m".to_owned()),
        number(),
        (number(), prop_oneof![Just("mm"), Just("cm"), Just("in"), Just("mms62cm")])
            .prop_map(|(n, u)| n + u),
    ];
    prop_oneof![
        Just(String::new()),
        Just("t0".to_owned()),
        Just("tn".to_owned()),
        Just("t0cm".to_owned()),
        (toward, amount).prop_map(|(toward, amount)| format!("t{toward}{amount}")),
    ]
}

fn group() -> impl Strategy<Value = String> {
    let name = prop_oneof![Just("R"), Just("7"), Just("A-1"), Just("x"), Just("0")];
    let mark = prop_oneof![
        Just(String::new()),
        (100..1299_u32).prop_map(|h| format!("i{}.{:02}", h / 100, h % 100)),
        (0..360_000_u32).prop_map(|d| format!("i{}.{:03}deg", d / 1000, d % 1000)),
    ];
    let rest = prop_oneof![Just(""), Just("p"), Just("g w"), Just("q k n")];
    let words = (hit(), tail(), mark, rest).prop_map(|(a, b, c, d)| [a, b, c, d.to_owned()]);
    (name, words.prop_flat_map(|words| Just(words).prop_shuffle()))
        .prop_map(|(name, words)| format!("{name} {}", words.join(" ")))
}

proptest! {
    #[test]
    fn parse_and_print_are_inverse(
        groups in prop::collection::vec(group(), 1..5),
        unit in prop_oneof![Just(Unit::MILLIMETRE), Just(Unit::CENTIMETRE), Just(Unit::INCH)],
    ) {
        let line = groups.join(", ");
        let shots = parse(&line, unit).unwrap().entry.shots;
        let again = printed(&shots, unit);
        prop_assert_eq!(&parse(&again, unit).unwrap().entry.shots, &shots, "{} printed {}", line, again);
        prop_assert_eq!(printed(&parse(&again, unit).unwrap().entry.shots, unit), again);
    }

    #[test]
    fn whatever_is_typed_is_read_or_shown_where_it_is_wrong(
        line in "[7R r3l2u1.5d6 0 2h8tl2 ti4deg,p\\n w k\\-n q x b mmcminsm½é\t\u{1b}\u{2009}]{0,24}",
    ) {
        if let Err(Located { fault, span }) = parse(&line, Unit::MILLIMETRE) {
            prop_assert!(line.get(span).is_some(), "{line:?}");
            prop_assert!(fault.way_on().is_some(), "{line:?}");
        }
    }
}

#[test]
fn four_arrows_with_hit_and_tail_take_forty_five_keys() {
    let line = "R r4d6t0,3 l9u4tr.5,2 r22u14tl2, 1 r37u22tl3";
    let shots = read(line).shots;
    assert!(shots.iter().all(|shot| shot.x_mm.is_some() && shot.lean_x_deg.is_some()));
    assert_eq!((shots.len(), line.len() + 1), (4, 45), "docs/entry.md counts them");
}
