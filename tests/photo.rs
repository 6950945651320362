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

/// A folder with a begun journal and three photos of the printed face, rendered: `fixtures/photo/make_photo.py`. In the
/// second an arrow stands before a mark, in the third nocks are seen.
pub fn folder() -> Folder {
    let folder = Folder::begun("1-12");
    for (photo, name) in
        [("slanting", "face.jpg"), ("covered", "covered.jpg"), ("tails", "nocks.jpg")]
    {
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

/// In photos taken from behind the nocks leans come out within this of what was planted: 600 mm stick out, and a pixel is a third
/// of a millimetre.
const LEANS_WITHIN_DEG: f64 = 0.3;

/// The lean of a planted arrow, degrees.
fn lean(hole: &Value, tail: &Value) -> [f64; 2] {
    let ([x, y], tail) = (pair(hole), [0, 1, 2].map(|at| tail[at].as_f64().unwrap()));
    let way = [tail[0] - x, tail[1] - y, tail[2]];
    let length = way.iter().map(|part| part * part).sum::<f64>().sqrt();
    [way[0], way[1]].map(|part| (part / length).asin().to_degrees())
}

/// The holes and the tails of the photo from behind the nocks, as they are typed.
fn nocks(names: &[&str]) -> (Vec<String>, Value) {
    let truth: Value = serde_json::from_str(&read("fixtures/photo/tails.json")).unwrap();
    let [holes, tails] = ["holes", "tails"].map(|name| truth[name].as_array().unwrap().clone());
    let typed = names.iter().zip(holes.iter().zip(&tails)).map(|(name, (hole, tail))| {
        let ([x, y], [u, v]) = (pair(&hole["pixel"]), pair(&tail["pixel"]));
        format!("{name}={x:.0},{y:.0} t{u:.0},{v:.0} s60cm")
    });
    (typed.collect(), truth)
}

#[test]
fn leans_are_read_by_the_pixels_of_nocks() {
    let folder = folder();
    let (typed, truth) = nocks(&["7", "R", "9"]);
    let leans: Vec<[f64; 2]> = (0..3)
        .map(|at| lean(&truth["holes"][at]["point_mm"], &truth["tails"][at]["point_mm"]))
        .collect();
    for (lens, within_sds) in [("--lens 100mm", 1.5), ("", 2.5)] {
        let line = format!("photo {JOURNAL} nocks.jpg --spacing {SPACING} {lens} --json --force");
        let run = typed.iter().fold(folder.run(&line), |run, hole| run.arg("--hole").arg(hole));
        let answer = run.stderr_has("").json();
        let shots = answer["shots"].as_array().unwrap();
        for (shot, planted) in shots.iter().zip(&leans) {
            let read = ["lean_x_deg", "lean_y_deg"].map(|name| shot[name].as_f64().unwrap());
            let beside = [0, 1].map(|axis| planted[axis] - leans[1][axis]);
            let sd = shot["lean_sd_deg"].as_f64().unwrap();
            let off = apart(read, beside);
            assert!(off <= within_sds * sd * 2.0_f64.sqrt(), "{lens} {shot}: {off}");
            assert!(lens.is_empty() || off <= LEANS_WITHIN_DEG && sd <= 0.5, "{shot}: {off}");
        }
        assert_eq!(answer["camera"]["lens_by"], if lens.is_empty() { "marks" } else { "hand" });
        let log = folder.run(&format!("log {JOURNAL} --json")).json();
        let recorded = &log["records"].as_array().unwrap().last().unwrap()["data"]["shots"][0];
        for name in ["lean_x_deg", "lean_y_deg", "lean_sd_deg"] {
            assert_eq!(recorded[name], shots[0][name], "as it was said");
        }
        assert!(recorded.get("protruding_mm").is_none(), "no tape was held");
        folder.run(&format!("undo {JOURNAL}")).any_stdout().check();
    }
    let drawing = folder.read("evening-photo-1.svg");
    let (_, shafts) = drawing.split_once("class=\"shaft\" d=\"").unwrap();
    let strokes = shafts.split('"').next().unwrap().matches('M').count();
    assert_eq!(strokes, 9, "a line and a cross each");
}

/// How far arrows stick out is what is known worst.
#[test]
fn leans_that_are_known_badly_are_said() {
    let folder = folder();
    let (typed, _) = nocks(&["R", "7", "9"]);
    let line = format!("photo {JOURNAL} nocks.jpg --spacing {SPACING} --lens 100mm --dry-run");
    let run = typed.iter().fold(folder.run(&line), |run, hole| {
        run.arg("--hole").arg(hole.strip_suffix(" s60cm").unwrap())
    });
    run.any_stdout()
        .stderr_has("note: the tails of 7 and 9 are known to 2.4 deg only, and so weighed: say how far the arrows stick out, as s62cm\n")
        .check();
    let run = typed.iter().fold(folder.run(&line), |run, hole| run.arg("--hole").arg(hole));
    run.stdout_has(
        "Camera: 1.98 m from the spot, 12 deg from straight ahead; its lens is one of 100",
    )
    .stdout_has("shaft  hit                         known to  tail")
    .check();
}

/// From straight ahead the marks tell nothing of the lens: it is said, and leans are known less well than by an eye.
#[test]
fn a_lens_that_cannot_be_told_is_said() {
    let folder = Folder::begun("1-12");
    let line = format!("photo {JOURNAL} --dry-run --size 4000,3000 --spacing {SPACING} --marks");
    let ahead = "1700,1200 2300,1200 2300,1800 1700,1800";
    let run = folder.run(&line).arg(ahead).arg("--hole").arg("R=2000,1500 t2010,1500 s60cm");
    let run = run.arg("--hole").arg("7=1850,1400 t1700,1300").arg("--json");
    let answer = run.stderr_has("").json();
    assert_eq!(answer["camera"]["lens_mm"], 50.0);
    assert!(answer["camera"]["lens_spread"].as_f64().unwrap() > 0.5, "{answer}");
    let sd = answer["shots"][1]["lean_sd_deg"].as_f64().unwrap();
    assert!((1.0..20.0).contains(&sd), "{sd}");
    let run = folder.run(&line).arg(ahead).arg("--hole").arg("R=2000,1500 t2010,1500 s60cm");
    run.stdout_has("hardly tell its lens, and 50 mm in the terms of 35 mm film are taken").check();
}

/// Marks as a lens of 26 mm shows them from 16 degrees aside.
#[test]
fn a_lens_that_the_marks_doubt_is_said() {
    let folder = Folder::begun("1-12");
    let line = format!("photo {JOURNAL} --dry-run --size 4000,3000 --spacing {SPACING}");
    let doubt = "note: by the marks alone the lens is rather one of about 26 mm: if you zoomed, reckon it into --lens; if the picture was cut, leave that out\n";
    for (lens, notice) in [("--lens 26mm", ""), ("--lens 39mm", doubt)] {
        let run = folder.run(&format!("{line} {lens}")).arg("--marks");
        let run = run.arg("1739,1241 2256,1222 2269,1767 1758,1761").arg("--hole");
        run.arg("R=1974,1461 t610,1667 s60cm").any_stdout().stderr(notice).check();
    }
}

/// A printer that shrinks, or a tape that was misread.
#[test]
fn a_face_drawn_with_another_spacing_is_told() {
    let folder = folder();
    for (said, told) in [
        (
            "161mm",
            "and you say 161.0 mm: right if your tape says so and the print came out 3 % smaller; else all hits are wrong by that much",
        ),
        (
            "180mm",
            "and you say 180.0 mm: right if your tape says so and the print came out 9 % larger",
        ),
    ] {
        let line = format!("photo {JOURNAL} face.jpg --dry-run --spacing {said} --hole R=442,347");
        let grid = "note: by its grid this face was drawn with marks about 166 mm apart, ";
        folder.run(&line).any_stdout().stderr_has(&format!("{grid}{told}")).check();
    }
}

/// In a photo of the printed face the grid says whether marks that were pointed at were read right.
#[test]
fn marks_by_hand_are_proved_by_the_grid_of_the_photo() {
    let folder = folder();
    let line = format!("photo {JOURNAL} face.jpg --dry-run --hole R=442,347 --marks");
    let run = |marks: &str, spacing: &str| {
        folder.run(&line).arg(marks).args(&format!("--spacing {spacing}"))
    };
    let said = "Marks: the four that you gave, and the lines of the grid run where they say";
    run(MARKS, SPACING).stdout_has(said).check();
    run(MARKS, "171mm").stdout_has(said).stderr_has("drawn with marks about 166 mm apart").check();
    let misread = "143,133 653,221 757,698 249,644";
    run(misread, SPACING).stdout_has("Marks: the four that you gave. Four always fit").check();
}

/// Nine corners of a real board, by a lens that bends by a tenth and more: `fixtures/geometry/make_chessboards.py`.
#[test]
fn a_real_lens_that_bends_is_told() {
    let fixture: Value = serde_json::from_str(&read("fixtures/geometry/chessboards.json")).unwrap();
    let folder = Folder::begun("1-12");
    let run = |camera: usize, photo: usize, pixels: &str| {
        let shown = &fixture["cameras"][camera]["photos"][photo][pixels];
        let [u, v] = pair(&shown[21]);
        let line = format!("photo {JOURNAL} --dry-run --hole R={u},{v}");
        [0, 4, 8, 18, 22, 26, 45, 49, 53].iter().fold(folder.run(&line), |run, &at| {
            let ([x, y], [u, v]) = (pair(&fixture["points_mm"][at]), pair(&shown[at]));
            run.arg("--mark").arg(&format!("{x},{y}={u},{v}"))
        })
    };
    let bends = "a lens that bends straight lines";
    run(0, 0, "as_taken")
        .any_stdout()
        .stderr_has("the marks fit only within 1.")
        .stderr_has(bends)
        .check();
    run(1, 7, "as_taken").code(3).stderr_has("the marks agree on no view of a flat face").check();
    run(1, 7, "put_right").stdout_has("Marks: the 9 that you gave fit within 0.").check();
}

/// Answers with marks that were found, that were told and that were given, recorded and not, and with tails.
pub fn answers() -> [Value; 4] {
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
    let line_of_nocks = format!("photo {JOURNAL} nocks.jpg --dry-run --spacing {SPACING} --json");
    let (typed, _) = nocks(&["R", "7"]);
    let nocks =
        typed.iter().fold(folder.run(&line_of_nocks), |run, hole| run.arg("--hole").arg(hole));
    let nocks = nocks.stderr_has("").json();
    let found = folder.run(&line).stderr_has("outside").json();
    [found, told, given.stderr_has("").json(), nocks]
}
