//! Photos, marks and holes that cannot be used.

use std::fs;

use super::{Marked, plain};
use crate::photo::{SPACING, folder};
use crate::support::repository::root;
use crate::support::{Folder, JOURNAL};

/// One grey pixel.
const GREY: &[u8] = b"\x89\x50\x4e\x47\x0d\x0a\x1a\x0a\x00\x00\x00\x0d\x49\x48\x44\x52\x00\x00\x00\x01\x00\x00\x00\x01\x08\x00\x00\x00\x00\x3a\x7e\x9b\x55\x00\x00\x00\x0a\x49\x44\x41\x54\x78\x9c\x63\x68\x00\x00\x00\x82\x00\x81\x77\xcd\x72\xb6\x00\x00\x00\x00\x49\x45\x4e\x44\xae\x42\x60\x82";
/// 40,000 by 40,000 pixels, of which none is there.
const BOMB: &[u8] = b"\x89\x50\x4e\x47\x0d\x0a\x1a\x0a\x00\x00\x00\x0d\x49\x48\x44\x52\x00\x00\x9c\x40\x00\x00\x9c\x40\x08\x00\x00\x00\x00\x74\x67\x51\xd9\x00\x00\x00\x0b\x49\x44\x41\x54\x78\x9c\x63\x60\x80\x01\x00\x00\x0a\x00\x01\x7f\x80\x74\x5e\x00\x00\x00\x00\x49\x45\x4e\x44\xae\x42\x60\x82";

pub(super) const GOOD: &str = "412,388 2650,301 2781,2412 355,2290";
pub(super) const WHAT: &str = "the end was not recorded";

/// What is typed behind `photo JOURNAL` is refused, and nothing is written.
#[track_caller]
pub(super) fn refused(folder: &Folder, options: &[&str], code: i32, message: &str) {
    let before = written(folder);
    let run = folder.run(&format!("photo {JOURNAL}"));
    options.iter().fold(run, |run, option| run.arg(option)).code(code).stderr(message).check();
    assert_eq!(written(folder), before);
}

/// The journal, and the names of all files but that of its lock.
fn written(folder: &Folder) -> (String, Vec<String>) {
    let lock = format!("{JOURNAL}.lock");
    let names = folder.names().into_iter().filter(|name| *name != lock);
    (folder.read(JOURNAL), names.collect())
}

/// A hole with four good marks is refused.
#[track_caller]
pub(super) fn refused_hole(holes: &Marked, label: &str, hints: &[&str]) {
    let folder = Folder::begun("1-12");
    let message = holes.message(WHAT, None, label, hints);
    let options = ["--spacing", "600mm", "--marks", GOOD, "--hole", &holes.text];
    refused(&folder, &options, 3, &message);
}

#[test]
fn files_that_are_no_pictures() {
    let folder = folder();
    let whole = fs::read(root().join("fixtures/photo/slanting.jpg")).unwrap();
    let again = "copy it again from the telephone or the camera";
    let smaller = "save it smaller; the pixels are then those of the smaller one";
    for (name, bytes, why, hint) in [
        ("empty.jpg", &[][..], "it is empty", again),
        (
            "note.txt",
            b"R 0, 7 r31 u8",
            "it is neither a JPEG nor a PNG",
            "save it as a JPEG or a PNG",
        ),
        ("bomb.png", BOMB, "it has 40000 × 40000 pixels, and at most 50 million are read", smaller),
    ] {
        fs::write(folder.file(name), bytes).unwrap();
        let message = plain(&format!("{name} cannot be read as a picture: {why}"), &[hint]);
        refused(&folder, &[name, "--spacing", SPACING, "--hole", "R=1,1"], 3, &message);
    }
    for cut in [2, 100, 700, 20_000] {
        fs::write(folder.file("cut.jpg"), &whole[..cut]).unwrap();
        let run = folder.run(&format!("photo {JOURNAL} cut.jpg --spacing {SPACING} --hole R=1,1"));
        run.code(3)
            .stderr_has("cut.jpg cannot be read as a picture: it is")
            .stderr_has("= help: ")
            .check();
    }
    let long = fs::File::create(folder.file("long.jpg")).unwrap();
    long.set_len((64 << 20) + 1).unwrap();
    let message = plain("long.jpg is longer than a photo can be: more than 67108864 bytes", &[]);
    refused(&folder, &["long.jpg", "--spacing", SPACING, "--hole", "R=1,1"], 3, &message);
    let missing = folder.run(&format!("photo {JOURNAL} gone.jpg --spacing {SPACING} --hole R=1,1"));
    missing.code(5).stderr_has("could not read gone.jpg: ").check();
}

