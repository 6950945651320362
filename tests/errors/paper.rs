//! A sheet that cannot be made.

use super::{plain, unchanged};
use crate::support::{Folder, JOURNAL};

/// What is typed as `line` is refused with this message.
#[track_caller]
fn refused(line: &str, code: i32, message: &str) {
    unchanged(|folder| drop(folder.run(line).code(code).stderr(message).check()));
}

/// The message about the value of an option, all of it marked.
fn unusable(option: &str, value: &str, label: &str, hint: &str) -> String {
    let carets = "^".repeat(value.len());
    format!(
        "error: the value of {option} cannot be used\n  |\n1 | {value}\n  | {carets} {label}\n  |\n  = help: {hint}\n"
    )
}

#[test]
fn bars_that_no_printer_makes() {
    let hint = "how long the two bars of 100 mm came out, across and up: 97.2mm,97.5mm";
    let message = unusable("--measured", "97", "two lengths are expected", hint);
    refused("paper face --measured 97", 2, &message);
    let hint = "print at actual size first, without fitting to the page; then measure the bars";
    let label = "a bar of 50 mm is more than a tenth off the 100 mm that it is drawn with";
    refused("paper face --measured 50,50", 2, &unusable("--measured", "50,50", label, hint));
}

#[test]
fn sizes_that_nothing_has() {
    let label = "no sheet is made for this";
    let message = unusable("--across", "5mm", label, "60 to 2000 mm is possible");
    refused("paper face --across 5mm", 2, &message);
    let message = unusable("--diameter", "65mm", label, "3 to 15 mm is possible");
    refused(&format!("paper dials {JOURNAL} --diameter 65mm"), 2, &message);
}

#[test]
fn a_file_of_another_kind() {
    let message = plain(
        "face.jpg does not end in .pdf, .svg or .png",
        &["name the file, for example card.pdf"],
    );
    refused("paper face -o face.jpg", 2, &message);
}

#[test]
fn a_sheet_that_exists() {
    let folder = Folder::begun("1-3");
    folder.write("face.pdf", "mine");
    let what = "face.pdf exists already and is not overwritten";
    let hint = "choose another name, or say --force";
    folder.run("paper face").code(5).stderr(&plain(what, &[hint])).check();
    assert_eq!(folder.read("face.pdf"), "mine");
    folder.run("paper face --force").any_stdout().check();
}

#[test]
fn one_of_several_sheets_that_exists() {
    let folder = Folder::begun("1-3");
    folder.write("face-3.svg", "mine");
    let what = "face-3.svg exists already and is not overwritten";
    let hint = "choose another name, or say --force";
    let said = folder.run("paper face --across 300mm -o face.svg");
    said.code(5).stderr(&plain(what, &[hint])).check();
    assert!(!folder.names().contains(&"face-1.svg".to_owned()), "none is written then");
}
