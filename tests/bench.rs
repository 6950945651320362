//! `bench`: measures of the workshop, and the set that they make.

use serde_json::{Value, json};

use crate::support::{Folder, JOURNAL};

const ASKED: &str =
    "--best 4 --speed 280fps --draw 60lb --least-per-pound 7 --diameter 8mm --point-length 40mm";

/// Six shafts of which 5 is heavy, 6 is lost, 2 has a crooked end and 1 and 2 are finished.
fn measured() -> Folder {
    let folder = Folder::begun("1-6");
    let masses = ["312.4", "311.8", "313.1", "312.9", "331", "312.2"];
    for (shaft, mass) in (1..).zip(masses) {
        let spine = format!("--spine 0=0.500,90=0.51{shaft},180=0.499,270=0.510 --length 724mm");
        bench(&folder, &format!("{shaft} --mass {mass}gr --straight 0.0{shaft}mm {spine}"));
    }
    bench(&folder, "1 --finished-mass 400gr --balance 452.5mm");
    bench(&folder, "2 --finished-mass 430gr --square 0.1mm --heavy-side -90");
    folder.run(&format!("shaft {JOURNAL} 6 --lost")).any_stdout().check();
    folder
}

fn bench(folder: &Folder, measures: &str) -> String {
    folder.run(&format!("bench {JOURNAL} {measures}")).any_stdout().check()
}

/// The answer to measures that are recorded.
pub fn recorded() -> Value {
    let folder = Folder::begun("1-3");
    let measures =
        "--mass 20g --spine 0=0.500,90=13mm,180=0.5,270=0.51 --spine-standard 26in --stiff-side 90";
    folder.run(&format!("bench {JOURNAL} 1 {measures} --json")).json()
}

/// The answer with everything that can be asked.
pub fn set() -> Value {
    measured().run(&format!("bench {JOURNAL} --json {ASKED}")).json()
}