#[test]
fn pictures_in_which_the_marks_are_not_found() {
    let folder = folder();
    fs::write(folder.file("grey.png"), GREY).unwrap();
    let by_hand = "give the pixels of the four marks with --marks: top left (the largest dot), top right (the smallest), \
        bottom right, bottom left";
    let message = plain(
        "the marks were not taken from grey.png: no mark can be seen in the picture, and it takes four",
        &[by_hand, "a picture in which all four can be seen, sharp and whole, needs no marks"],
    );
    refused(&folder, &["grey.png", "--spacing", SPACING, "--hole", "R=1,1"], 3, &message);
    let measure =
        "measure from the middle of one mark to the middle of the next, and say it with --spacing";
    let message = plain(
        "the marks were not taken from face.jpg: the marks are 12 mm wide only if they stand about 167 mm apart along each \
         edge, not 300.0 mm",
        &[measure],
    );
    refused(&folder, &["face.jpg", "--spacing", "300mm", "--hole", "R=1,1"], 3, &message);
}

#[test]
fn marks_that_are_not_given() {
    let folder = folder();
    let message = plain(
        "there are no marks to measure by",
        &[
            "name the photo of the printed face behind the journal, with --spacing 166mm",
            "or give the pixels of four marks with --marks, or of any others each with --mark",
        ],
    );
    refused(&folder, &["--hole", "R=1,1"], 2, &message);
    let message = plain(
        "it is not said how far apart the marks are",
        &[
            "the printed face says it: --spacing 166mm; where your printer shrinks, measure it",
            "of a face of another kind, give each mark with --mark",
        ],
    );
    refused(&folder, &["face.jpg", "--hole", "R=1,1"], 2, &message);
}

#[test]
fn values_of_options_that_cannot_be_read() {
    let folder = Folder::begun("1-12");
    let pixel = "to the right and down, as picture viewers count: 1204,833";
    let four = "top left, top right, bottom right, bottom left, as you face the target: \
        \"412,388 2650,301 2781,2412 355,2290\"";
    let mark = "for example -83,83=412,388: 83 left and 83 up of the spot, then the pixel";
    for (option, value, label, hints) in [
        ("--spacing", "⟦0mm⟧", "more than 0 and at most 3000 mm is possible", &[][..]),
        ("--spacing", "⟦4m⟧", "more than 0 and at most 3000 mm is possible", &[]),
        (
            "--marks",
            "1,2 3,4 ⟦56⟧ 7,8",
            "a pixel is two numbers with a comma between them",
            &[pixel],
        ),
        ("--marks", "1,2 3,⟦y⟧ 5,6 7,8", "this is no number of pixels", &[pixel]),
        ("--marks", "⟦1,2 3,4⟧", "four pixels are expected here, and 2 can be read", &[four]),
        ("--mark", "⟦412,388⟧", "a mark is its place on the face, = and its pixel", &[mark]),
        ("--mark", "-83,83=⟦412⟧", "a pixel is two numbers with a comma between them", &[pixel]),
        ("--read-to", "⟦-1⟧", "a number of pixels, more than 0 and at most 1000, is expected", &[]),
    ] {
        let marked = Marked::of(value);
        let what = format!("the value of {option} cannot be used");
        let mut options = vec!["--hole", "R=1,1", option, &marked.text];
        match option {
            "--spacing" | "--read-to" => options.extend(["--marks", GOOD]),
            "--marks" => options.extend(["--spacing", "60cm"]),
            _ => {}
        }
        if option == "--read-to" {
            options.extend(["--spacing", "60cm"]);
        }
        refused(&folder, &options, 2, &marked.message(&what, None, label, hints));
    }
    let no_hole = folder.run(&format!("photo {JOURNAL} --spacing 60cm --marks 1,2"));
    no_hole.code(2).stderr_has("<--hole <HOLE>|--holes <FILE>>").check();
    let no_image = folder.run(&format!("photo {JOURNAL} --hole R=1,1 --overlay look.svg"));
    no_image.code(2).stderr_has("required arguments were not provided").check();
}

#[test]
fn marks_in_the_wrong_order_mirrored_or_on_a_line() {
    let folder = Folder::begun("1-12");
    let order = [
        "as you face the target: top left, top right, bottom right, bottom left",
        "pixels are counted to the right and down from the upper left corner",
    ];
    for (marks, why, hints) in [
        (
            "412,388 2650,301 355,2290 2781,2412",
            "marks 3 and 4 seem to have been taken for each other; exchange them, or check the order of all",
            &order[..],
        ),
        (
            "2650,301 412,388 355,2290 2781,2412",
            "the marks run the other way round in the picture than on the face: the picture is mirrored, or y was counted \
             upwards, or two opposite marks were exchanged",
            &order,
        ),
        (
            "400,400 1200,400 2000,400 2800,400",
            "marks 1, 2 and 3 stand on one line and leave too few beside it; take the corners of a face",
            &[],
        ),
        (
            "400,400 1200,400 2000,900 400,400",
            "marks 1 and 4 stand in one place; give each its own",
            &[],
        ),
    ] {
        let message = plain(&format!("the marks cannot be used: {why}"), hints);
        refused(&folder, &["--spacing", "60cm", "--marks", marks, "--hole", "R=1,1"], 3, &message);
    }
    let three = ["--hole", "R=1,1", "--mark", "0,0=1,1", "--mark", "9,0=9,1", "--mark", "0,9=1,9"];
    let message = plain(
        "the marks cannot be used: 3 marks: it takes four, no three of them on one line",
        &[],
    );
    refused(&folder, &three, 3, &message);
}

