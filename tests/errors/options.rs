//! An option whose value cannot be used.

use super::{Marked, unchanged};
use crate::support::{Folder, JOURNAL};

/// `new` with the option `option` set to `marked` and the others right is refused; nothing is begun.
#[track_caller]
fn refused(option: &str, marked: &str, label: &str, hints: &[&str]) {
    let marked = Marked::of(marked);
    let mut settings =
        vec![("shafts", "1-12"), ("reference", "R"), ("distance", "18.3m"), ("tolerance", "25mm")];
    settings.retain(|(name, _)| *name != option);
    settings.push((option, &marked.text));
    let folder = Folder::new();
    let start = folder.run(&format!("new {JOURNAL}"));
    let new =
        settings.iter().fold(start, |run, (name, value)| run.arg(&format!("--{name}={value}")));
    let what = format!("the value of --{option} cannot be used");
    new.code(2).stderr(&marked.message(&what, None, label, hints)).check();
    assert_eq!(folder.names(), [""; 0], "something was written");
}

const TAKE_OUT: &str = "take one of the two out";
const NUMBER: &str = "check the number and its unit";

#[test]
fn a_list_of_shafts() {
    refused("shafts", "1-12,⟦3⟧", "shaft 3 stands here twice", &[TAKE_OUT]);
    refused("shafts", "⟦12-1⟧", "this range runs backwards", &["put the smaller number first"]);
    let sets = "begin a journal for each set of arrows";
    refused("shafts", "⟦1-99⟧", "more than 72 shafts", &[sets]);
    let name = "a shaft's name is 1 to 16 letters, digits, '-', '_' or '.'";
    refused("shafts", "1,⟦a b⟧", "this cannot name a shaft", &[name]);
    refused("shafts", "1,⟦⟧,2", "a shaft is missing here", &["for example 1-12 or 1,2,5-8,A"]);
    refused("reference", "⟦7⟧", "shaft 7 stands here twice", &[TAKE_OUT]);
}

#[test]
fn a_distance() {
    let units = "write 18.3mm, 18.3cm, 18.3in, 18.3ft, 18.3yd or 18.3m";
    refused("distance", "18.3⟦⟧", "a length needs a unit", &[units]);
    let lengths = "use mm, cm, in, ft, yd or m";
    refused("distance", "18.3⟦gr⟧", "\"gr\" is a unit of mass, not of length", &[lengths]);
    refused("distance", "18⟦,⟧3m", "a decimal comma", &["write decimals with a point: 18.3m"]);
    let far = "500 m cannot be: more than 0 and at most 200 m";
    refused("distance", "⟦500m⟧", far, &[NUMBER]);
    let negative = "-18 m cannot be: more than 0 and at most 200 m";
    refused("distance", "⟦-18m⟧", negative, &[NUMBER]);
}

#[test]
fn a_tolerance() {
    let nothing = "0 mm cannot be: more than 0 and at most 3000 mm";
    refused("tolerance", "⟦0mm⟧", nothing, &[NUMBER]);
}

#[test]
fn marks() {
    let label = "there is no such shaft in --shafts";
    refused("index", "1=30,⟦x⟧=30", label, &["name it in --shafts too"]);
    let way_on = "for example 7=180, in degrees clockwise from 12 o'clock";
    refused("index", "1=30,⟦7⟧", "where does the mark of this shaft stand?", &[way_on]);
}

#[test]
fn a_mass() {
    refused(
        "bare-lighter",
        "20⟦mm⟧",
        "\"mm\" is a unit of length, not of mass",
        &["use gr, g or lb"],
    );
}

#[test]
fn a_number_of_positions() {
    let label = "0 positions: a nock can be set to 1 to 72 evenly spaced positions";
    refused("positions", "⟦0⟧", label, &[]);
    let folder = Folder::new();
    let new = folder.run(&format!("new {JOURNAL} --shafts 1 --reference R --distance 18m"));
    let said = "invalid value 'all' for '--positions <COUNT|any>': a number from 1 to 72 is expected, or any";
    new.args("--tolerance 25mm --positions all").code(2).stderr_has(said).check();
}

#[test]
fn a_move_of_the_bow() {
    let refused = |marked: &str, label: &str, hint: &str| {
        unchanged(|folder| {
            let marked = Marked::of(marked);
            let bow = folder.run(&format!("bow {JOURNAL} --note rest --move-mm"));
            let what = "the value of --move-mm cannot be used";
            let message = marked.message(what, None, label, &[hint]);
            bow.arg(&marked.text).code(2).stderr(&message).check();
        });
    };
    let example = "millimetres to the right and up, for example -0.8,0";
    refused("⟦1⟧", "two plain numbers are expected", example);
    refused("1,⟦inf⟧", "a number was expected here", "for example 12 or 12.5");
}
