//! The layers of settings: the environment before the folder's file, and that before the person's own.

use std::env;
use std::path::{Path, PathBuf};

use super::settable::COMMANDS;
use super::{Origin, Setting, toml_file};
use crate::failure::Failure;

/// The file of a folder, and the name of the person's own.
const FILE: &str = "quarterturn.toml";

/// The settings of all layers, the nearest first.
pub fn all() -> Result<Vec<Setting>, Failure> {
    let mut settings = environment();
    for file in files() {
        settings.extend(toml_file::read(&file)?);
    }
    Ok(settings)
}

/// The files that are looked at, whether they are there or not.
pub fn files() -> Vec<PathBuf> {
    [Some(PathBuf::from(FILE)), own()].into_iter().flatten().collect()
}

/// The variable that sets an option: `QUARTERTURN_NEW_DISTANCE`.
pub fn variable(command: &str, option: &str) -> String {
    format!("QUARTERTURN_{command}_{option}").replace('-', "_").to_uppercase()
}

/// What is set in the environment; an empty variable sets nothing.
fn environment() -> Vec<Setting> {
    let settable = COMMANDS
        .iter()
        .flat_map(|(command, options)| options.iter().map(|option| (*command, *option)));
    let set = settable.filter_map(|(command, option)| {
        let variable = variable(command, option);
        let value = env::var(&variable).ok().filter(|value| !value.is_empty())?;
        Some(Setting { command, option, value, origin: Origin::Environment(variable) })
    });
    set.collect()
}

/// The person's own file, where the system has a place for it.
fn own() -> Option<PathBuf> {
    let place =
        |variable| env::var_os(variable).map(PathBuf::from).filter(|path| path.is_absolute());
    let folder = place("XDG_CONFIG_HOME")
        .or_else(|| Some(place("HOME")?.join(".config")))
        .or_else(|| place("APPDATA"))?;
    Some(folder.join(Path::new("quarterturn").join(FILE)))
}
