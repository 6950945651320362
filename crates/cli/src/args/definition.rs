//! The command line as one definition: what is parsed, completed and written as pages comes from it.

use clap::{Command, CommandFactory};

use super::Args;
use crate::version::version;

/// What it is, how it is called, real examples, and only then every option.
const HELP: &str =
    "{about-with-newline}\n{usage-heading} {usage}\n\n{before-help}{all-args}{after-help}";

/// The whole definition.
pub fn definition() -> Command {
    examples_first(Args::command()).long_version(version())
}

fn examples_first(command: Command) -> Command {
    command.help_template(HELP).mut_subcommands(examples_first)
}

#[cfg(test)]
mod tests {
    use super::definition;

    #[test]
    fn it_holds_together() {
        definition().debug_assert();
    }
}
