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

#[test]
fn an_end_has_a_picture() {
    let folder = Folder::with_an_end();
    let said = folder.run(&format!("plot {JOURNAL} --end 1"));
    said.stdout("End 1 is drawn in evening-end-1.svg.\n").check();
    let picture = folder.read("evening-end-1.svg");
    for part in
        [">evening.journal: end 1<", "shots from 18.3 m", ">R<", "stars are fletched references"]
    {
        assert!(picture.contains(part), "the picture lacks {part}");
    }
    let rings = folder.run(&format!("plot {JOURNAL} --end 1 --face 40cm -o -"));
    rings.stdout_has("Under it a face of 40 cm").check();
    let one = "there is no end 2 in this journal";
    folder.run(&format!("plot {JOURNAL} --end 2")).code(3).stderr_has(one).check();
}

#[test]
fn before_and_after_have_a_picture_and_so_has_lean_against_hit() {
    let folder = Folder::with_an_end();
    let said = folder.run(&format!("plot {JOURNAL} --before-after"));
    said.stdout("Before and after is drawn in evening-before-after.svg.\n").check();
    let said = folder.run(&format!("plot {JOURNAL} --lean"));
    said.stdout("Lean against hit is drawn in evening-lean.svg.\n").check();
    assert!(folder.read("evening-before-after.svg").contains("As built, "));
    assert!(folder.read("evening-lean.svg").contains("To the sides"));
    let none_yet = Folder::begun("1-3");
    let unshot = none_yet.run(&format!("plot {JOURNAL} --before-after -o -"));
    unshot.stdout_has("Not shot yet: 1, 2 and 3.").check();
    let unread = none_yet.run(&format!("plot {JOURNAL} --lean -o -"));
    unread.stdout_has("No counted bare shot with its tail read yet.").check();
}

#[test]
fn one_part_at_a_time() {
    let folder = Folder::with_an_end();
    for both in
        ["--end 1 --lean", "--shaft 1 --course", "--before-after --face 40cm", "--lean --plate 8in"]
    {
        folder
            .run(&format!("plot {JOURNAL} {both}"))
            .code(2)
            .stderr_has("cannot be used with")
            .check();
    }
}
