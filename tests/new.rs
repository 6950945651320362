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
