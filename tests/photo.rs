//! `photo`: hits from a photo.

use std::fs;

use serde_json::{Value, json};

use crate::support::repository::{read, root};
use crate::support::{Folder, JOURNAL};

/// How far apart the marks are in the photo, as its face says.
pub const SPACING: &str = "166mm";
const MARKS: &str = "143,133 653,221 797,698 249,644";

/// What a photo leaves by its lens, its marks and its hole: the aim.
const HITS_WITHIN_MM: f64 = 1.0;
/// Hundredths of a millimetre are written.
const LIBRARIES_WITHIN_MM: f64 = 0.01;

/// A folder with a begun journal and two photos of the printed face, rendered: `fixtures/photo/make_photo.py`. In the
/// second an arrow stands before a mark.
pub fn folder() -> Folder {
    let folder = Folder::begun("1-12");
    for (photo, name) in [("slanting", "face.jpg"), ("covered", "covered.jpg")] {
        fs::copy(root().join(format!("fixtures/photo/{photo}.jpg")), folder.file(name)).unwrap();
    }
    folder
}

fn truth() -> Value {
    serde_json::from_str(&read("fixtures/photo/slanting.json")).unwrap()
}

fn pair(value: &Value) -> [f64; 2] {
    [0, 1].map(|at| value[at].as_f64().unwrap())
}

fn hit(shot: &Value) -> [f64; 2] {
    ["x_mm", "y_mm"].map(|name| shot[name].as_f64().unwrap())
}

fn apart([x, y]: [f64; 2], [to_x, to_y]: [f64; 2]) -> f64 {
    (x - to_x).hypot(y - to_y)
}

#[test]
fn the_hits_of_a_photo_are_recorded() {
    let (folder, truth) = (folder(), truth());
    let names = ["R", "7", "9"];
    let holes = truth["holes"].as_array().unwrap();
    let line = format!("photo {JOURNAL} face.jpg --spacing {SPACING} --json");
    let run = names.iter().zip(holes).fold(folder.run(&line), |run, (name, hole)| {
        let [x, y] = pair(&hole["pixel"]);
        run.arg("--hole").arg(&format!("{name}={x},{y}"))
    });
    let answer = run.json();
    assert_eq!((&answer["marks_by"], &answer["record"]), (&json!("picture"), &json!(2)));
    assert_eq!(answer["overlay"], "evening-photo-1.svg");
    for (shot, hole) in answer["shots"].as_array().unwrap().iter().zip(holes) {
        let off_mm = apart(hit(shot), pair(&hole["point_mm"]));
        assert!(off_mm <= HITS_WITHIN_MM, "{shot}: {off_mm}");
        assert!(shot["read_sd_mm"].as_f64().unwrap() <= 2.0, "{shot}");
    }
    for (mark, known) in
        answer["marks"].as_array().unwrap().iter().zip(truth["marks"].as_array().unwrap())
    {
        let found = ["x_px", "y_px"].map(|name| mark[name].as_f64().unwrap());
        assert!(apart(found, pair(&known["pixel"])) < 0.7, "{mark}");
    }
    let log = folder.run(&format!("log {JOURNAL} --json")).json();
    let recorded = &log["records"][1]["data"]["shots"];
    for at in 0..3 {
        assert_eq!(recorded[at]["read_sd_mm"], answer["shots"][at]["read_sd_mm"]);
        assert_eq!(
            hit(&recorded[at]).map(f64::to_bits),
            hit(&answer["shots"][at]).map(f64::to_bits)
        );
    }
}

/// Source: `OpenCV` 5.0.0, scikit-image 0.26.0 and scipy 1.17.1; `fixtures/geometry/make_homographies.py`.
#[test]
fn hits_agree_with_opencv_and_scikit_image() {
    let fixture: Value =
        serde_json::from_str(&read("fixtures/geometry/homographies.json")).unwrap();
    let folder = Folder::begun("1-12");
    let mut compared = 0;
    for case in fixture["cases"].as_array().unwrap() {
        let pairs = |name: &str| -> Vec<[f64; 2]> {
            case[name].as_array().unwrap().iter().map(pair).collect()
        };
        let marks = pairs("pixels").into_iter().zip(pairs("points_mm"));
        let run = folder.run(&format!("photo {JOURNAL} --dry-run --json"));
        let run = marks
            .fold(run, |run, ([u, v], [x, y])| run.arg("--mark").arg(&format!("{x},{y}={u},{v}")));
        let run = pairs("queries")
            .into_iter()
            .zip(1..)
            .fold(run, |run, ([u, v], shaft)| run.arg("--hole").arg(&format!("{shaft}={u},{v}")));
        let answer = run.stderr_has("").json();
        let others = case["others_mm"].as_object().unwrap();
        for other in others.values().chain([&case["mapped_mm"]]) {
            for (shot, expected) in
                answer["shots"].as_array().unwrap().iter().zip(other.as_array().unwrap())
            {
                let off_mm = apart(hit(shot), pair(expected));
                assert!(off_mm <= LIBRARIES_WITHIN_MM, "{shot}: {off_mm}");
                compared += 1;
            }
        }
    }
    assert!(compared >= 50, "{compared}");
}

