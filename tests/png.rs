//! PNG where the program was built with it, and plain words where it was not.

use crate::support::{Folder, JOURNAL};

#[cfg(not(feature = "png"))]
#[test]
fn a_program_without_png_says_so_and_names_ways_on() {
    let folder = Folder::with_an_end();
    let before = folder.names();
    for line in [
        format!("plot {JOURNAL} --png"),
        format!("plot {JOURNAL} --lean -o lean.PNG"),
        format!("paper card {JOURNAL} --png"),
        "paper face --across 300mm -o face.png".to_owned(),
    ] {
        folder
            .run(&line)
            .code(2)
            .stderr(
                "error: this program was built without PNG\n \
                 |\n \
                 = help: an SVG opens in every browser, which prints it or saves it as PDF: -o picture.svg\n \
                 = help: or build the program with it: cargo install --path crates/cli --features png\n",
            )
            .check();
    }
    assert_eq!(folder.names(), before, "nothing is written");
}

/// What a PNG says of itself: its width and height in pixels, and pixels to a metre across and up.
#[cfg(feature = "png")]
fn said(folder: &Folder, file: &str) -> [u32; 4] {
    let bytes = std::fs::read(folder.file(file)).unwrap();
    assert!(bytes.starts_with(b"\x89PNG\r\n\x1a\n"), "{file} is a PNG");
    assert_eq!(&bytes[37..41], b"pHYs", "{file} says its size");
    assert_eq!(bytes[49], 1, "in metres");
    [16, 20, 41, 45].map(|at| u32::from_be_bytes(bytes[at..at + 4].try_into().unwrap()))
}

#[cfg(feature = "png")]
#[test]
fn every_picture_and_sheet_comes_as_png_in_true_size() {
    let folder = Folder::with_an_end();
    let parts = ["", "--shaft 1", "--end 1", "--before-after", "--lean", "--course", "--face 40cm"];
    for (at, part) in parts.into_iter().enumerate() {
        let file = format!("{at}.png");
        folder.run(&format!("plot {JOURNAL} {part} -o {file}")).any_stdout().check();
        let [wide, high, across, up] = said(&folder, &file);
        assert_eq!([wide, across, up], [1400, 10_000, 10_000], "{part}");
        assert!(high > 600, "{part}: {high}");
    }
    folder.run(&format!("plot {JOURNAL} --png")).any_stdout().check();
    assert_eq!(
        std::fs::read(folder.file("evening.png")).unwrap(),
        std::fs::read(folder.file("0.png")).unwrap()
    );
    for sheet in ["face".to_owned(), "log".to_owned(), format!("labels {JOURNAL}")] {
        folder.run(&format!("paper {sheet} -o sheet.png --force")).any_stdout().check();
        assert_eq!(said(&folder, "sheet.png"), [2100, 2970, 10_000, 10_000], "{sheet}");
    }
    folder.run("paper face --paper letter --across 300mm -o face.png").any_stdout().check();
    assert_eq!(said(&folder, "face-4.png")[..2], [2159, 2794]);
}

/// The words are drawn with the fonts of the program, whatever the machine has.
#[cfg(feature = "png")]
#[test]
fn words_are_drawn_and_letters_that_are_missing_are_said() {
    let folder = Folder::begun("1-3");
    let drawn = |line: &str| {
        folder.run(line).any_stdout().check();
        std::fs::read(folder.file("a.png")).unwrap()
    };
    let one = drawn(&format!("plot {JOURNAL} -o a.png --force"));
    std::fs::rename(folder.file(JOURNAL), folder.file("another.journal")).unwrap();
    let other = drawn("plot another.journal -o a.png --force");
    assert_ne!(one, other, "the title is drawn");
    let far = Folder::begun("1,北");
    let said = far.run(&format!("plot {JOURNAL} -o a.png"));
    let note = "note: letters that the font of a PNG lacks are left out; an SVG has them: -o picture.svg\n";
    said.any_stdout().stderr(note).check();
}

#[cfg(feature = "png")]
#[test]
fn only_force_writes_over_a_png() {
    let folder = Folder::with_an_end();
    folder.write("evening.png", "mine");
    folder.run(&format!("plot {JOURNAL} --png")).code(5).stderr_has("--force").check();
    assert_eq!(folder.read("evening.png"), "mine");
    folder.run(&format!("plot {JOURNAL} --png --force")).any_stdout().check();
    assert_eq!(said(&folder, "evening.png")[0], 1400);
}
