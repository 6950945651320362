//! Tells the program which commit it was built from, where it is a release built in a clone, and leaves out of it what
//! it never reads.

use std::env::var;
use std::fs;
use std::path::Path;
use std::process::Command;

/// How a stack is unwound: a ninth of the program, and nothing unwinds where a panic ends it at once.
const NEVER_READ: &str =
    "SECTIONS { /DISCARD/ : { *(.eh_frame .eh_frame.*) } } INSERT AFTER .text;\n";

fn main() {
    println!("cargo::rerun-if-changed=build.rs");
    // Where a developer builds, the commit changes with every commit, and nothing need be built again for it.
    if var("PROFILE").is_ok_and(|profile| profile == "release") {
        println!("cargo::rerun-if-changed=../../.git/logs/HEAD");
        if let Some(commit) = commit() {
            println!("cargo::rustc-env=QUARTERTURN_COMMIT={commit}");
        }
        if var("CARGO_CFG_TARGET_OS").is_ok_and(|os| os == "linux") {
            leave_out_what_is_never_read();
        }
    }
}

/// Hands the linker a script; both linkers that Rust uses on Linux know it. (A unit test that fails in a release build
/// ends the whole run, since it cannot be caught there.)
fn leave_out_what_is_never_read() {
    let script = Path::new(&var("OUT_DIR").unwrap_or_default()).join("never_read.ld");
    if fs::write(&script, NEVER_READ).is_ok() {
        println!("cargo::rustc-link-arg-bins=-Wl,--no-eh-frame-hdr,-T,{}", script.display());
    }
}

/// "4e6b541 of 2026-11-25".
fn commit() -> Option<String> {
    let told = Command::new("git").args(["log", "-1", "--format=%h of %cs"]).output().ok()?;
    let commit = String::from_utf8(told.stdout).ok()?;
    let commit = commit.trim();
    (told.status.success() && !commit.is_empty()).then(|| commit.to_owned())
}