#[test]
fn holes_from_a_file_with_all_that_is_said_of_an_arrow() {
    let folder = Folder::begun("1-12");
    folder.write("holes.txt", "R=442,347\n7=374,317 i3 tl2.5 p\n\n9=482,350 w\n");
    let line = format!(
        "photo {JOURNAL} --spacing 166 --holes holes.txt --evening may --note dusk --marks"
    );
    let run = folder.run(&line).arg(MARKS);
    run.stdout_has("Marks: the four that you gave. Four always fit")
        .stdout_has("R      3 mm left, 22.5 mm high     1.3 mm")
        .stdout_has("7: called poor; kept, and left out of the estimates")
        .stdout_has("Recorded: end 1, 3 shots, evening may.")
        .check();
    let log = folder.run(&format!("log {JOURNAL} --json")).json();
    let end = &log["records"][1]["data"];
    assert_eq!(end["note"], "dusk");
    let seven = &end["shots"][1];
    assert_eq!((&seven["index_deg"], &seven["lean_x_deg"]), (&json!(90.0), &json!(-2.5)));
    assert_eq!(end["shots"][2]["flags"], json!(["wind"]));
    assert_eq!(folder.names(), [JOURNAL, "evening.journal.lock", "holes.txt"]);
}

#[test]
fn a_dry_run_records_and_draws_nothing_unless_asked() {
    let folder = folder();
    let before = (folder.read(JOURNAL), folder.names());
    let line = format!("photo {JOURNAL} face.jpg --spacing 16.6cm --hole R=442,347 --dry-run");
    folder.run(&line).stdout_has("Nothing was recorded: this was a dry run.").check();
    assert_eq!((folder.read(JOURNAL), folder.names()), before);
    let drawn = folder.run(&format!("{line} --overlay look.svg"));
    drawn.stdout_has("Look: look.svg has the grid and the hits on the photo.").check();
    assert_eq!(folder.read(JOURNAL), before.0);
    let again = folder.run(&format!("{line} --overlay look.svg")).code(5);
    again.stderr_has("look.svg exists already").check();
    folder.run(&format!("{line} --overlay look.svg --force")).any_stdout().check();
}

/// The photo is in the drawing, without any notes, and its lines run over the marks.
#[test]
fn the_drawing_holds_the_photo_the_grid_and_the_hits() {
    let folder = folder();
    let line = format!("photo {JOURNAL} face.jpg --spacing {SPACING} --hole R=442,347");
    folder.run(&line).any_stdout().check();
    let drawing = folder.read("evening-photo-1.svg");
    let document = roxmltree::Document::parse(&drawing).unwrap();
    let named = |name: &str| document.descendants().filter(|node| node.has_tag_name(name)).count();
    assert_eq!((named("image"), named("circle")), (1, 1));
    let paths = document.descendants().filter_map(|node| node.attribute("d"));
    let lines: usize = paths.map(|path| path.matches('M').count()).sum();
    assert_eq!(lines, 2 * 19 + 2 * 5, "19 lines each way, crosses on four marks and a hit");
    assert!(drawing.contains("href=\"data:image/jpeg;base64,/9j/"), "it needs no other file");
    assert!(!drawing.contains("RXhpZg"), "Exif in base 64");
}

#[test]
fn a_hole_outside_the_marks_and_marks_that_fit_badly_are_said() {
    let folder = Folder::begun("1-12");
    let line = format!(
        "photo {JOURNAL} --dry-run --hole R=442,347 --hole 7=900,100 --spacing {SPACING} --marks"
    );
    let note = "note: 7 is outside the marks, where less is known: to 3.1 mm\n";
    folder.run(&line).arg(MARKS).any_stdout().stderr(note).check();
    let five =
        "--mark -83,83=143,133 --mark 83,83=653,221 --mark 83,-83=797,698 --mark -83,-83=249,644";
    let misread = format!("photo {JOURNAL} --dry-run --hole R=442,347 {five} --mark 0,0=467,420");
    let run = folder.run(&misread).stdout_has("Marks: the 5 that you gave fit within");
    run.stderr_has("note: the marks fit only within 1.")
        .stderr_has("a lens that bends straight lines, a face that does not lie flat, or a mark that was misread")
        .stderr_has("note: by what the marks miss, pixels were read to")
        .check();
}

/// Answers with marks that were found, that were told and that were given, recorded and not.
pub fn answers() -> [Value; 3] {
    let folder = folder();
    let hole = "--hole R=442,347 --hole 7=900,100 --json";
    let line = format!("photo {JOURNAL} face.jpg --spacing {SPACING} {hole}");
    let told = format!("photo {JOURNAL} covered.jpg --spacing {SPACING} --hole R=472,311 --json");
    let told = folder.run(&told).json();
    assert_eq!(told["told_from_three"], "bottom right");
    let given = format!("photo {JOURNAL} --dry-run --hole R=442,347 --json --mark -83,83=143,133");
    let given = folder.run(&given).args(
        "--mark 83,83=653,221 --mark 83,-83=797,698 --mark -83,-83=249,644 --mark 0,0=468,419",
    );
    [folder.run(&line).stderr_has("outside").json(), told, given.stderr_has("").json()]
}