/// One of five was misread by 12 px: each is shown with what it misses.
#[test]
fn marks_that_do_not_fit() {
    let folder = Folder::begun("1-12");
    let marks =
        ["-83,83=143,133", "83,83=653,221", "83,-83=797,698", "-83,-83=249,644", "0,0=486,419"];
    let options: Vec<&str> =
        marks.iter().flat_map(|mark| ["--mark", mark]).chain(["--hole", "R=442,347"]).collect();
    let run =
        options.iter().fold(folder.run(&format!("photo {JOURNAL}")), |run, option| run.arg(option));
    let (code, said) = run.said();
    let what = "the marks agree on no view of a flat face: one is ";
    assert!(code == 3 && said.starts_with(&format!("error: {what}")), "{said}");
    assert!(said.contains(" mm off, and at most 2 mm are taken\n"), "{said}");
    let each = said.lines().filter(|line| line.starts_with(" = help: mark ")).count();
    assert!(each == 5 && said.contains("mark 5 at 486,419 is "), "{said}");
}

#[test]
fn holes_that_cannot_be_read() {
    let hole = "for example 7=1204,833, or \"7=1204,833 i3 tl2 p\"";
    let pixel = "to the right and down, as picture viewers count: 1204,833";
    refused_hole(
        &Marked::of("⟦1204,833⟧"),
        "a hole is the name of its arrow, = and its pixel",
        &[hole],
    );
    refused_hole(&Marked::of("7=1204,⟦83.3.3⟧"), "this is no number of pixels", &[pixel]);
    refused_hole(&Marked::of("⟦⟧"), "no hole is given", &[hole]);
    let words = "take it out; behind the pixel stand the mark, the tail, the call and flags";
    refused_hole(&Marked::of("7=1204,833 ⟦r31 u8⟧"), "the photo says where it hit", &[words]);
    let label = "\"3i\" is not a word of the line";
    let folder = Folder::begun("1-12");
    let marked = Marked::of("7=1204,833 ⟦3i⟧");
    let run = folder.run(&format!("photo {JOURNAL} --spacing 60cm --hole")).arg(&marked.text);
    run.arg("--marks").arg(GOOD).code(3).stderr_has(label).check();
}

#[test]
fn arrows_that_are_not_there_or_named_twice() {
    let folder = Folder::begun("A1,A2");
    let marked = Marked::of("⟦A11⟧=1204,833");
    let message = marked.message(
        WHAT,
        None,
        "there is no shaft \"A11\" in this journal",
        &["did you mean \"A1\"?", "it has A1, A2, R"],
    );
    let options = ["--spacing", "600mm", "--marks", GOOD, "--hole", &marked.text];
    refused(&folder, &options, 3, &message);
    let twice =
        ["--spacing", "600mm", "--marks", GOOD, "--hole", "R=1204,833", "--hole", "R=1300,900"];
    let run =
        twice.iter().fold(folder.run(&format!("photo {JOURNAL}")), |run, option| run.arg(option));
    run.code(3).stderr_has("2 | R=1300,900").stderr_has("^ shaft R stands here twice").check();
}

/// The drawing is written first: where it cannot be, no end is recorded.
#[test]
fn a_drawing_that_cannot_be_written() {
    let folder = folder();
    let line = ["face.jpg", "--spacing", SPACING, "--hole", "R=442,347", "--force", "--overlay"];
    let message = plain(
        "evening.journal is a journal, and nothing is written over one",
        &["choose another name"],
    );
    refused(&folder, &[&line[..], &[JOURNAL]].concat(), 5, &message);
    let nowhere = folder.run(&format!("photo {JOURNAL} {} gone/look.svg", line.join(" ")));
    nowhere.code(5).stderr_has("could not write gone/look.svg: ").check();
    assert!(!folder.read(JOURNAL).contains("\"kind\":\"end\""));
}

#[test]
fn pixels_outside_the_picture_and_beyond_the_face() {
    let folder = folder();
    let size = "the picture has 1000 by 750 pixels";
    let marked = Marked::of("R=⟦442,3470⟧");
    let message = marked.message(WHAT, None, "this is outside the picture", &[size]);
    refused(&folder, &["face.jpg", "--spacing", SPACING, "--hole", &marked.text], 3, &message);
    let message = plain("mark 3 at 2781,2412 is outside the picture", &[size]);
    let marks = "412,388 950,301 2781,2412 355,720";
    let options = ["face.jpg", "--spacing", SPACING, "--marks", marks, "--hole", "R=1,1"];
    refused(&folder, &options, 3, &message);
    let marked = Marked::of("R=⟦500,-4000⟧");
    let message = marked.message(
        WHAT,
        None,
        "by these marks this pixel shows no place of the face",
        &["read the pixel again, and those of the marks"],
    );
    let marks = "400,0 600,0 700,1000 300,1000";
    let options = ["--spacing", "20cm", "--marks", marks, "--hole", &marked.text];
    refused(&folder, &options, 3, &message);
}
