//! What the README shows is what happens: its commands are run, one after the other, in one empty folder.

use std::env::{join_paths, split_paths, var_os};
use std::path::Path;
use std::process::Command;

use crate::support::{Folder, PROGRAM, repository::read};

/// A command of a console block and what is shown under it.
struct Shown {
    command: String,
    output: Vec<String>,
}

#[test]
fn every_command_shows_what_the_readme_shows() {
    let folder = Folder::new();
    let shown = commands(&read("README.md"));
    let own: Vec<_> = shown.iter().filter(|shown| !is_cargo(shown)).collect();
    assert!(!own.is_empty(), "the README shows no command");
    for Shown { command, output } in own {
        let came = run(&folder, command);
        if !output.is_empty() {
            let came: Vec<_> = came.lines().map(str::trim_end).collect();
            let shown: Vec<_> = output.iter().map(String::as_str).collect();
            assert!(fits(&shown, &came), "{command}\n{}", came.join("\n"));
        }
    }
}

/// The commands for people who build the program are run by `.ci/run`, which reads them out of the README.
#[test]
fn the_cargo_commands_are_those_of_the_ci() {
    let ci = read(".ci/run");
    let shown = commands(&read("README.md"));
    let cargo: Vec<_> = shown.iter().filter(|shown| is_cargo(shown)).collect();
    assert_eq!(cargo.len(), 2, "the main command and the tests");
    for Shown { command, .. } in cargo {
        let verb = command.split(' ').nth(1).unwrap_or_default();
        assert!(ci.contains(&format!("readme_command {verb}")), "nobody runs `{command}`");
    }
}

#[test]
fn three_dots_stand_for_what_is_left_out() {
    assert!(fits(&["a", "...", "d"], &["a", "b", "c", "d"]) && fits(&["a", "..."], &["a"]));
    assert!(fits(&["evening ...", "b"], &["evening 2027-03-02", "b"]));
    assert!(!fits(&["a", "...", "d"], &["a", "b"]) && !fits(&["a"], &["a", "b"]));
}

fn is_cargo(shown: &Shown) -> bool {
    shown.command.starts_with("cargo ")
}

/// The commands of all console blocks; lines that begin with `> ` go on with the command.
fn commands(readme: &str) -> Vec<Shown> {
    let blocks = readme.split("```console\n").skip(1);
    let lines = blocks.flat_map(|block| block.split("```").next().unwrap_or_default().lines());
    let mut commands: Vec<Shown> = Vec::new();
    for line in lines {
        match (line.strip_prefix("$ "), line.strip_prefix("> "), commands.last_mut()) {
            (Some(command), _, _) => {
                commands.push(Shown { command: command.to_owned(), output: Vec::new() });
            }
            (None, Some(more), Some(last)) if last.output.is_empty() => {
                last.command += "\n";
                last.command += more;
            }
            (None, _, Some(last)) => last.output.push(line.trim_end().to_owned()),
            (None, _, None) => panic!("a console block opens with a command, not with `{line}`"),
        }
    }
    commands
}

/// Runs a line as a person's shell would, with the built program found by its name.
fn run(folder: &Folder, command: &str) -> String {
    let built = Path::new(PROGRAM).parent().expect("a folder").to_owned();
    let path = var_os("PATH").unwrap_or_default();
    let path = join_paths([built].into_iter().chain(split_paths(&path))).expect("a search path");
    let output = Command::new("sh")
        .args(["-euc", &format!("exec 2>&1\n{command}")])
        .current_dir(folder.path())
        .env_clear()
        .envs([("PATH", path), ("TZ", "UTC".into())])
        .output()
        .expect("a shell");
    let text = String::from_utf8(output.stdout).expect("the program writes UTF-8");
    assert!(output.status.success(), "{command}\n{text}");
    text
}

/// Whether `came` is what is shown, where a line of three dots stands for any number of lines, and three dots at
/// the end of a line for its rest.
fn fits(shown: &[&str], came: &[&str]) -> bool {
    match (shown, came) {
        (["...", rest @ ..], _) => (0..=came.len()).any(|skipped| fits(rest, &came[skipped..])),
        ([first, shown @ ..], [line, came @ ..]) => {
            let begins = |start| line.starts_with(start);
            (first == line || first.strip_suffix("...").is_some_and(begins)) && fits(shown, came)
        }
        (shown, came) => shown.is_empty() && came.is_empty(),
    }
}
