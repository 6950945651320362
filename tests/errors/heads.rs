//! Finished arrows that cannot be entered, and questions about them that cannot be asked.

use super::{Marked, plain};
use crate::heads::dozen;
use crate::support::{Folder, JOURNAL};

/// What is typed behind `heads JOURNAL` is refused, and the journal stays as it was.
#[track_caller]
fn refused(folder: &Folder, options: &[&str], code: i32, message: &str) {
    let before = folder.read(JOURNAL);
    let run = folder.run(&format!("heads {JOURNAL}"));
    options.iter().fold(run, |run, option| run.arg(option)).code(code).stderr(message).check();
    assert_eq!(folder.read(JOURNAL), before);
}

const WHAT: &str = "the group was not recorded";

#[test]
fn a_broadhead_on_a_bare_shaft() {
    let folder = Folder::begun("1-3");
    let marked = Marked::of("R r3, ⟦2⟧ u4");
    let label = "2 is not recorded as fletched: never a broadhead on a bare shaft";
    let hint = "it flies where nobody expects it; record the shaft as fletched once it is: shaft JOURNAL NAME --fletched";
    let message = marked.message(WHAT, None, label, &[hint]);
    refused(&folder, &["--head", "head A", &marked.text], 3, &message);
    let hint = "a bare shaft is entered with end; one that is fletched is recorded so: shaft JOURNAL NAME --fletched";
    let message = marked.message(WHAT, None, "2 is not recorded as fletched", &[hint]);
    refused(&folder, &[&marked.text], 3, &message);
}

#[test]
fn a_line_that_cannot_be_read_and_an_arrow_that_is_not_there() {
    let folder = dozen();
    let marked = Marked::of("2 ⟦3r⟧");
    let message =
        marked.message(WHAT, None, "\"3r\" is not a word of the line", &["did you mean \"r3\"?"]);
    refused(&folder, &[&marked.text], 3, &message);
    let marked = Marked::of("⟦77⟧ r3");
    let label = "there is no shaft \"77\" in this journal";
    let message = marked.message(WHAT, None, label, &["it has 1, 2, 3, 4, 5, 6, R"]);
    refused(&folder, &[&marked.text], 3, &message);
}

#[test]
fn many_first_shots_and_a_distance_that_cannot_be() {
    let folder = dozen();
    let marked = Marked::of("⟦1 r3, 2 u4⟧");
    let hint = "enter the first shot alone as cold, and the others as a group of their own";
    let label = "2 shots cannot all be the first of the day";
    let message = marked.message(WHAT, None, label, &[hint]);
    refused(&folder, &["--cold", &marked.text], 3, &message);
    let label = "300 m cannot be: more than 0 and at most 200 m";
    let message = marked.message(WHAT, None, label, &["check the number and its unit"]);
    refused(&folder, &["--distance", "300m", &marked.text], 3, &message);
}

#[test]
fn options_that_cannot_be_used() {
    let folder = dozen();
    let label = "more than 0 is expected here";
    for (option, value) in [("distance", "-20m"), ("together", "0mm")] {
        let what = format!("the value of --{option} cannot be used");
        let message = Marked::of(&format!("⟦{value}⟧")).message(
            &what,
            None,
            label,
            &["check the number and its unit"],
        );
        let line: &[&str] = if option == "distance" { &["1 r3"] } else { &[] };
        refused(&folder, &[&[&format!("--{option}"), value], line].concat(), 2, &message);
    }
    let hint = "a head is \"field\" or a name of 1 to 40 characters on one line";
    let message = plain("the value of --head cannot be used", &[hint]);
    refused(&folder, &["--head", " ", "1 r3"], 2, &message);
    let reach = |option: &str, said: &str| {
        let run = folder.run(&format!("reach {JOURNAL} {option}"));
        run.code(2).stderr_has(said).check();
    };
    reach("--chance 90", "90 is not a probability between 0 and 1, both left out; try 0.95");
    reach("--chance much", "a number was expected, for example 0.9");
    reach("--plate 0cm", label);
    reach("--plate 20gr", "\"gr\" is a unit of mass, not of length");
}
