//! What need not be typed each time: options of commands, from the environment, the folder and the person's own file.

mod layers;
mod origin;
mod settable;
mod setting;
mod toml_file;

pub use origin::Origin;
pub use setting::Setting;

use std::path::PathBuf;

use clap::Command;

use crate::failure::Failure;

/// The settings that hold, each from the first layer that has it.
#[derive(Debug, Default)]
pub struct Settings(Vec<Setting>);

impl Settings {
    /// Those of every command.
    pub fn all() -> Result<Self, Failure> {
        let mut held: Vec<Setting> = Vec::new();
        for setting in layers::all()? {
            if !held.iter().any(|earlier| earlier.is_same(&setting)) {
                held.push(setting);
            }
        }
        held.sort_by_key(Setting::place);
        Ok(Self(held))
    }

    /// Those of the command `word`; where none can be set, no file is looked at.
    pub fn of(word: &str) -> Result<Self, Failure> {
        if !settable::COMMANDS.iter().any(|(command, _)| *command == word) {
            return Ok(Self::default());
        }
        let mut settings = Self::all()?;
        settings.0.retain(|setting| setting.command == word);
        Ok(settings)
    }

    /// The settings, in the order of the commands.
    pub fn iter(&self) -> impl Iterator<Item = &Setting> {
        self.0.iter()
    }

    /// The files that are looked at, whether they are there or not.
    pub fn files() -> Vec<PathBuf> {
        layers::files()
    }

    /// What is said of variables that are named like settings and set nothing.
    pub fn unknown_variables() -> Vec<String> {
        layers::unknown_variables()
    }

    /// The definition, in which they are the defaults; what is typed takes their place.
    pub fn applied(&self, definition: Command) -> Command {
        definition.mut_subcommands(|command| {
            let of_it = self.0.iter().filter(|setting| setting.command == command.get_name());
            let of_it: Vec<_> = of_it.collect();
            if of_it.is_empty() { command } else { with_defaults(command, &of_it) }
        })
    }

    /// Where they come from, for one whose command was refused.
    pub fn told(&self) -> impl Iterator<Item = String> {
        self.0.iter().map(|setting| {
            let Setting { option, value, origin, .. } = setting;
            format!("--{option} {value} is set in {origin}")
        })
    }
}

/// The command, and those below it, with the defaults that they know.
fn with_defaults(command: Command, settings: &[&Setting]) -> Command {
    let known: Vec<_> = command
        .get_arguments()
        .filter_map(|argument| {
            let long = argument.get_long()?;
            let setting = settings.iter().find(|setting| setting.option == long)?;
            Some((argument.get_id().clone(), setting.value.clone()))
        })
        .collect();
    let command = known.into_iter().fold(command, |command, (id, value)| {
        command.mut_arg(id, |argument| argument.required(false).default_value(value))
    });
    command.mut_subcommands(|below| with_defaults(below, settings))
}

#[cfg(test)]
mod tests {
    use super::{Origin, Setting, Settings, settable};
    use crate::args::definition;

    #[test]
    fn what_can_be_set_is_an_option_that_takes_a_value() {
        for (command, options) in settable::COMMANDS {
            let definition = definition();
            let command = definition.find_subcommand(command).expect(command);
            for option in options {
                let mut commands = [command].into_iter().chain(command.get_subcommands());
                let takes_it = |command: &clap::Command| {
                    command.get_arguments().any(|argument| {
                        argument.get_long() == Some(option) && argument.get_action().takes_values()
                    })
                };
                assert!(commands.any(takes_it), "--{option} of {}", command.get_name());
            }
        }
    }

    #[test]
    fn what_is_typed_takes_the_place_of_what_is_set() {
        let set = |option, value: &str| Setting {
            command: "new",
            option,
            value: value.to_owned(),
            origin: Origin::Environment("X".to_owned()),
        };
        let settings = Settings(vec![set("distance", "20yd"), set("tolerance", "1in")]);
        let typed = "quarterturn new a --shafts 1 --reference R --tolerance 25mm".split(' ');
        let matches = settings.applied(definition()).try_get_matches_from(typed).unwrap();
        let new = matches.subcommand_matches("new").unwrap();
        assert_eq!(new.get_one::<String>("distance").unwrap(), "20yd");
        assert_eq!(new.get_one::<String>("tolerance").unwrap(), "25mm");
    }
}
