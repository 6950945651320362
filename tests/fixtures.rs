//! Every fixture has a source, a licence and a test that reads it; `fixtures/README.md` says how.

use std::collections::BTreeSet;

use crate::support::repository::{Source, sources};

/// One line of a register: `| file | source | licence | used by |`.
struct Entry {
    path: String,
    source: String,
    licence: String,
    used_by: String,
}

/// The lines of the registers that stand in the folders of `fixtures`.
fn entries(files: &[Source]) -> Vec<Entry> {
    let registers = files.iter().filter(|file| is_register(file) && !is_top(file));
    registers
        .flat_map(|register| {
            let rows = register.text.lines().filter(|line| line.starts_with("| `"));
            rows.map(|row| entry(&register.path, row))
        })
        .collect()
}

fn entry(register: &str, row: &str) -> Entry {
    let cells: Vec<_> = row.trim_matches('|').split('|').map(str::trim).collect();
    let [file, source, licence, used_by] = cells[..] else { panic!("four cells in {row}") };
    Entry {
        path: register.replace("README.md", file.trim_matches('`')),
        source: source.to_owned(),
        licence: licence.to_owned(),
        used_by: used_by.to_owned(),
    }
}

fn is_register(file: &Source) -> bool {
    file.name() == "README.md"
}

fn is_top(file: &Source) -> bool {
    file.path == "fixtures/README.md"
}

#[test]
fn every_fixture_is_registered_and_every_registered_one_is_there() {
    let files = sources("fixtures");
    let there: BTreeSet<_> =
        files.iter().filter(|file| !is_register(file)).map(|file| file.path.clone()).collect();
    let registered: BTreeSet<_> = entries(&files).into_iter().map(|entry| entry.path).collect();
    assert_eq!(there, registered);
}

#[test]
fn every_fixture_has_a_source_a_licence_and_a_use() {
    let entries = entries(&sources("fixtures"));
    assert!(!entries.is_empty());
    for Entry { path, source, licence, used_by } in entries {
        assert!(source.len() > 3 && licence.len() > 3 && used_by.len() > 3, "{path}");
    }
}

/// A script is used where its register says what it makes.
#[test]
fn every_fixture_is_named_by_a_test_or_makes_one_that_is() {
    let rust: Vec<_> = sources("").into_iter().filter(|source| source.ends_in("rs")).collect();
    for Entry { path, used_by, .. } in entries(&sources("fixtures")) {
        let name = path.rsplit('/').next().unwrap_or_default();
        let is_script = name.contains(".py") && used_by.starts_with("makes ");
        let is_named = || rust.iter().any(|source| source.text.contains(name));
        assert!(is_script || is_named(), "no test reads {path}");
    }
}
