//! A command that cannot be done, or was not understood.

use super::{plain, unchanged};
use crate::support::{Folder, JOURNAL};

/// What is typed as `line` is refused with this message.
#[track_caller]
fn refused(line: &str, code: i32, message: &str) {
    unchanged(|folder| drop(folder.run(line).code(code).stderr(message).check()));
}

#[test]
fn a_journal_that_exists() {
    let new = "--shafts 1-12 --reference R --distance 18.3m --tolerance 25mm";
    let what = format!("{JOURNAL} exists already and is not overwritten");
    refused(&format!("new {JOURNAL} {new}"), 5, &plain(&what, &["choose another name"]));
}

#[test]
fn a_picture_that_exists() {
    let folder = Folder::begun("1-3");
    folder.write("evening.svg", "mine");
    let hint = "choose another name, or say --force";
    let what = "evening.svg exists already and is not overwritten";
    folder.run(&format!("plot {JOURNAL}")).code(5).stderr(&plain(what, &[hint])).check();
    assert_eq!(folder.read("evening.svg"), "mine");
}

#[test]
fn a_journal_that_would_be_written_over() {
    let what = format!("{JOURNAL} is a journal, and nothing is written over one");
    let message = plain(&what, &["choose another name"]);
    for command in ["plot", "report", "export --csv"] {
        let (word, more) = command.split_once(' ').unwrap_or((command, ""));
        refused(&format!("{word} {JOURNAL} {more} -o {JOURNAL} --force"), 5, &message);
    }
}

#[test]
fn a_shaft_that_is_not_there() {
    let names = "it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, R";
    let message = plain("there is no shaft \"77\" in this journal", &[names]);
    refused(&format!("shaft {JOURNAL} 77 --lost"), 3, &message);
}

#[test]
fn a_picture_of_a_shaft_that_is_not_there() {
    let names = "it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11 and 12";
    let message = plain("there is no bare shaft \"77\" in this journal", &[names]);
    refused(&format!("plot {JOURNAL} --shaft 77"), 3, &message);
}

#[test]
fn a_picture_of_an_end_that_is_not_there() {
    let message = plain("there is no end 4 in this journal", &["no end was entered yet"]);
    refused(&format!("plot {JOURNAL} --end 4"), 3, &message);
    refused(&format!("plot {JOURNAL} --end 0"), 3, &message.replace('4', "0"));
}

#[test]
fn a_change_that_cannot_follow() {
    let message = plain("7 is in use: this change cannot follow", &[]);
    refused(&format!("shaft {JOURNAL} 7 --readmit"), 3, &message);
}

#[test]
fn nothing_to_take_back() {
    let folder = Folder::begun("1-3");
    folder.run(&format!("undo {JOURNAL}")).code(3).stderr_has("nothing").check();
}

#[test]
fn a_command_that_does_not_exist() {
    let message = "error: unrecognized subcommand 'nxt'\n\n  \
                   tip: some similar subcommands exist: 'note', 'next'\n\n\
                   Usage: quarterturn [COMMAND]\n\n\
                   For more information, try '--help'.\n";
    refused(&format!("nxt {JOURNAL}"), 2, message);
}

#[test]
fn an_option_that_does_not_exist() {
    let message = "error: unexpected argument '--jsn' found\n\n  \
                   tip: a similar argument exists: '--json'\n\n\
                   Usage: quarterturn next --json <JOURNAL>\n\n\
                   For more information, try '--help'.\n";
    refused(&format!("next {JOURNAL} --jsn"), 2, message);
}

#[test]
fn a_word_that_is_not_among_the_choices() {
    let message = "error: invalid value 'rst' for '--part <PART>'\n  \
                   [possible values: rest, nocking-point, cam, sight, string, other]\n\n  \
                   tip: a similar value exists: 'rest'\n\n\
                   For more information, try '--help'.\n";
    refused(&format!("bow {JOURNAL} --note x --part rst"), 2, message);
}

#[test]
fn two_things_at_once() {
    let folder = Folder::begun("1-3");
    for line in
        ["shaft evening.journal 1 --lost --broken", "bow evening.journal --note x --leave y"]
    {
        folder.run(line).code(2).stderr_has("cannot be used with").check();
    }
    for line in ["shaft evening.journal 1", "bow evening.journal", "fix evening.journal 1", "new"] {
        folder.run(line).code(2).stderr_has("required arguments were not provided").check();
    }
}

/// Where nobody sits at a terminal nothing is asked.
#[test]
fn an_end_of_nothing() {
    let message = plain(
        "there is no end to enter",
        &[
            "type it behind the journal, for example \"R 0, 7 r31 u8\"",
            "or name a file: --file for lines, --json for JSON; - is standard input",
            "on a terminal, and without --no-input, you are asked arrow by arrow",
        ],
    );
    refused(&format!("end {JOURNAL}"), 2, &message);
    refused(&format!("end {JOURNAL} --no-input"), 2, &message);
}

#[test]
fn a_journal_that_is_not_there_or_not_named() {
    let missing = |name: &str, meant: &str| {
        let ways = [
            format!("did you mean \"{meant}\"?"),
            "begin one with `new`, or check the name".to_owned(),
        ];
        let ways: Vec<_> = ways.iter().map(String::as_str).collect();
        refused(&format!("next {name}"), 5, &plain(&format!("there is no journal {name}"), &ways));
    };
    missing("evening", JOURNAL);
    missing("evning.journal", JOURNAL);
    let message = "error: the following required arguments were not provided:\n  <JOURNAL>\n\n\
                   Usage: quarterturn next <JOURNAL>\n\n\
                   For more information, try '--help'.\n\
                   note: the journal of this folder is evening.journal\n";
    refused("next", 2, message);
}

#[test]
fn a_name_that_is_not_found_by_itself_is_said() {
    let folder = Folder::new();
    let new = folder.run("new dozen --shafts 1 --reference R --distance 18m --tolerance 25mm");
    new.any_stdout()
        .stderr("note: a name that ends in .journal is found by `quarterturn` alone\n")
        .check();
}
