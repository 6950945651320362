//! Geometry, statistics, bench and tuning are pure: no files, clock, environment, threads, printing or chance from
//! the system. This stands for "they also build for wasm32", and runs where that target is not installed.

use crate::support::repository::{read, sources};

const PURE: [&str; 4] = ["geometry", "statistics", "bench", "tuning"];

/// Those whose own sources do so. What is typed is read into the journal's entries, whose crate has the files; a decoder
/// of pictures could read files and is given bytes.
const PURE_SOURCES: [&str; 6] = ["geometry", "statistics", "bench", "photo", "tuning", "entry"];

/// A reader of bytes that are in memory already.
const IN_MEMORY: &str = "use std::io::Cursor;";

/// What they may depend on, none of which does any of these things with the features we ask for.
const PURE_DEPENDENCIES: [&str; 9] = [
    "libm",
    "nalgebra",
    "quarterturn-geometry",
    "quarterturn-statistics",
    "rand",
    "rand_distr",
    "rand_pcg",
    "statrs",
    "thiserror",
];

/// Modules of the standard library that reach outside.
const IMPURE_MODULES: [&str; 8] = ["env", "fs", "io", "net", "os", "process", "thread", "time"];

/// Words that print, or ask the system for chance.
const IMPURE_WORDS: [&str; 10] = [
    "print!",
    "println!",
    "eprint!",
    "eprintln!",
    "dbg!",
    "getrandom",
    "OsRng",
    "SysRng",
    "ThreadRng",
    "rand::rng",
];

#[test]
fn the_pure_crates_reach_for_nothing_outside() {
    for name in PURE_SOURCES {
        let sources = sources(&format!("crates/{name}/src"));
        assert!(!sources.is_empty(), "{name} has no source");
        for source in sources.iter().filter(|source| !is_test(&source.path)) {
            let code: String = source.text.lines().map(without_comment).collect();
            let code = code.replace(IN_MEMORY, "");
            assert_eq!(impure_module(&code), None, "in {}", source.path);
            let word = IMPURE_WORDS.iter().find(|word| holds_word(&code, word));
            assert_eq!(word, None, "in {}", source.path);
        }
    }
}

#[test]
fn the_pure_crates_depend_on_pure_crates_only() {
    for name in PURE {
        let manifest = read(&format!("crates/{name}/Cargo.toml"));
        let section = manifest.split("[dependencies]").nth(1).expect("a table of dependencies");
        let lines = section.lines().skip(1).take_while(|line| !line.starts_with('['));
        for line in lines.filter(|line| !line.trim().is_empty()) {
            let dependency = line.split(['.', ' ', '=']).next().unwrap_or_default();
            assert!(PURE_DEPENDENCIES.contains(&dependency), "{name} depends on {dependency}");
        }
    }
}

/// Without default features rand has no way to the system's chance.
#[test]
fn rand_is_taken_without_the_systems_chance() {
    let manifest = read("Cargo.toml");
    let rand = manifest.lines().find(|line| line.starts_with("rand = ")).expect("rand is listed");
    assert!(rand.contains("default-features = false"), "{rand}");
    assert!(!rand.contains("sys_rng") && !rand.contains("thread_rng"), "{rand}");
}

#[test]
fn the_check_sees_every_way_of_writing_it() {
    assert_eq!(impure_module("use std::fs;"), Some("fs"));
    assert_eq!(impure_module("use std::{fmt, thread::spawn};"), Some("thread"));
    assert_eq!(impure_module("let now = std::time::Instant::now();"), Some("time"));
    assert_eq!(impure_module("use std::fmt;use std::ops::{Add, Sub};"), None);
    assert!(holds_word("println!(\"7\")", "println!") && !holds_word("println!()", "print!"));
    assert!(!holds_word("eprint!()", "print!"));
    assert_eq!(without_comment("let x = 1; // std::fs"), "let x = 1; ");
}

/// What is built for tests only may read fixtures and print.
fn is_test(path: &str) -> bool {
    path.contains("/tests/") || path.ends_with("/tests.rs")
}

/// The first module of the standard library in `code` that reaches outside.
fn impure_module(code: &str) -> Option<&str> {
    code.split("std::").skip(1).find_map(|rest| {
        // A braced list ends with its statement; a plain path is its first word.
        let end = if rest.starts_with('{') { ';' } else { ':' };
        let path = rest.split([end, ';']).next().unwrap_or_default();
        path.split(|c: char| !c.is_alphanumeric() && c != '_')
            .find(|word| IMPURE_MODULES.contains(word))
    })
}

fn holds_word(code: &str, word: &str) -> bool {
    let inside = |c: char| c.is_alphanumeric() || c == '_';
    code.match_indices(word).any(|(at, _)| !code[..at].ends_with(inside))
}

fn without_comment(line: &str) -> &str {
    line.split("//").next().unwrap_or_default()
}
