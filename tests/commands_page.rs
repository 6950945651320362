//! The page of all commands is what the program says of itself.

use std::env::var_os;
use std::fs;

use crate::support::Folder;
use crate::support::repository::{read, root};

const PAGE: &str = "docs/commands.md";

#[test]
fn the_page_of_commands_is_current() {
    let page = page();
    if var_os("QUARTERTURN_REWRITE").is_some() {
        fs::write(root().join(PAGE), &page).expect("the page is written");
    }
    assert!(page == read(PAGE), "write {PAGE} anew with QUARTERTURN_REWRITE=1");
}

/// The help of every command, as a page.
fn page() -> String {
    let mut parts =
        vec!["# Commands\n\nWhat `quarterturn COMMAND --help` says of each; this page is made from it.\n".to_owned()];
    parts.push(format!("```text\n{}```\n", help("")));
    for command in below("") {
        parts.push(format!("## {command}\n\n```text\n{}```\n", help(&command)));
        for sheet in below(&command) {
            let help = help(&format!("{command} {sheet}"));
            parts.push(format!("### {command} {sheet}\n\n```text\n{help}```\n"));
        }
    }
    parts.join("\n")
}

/// The commands below a command, as its help lists them.
pub fn below(command: &str) -> Vec<String> {
    let help = help(command);
    let list = help.split("Commands:\n").nth(1).unwrap_or_default();
    let list = list.split("\n\n").next().unwrap_or_default();
    let names = list.lines().filter_map(|line| line.strip_prefix("  ")?.split(' ').next());
    names.filter(|name| !name.is_empty() && *name != "help").map(str::to_owned).collect()
}

/// What a command says of itself.
pub fn help(command: &str) -> String {
    Folder::new().run(&format!("{command} --help")).any_stdout().check()
}
