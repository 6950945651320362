//! `repair`: a damaged journal is mended, and nothing is thrown away in silence.

use crate::support::{Folder, JOURNAL};

/// A journal of six records whose third, an end, was changed by hand.
fn damaged() -> Folder {
    let folder = Folder::with_an_end();
    for x_mm in ["r31", "r35"] {
        folder
            .run(&format!("end {JOURNAL}"))
            .arg(&format!("R 0, 1 {x_mm} u8"))
            .any_stdout()
            .check();
    }
    folder.run(&format!("shaft {JOURNAL} 3 --lost")).any_stdout().check();
    folder.run(&format!("bow {JOURNAL} --leave tonight")).any_stdout().check();
    let text = folder.read(JOURNAL).replacen(
        "\"x_mm\":31.0,\"y_mm\":8.0}",
        "\"x_mm\":30.0,\"y_mm\":8.0}",
        1,
    );
    folder.write(JOURNAL, &text);
    folder
}

#[test]
fn a_dry_run_says_everything_and_changes_nothing() {
    let folder = damaged();
    let (before, names) = (folder.read(JOURNAL), folder.names());
    let said = "\
line 3: its checksum does not fit: it was changed after it was written
record 3 has no line

evening.journal can be mended. Kept would be 5 records, lost record 3. Nothing
was changed.

What a lost record said is not known. If it took an entry back, that entry
stands again: look with show, and enter again what is missing.

Then: quarterturn repair evening.journal
";
    folder.run(&format!("repair {JOURNAL} --dry-run")).stdout(said).check();
    assert_eq!((folder.read(JOURNAL), folder.names()), (before, names));
}

#[test]
fn a_repair_keeps_the_rest_and_the_damaged_journal() {
    let folder = damaged();
    let before = folder.read(JOURNAL);
    folder.run(&format!("next {JOURNAL}")).code(3).stderr_has("line 3").check();
    let run = folder.run(&format!("repair {JOURNAL}"));
    run.stdout_has("As it was it stands\nin evening.journal.before-repair-1.").check();
    assert_eq!(folder.read("evening.journal.before-repair-1"), before);
    let after = folder.read(JOURNAL);
    let same = before.lines().take(2).zip(after.lines());
    assert!(same.into_iter().all(|(before, after)| before == after));
    assert!(after.contains("\"x_mm\":35.0") && after.contains("\"leave\":\"tonight\""));
    folder.run(&format!("check {JOURNAL}")).stdout_has("1 unreadable").check();
    folder.run(&format!("next {JOURNAL}")).any_stdout().check();
    folder.run(&format!("shaft {JOURNAL} 2 --set-aside")).any_stdout().check();
    let whole = "evening.journal is whole: there is nothing to mend.\n";
    folder.run(&format!("repair {JOURNAL}")).stdout(whole).check();
}

#[test]
fn without_its_first_record_a_journal_waits_for_another_one() {
    let folder = damaged();
    let text = folder.read(JOURNAL);
    folder.write(JOURNAL, &text.replacen("\"distance_m\":18.3", "\"distance_m\":18.4", 1));
    let run = folder.run(&format!("repair {JOURNAL}")).code(3);
    run.stderr_has("the record that says how it was begun is lost").stderr_has("`new`").check();
    // As the hint says.
    let like = Folder::begun("1-3").read(JOURNAL);
    let rest = text.split_once('\n').unwrap().1;
    folder.write(JOURNAL, &(like + rest));
    let run = folder.run(&format!("repair {JOURNAL}"));
    run.stdout_has("line 2: record 2 was not written after the one before it").check();
    folder.run(&format!("check {JOURNAL}")).any_stdout().check();
}
