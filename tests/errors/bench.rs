//! Measures and questions of the workshop that cannot be used.

use super::{Marked, plain, unchanged};
use crate::support::JOURNAL;

/// `bench` with `before` and then an option with the marked value is refused.
#[track_caller]
fn refused(before: &str, option: &str, marked: &str, label: &str, hint: &str) {
    unchanged(|folder| {
        let marked = Marked::of(marked);
        let run = folder.run(&format!("bench {JOURNAL} {before} --{option}"));
        let what = format!("the value of --{option} cannot be used");
        let message = marked.message(&what, None, label, &[hint]);
        run.arg(&marked.text).code(2).stderr(&message).check();
    });
}

const NUMBER: &str = "check the number and its unit";

#[test]
fn measures() {
    let mass = "-3 gr cannot be: more than 0 and at most 5000 gr";
    refused("1", "mass", "⟦-3gr⟧", mass, NUMBER);
    refused(
        "1",
        "finished-mass",
        "⟦6000gr⟧",
        "6000 gr cannot be: more than 0 and at most 5000 gr",
        NUMBER,
    );
    refused("1", "length", "⟦2m⟧", "2000 mm cannot be: more than 0 and at most 1500 mm", NUMBER);
    let other = "\"mm\" is a unit of length, not of mass";
    refused("1", "mass", "312⟦mm⟧", other, "use gr, g or lb");
    for option in ["straight", "straight-point", "straight-nock", "square", "wobble"] {
        refused("1", option, "⟦-0.1mm⟧", "-0.1 mm cannot be: from 0 to 20 mm", NUMBER);
    }
    for option in ["stiff-side", "heavy-side"] {
        let far = "400 deg is too much: at most 360 deg either way";
        refused("1", option, "⟦400⟧", far, NUMBER);
    }
    let off = "a balance point at 800 mm is not on a shaft of 724 mm";
    let again = "both are taken from the groove of the nock: measure again";
    refused("1 --length 724mm", "balance", "⟦800mm⟧", off, again);
}

#[test]
fn spine_readings() {
    let side = "for example 0=0.500,90=0.512: degrees from the mark, then the sag";
    refused("1", "spine", "0=0.5,⟦0.51⟧", "which side was up?", side);
    let units = "use mm, cm, in, ft, yd or m";
    refused("1", "spine", "0=0.5,90=0.5⟦gr⟧", "\"gr\" is a unit of mass, not of length", units);
    let number = "a number was expected here";
    refused("1", "spine", "⟦x⟧=0.5", number, "for example 12 or 12.5");
    let sag = "500 in cannot be: more than 0 and at most 3 in";
    refused("1", "spine", "0=0.5,⟦90=500⟧", sag, NUMBER);
}

#[test]
fn questions() {
    for (option, marked) in
        [("speed", "⟦0m/s⟧"), ("draw", "⟦-60lb⟧"), ("draw 60lb --least-per-pound", "⟦0⟧")]
    {
        let (before, option) = option.rsplit_once(" --").unwrap_or(("", option));
        let before = if before.is_empty() { String::new() } else { format!("--{before}") };
        refused(&before, option, marked, "more than 0 is expected", NUMBER);
    }
    let shown = "more than 0 is expected";
    refused("--point-length 40mm", "diameter", "⟦0mm⟧", shown, NUMBER);
    refused("--diameter 8mm", "point-length", "⟦0mm⟧", shown, NUMBER);
}

#[test]
fn a_shaft_or_a_measure_that_is_not_there() {
    unchanged(|folder| {
        let run = |line: &str| folder.run(&format!("bench {JOURNAL} {line}"));
        let hint = "give at least one measure, for example --mass 312.4gr";
        run("1").code(3).stderr(&plain("nothing was measured here", &[hint])).check();
        let unknown = run("77 --mass 312gr").code(3);
        unknown.stderr_has("there is no shaft \"77\" in this journal").check();
        let none = run("--best 3").code(3);
        none.stderr_has("the shafts in use have no measure in common to be chosen by").check();
        run("--mass 312gr").code(2).stderr_has("<SHAFT>").check();
        run("1 --mass 312gr --best 3").code(2).stderr_has("cannot be used with").check();
        run("--least-per-pound 6").code(2).stderr_has("--draw <WEIGHT>").check();
        run("1 --spine-standard 26in").code(2).stderr_has("--spine <LIST>").check();
    });
}

#[test]
fn a_choice_that_cannot_be() {
    let folder = crate::support::Folder::begun("1-3");
    let run = |line: &str| folder.run(&format!("bench {JOURNAL} {line}"));
    run("1 --mass 312gr").any_stdout().check();
    run("2 --mass 313gr").any_stdout().check();
    let hint = "2 in use are measured";
    run("--best 3").code(2).stderr(&plain("3 of 2 shafts cannot be chosen", &[hint])).check();
    run("3 --wobble 0.1mm").any_stdout().check();
    let none = run("--best 2").code(3);
    none.stderr_has("mass is missing on 3").stderr_has("wobble is missing on 1 and 2").check();
}

#[test]
fn vanes_and_clocks() {
    unchanged(|folder| {
        let run = |line: &str| folder.run(&format!("fletch {JOURNAL} {line}"));
        run("--vanes 5").code(2).stderr_has("5 is not in 3..=4").check();
        run("--cock 13").code(2).stderr_has("13 is not in 1..=12").check();
    });
}
