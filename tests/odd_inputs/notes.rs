//! Notes of any kind are kept to the last byte, and are harmless wherever they are shown.

use serde_json::{Value, json};

use super::is_hidden;
use super::table::NOTES;
use crate::support::{Folder, JOURNAL};

/// A journal with every note of the table on an end, on the bow and alone.
fn noted() -> Folder {
    let folder = Folder::begun("1-3");
    for (note, _) in NOTES {
        let end = json!({"evening": "2027-03-02", "note": note, "shots": [
            {"shaft": "R", "x_mm": 3, "y_mm": -12}, {"shaft": "1", "x_mm": 31, "y_mm": 8}
        ]});
        folder.enter(&end);
        // An argument holds no NUL, and a note says something.
        if !note.contains('\0') && !note.trim().is_empty() {
            let alone = folder.run(&format!("note {JOURNAL}")).arg("--").arg(note);
            alone.any_stdout().check();
        }
    }
    folder
}

/// Blanks apart, which lines are broken at.
fn without_blanks(text: &str) -> String {
    text.chars().filter(|c| !c.is_whitespace()).collect()
}

#[test]
fn every_note_is_kept_and_harmless_in_every_output() {
    let folder = noted();
    let ask = |command: &str| folder.run(&format!("{command} {JOURNAL}")).any_stdout().check();
    let log = ask("log");
    for (note, shown) in NOTES {
        let (log, shown) = (without_blanks(&log), without_blanks(shown));
        assert!(log.contains(&format!("note:{shown}")), "{note:?} is not shown as {shown:?}");
    }
    for command in
        ["log", "log --json", "show", "show --json", "next", "next --json", "export --json"]
    {
        let said = ask(command);
        assert!(!said.chars().any(is_hidden), "{command} lets something through");
    }
    let kept: Value = serde_json::from_str(&ask("export --json")).unwrap();
    let records = kept["records"].as_array().unwrap();
    for (note, _) in NOTES {
        let same = |record: &&Value| record["kind"] == "end" && record["data"]["note"] == *note;
        assert_eq!(records.iter().filter(same).count(), 1, "{note:?}");
    }
}

#[test]
fn no_cell_of_the_table_is_a_formula_and_everything_comes_back() {
    let folder = noted();
    let table = folder.run(&format!("export {JOURNAL} --csv")).any_stdout().check();
    assert!(!table.chars().any(is_hidden));
    let mut reader = csv::Reader::from_reader(table.as_bytes());
    for row in reader.records() {
        for cell in &row.unwrap() {
            let formula = cell.starts_with(['=', '+', '-', '@', '\t', '\r']);
            assert!(!formula || cell.parse::<f64>().is_ok(), "{cell:?}");
        }
    }
    folder.write("all.csv", &table);
    folder.run("import copy.journal all.csv").any_stdout().check();
    let json = folder.run(&format!("export {JOURNAL} --json")).any_stdout().check();
    folder.write("all.json", &json);
    folder.run("import other.journal all.json").any_stdout().check();
    assert!(folder.read("copy.journal") == folder.read(JOURNAL), "through the table");
    assert!(folder.read("other.journal") == folder.read(JOURNAL), "through JSON");
}

#[test]
fn the_picture_is_xml_whatever_was_noted() {
    let folder = noted();
    for (name, _) in [("größer", ""), ("A-1", "")] {
        folder.run(&format!("shaft {JOURNAL} {name} --add")).any_stdout().check();
    }
    folder.run(&format!("plot {JOURNAL} -o plot.svg")).any_stdout().check();
    let picture = folder.read("plot.svg");
    let document = roxmltree::Document::parse(&picture).unwrap();
    let scripted = |node: roxmltree::Node<'_, '_>| {
        node.has_tag_name("script") || node.attributes().any(|one| one.name().starts_with("on"))
    };
    assert!(!document.descendants().any(scripted));
    assert!(!picture.chars().any(is_hidden));
}
