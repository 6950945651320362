//! Every fixture has its line in the register and is used.

use std::collections::BTreeSet;
use std::fs;
use std::path::PathBuf;

use crate::fixture::folder;

fn names(folder: PathBuf) -> BTreeSet<String> {
    let entries = fs::read_dir(folder).unwrap();
    entries.map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect()
}

#[test]
fn every_fixture_is_registered_and_used() {
    let register = fs::read_to_string(folder().join("README.md")).unwrap();
    let checks = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/checks");
    let sources: Vec<String> = names(checks.clone())
        .iter()
        .map(|name| fs::read_to_string(checks.join(name)).unwrap())
        .collect();
    let mut tables = 0;
    for name in names(folder()).iter().filter(|name| *name != "README.md") {
        assert!(register.contains(&format!("| `{name}` |")), "{name} is not in the register");
        if !name.contains(".py") {
            let used = sources.iter().any(|source| source.contains(&format!("\"{name}\"")));
            assert!(used, "{name} is read by no check");
            tables += 1;
        }
    }
    assert!(tables > 0);
}
