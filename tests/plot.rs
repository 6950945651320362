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

#[test]
fn the_course_of_a_tuning_has_a_picture() {
    let folder = Folder::with_an_end();
    let said = folder.run(&format!("plot {JOURNAL} --course"));
    said.stdout("The course is drawn in evening-course.svg.\n").check();
    let picture = folder.read("evening-course.svg");
    for part in ["What was settled", "Where the reference landed", "How far each bare shot"] {
        assert!(picture.contains(part), "the picture lacks {part}");
    }
    let none_yet = Folder::begun("1-3");
    none_yet.run(&format!("plot {JOURNAL} --course -o -")).stdout_has("What was settled").check();
}

#[test]
fn a_face_or_a_plate_may_lie_under_the_hits() {
    let folder = Folder::with_an_end();
    let drawn = |more: &str| folder.run(&format!("plot {JOURNAL} -o - {more}"));
    drawn("--face 40cm").stdout_has("face of 40 cm, rings 1 to 10").check();
    drawn("--plate 8in").stdout_has("plate of 203.2 mm").check();
    drawn("--plate 0cm").code(2).stderr_has("a plate has a size").check();
    drawn("--face 40cm --plate 8in").code(2).stderr_has("cannot be used with").check();
}
