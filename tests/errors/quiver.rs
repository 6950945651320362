//! Words about the quiver that cannot be, and questions about finished arrows that cannot be asked.

use super::{Marked, plain};
use crate::heads::dozen;
use crate::support::{Folder, JOURNAL};

/// What is typed behind `command JOURNAL` is refused, and the journal stays as it was.
#[track_caller]
fn refused(folder: &Folder, command: &str, options: &str, code: i32, message: &str) {
    let before = folder.read(JOURNAL);
    folder.run(&format!("{command} {JOURNAL} {options}")).code(code).stderr(message).check();
    assert_eq!(folder.read(JOURNAL), before);
}

/// The message about the value of an option, all of it marked.
fn unusable(option: &str, value: &str, label: &str, hints: &[&str]) -> String {
    unusable_in(option, &format!("⟦{value}⟧"), label, hints)
}

/// The same with a mark round the part that is wrong.
fn unusable_in(option: &str, marked: &str, label: &str, hints: &[&str]) -> String {
    let what = format!("the value of {option} cannot be used");
    Marked::of(marked).message(&what, None, label, hints)
}

#[test]
fn a_broadhead_on_an_arrow_that_is_none_yet() {
    let folder = Folder::begun("1-3");
    let hint = "it flies where nobody expects it; record the shaft as fletched once it is: shaft JOURNAL NAME --fletched";
    let what = "2 is not recorded as fletched: never a broadhead on a bare shaft";
    refused(&folder, "quiver", "2 --carries C", 3, &plain(what, &[hint]));
    let what = "there is no shaft \"77\" in this journal";
    refused(&folder, "quiver", "77 --carries C", 3, &plain(what, &["it has 1, 2, 3, R"]));
}

#[test]
fn an_order_of_arrows_that_are_not_there() {
    let folder = dozen();
    let label = "there is no shaft \"9\" in this journal";
    let message = unusable_in("--order", "2,⟦9⟧", label, &["it has 1, 2, 3, 4, 5, 6, R"]);
    refused(&folder, "quiver", "--order 2,9", 3, &message);
    let message =
        unusable_in("--order", "2,⟦2⟧", "shaft 2 stands here twice", &["take one of the two out"]);
    refused(&folder, "quiver", "--order 2,2", 3, &message);
    let folder = Folder::begun("1-3");
    let hint = "a bare shaft is entered with end; one that is fletched is recorded so: shaft JOURNAL NAME --fletched";
    let message = unusable("--order", "2", "2 is not recorded as fletched", &[hint]);
    refused(&folder, "quiver", "--order 2", 3, &message);
}

#[test]
fn limits_without_a_day_or_without_a_limit() {
    let folder = dozen();
    let hint = "write it like 2027-03-02";
    for day in ["July", "2027-02-29", "2027-13-01"] {
        let message = unusable("--read-on", day, &format!("\"{day}\" is not a day"), &[hint]);
        refused(&folder, "quiver", &format!("--read-on {day} --least-mass 300gr"), 3, &message);
    }
    let hint = "give at least one that you have read, for example --least-mass 300gr";
    let message = plain("there is no limit here", &[hint]);
    refused(&folder, "quiver", "--read-on 2027-07-30", 3, &message);
    let label = "-5 lb cannot be: more than 0 and at most 200 lb";
    let message = unusable("--draw", "-5lb", label, &["check the number and its unit"]);
    refused(&folder, "quiver", "--read-on 2027-07-30 --least-mass 300gr --draw -5lb", 3, &message);
    let label = "\"mm\" is a unit of length, not of mass";
    folder
        .run(&format!("quiver {JOURNAL} 2 --carries C --head-mass 100mm"))
        .code(2)
        .stderr_has(label)
        .check();
}

#[test]
fn a_day_that_is_none_and_a_check_of_what_is_broken() {
    let folder = dozen();
    let message = plain("\"yesterday\" is not a day", &["write it like 2027-03-02"]);
    refused(&folder, "shaft", "2 --checked --on yesterday", 3, &message);
    folder.run(&format!("shaft {JOURNAL} 2 --broken")).any_stdout().check();
    let message = plain("2 is broken: this change cannot follow", &[]);
    refused(&folder, "shaft", "2 --checked", 3, &message);
}

#[test]
fn a_card_of_nothing() {
    let folder = Folder::begun("1-3");
    folder.run(&format!("shaft {JOURNAL} R --lost")).any_stdout().check();
    let hint = "once one is: quarterturn shaft evening.journal NAME --fletched";
    let message = plain("no arrow of this journal is fletched yet", &[hint]);
    let before = folder.read(JOURNAL);
    folder.run(&format!("paper quiver {JOURNAL}")).code(3).stderr(&message).check();
    assert_eq!(folder.read(JOURNAL), before);
}

#[test]
fn an_eye_that_is_not_before_its_pin() {
    let label = "more than 0 is expected here";
    refused(
        &dozen(),
        "verify",
        "--eye-to-pin 0mm",
        2,
        &unusable("--eye-to-pin", "0mm", label, &["check the number and its unit"]),
    );
}

#[test]
fn a_group_in_json_that_cannot_be() {
    let folder = dozen();
    let before = folder.read(JOURNAL);
    let text = Marked::of("{\"distance_m\":18,\"head\":\"field\",\"cold\":⟦\"no\"⟧,\"shots\":[]}");
    let message = text.message(
        "the group was not recorded",
        Some("standard input"),
        "true or false is expected here, not text in quotes",
        &["true, or leave it out"],
    );
    let run = folder.run(&format!("heads {JOURNAL} --json -")).stdin(&text.text);
    run.code(3).stderr(&message).check();
    let lacking = folder.run(&format!("heads {JOURNAL} --json -")).stdin("{\"shots\":[]}");
    lacking
        .code(3)
        .stderr_has("\"distance_m\" is missing")
        .stderr_has("\"head\" is missing")
        .check();
    let file = folder.run(&format!("heads {JOURNAL} --json nothing.json")).code(5);
    file.stderr_has("could not read nothing.json").check();
    assert_eq!(folder.read(JOURNAL), before);
}
