//! The layers of settings: the environment before the folder's file, and that before the person's own.

use std::env;
use std::path::{Path, PathBuf};

use quarterturn_entry::closest;

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

/// Variables that are named like ours and set nothing, each with the one that was perhaps meant.
pub fn unknown_variables() -> Vec<String> {
    let known: Vec<String> =
        settable().map(|(command, option)| variable(command, option)).collect();
    let names = env::vars_os().filter_map(|(name, _)| name.into_string().ok());
    let unknown = names.filter(|name| name.starts_with("QUARTERTURN_") && !known.contains(name));
    let said = |name: String| {
        let meant = closest(&name, known.iter().map(String::as_str));
        let meant = meant.map(|meant| format!(": did you mean {meant}?")).unwrap_or_default();
        format!("the variable {name} sets nothing{meant}")
    };
    unknown.map(said).collect()
}

/// Each option that can be set, with its command.
fn settable() -> impl Iterator<Item = (&'static str, &'static str)> {
    let options = COMMANDS.iter();
    options.flat_map(|(command, options)| options.iter().map(|option| (*command, *option)))
}

/// What is set in the environment; an empty variable sets nothing.
fn environment() -> Vec<Setting> {
    let set = settable().filter_map(|(command, option)| {
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
