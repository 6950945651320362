//! An end in JSON that is wrong.

use super::{Marked, unchanged};
use crate::support::JOURNAL;

/// The end `marked` is refused with these words.
#[track_caller]
fn refused(marked: &str, label: &str, hints: &[&str]) {
    unchanged(|folder| {
        let marked = Marked::of(marked);
        let origin = Some("standard input");
        let message = marked.message("the end was not recorded", origin, label, hints);
        let end = folder.run(&format!("end {JOURNAL} --json -")).stdin(&marked.text);
        end.code(3).stderr(&message).check();
    });
}

/// The same of one shot of shaft 7 beside a good one of the reference.
#[track_caller]
fn shot_refused(shot: &str, label: &str, hints: &[&str]) {
    let reference = r#"{"shaft":"R","x_mm":3,"y_mm":-12}"#;
    refused(&format!(r#"{{"shots":[{reference},{shot}]}}"#), label, hints);
}

const NUMBER: &str = "check the number and its unit";

#[test]
fn an_unknown_shaft() {
    let shot = r#"{"shaft":⟦"77"⟧,"x_mm":31,"y_mm":8}"#;
    let names = "it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, R";
    shot_refused(shot, "there is no shaft \"77\" in this journal", &[names]);
}

#[test]
fn a_shaft_that_is_shot_twice() {
    let shot = r#"{"shaft":⟦"R"⟧,"x_mm":31,"y_mm":8}"#;
    shot_refused(shot, "shaft R stands here twice", &["take one of the two out"]);
}

#[test]
fn a_hit_beyond_three_metres() {
    let shot = r#"{"shaft":"7","x_mm":⟦3001⟧,"y_mm":8}"#;
    shot_refused(shot, "3001 mm is too much: at most 3000 mm either way", &[NUMBER]);
}

#[test]
fn a_lean_beyond_sixty_degrees() {
    let shot = r#"{"shaft":"7","x_mm":31,"y_mm":8,"lean_x_deg":⟦-61⟧,"lean_y_deg":0}"#;
    shot_refused(shot, "-61 deg is too much: at most 60 deg either way", &[NUMBER]);
}

#[test]
fn a_number_that_is_none() {
    let text = r#"{"shaft":"7","x_mm":⟦"31"⟧,"y_mm":8}"#;
    shot_refused(
        text,
        "a number is expected here, not text in quotes",
        &["for example 12 or 12.5, without quotes"],
    );
    let huge = r#"{"shaft":"7","x_mm":1e99⟦9⟧,"y_mm":8}"#;
    shot_refused(
        huge,
        "this is not JSON: number out of range",
        &["look for a comma, a quote or a brace just before it"],
    );
    let none = r#"{"shaft":"7","x_mm":⟦N⟧aN,"y_mm":8}"#;
    shot_refused(
        none,
        "this is not JSON: expected value",
        &["look for a comma, a quote or a brace just before it"],
    );
    let null = r#"{"shaft":"7","x_mm":⟦null⟧,"y_mm":8}"#;
    shot_refused(null, "a number is expected here, not null", &["leave out what is not known"]);
}

#[test]
fn a_member_that_is_missing() {
    let half = r#"{"shaft":"7","x_mm":⟦3⟧}"#;
    shot_refused(
        half,
        "this says nothing without \"y_mm\"",
        &["give \"y_mm\" too, or leave this out"],
    );
    let lean = r#"{"shaft":"7","x_mm":3,"y_mm":2,"lean_x_deg":⟦2⟧}"#;
    shot_refused(
        lean,
        "this says nothing without \"lean_y_deg\"",
        &["give \"lean_y_deg\" too, or leave this out"],
    );
    let unit = r#"{"shaft":"7","x_cm":⟦3⟧,"y_mm":2}"#;
    let label = "\"x_cm\" is not read here: \"x_mm\" is expected, in millimetres";
    shot_refused(unit, label, &["convert it and name it x_mm"]);
    let turn = r#"{"shaft":"7","x_mm":3,"y_mm":2,"index_deg":⟦400⟧}"#;
    let label = "400 deg is too much: at most 360 deg either way";
    shot_refused(turn, label, &["check the number and its unit"]);
}

#[test]
fn a_word_that_is_not_known() {
    let call = r#"{"shaft":"7","x_mm":3,"y_mm":2,"call":⟦"bad"⟧}"#;
    shot_refused(call, "\"bad\" is not known here", &["known: good, poor"]);
    let flag = r#"{"shaft":"7","x_mm":3,"y_mm":2,"flags":[⟦"windy"⟧]}"#;
    let known = "known: lost, broken, wind, contact, nock-moved, doubtful";
    shot_refused(flag, "\"windy\" is not known here", &["did you mean \"wind\"?", known]);
}

#[test]
fn a_time_that_is_none() {
    let end = r#"{"shots":[{"shaft":"7","x_mm":3,"y_mm":2}],"at":⟦"yesterday"⟧}"#;
    let way_on = "write it like 2027-03-02T10:15:00Z";
    refused(end, "\"yesterday\" is not a time with its date and zone", &[way_on]);
}

#[test]
fn what_is_no_end_at_all() {
    let list = "an object in braces is expected here, not a list in brackets";
    refused("⟦[]⟧", list, &["put braces round its members"]);
    refused(r#"{"shots":⟦[]⟧}"#, "at least one is needed here", &[]);
    refused(
        r#"{"shots":[]⟦⟧"#,
        "this is not JSON: the text ends too early",
        &["look for a comma, a quote or a brace just before it"],
    );
    refused(
        "⟦⟧",
        "this is not JSON: the text ends too early",
        &["look for a comma, a quote or a brace just before it"],
    );
}
