//! Every fixture has a source, a licence and a test that reads it: the register is `fixtures/README.md`.

use std::collections::BTreeSet;

use crate::support::repository::{read, root, sources};

const REGISTER: &str = "fixtures/README.md";

/// One line of the register: `| file | source | made by | licence | used by |`.
struct Entry {
    file: String,
    source: String,
    made_by: String,
    licence: String,
    used_by: String,
}

fn register() -> Vec<Entry> {
    let text = read(REGISTER);
    let rows = text.lines().filter(|line| line.starts_with("| `"));
    rows.map(|row| {
        let cells: Vec<_> = row.trim_matches('|').split('|').map(str::trim).collect();
        let [file, source, made_by, licence, used_by] = cells[..] else {
            panic!("five cells: {row}")
        };
        let plain = |cell: &str| cell.replace('`', "");
        Entry {
            file: plain(file),
            source: plain(source),
            made_by: plain(made_by),
            licence: plain(licence),
            used_by: plain(used_by),
        }
    })
    .collect()
}

#[test]
fn every_fixture_is_registered_and_every_registered_one_is_there() {
    let files = sources("fixtures").into_iter().map(|source| source.path);
    let there: BTreeSet<_> = files.filter(|path| path != REGISTER).collect();
    let scripts = |entry: &Entry| format!("fixtures/{}", entry.made_by);
    let entries = register();
    let made = entries.iter().filter(|entry| entry.made_by != "-").map(scripts);
    let registered: BTreeSet<_> =
        entries.iter().map(|entry| format!("fixtures/{}", entry.file)).chain(made).collect();
    assert_eq!(there, registered);
}

#[test]
fn every_fixture_has_a_source_a_licence_and_a_test() {
    for Entry { file, source, licence, used_by, .. } in register() {
        assert!(source.len() > 3 && licence.len() > 2, "{file}: say its source and its licence");
        let test = read(&used_by);
        assert!(root().join(&used_by).extension().is_some_and(|end| end == "rs"), "{used_by}");
        let name = file.rsplit('/').next().unwrap_or_default();
        assert!(test.contains(name), "{used_by} does not read {file}");
    }
}
