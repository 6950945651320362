//! What the program is built from: few crates, each once, from the registry, under licences that are named.

use std::collections::BTreeMap;

use crate::support::repository::read;

/// Crates of the whole workspace with its tests, ours among them. The program itself is built from fewer.
const MOST_CRATES: usize = 130;

/// Listed in the lock file in every version that nalgebra can convert to, and built in none.
const NEVER_BUILT: &str = "glam";

/// A crate of the lock file.
struct Locked {
    name: String,
    source: Option<String>,
}

fn locked() -> Vec<Locked> {
    let text = read("Cargo.lock");
    let member = |block: &str, name: &str| {
        let line = block.lines().find_map(|line| line.strip_prefix(&format!("{name} = ")))?;
        Some(line.trim_matches('"').to_owned())
    };
    let blocks = text.split("[[package]]").skip(1);
    let locked = |block: &str| Locked {
        name: member(block, "name").expect("a crate has a name"),
        source: member(block, "source"),
    };
    blocks.map(locked).collect()
}

#[test]
fn there_are_few_crates_each_once() {
    let mut versions = BTreeMap::new();
    for locked in locked().into_iter().filter(|locked| locked.name != NEVER_BUILT) {
        *versions.entry(locked.name).or_insert(0) += 1;
    }
    let twice: Vec<_> = versions.iter().filter(|(_, count)| **count > 1).collect();
    assert!(twice.is_empty(), "more than one version: {twice:?}");
    assert!(versions.len() <= MOST_CRATES, "{} crates, at most {MOST_CRATES}", versions.len());
}

#[test]
fn every_crate_is_ours_or_from_the_registry() {
    for Locked { name, source } in locked() {
        match source {
            Some(source) => {
                assert!(
                    source.starts_with("registry+https://github.com/rust-lang/"),
                    "{name}: {source}"
                );
            }
            None => assert!(name.starts_with("quarterturn-"), "{name} is from nowhere"),
        }
    }
}

/// `cargo deny` holds the crates to it where it is installed; see `.ci/run`.
#[test]
fn the_licences_that_are_allowed_are_named() {
    let deny = read("deny.toml");
    for part in ["[licenses]", "multiple-versions = \"deny\"", "unknown-git = \"deny\""] {
        assert!(deny.contains(part), "{part} in deny.toml");
    }
    assert!(!deny.contains("GPL"), "nothing copyleft");
}
