//! A line run as a person's shell would run it, with the built program found by its name.

use std::env::{join_paths, split_paths, var_os};
use std::path::Path;
use std::process::Command;

use super::PROGRAM;

/// Whether the command ended with exit code 0, and all that it said, in the order in which it was said.
pub fn run(folder: &Path, command: &str) -> (bool, String) {
    let built = Path::new(PROGRAM).parent().expect("a folder").to_owned();
    let path = var_os("PATH").unwrap_or_default();
    let path = join_paths([built].into_iter().chain(split_paths(&path))).expect("a search path");
    let output = Command::new("sh")
        .args(["-euc", &format!("exec 2>&1\n{command}")])
        .current_dir(folder)
        .env_clear()
        .envs([("PATH", path), ("TZ", "UTC".into())])
        .output()
        .expect("a shell");
    (output.status.success(), String::from_utf8(output.stdout).expect("the program writes UTF-8"))
}
