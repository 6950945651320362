//! `practice`: the whole job on an invented dozen, an end at a time.

use crate::support::{Folder, JOURNAL};

#[test]
fn it_runs_through_without_anybody_and_then_tells_the_truth() {
    let folder = Folder::new();
    let said = folder
        .run(&format!("practice {JOURNAL} --seed 7 --no-input"))
        .stdout_has("What the archer could not see, and you can:")
        .stdout_has("shaft  verdict  mark at")
        .stdout_has("The dozen is invented")
        .stdout_has("quarterturn practice <JOURNAL> --seed 7")
        .check();
    assert!(said.starts_with(&format!("$ quarterturn new {JOURNAL} ")), "{said}");
    assert!(said.matches("Recorded: ").count() >= 5, "{said}");
    // What was played is a journal like any other.
    folder.run(&format!("show {JOURNAL}")).stdout_has("12 shafts beside R").check();
}

#[test]
fn a_seed_plays_the_same() {
    let play = |seed: &str| {
        let folder = Folder::new();
        let practice = folder.run(&format!("practice {JOURNAL} --no-input --seed {seed}"));
        practice.any_stdout().check()
    };
    assert_eq!(play("3"), play("3"));
    assert_ne!(play("3"), play("4"));
}

#[test]
fn each_enter_is_an_end_and_q_stops() {
    let ends_after = |typed: &str| {
        let folder = Folder::new();
        let practice = folder.run(&format!("practice {JOURNAL} --seed 7")).stdin(typed);
        practice.stdout_has("The dozen is invented").check().matches("Recorded: ").count()
    };
    assert_eq!(ends_after("\n\nq\n\n"), 2);
    assert_eq!(ends_after("\n\n\n"), 3, "where nobody presses Enter any more it ends");
    assert_eq!(ends_after(""), 0);
}

#[test]
fn a_journal_that_exists_is_left_alone() {
    let folder = Folder::begun("1-3");
    let before = folder.read(JOURNAL);
    let practice = folder.run(&format!("practice {JOURNAL} --no-input")).code(5);
    practice.stderr_has(JOURNAL).check();
    assert_eq!(folder.read(JOURNAL), before);
}

#[test]
fn without_a_seed_it_says_which_one_it_took() {
    let said = Folder::new().run(&format!("practice {JOURNAL}")).stdout_has("--seed ").check();
    let seed = said.split("--seed ").nth(1).unwrap().split_whitespace().next().unwrap();
    let folder = Folder::new();
    let again = folder.run(&format!("practice {JOURNAL} --seed {seed}"));
    assert_eq!(again.any_stdout().check(), said);
}
