//! An end read from JSON: every fault is found at its place in the text.

use std::fmt::Write;

use quarterturn_journal::{Entry, Fault, JournalError, read_end};

use crate::scene::{Scene, stamp};

const END: &str = r#"{"shots":[{"shaft":"R","x_mm":3,"y_mm":-12,"lean_x_deg":0.5,"lean_y_deg":0},
          {"shaft":"2","index_deg":90,"x_mm":31,"y_mm":8,"call":"poor","flags":["doubtful"]},
          {"shaft":"3","flags":["lost"],"fletching":"none"}],
 "at":"2027-03-02T10:15:00Z","evening":"2027-03-02","note":"light breeze","moon":{"phase":[1]}}"#;

/// Each fault of a text with what it points at.
fn faults(text: &str) -> String {
    said(text, &read_end(text).unwrap_err())
}

fn said(text: &str, faults: &[Fault]) -> String {
    let mut said = String::new();
    for fault in faults {
        writeln!(said, "{fault} <{}>", &text[fault.span(text)]).unwrap();
    }
    said.trim_end().to_owned()
}

#[test]
fn the_end_of_the_interface_is_read_and_recorded() {
    let end = read_end(END).unwrap();
    let unread: Vec<_> = end.unread().iter().map(ToString::to_string).collect();
    assert_eq!(unread, ["moon", "shots[2].fletching"]);
    let scene = Scene::begun();
    scene.open().append(Entry::End(end), &stamp(2)).unwrap();
    assert!(scene.lines()[1].contains(concat!(
        r#""data":{"shots":[{"shaft":"R","index_deg":0.0,"x_mm":3.0,"y_mm":-12.0,"#,
        r#""lean_x_deg":0.5,"lean_y_deg":0.0},{"shaft":"2","index_deg":90.0,"x_mm":31.0,"#,
        r#""y_mm":8.0,"call":"poor","flags":["doubtful"]},"#,
        r#"{"shaft":"3","index_deg":0.0,"flags":["lost"],"fletching":"none"}],"#,
        r#""at":"2027-03-02T10:15:00Z","evening":"2027-03-02","note":"light breeze","#,
        r#""moon":{"phase":[1]}}"#
    )));
}

#[test]
fn what_is_not_json_is_pointed_at() {
    let cases = [
        ("", "this is not JSON: the text ends too early <>"),
        ("{\"shots\":[", "this is not JSON: the text ends too early <>"),
        ("{\"shots\":[]", "this is not JSON: the text ends too early <>"),
        ("7 r3", "this is not JSON: trailing characters <r>"),
        ("{\"shots\":[],}", "this is not JSON: trailing comma <}>"),
        ("{\n\"é\": ö}", "this is not JSON: expected value <ö>"),
        ("{'shots':[]}", "this is not JSON: key must be a string <'>"),
        ("\u{feff}{}", "this is not JSON: expected value <\u{feff}>"),
        ("{\"x\":1e999}", "this is not JSON: number out of range <9>"),
        ("{\"x\":NaN}", "this is not JSON: expected value <N>"),
    ];
    for (text, expected) in cases {
        assert_eq!(faults(text), expected, "{text}");
    }
    let deep = "[".repeat(200) + &"]".repeat(200);
    assert_eq!(faults(&deep), "this is not JSON: recursion limit exceeded <[>");
}

#[test]
fn every_value_of_another_kind_is_pointed_at() {
    let text = r#"{"shots": [{"shaft": 7, "x_mm": "3", "y_mm": null, "call": true,
                "flags": "lost"}, 5, {"shaft": "2", "flags": ["wind", 3]}], "at": {}, "note": []}"#;
    let expected = r#"shots[0].shaft: text in quotes is expected here, not a number <7>
shots[0].x_mm: a number is expected here, not text in quotes <"3">
shots[0].y_mm: a number is expected here, not null <null>
shots[0].call: text in quotes is expected here, not true or false <true>
shots[0].flags: a list in brackets is expected here, not text in quotes <"lost">
shots[1]: an object in braces is expected here, not a number <5>
shots[2].flags[1]: text in quotes is expected here, not a number <3>
at: text in quotes is expected here, not an object in braces <{}>
note: text in quotes is expected here, not a list in brackets <[]>"#;
    assert_eq!(faults(text), expected);
    assert_eq!(
        faults(" [1] "),
        "an object in braces is expected here, not a list in brackets <[1]>"
    );
}

#[test]
fn what_is_missing_or_repeated_is_pointed_at() {
    assert_eq!(faults("{}"), "\"shots\" is missing <{}>");
    let text = r#"{"shots":[{"x_mm":1},{"shaft":"2","x_mm":1,"x_mm":2}]}"#;
    let expected = r#"shots[0]: "shaft" is missing <{"x_mm":1}>
shots[1].x_mm: "x_mm" stands here twice <2>"#;
    assert_eq!(faults(text), expected);
}

#[test]
fn what_is_wrong_in_the_journal_is_found_in_the_text() {
    let text = r#"{"shots":[{"shaft":"R","x_mm":3,"y_mm":-12},
        {"shaft":"12","x_mm":3100,"y_mm":8},
        {"shaft":"2","x_mm":3100,"y_mm":8},
        {"shaft":"3","x_mm":1,"y_mm":8,"flags":["wind","rain"]},
        {"shaft":"1","x_mm":1}],"distance_m":-9}"#;
    let scene = Scene::begun();
    let error = scene.append(Entry::End(read_end(text).unwrap())).unwrap_err();
    let JournalError::Refused { faults } = error else { panic!("{error}") };
    let expected = r#"shots[1].shaft: there is no shaft "12" in this journal <"12">
shots[2].x_mm: 3100 mm is too much: at most 3000 mm either way <3100>
shots[3].flags[1]: "rain" is not known here <"rain">
shots[4].x_mm: this says nothing without "y_mm" <1>
distance_m: -9 m cannot be: more than 0 and at most 200 m <-9>"#;
    assert_eq!(said(text, &faults), expected);
    let shots: Vec<_> = faults.iter().map(|fault| fault.place.shot()).collect();
    assert_eq!(shots, [Some(1), Some(2), Some(3), Some(4), None]);
    let names: Vec<_> = faults.iter().map(|fault| fault.place.name().unwrap()).collect();
    assert_eq!(names, ["shaft", "x_mm", "flags", "x_mm", "distance_m"]);
}

#[test]
fn names_with_escapes_are_found_too() {
    let text = r#"{"sh\u006fts":[{"shaft":"\u0032","x_mm":4e3,"y_mm":1}]}"#;
    let error = Scene::begun().append(Entry::End(read_end(text).unwrap())).unwrap_err();
    let JournalError::Refused { faults } = error else { panic!("{error}") };
    assert_eq!(
        said(text, &faults),
        "shots[0].x_mm: 4000 mm is too much: at most 3000 mm either way <4e3>"
    );
}
