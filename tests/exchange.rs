//! `import` and `export`: in and out, bit for bit, and nothing twice.

use crate::support::{Folder, JOURNAL};

const TABLE: &str = "end;shaft;x_cm;y_cm;tail_x_cm;tail_y_cm;index_hour;flags\n\
    1;R;0,3;-1,2;0;0;;\n1;1;3,1;0,8;-2;0;4;\n2;R;0;0;;;;\n2;2;1;1;;;;wind doubtful\n";

#[test]
fn a_table_is_imported_once() {
    let folder = Folder::begun("1-3");
    folder.write("ends.csv", TABLE);
    let before = folder.read(JOURNAL);
    let dry = folder.run(&format!("import {JOURNAL} ends.csv --dry-run"));
    dry.stdout_has("Would be imported: 2 ends with 4 shots.").check();
    assert_eq!(folder.read(JOURNAL), before);
    let import = folder.run(&format!("import {JOURNAL} ends.csv"));
    import.stdout_has("Imported: 2 ends with 4 shots.").check();
    let after = folder.read(JOURNAL);
    let again = folder.run(&format!("import {JOURNAL} -")).stdin(TABLE);
    again.stdout_has("Nothing new; 2 entries of the file stand in the journal already.").check();
    assert_eq!(folder.read(JOURNAL), after);
    let log = folder.run(&format!("log {JOURNAL}")).any_stdout().check();
    let log: Vec<&str> = log.split_whitespace().collect();
    assert!(log.join(" ").contains("1 i4 r31 u8 tl20mm"), "{log:?}");
}

#[test]
fn what_is_wrong_in_a_table_leaves_the_journal_as_it_was() {
    let folder = Folder::begun("1-3");
    folder.write("ends.csv", "end,shaft,x_mm,y_mm\n1,R,0,0\n2,R,0,0\n2,9,1,1\n");
    let before = folder.read(JOURNAL);
    let import = folder.run(&format!("import {JOURNAL} ends.csv")).code(3);
    import.stderr_has("--> ends.csv:4:3").stderr_has("there is no shaft \"9\"").check();
    assert_eq!(folder.read(JOURNAL), before);
}

/// A journal with an entry of every kind.
fn everything() -> Folder {
    let folder = Folder::with_an_end();
    for line in [
        "fix J 1 1\u{a0}r13",
        "bow J --note rest --part rest --move-mm -0.8,0",
        "bow J --leave tonight",
        "shaft J 4 --add --index 30",
        "shaft J 3 --broken",
        "heads J R\u{a0}r3 --head head\u{a0}A",
        "note J dusk",
        "undo J",
        "undo J",
        "redo J",
    ] {
        let run = line.split(' ').fold(folder.run(""), |run, word| {
            run.arg(&word.replace('J', JOURNAL).replace('\u{a0}', " "))
        });
        run.any_stdout().check();
    }
    folder
        .run(&format!("end {JOURNAL}"))
        .arg("R 0, 1 2h8 tls, 4 r3 tl2cm s62cm, 2 x")
        .any_stdout()
        .check();
    folder
}

#[test]
fn everything_goes_out_and_comes_back_to_the_last_bit() {
    let folder = everything();
    for (form, file) in [("--csv", "all.csv"), ("--json", "all.json")] {
        let out = folder.run(&format!("export {JOURNAL} {form} -o {file}"));
        out.stdout(&format!("Written: {file}, 13 records\n")).check();
        let copy = format!("copy-of-{file}");
        folder.run(&format!("import {copy} {file}")).any_stdout().check();
        assert!(folder.read(&copy) == folder.read(JOURNAL), "through {file}");
        let again = folder.run(&format!("import {JOURNAL} {file} --json")).json();
        assert_eq!((&again["known_entries"], &again["ends"]), (&13.into(), &0.into()));
        let written = folder.run(&format!("export {JOURNAL} {form} -o {file}"));
        written.code(5).stderr_has("exists already").check();
    }
}

#[test]
fn an_export_adds_what_the_other_journal_does_not_have() {
    let folder = Folder::with_an_end();
    let out = |name: &str| {
        let json = folder.run(&format!("export {JOURNAL} --json")).any_stdout().check();
        folder.write(name, &json);
    };
    out("one.json");
    folder.run("import copy.journal one.json").any_stdout().check();
    folder.run(&format!("end {JOURNAL}")).arg("R 0, 3 r3").any_stdout().check();
    folder.run(&format!("fix {JOURNAL} 1")).arg("1 r13").any_stdout().check();
    out("two.json");
    let import = folder.run("import copy.journal two.json");
    import.stdout_has("Imported: 1 end with 2 shots and 1 of other kinds; 2 entries").check();
    assert!(folder.read("copy.journal") == folder.read(JOURNAL));
}

/// A table of workshop measures is twelve commands in one; what cannot be is shown in its cell, and nothing is added.
#[test]
fn measures_come_in_from_a_table() {
    let folder = Folder::begun("1-3");
    let table =
        "shaft;mass_gr;length_in;spine_0_in;spine_90_mm\n1;312,4;28,5;0,5;12,7\n2;311.8;28.5;;\n";
    folder.write("bench.csv", table);
    let import = folder.run(&format!("import {JOURNAL} bench.csv"));
    import.stdout("Imported: 2 entries.\n\nThen: quarterturn next evening.journal\n").check();
    let again = folder.run(&format!("import {JOURNAL} bench.csv"));
    again.stdout_has("Nothing new; 2 entries of the file stand in the journal already.").check();
    let set = folder.run(&format!("bench {JOURNAL} --json")).json();
    let first = &set["shafts"][0]["measured"];
    assert_eq!((&first["mass_gr"], &first["spine"][1]["sag_in"]), (&312.4.into(), &0.5.into()));
    let before = folder.read(JOURNAL);
    for (table, shown) in [
        (
            "shaft,mass_gr\n3,312\n9,312\n",
            "3 | 9,312\n  | ^ there is no shaft \"9\" in this journal",
        ),
        (
            "shaft,mass_gr\n3,-3\n",
            "2 | 3,-3\n  |   ^^ -3 gr cannot be: more than 0 and at most 5000 gr",
        ),
        (
            "shaft,spine_0_in\n3,500\n",
            "2 | 3,500\n  |   ^^^ 500 in cannot be: more than 0 and at most 3 in",
        ),
        ("shaft,mass_gr\n3,\n", "2 | 3,\n  | ^ nothing was measured here"),
    ] {
        let refused = folder.run(&format!("import {JOURNAL} -")).stdin(table).code(3);
        refused.stderr_has("nothing was imported").stderr_has(shown).check();
    }
    assert_eq!(folder.read(JOURNAL), before);
}

#[test]
fn a_journal_that_is_not_there_is_begun_by_a_whole_export_only() {
    let folder = Folder::new();
    let import = folder.run("import nowhere.journal -").stdin(TABLE);
    import.code(5).stderr_has("there is no journal nowhere.journal").check();
    assert!(folder.names().is_empty());
}
