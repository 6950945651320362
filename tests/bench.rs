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
    let measures = "--mass 20g --spine 0=0.500,90=13mm --spine-standard 26in --stiff-side 90";
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
        "Mass: grains per pound are not known before a finished arrow was weighed.",
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
