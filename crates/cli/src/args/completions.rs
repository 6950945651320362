//! `completions`: what a shell needs to complete a command.

use clap::Args;
use clap_complete::Shell;

/// What can be typed after `completions`.
#[derive(Args, Debug)]
#[command(before_help = "Examples:\n  \
    quarterturn completions bash > quarterturn.bash\n  \
    quarterturn completions fish > quarterturn.fish")]
pub struct CompletionsArgs {
    /// The shell
    pub shell: Shell,
}
