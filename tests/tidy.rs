//! Habits of this repository that the compiler does not see.

use crate::support::repository::{Source, read, root, sources};

/// A longer file says why, in a line that begins with this.
const REASON_FOR_LENGTH: &str = "// Long because ";
const LONGEST_FILE: usize = 400;

/// Fails with every source for which `fault` finds one.
fn none(sources: &[Source], fault: impl Fn(&Source) -> Option<String>) {
    let faults: Vec<_> = sources
        .iter()
        .filter_map(|source| Some(format!("{}: {}", source.path, fault(source)?)))
        .collect();
    assert!(!sources.is_empty() && faults.is_empty(), "{}", faults.join("\n"));
}

fn rust() -> Vec<Source> {
    sources("").into_iter().filter(|source| source.ends_in("rs")).collect()
}

#[test]
fn every_rust_file_opens_by_saying_what_it_is() {
    none(&rust(), |source| {
        (!source.text.starts_with("//! ")).then(|| "does not open with `//!`".into())
    });
}

#[test]
fn no_file_is_long_without_a_reason() {
    none(&rust(), |source| {
        let lines = source.text.lines().count();
        let excused = source.text.lines().any(|line| line.starts_with(REASON_FOR_LENGTH));
        (lines > LONGEST_FILE && !excused).then(|| format!("{lines} lines"))
    });
}

/// Clippy holds functions to this length; here it is kept from being waved through.
#[test]
fn no_function_is_long_without_a_reason() {
    assert!(read("clippy.toml").contains("too-many-lines-threshold = 60"));
    none(&rust(), |source| {
        let waved = |line: &&str| line.contains(concat!("clippy::too_many", "_lines"));
        let line = source.text.lines().filter(waved).find(|line| !line.contains("reason"))?;
        Some(line.to_owned())
    });
}

#[test]
fn no_file_is_a_drawer_for_everything() {
    let drawers = ["util", "utils", "common", "helper", "helpers", "misc", "types"];
    none(&rust(), |source| {
        let mut parts = source.path.split(['/', '.']);
        parts.find(|part| drawers.contains(part)).map(str::to_owned)
    });
}

#[test]
fn no_test_is_ignored() {
    none(&rust(), |source| source.text.contains(concat!("#[", "ignore")).then(|| "ignored".into()));
}

/// A link in a document leads to a file that is there.
#[test]
fn every_link_inside_the_repository_leads_somewhere() {
    let documents: Vec<_> = sources("").into_iter().filter(|source| source.ends_in("md")).collect();
    none(&documents, |document| {
        let here = root().join(&document.path);
        let links = document.text.split("](").skip(1).filter_map(|rest| rest.split(')').next());
        let inside = links.filter(|link| !link.contains("://") && !link.starts_with('#'));
        let file = |link: &&str| here.with_file_name(link.split('#').next().unwrap_or_default());
        inside.map(str::trim).find(|link| !file(link).exists()).map(str::to_owned)
    });
}

#[test]
fn nothing_points_outside_the_repository() {
    let places = [
        concat!("..", "/shared"),
        concat!("/wo", "rk/"),
        "/home/",
        "/root/",
        "/Users/",
        "C:\\Users",
    ];
    none(&sources(""), |source| {
        let here = source.path == "tests/tidy.rs";
        places.iter().find(|place| !here && source.text.contains(**place)).map(ToString::to_string)
    });
}
