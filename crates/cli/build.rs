//! Tells the program which commit it was built from, where it is a release built in a clone.

use std::env::var;
use std::process::Command;

fn main() {
    println!("cargo::rerun-if-changed=build.rs");
    // Where a developer builds, the commit changes with every commit, and nothing need be built again for it.
    if var("PROFILE").is_ok_and(|profile| profile == "release") {
        println!("cargo::rerun-if-changed=../../.git/logs/HEAD");
        if let Some(commit) = commit() {
            println!("cargo::rustc-env=QUARTERTURN_COMMIT={commit}");
        }
    }
}

/// "4e6b541 of 2026-11-25".
fn commit() -> Option<String> {
    let told = Command::new("git").args(["log", "-1", "--format=%h of %cs"]).output().ok()?;
    let commit = String::from_utf8(told.stdout).ok()?;
    let commit = commit.trim();
    (told.status.success() && !commit.is_empty()).then(|| commit.to_owned())
}