/// The same words on one line.
fn on_one_line(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

#[test]
fn measures_are_recorded_in_household_units() {
    let recorded = recorded();
    assert!((recorded["mass_gr"].as_f64().unwrap() - 308.647).abs() < 0.001, "{recorded}");
    assert_eq!(recorded["spine"][0], json!({"side_deg": 0.0, "sag_in": 0.5}));
    assert!((recorded["spine"][1]["sag_in"].as_f64().unwrap() - 0.5118).abs() < 0.0001);
    assert_eq!(recorded["spine_standard"], "26in");
    let folder = Folder::begun("1-3");
    let said = "Recorded: what was measured of 1.\n\nThen: quarterturn bench evening.journal\n";
    folder.run(&format!("bench {JOURNAL} 1 --wobble 0.2mm")).stdout(said).check();
    let undo = folder.run(&format!("undo {JOURNAL}"));
    undo.stdout_has("Taken back: what was measured of 1").check();
    let nothing = folder.run(&format!("bench {JOURNAL}"));
    nothing.stdout_has("Nothing was measured yet.").stdout_has("--mass 312.4gr").check();
}

#[test]
fn the_set_is_shown_with_its_median_and_what_stands_out() {
    let folder = measured();
    let screen = folder.run(&format!("bench {JOURNAL}")).any_stdout().check();
    assert!(screen.lines().all(|line| line.chars().count() <= 80), "{screen}");
    for line in [
        "1         312.4    724.0      0.01         0.505     0.012",
        "6 (lost)  312.2    724.0      0.06         0.506     0.017",
        "median    312.9    724.0      0.03         0.505     0.014",
    ] {
        assert!(screen.lines().any(|shown| shown.starts_with(line)), "{line} in\n{screen}");
    }
    let said = on_one_line(&screen);
    for part in [
        "shaft finished gr balance mm FOC %",
        "1 400.0 452.5 12.5",
        "Sides: 1 stiff 180, 2 stiff 180 and heavy 270,",
        "Stands out: 5: mass 331.0 gr, 18.1 gr above the median of 5.",
        "Caution: Carbon dust:",
    ] {
        assert!(said.contains(part), "{part} in\n{screen}");
    }
    assert!(!said.contains("Best") && !said.contains("Energy"), "{screen}");
}

#[test]
fn what_is_asked_of_the_set_is_answered() {
    let said = measured().run(&format!("bench {JOURNAL} {ASKED}")).any_stdout().check();
    let said = on_one_line(&said);
    for part in [
        "Best 4: 1, 2, 3 and 4 go together best: mass within 1.3 gr, straightness at most 0.04 mm,",
        "Not compared: finished mass (not known of 3, 4 and 5); front of centre (not known of 2, 3, 4 and 5).",
        "an arrow of the median 415.0 gr carries 97.9 J (72.2 ft·lbf)",
        "the lightest, 1, has 6.67 grains per pound at 60.0 lb. Below your limit of 7: 1.",
        "close to a dry fire",
        "2: 0.10 mm out of square tilt the insert by 0.7 deg and throw the tip 0.50 mm off the axis.",
    ] {
        assert!(said.contains(part), "{part} in\n{said}");
    }
    let set = set();
    assert_eq!(set["best"]["shafts"], json!(["1", "2", "3", "4"]));
    assert_eq!(set["standing_out"][0]["shaft"], "5");
    assert_eq!(set["shafts"][0]["stiff_side_found_deg"], 180.0);
    assert_eq!(set["grains_per_pound"]["least_gr_lb"], 7.0);
    assert_eq!(set["cautions"].as_array().map(Vec::len), Some(2));
}

#[test]
fn what_is_not_known_is_said() {
    let folder = Folder::begun("1-3");
    bench(&folder, "1 --mass 312gr");
    bench(&folder, "R --finished-mass 430gr");
    let ask =
        format!("bench {JOURNAL} --speed 82m/s --draw 60lb --diameter 8mm --point-length 40mm");
    let said = on_one_line(&folder.run(&ask).any_stdout().check());
    for part in [
        "Energy: not known at 82.0 m/s before a finished arrow was weighed.",
        "Mass: grains per pound are not known before an arrow was weighed, bare or finished.",
        "Ends: no end is recorded as out of square.",
    ] {
        assert!(said.contains(part), "{part} in\n{said}");
    }
    bench(&folder, "1 --finished-mass 430gr");
    let limit = folder.run(&format!("bench {JOURNAL} --draw 60lb --least-per-pound 6"));
    let said = on_one_line(&limit.any_stdout().check());
    assert!(
        said.contains("has 7.17 grains per pound at 60.0 lb: none of 1 is below your limit of 6.")
    );
    let plain = folder.run(&format!("bench {JOURNAL} --draw 60lb")).any_stdout().check();
    assert!(on_one_line(&plain).contains("at 60.0 lb. Below the bow maker's least"), "{plain}");
}

/// The vanes' mass that `new` was told of: the height of the flight model, and tape instead.
#[test]
fn the_missing_vanes_are_said() {
    let folder = Folder::new();
    let new = format!("new {JOURNAL} --shafts 1-3 --reference R --distance 18.3m --tolerance 25mm");
    folder.run(&new).args("--bare-lighter 20gr").any_stdout().check();
    bench(&folder, "1 --mass 312gr");
    let said = on_one_line(&folder.run(&format!("bench {JOURNAL}")).any_stdout().check());
    assert!(said.contains("bare shafts lack 20 gr and land 12 mm high at 18.3 m"), "{said}");
}

#[test]
fn a_lost_shaft_is_measured_and_it_is_said() {
    let folder = Folder::begun("1-3");
    folder.run(&format!("shaft {JOURNAL} 2 --lost")).any_stdout().check();
    let run = folder.run(&format!("bench {JOURNAL} 2 --mass 312gr")).any_stdout();
    run.stderr("note: 2 is recorded as lost: its measures are kept all the same\n").check();
    let log = folder.run(&format!("log {JOURNAL}"));
    log.stdout_has("bench, 2: mass 312.0 gr").check();
}

/// What cannot be right is kept, and it is said: another unit, a shaft that was retired, too few readings.
#[test]
fn what_looks_wrong_is_kept_and_said() {
    let folder = measured();
    let run = folder.run(&format!("bench {JOURNAL} 3 --mass 20.3gr")).any_stdout();
    let slip = "note: the mass of 3, 20.3 gr, is to the others' 312.4 gr as grams and grains are to each other: if the unit \
        was wrong, take it back with undo\n";
    run.stderr(slip).check();
    let run = folder.run(&format!("bench {JOURNAL} 3 --length 72.4mm")).any_stdout();
    run.stderr_has("as centimetres and millimetres are to each other").check();
    let run = folder.run(&format!("bench {JOURNAL} 4 --spine 0=0.5,90=0.5")).any_stdout();
    let few = "note: 2 readings around 4 name no stiff side: 4 or more do, a quarter turn apart or less\n";
    run.stderr(few).check();
    let said = folder.run(&format!("bench {JOURNAL}")).any_stdout().check();
    assert!(said.contains("20.3"), "{said}");
}

#[test]
fn tape_makes_up_for_the_vanes() {
    let folder = Folder::begun("1-3");
    bench(&folder, "1 --bare-mass 405.5gr");
    bench(&folder, "R --finished-mass 428gr");
    let said = on_one_line(&folder.run(&format!("bench {JOURNAL}")).any_stdout().check());
    let tape = "Tape: grains that make each bare arrow as heavy as the reference, wrapped where the vanes go: 1 22.5.";
    assert!(said.contains(tape), "{said}");
    let light = folder.run(&format!("bench {JOURNAL} --draw 60lb --least-per-pound 7"));
    light
        .stdout_has("Mass: the lightest, 1, bare, has 6.76 grains per pound at 60.0 lb. Below")
        .check();
    // g d² Δm / (2 v² m): 9.80665 · 18.3² · 22.5 / (2 · 82² · 428), in metres.
    let fast = folder.run(&format!("bench {JOURNAL} --speed 82m/s")).any_stdout().check();
    assert!(
        on_one_line(&fast).contains("Without any, bare arrows land about 13 mm high at 18.3 m."),
        "{fast}"
    );
    let set = folder.run(&format!("bench {JOURNAL} --json --speed 82m/s")).json();
    assert!((set["height_without_tape_mm"].as_f64().unwrap() - 12.838).abs() < 0.001, "{set}");
    assert_eq!(set["tape"], json!([{"shaft": "1", "tape_gr": 22.5}]));
}

/// Seven shafts whose crooked end, with the mark at its index, always stands at 7 o'clock; their heavy sides tell nothing.
pub fn planted() -> Folder {
    let folder = Folder::begun("1-7");
    let indices = [30, 60, 120, 180, 240, 300, 330];
    for x_mm in [2, -3, 1, 4, -2, 3, -1, 2] {
        let bare = (1..).zip(indices).map(|(shaft, index_deg)| {
            json!({"shaft": format!("{shaft}"), "index_deg": index_deg, "x_mm": -x_mm, "y_mm": x_mm})
        });
        let reference = json!({"shaft": "R", "x_mm": x_mm, "y_mm": -x_mm});
        folder.enter(&json!({"shots": std::iter::once(reference).chain(bare).collect::<Vec<_>>()}));
    }
    for (shaft, index_deg) in (1..).zip(indices) {
        let (crooked, heavy) = ((570 - index_deg) % 360, shaft * shaft * 77 % 360);
        bench(&folder, &format!("{shaft} --crooked-side {crooked} --heavy-side {heavy}"));
    }
    for shaft in [1, 2, 3] {
        bench(&folder, &format!("{shaft} --stiff-side 90"));
    }
    folder
}

#[test]
fn the_bench_is_held_against_the_butt() {
    let folder = planted();
    let set = folder.run(&format!("bench {JOURNAL} --json")).json();
    let kept = folder.next()["shafts"]
        .as_array()
        .unwrap()
        .iter()
        .filter(|s| s["verdict"] == "keep")
        .count();
    assert_eq!(kept, 7);
    let [stiff, heavy, crooked] = [0, 1, 2].map(|side| &set["bench_and_butt"][side]);
    assert_eq!((&stiff["kept"], stiff.get("by_chance")), (&json!(3), None));
    assert!(
        stiff["text"].as_str().unwrap().starts_with("too few to tell: 3 of the 3 shafts"),
        "{stiff}"
    );
    assert!(heavy["text"].as_str().unwrap().starts_with("no sign that it goes with"), "{heavy}");
    assert!((crooked["stands_deg"].as_f64().unwrap() - 210.0).abs() < 1e-6, "{crooked}");
    // Of 5040 orders one agrees as well, and two sides were looked at.
    assert!((crooked["by_chance"].as_f64().unwrap() - 2.0 / 5040.0).abs() < 1e-12, "{crooked}");
    let said = on_one_line(&folder.run(&format!("bench {JOURNAL}")).any_stdout().check());
    let text = "Bench and butt: crooked end: it goes with the index found. On the string it stands about 7 o'clock \
        (7 of the 7 shafts to keep that have it measured were turned; less than 1 % by chance).";
    assert!(said.contains(text), "{said}");
    assert!(said.contains("Nocks: 1 turn: 1, 2, 3, 4, 5, 6 and 7. Renew one after 8"), "{said}");
}

#[test]
fn marks_put_on_one_side_tell_nothing() {
    let folder = planted();
    for shaft in 1..=7 {
        bench(&folder, &format!("{shaft} --crooked-side 0"));
    }
    let set = folder.run(&format!("bench {JOURNAL} --json")).json();
    let text = set["bench_and_butt"][2]["text"].as_str().unwrap();
    assert!(text.starts_with("nothing can be told"), "{text}");
}

/// What leaves by an export comes back by an import.
#[test]
fn measures_go_out_and_in() {
    let folder = measured();
    for (format, name) in [("--csv", "all.csv"), ("--json", "all.json")] {
        folder.run(&format!("export {JOURNAL} {format} -o {name}")).any_stdout().check();
        let other = Folder::new();
        let beginning = folder.read(JOURNAL).lines().take(1).collect::<String>();
        other.write(JOURNAL, &(beginning + "\n"));
        other.write(name, &folder.read(name));
        let import = other.run(&format!("import {JOURNAL} {name}")).any_stdout();
        import.check();
        let ask = format!("bench {JOURNAL} --json");
        assert_eq!(other.run(&ask).json(), folder.run(&ask).json(), "{name}");
    }
}
