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
    let long = "-1 mm cannot be: from 0 to 1500 mm";
    refused("1", "cut-point", "⟦-1mm⟧", long, NUMBER);
    refused("1", "cut-nock", "⟦-1mm⟧", long, NUMBER);
    let heavy = "6000 gr cannot be: more than 0 and at most 5000 gr";
    refused("1", "bare-mass", "⟦6000gr⟧", heavy, NUMBER);
    for option in ["straight", "straight-point", "straight-nock", "square", "wobble"] {
        refused("1", option, "⟦-0.1mm⟧", "-0.1 mm cannot be: from 0 to 20 mm", NUMBER);
    }
    for option in ["stiff-side", "heavy-side", "crooked-side"] {
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

/// A command about the evening's journal is refused with the value of an option marked.
#[track_caller]
fn unusable(line: &str, option: &str, marked: &str, label: &str, hints: &[&str]) {
    unchanged(|folder| {
        let marked = Marked::of(marked);
        let what = format!("the value of {option} cannot be used");
        let run = folder.run(&line.replace('J', JOURNAL));
        let run = if option.starts_with("--") { run.arg(option) } else { run };
        let run = run.arg(&marked.text);
        let run = if option.starts_with("--") { run } else { run.args("--cure 24h") };
        run.code(2).stderr(&marked.message(&what, None, label, hints)).check();
    });
}

#[test]
fn glue() {
    let example = "for example 24h, 30min or 2d";
    unusable("glue J 1-3", "--cure", "⟦tomorrow⟧", "a time is expected here", &[example]);
    unusable("glue J 1-3", "--cure", "⟦24⟧", "a time is expected here", &[example]);
    let limits = "0 h cannot be: more than 0 and at most 672 h";
    unusable("glue J 1-3", "--cure", "⟦0h⟧", limits, &[NUMBER]);
    let limits = "2400 h cannot be: more than 0 and at most 672 h";
    unusable("glue J 1-3", "--cure", "⟦100d⟧", limits, &[NUMBER]);
    let time = "\"tonight\" is not a time with its date and zone";
    let hint = "write it like 2027-03-02T10:15:00Z";
    unusable("glue J 1-3 --cure 24h", "--at", "⟦tonight⟧", time, &[hint]);
    let unknown = "there is no shaft \"99\" in this journal";
    let known = "it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, R";
    unusable("glue J", "SHAFTS", "1,⟦99⟧", unknown, &[known]);
    unusable(
        "glue J",
        "SHAFTS",
        "1,⟦1⟧",
        "shaft 1 stands here twice",
        &["take one of the two out"],
    );
    unusable(
        "glue J",
        "SHAFTS",
        "1,⟦⟧",
        "a shaft is missing here",
        &["for example 1-12 or 1,2,5-8,A"],
    );
    unchanged(|folder| {
        let run = |line: &str| folder.run(&format!("glue {JOURNAL} {line}")).code(2);
        run("1-3").stderr_has("--cure <TIME>").check();
        run("1-3 --cure 24h --part nail")
            .stderr_has("[possible values: insert, vanes, other]")
            .check();
    });
}

#[test]
fn cuts() {
    let more = "more than 0 is expected here";
    unusable("cut J --kerf 1mm", "--to", "⟦0mm⟧", more, &["check the number and its unit"]);
    let zero = "0 or more is expected";
    unusable("cut J --to 724mm", "--kerf", "⟦-1mm⟧", zero, &[]);
    unusable("cut J --to 724mm --kerf 1mm", "--squaring", "⟦-1mm⟧", zero, &[]);
    let units = "use mm, cm, in, ft, yd or m";
    let mass = "\"gr\" is a unit of mass, not of length";
    unusable("cut J --to 724mm", "--kerf", "1⟦gr⟧", mass, &[units]);
}

#[test]
fn vanes_and_clocks() {
    unchanged(|folder| {
        let run = |line: &str| folder.run(&format!("fletch {JOURNAL} {line}"));
        run("--vanes 5").code(2).stderr_has("'--vanes <COUNT>': 3 to 4 is possible").check();
        run("--cock 13").code(2).stderr_has("'--cock <HOUR>': 1 to 12 is possible").check();
        run("--cock 3 --rest drop-away").code(2).stderr_has("cannot be used with").check();
        run("--rest sofa").code(2).stderr_has("[possible values: drop-away").check();
        let run = run("--wrap 0mm").code(2);
        run.stderr_has("the value of --wrap cannot be used").check();
        let sheet = folder.run(&format!("paper fletch {JOURNAL} --diameter 6.5mm")).code(3);
        sheet.stderr_has("no shaft is to be fletched: none is both kept and bare").check();
    });
}
