//! What the program is built from: few crates, each once, from the registry, under licences that are named.

use std::collections::{BTreeMap, BTreeSet};
use std::process::Command;

use crate::support::repository::read;

/// Crates of the whole workspace with its tests and the feature `png`, ours among them: a third of them only draw PNG.
const MOST_CRATES: usize = 180;

/// Crates of which the program is built when nothing is asked for, those that only build it and ours among them.
const MOST_BY_DEFAULT: usize = 110;

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

/// Cargo itself says what the program is built from, offline and from the lock file.
#[test]
fn by_default_the_program_is_built_from_fewer() {
    let tree = Command::new(env!("CARGO"))
        .args(["tree", "--locked", "--offline", "--package", "quarterturn-cli"])
        .args(["--edges", "normal,build", "--prefix", "none", "--format", "{p}"])
        .current_dir(concat!(env!("CARGO_MANIFEST_DIR"), "/../.."))
        .output()
        .expect("cargo runs");
    assert!(tree.status.success(), "{}", String::from_utf8_lossy(&tree.stderr));
    let text = String::from_utf8(tree.stdout).expect("names are text");
    let name = |line: &str| line.split(' ').next().map(str::to_owned);
    let crates: BTreeSet<String> = text.lines().filter_map(name).collect();
    assert!(crates.contains("quarterturn-geometry") && crates.contains("clap"), "{crates:?}");
    assert!(!crates.contains("resvg"), "PNG is drawn only where it is asked for");
    assert!(crates.len() <= MOST_BY_DEFAULT, "{} crates", crates.len());
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
