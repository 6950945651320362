//! `explain`: every word that a screen shows is explained, and said to rest on what it rests on.

use crate::support::{Folder, JOURNAL};

/// Words as the screens of `show`, `next`, `heads`, `reach` and `bench` put them.
const SHOWN: [&str; 24] = [
    "keep",
    "open",
    "retire",
    "mark",
    "miss",
    "inside",
    "shots",
    "shaft that stands out",
    "circle too big",
    "centre off",
    "does not repeat",
    "left out",
    "first look",
    "try",
    "confirm",
    "common offset",
    "spread",
    "tolerance",
    "hint",
    "lean",
    "together",
    "plate",
    "front of centre",
    "grains per pound",
];

#[test]
fn every_word_of_the_screens_is_explained() {
    for word in SHOWN {
        Folder::new().run(&format!("explain {word}")).any_stdout().check();
    }
}

#[test]
fn a_number_says_what_it_rests_on() {
    let folder = Folder::with_an_end();
    let inside = folder.run(&format!("explain within --journal {JOURNAL}"));
    inside
        .stdout_has("inside (also: within, chance, sure)\n\nThe probability that")
        .stdout_has("It rests on the shots of each shaft that count.\n\n")
        .stdout_has("In evening.journal: shaft 1 has 1, 2 has 1, 3 has 0.\n")
        .check();
    let bow = folder.run(&format!("explain common offset --journal {JOURNAL}"));
    bow.stdout_has("In evening.journal: 2 shots of 3 shafts.\n").check();
    let spread = folder.run(&format!("explain spread --journal {JOURNAL}"));
    spread.stdout_has("In evening.journal: none yet.\n").check();
    let together = folder.run(&format!("explain together --journal {JOURNAL}"));
    together.stdout_has("In evening.journal: 0 shots in 0 groups.\n").check();
}

#[test]
fn the_list_has_every_word_and_json_says_the_same() {
    let folder = Folder::new();
    let list = folder.run("explain").any_stdout().check();
    let json = folder.run("explain --json").json();
    assert_eq!(json["schema"], "quarterturn.explain/1");
    for word in json["words"].as_array().unwrap() {
        assert!(list.contains(word["word"].as_str().unwrap()), "{word}");
    }
    assert_eq!(folder.run("explain keep --json").json()["word"], "keep");
}

#[test]
fn an_unknown_word_is_refused_with_the_nearest() {
    let message = "error: no screen has the word \"insde\"\n |\n = help: did you mean \"inside\"?\n = help: \
        `quarterturn explain` lists every word\n";
    Folder::new().run("explain insde").code(2).stderr(message).check();
}
