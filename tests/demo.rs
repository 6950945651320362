//! `demo`: a whole tuning with an invented dozen.

use crate::support::Folder;

#[test]
fn a_whole_tuning_is_played_into_a_new_folder() {
    let folder = Folder::new();
    let said = folder.run("demo").stdout_has("Every shaft has its verdict").check();
    assert_eq!(folder.names(), ["quarterturn-demo"]);
    let inside = std::fs::read_dir(folder.file("quarterturn-demo")).unwrap();
    let endings: Vec<_> = inside
        .map(|entry| entry.unwrap().path().extension().unwrap_or_default().to_owned())
        .collect();
    assert!(endings.iter().any(|end| end == "journal") && endings.iter().any(|end| end == "svg"));
    assert!(!said.contains("NaN"), "{said}");
}

#[test]
fn a_folder_that_exists_is_left_alone() {
    let folder = Folder::new();
    folder.write("quarterturn-demo", "mine");
    folder.run("demo").code(5).stderr_has("quarterturn-demo").check();
    assert_eq!(folder.read("quarterturn-demo"), "mine");
}

#[test]
fn it_plays_the_same_everywhere_and_every_time() {
    let (one, other) = (Folder::new(), Folder::new());
    let play = |folder: &Folder| folder.run("demo dozen").any_stdout().check();
    assert_eq!(play(&one), play(&other));
}
