//! Without a command the program says where the archer stands; asked for its version, what it is.

use crate::support::{Folder, JOURNAL};

#[test]
fn in_a_folder_without_a_journal_it_says_how_to_begin() {
    let folder = Folder::new();
    let said = folder.run("").stdout_has("There is no journal in this folder yet.");
    said.stdout_has("quarterturn demo").check();
}

#[test]
fn in_a_folder_with_one_it_says_how_the_dozen_stands_and_what_to_do() {
    let folder = Folder::with_an_end();
    let said = folder.run("").any_stdout().check();
    let stands = "evening.journal: 3 shafts beside R at 18.3 m, tolerance 25 mm; 1 evening. So far\n\
        1 end: 3 shafts still open.\n\n";
    let next = folder.run(&format!("next {JOURNAL}")).any_stdout().check();
    assert_eq!(said, format!("{stands}{next}"));
}

#[test]
fn of_several_it_asks_for_one() {
    let folder = Folder::begun("1-3");
    folder.write("other.journal", "");
    let said = "2 journals in this folder. Ask one of them:\n\n  quarterturn next evening.journal\n  \
        quarterturn next other.journal\n";
    folder.run("").stdout(said).check();
}

#[test]
fn the_version_comes_with_the_format_of_journals() {
    let folder = Folder::new();
    folder.run("-V").stdout("quarterturn 0.1.0\n").check();
    let said = folder.run("--version").stdout_has("quarterturn 0.1.0");
    said.stdout_has("journal format: 1").check();
}
