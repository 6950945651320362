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

/// The files that the register of a fixture names as its users, each in the crate of its folder, name it in turn.
#[test]
fn what_is_said_to_use_a_fixture_does() {
    let rust: Vec<_> = sources("").into_iter().filter(|source| source.ends_in("rs")).collect();
    for Entry { path, used_by, .. } in entries(&sources("fixtures")) {
        let parts: Vec<_> = path.split('/').collect();
        let [_, folder, name] = parts[..] else { panic!("{path} lies too deep") };
        let users = used_by.split('`').filter_map(|word| word.strip_suffix(".rs"));
        for user in users {
            let of_crate = format!("crates/{folder}/");
            let ends = format!("/{user}.rs");
            let mut found =
                rust.iter().filter(|s| s.path.starts_with(&of_crate) && s.path.ends_with(&ends));
            assert!(found.any(|source| source.text.contains(name)), "{user} does not read {path}");
        }
    }
}

/// A table without a line, or a list without an entry, would let a check pass that checks nothing.
#[test]
fn no_fixture_is_empty() {
    let files = sources("fixtures");
    for file in files.iter().filter(|file| !is_register(file)) {
        let said =
            file.text.lines().filter(|line| !line.starts_with('#') && !line.trim().is_empty());
        let least = if file.ends_in("csv") { 2 } else { 1 };
        assert!(said.count() >= least, "{} holds nothing", file.path);
        if let Ok(serde_json::Value::Object(members)) = serde_json::from_str(&file.text) {
            let empty =
                members.iter().find(|(_, value)| value.as_array().is_some_and(Vec::is_empty));
            assert!(empty.is_none(), "{} has an empty {empty:?}", file.path);
        }
    }
}

/// Every file of a suite is part of it, and holds a test or serves one that does: none is forgotten.
#[test]
fn every_suite_runs_its_cases() {
    for folder in ["crates/statistics/tests/checks/", "tests/"] {
        let files = sources(folder);
        let is_own =
            |file: &&Source| file.ends_in("rs") && !file.path[folder.len()..].contains('/');
        let (main, parts): (Vec<_>, Vec<_>) =
            files.iter().filter(is_own).partition(|file| file.name() == "main.rs");
        let mut cases = 0;
        for file in &parts {
            let module = file.name().trim_end_matches(".rs");
            assert!(main[0].text.contains(&format!("mod {module};")), "{} is not run", file.path);
            let tests = file.text.matches("#[test]").count();
            let serves =
                || parts.iter().any(|part| part.text.contains(&format!("crate::{module}::")));
            assert!(tests > 0 || serves(), "{} holds no test", file.path);
            cases += tests;
        }
        assert!(cases > 0, "{folder} runs no case");
    }
}

/// A script is used where its register says what it makes.
#[test]
fn every_fixture_is_named_by_a_test_or_makes_one_that_is() {
    let rust: Vec<_> = sources("").into_iter().filter(|source| source.ends_in("rs")).collect();
    for Entry { path, used_by, .. } in entries(&sources("fixtures")) {
        let name = path.rsplit('/').next().unwrap_or_default();
        let is_script = [".py", ".R"].iter().any(|ending| name.contains(ending))
            && used_by.starts_with("makes ");
        let is_named = || rust.iter().any(|source| source.text.contains(name));
        assert!(is_script || is_named(), "no test reads {path}");
    }
}
