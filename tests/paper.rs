//! `paper`: sheets to print.

use crate::support::{Folder, JOURNAL};

const PRINT: &str = "Print at actual size (100 %), then lay a rule on the bars.\n";

#[test]
fn every_sheet_is_a_pdf_of_its_own_name() {
    let folder = Folder::begun("1-12");
    for (line, file) in [
        ("face".to_owned(), "face.pdf"),
        ("log --paper letter".to_owned(), "log.pdf"),
        (format!("card {JOURNAL}"), "evening-card.pdf"),
        (format!("dials {JOURNAL} --diameter 6.5mm"), "evening-dials.pdf"),
        (format!("labels {JOURNAL}"), "evening-labels.pdf"),
    ] {
        let said = folder.run(&format!("paper {line}"));
        said.stdout(&format!("1 sheet in {file}.\n{PRINT}")).check();
        assert!(folder.names().contains(&file.to_owned()), "{file}");
    }
}

#[test]
fn a_large_face_comes_in_parts() {
    let folder = Folder::begun("1-3");
    let said = folder.run("paper face --across 300mm -o face.svg");
    let files = "face-1.svg, face-2.svg, face-3.svg and face-4.svg";
    said.stdout(&format!("4 sheets in {files}.\n{PRINT}")).check();
    assert!(folder.read("face-4.svg").contains("Face, part 2-2"));
}

#[test]
fn the_card_shows_the_end_that_next_asks_for() {
    let folder = Folder::begun("1-12");
    folder.run(&format!("paper card {JOURNAL} -o card.svg")).any_stdout().check();
    let card = folder.read("card.svg");
    let next = folder.run(&format!("next {JOURNAL}")).any_stdout().check();
    for part in ["fletched reference", "spot 4", "18.3 m", "Flex and twist every shaft"] {
        assert!(card.contains(part), "the card lacks {part}");
    }
    let shown = (1..=12).filter(|shaft| card.contains(&format!(">{shaft}</text>")));
    let asked = shown.filter(|shaft| next.contains(&format!("  {shaft} ")));
    assert!(asked.count() >= 3, "{card}");
}

/// Shaft 1 is kept with its mark at 3 o'clock: its cock vane stands a quarter round to the left of the mark.
#[test]
fn the_fletching_sheet_shows_the_kept_shafts() {
    let folder = crate::fletch::found();
    let sheet = format!("paper fletch {JOURNAL} --diameter 10mm --vane-angle left --wrap 80mm");
    let said = folder.run(&format!("{sheet} -o f.svg"));
    said.stdout(&format!("1 sheet in f.svg.\n{PRINT}")).check();
    let drawn = folder.read("f.svg");
    for part in [
        "mark at 3 o'clock",
        "cock three hours counter-clockwise",
        "Not here, still open: 2.",
        "Not here, retired: 3.",
        "Vane angle to the left",
        "80 mm forward",
        "not before",
    ] {
        assert!(drawn.contains(part), "{part} in\n{drawn}");
    }
    assert!(!drawn.contains(">2</text>"), "2 is open");
    folder.run(&sheet).stdout(&format!("1 sheet in evening-fletch.pdf.\n{PRINT}")).check();
}

#[test]
fn a_printer_that_shrinks_is_made_up_for() {
    let folder = Folder::begun("1-3");
    folder.run("paper log -o log.svg --measured 97.2mm,97.5mm").any_stdout().check();
    let log = folder.read("log.svg");
    assert!(
        log.contains("width=\"210mm\" height=\"297mm\" viewBox=\"0 0 204.12 289.58\""),
        "{log}"
    );
}

#[test]
fn letters_that_the_font_lacks_are_said() {
    let folder = Folder::begun("1,北");
    folder
        .run(&format!("paper labels {JOURNAL}"))
        .any_stdout()
        .stderr("note: letters that the font of a PDF lacks are printed as ?; an SVG has them: -o sheet.svg\n")
        .check();
}
