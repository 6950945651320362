//! `new`: a journal is begun.

use serde_json::json;

use crate::support::{Folder, JOURNAL};

#[test]
fn the_cautions_come_before_the_first_bare_shot() {
    let folder = Folder::new();
    let begin = folder.run(&format!("new {JOURNAL} --shafts 1-12 --reference R"));
    let mut begin = begin.args("--distance 18.3m --tolerance 25mm");
    for caution in ["Flex", "nock", "backstop", "5 to 9 m", "broadhead", "minimum", "law"] {
        begin = begin.stdout_has(caution);
    }
    begin.stdout_has(JOURNAL).check();
    assert_eq!(folder.names(), [JOURNAL]);
}

#[test]
fn a_journal_is_never_written_over() {
    let folder = Folder::with_an_end();
    let before = folder.read(JOURNAL);
    let again = folder.run(&format!("new {JOURNAL} --shafts 1-3 --reference R"));
    again.args("--distance 20yd --tolerance 1in").code(5).stderr_has(JOURNAL).check();
    assert_eq!(folder.read(JOURNAL), before);
}

#[test]
fn every_setting_is_heeded() {
    let folder = Folder::new();
    folder
        .run(&format!("new {JOURNAL} --shafts 1-3,7,a --reference R,S --distance 20yd"))
        .args("--tolerance 1in --units in --index 1=90,7=180 --arrows-per-end 3 --positions 4")
        .args("--bare-lighter 20gr")
        .any_stdout()
        .check();
    let next = folder.next();
    let shafts = next["shafts"].as_array().unwrap();
    let names: Vec<_> = shafts.iter().map(|one| one["shaft"].as_str().unwrap()).collect();
    assert_eq!(names, ["1", "2", "3", "7", "a"]);
    let marks: Vec<_> = shafts.iter().map(|one| one["index_now_deg"].as_f64().unwrap()).collect();
    assert_eq!(marks, [90.0, 0.0, 0.0, 180.0, 0.0]);
    for shot in next["shots"].as_array().unwrap() {
        let quarters = shot["index_deg"].as_f64().unwrap_or(0.0) / 90.0;
        assert!((quarters - quarters.round()).abs() < 1e-9, "{shot}");
    }
    assert!(next["shots"].as_array().unwrap().len() <= 3);
}

#[test]
fn a_journal_says_what_it_recorded() {
    let folder = Folder::new();
    let begin = folder.run(&format!("new {JOURNAL} --json --shafts 1-2 --reference R"));
    let recorded = begin.args("--distance 18.3m --tolerance 25mm").json();
    assert_eq!(recorded["tolerance_mm"], json!(25.0));
    assert_eq!(recorded["distance_m"], json!(18.3));
}

/// Begins a journal with more settings, and says where the marks of shaft 1 may stand.
fn places(settings: &str) -> Vec<f64> {
    let folder = Folder::new();
    let begin = folder.run(&format!("new {JOURNAL} --shafts 1-2 --reference R {settings}"));
    begin.args("--distance 18.3m --tolerance 25mm").any_stdout().check();
    let show = folder.run(&format!("show {JOURNAL} --json")).json();
    let places = show["shafts"][0]["at_positions"].as_array().unwrap();
    places.iter().map(|at| at["index_deg"].as_f64().unwrap()).collect()
}

#[test]
fn three_positions_are_thirds_from_where_each_mark_stands() {
    assert_eq!(places("--positions 3 --index 1=50"), [50.0, 170.0, 290.0]);
    assert_eq!(places("--positions 4"), [0.0, 90.0, 180.0, 270.0]);
}

#[test]
fn any_position_is_every_five_degrees() {
    let every_five: Vec<f64> = (0..72).map(|k| f64::from(k) * 5.0).collect();
    assert_eq!(places("--positions any"), every_five);
}
