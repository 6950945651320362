//! `plot`: the target as a picture.

use crate::support::{Folder, JOURNAL};

#[test]
fn the_picture_stands_beside_the_journal() {
    let folder = Folder::with_an_end();
    let said = folder.run(&format!("plot {JOURNAL}"));
    said.stdout("The target is drawn in evening.svg.\n").check();
    let picture = folder.read("evening.svg");
    for part in [
        "<svg ",
        "<title",
        "<desc",
        "viewBox=",
        "mm\"",
        ">1<",
        ">2<",
        "reference",
        "18.3 m",
        "25 mm",
    ] {
        assert!(picture.contains(part), "the picture lacks {part}");
    }
    assert_eq!(picture.matches('<').count(), picture.matches('>').count());
    assert!(!picture.contains("NaN") && !picture.contains("<script"), "{picture}");
}

#[test]
fn the_same_journal_gives_the_same_picture() {
    let folder = Folder::with_an_end();
    let draw = || folder.run(&format!("plot {JOURNAL} -o -")).any_stdout().check();
    assert_eq!(draw(), draw());
    assert!(!folder.names().contains(&"evening.svg".to_owned()), "nothing is written");
}

#[test]
fn only_force_writes_over_a_picture() {
    let folder = Folder::with_an_end();
    folder.write("target.svg", "mine");
    let plot = |more: &str| folder.run(&format!("plot {JOURNAL} -o target.svg {more}"));
    plot("").code(5).stderr_has("target.svg").check();
    assert_eq!(folder.read("target.svg"), "mine");
    plot("--force").any_stdout().check();
    assert!(folder.read("target.svg").starts_with("<svg "));
}

#[test]
fn before_the_first_shot_there_is_a_picture_too() {
    Folder::begun("1-12").run(&format!("plot {JOURNAL} -o -")).stdout_has("<svg ").check();
}

#[test]
fn a_shaft_has_a_picture_of_its_own() {
    let folder = Folder::with_an_end();
    let said = folder.run(&format!("plot {JOURNAL} --shaft 1"));
    said.stdout("Shaft 1 is drawn in evening-1.svg.\n").check();
    let picture = folder.read("evening-1.svg");
    for part in ["<svg ", "Shaft 1: open", "Sure to be inside, mark at", "class=\"curve\""] {
        assert!(picture.contains(part), "the picture lacks {part}");
    }
}
