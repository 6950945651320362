//! `config`: what is set, and where.

use crate::answer::Answer;
use crate::args::ConfigArgs;
use crate::failure::Failure;
use crate::settings::Settings;
use crate::{json, screens};

/// Says it; nothing is changed.
pub fn run(args: &ConfigArgs) -> Result<Answer, Failure> {
    let settings = Settings::all()?;
    let text = if args.json { json::config(&settings)? } else { screens::config(&settings) };
    Ok(Answer::new(text).noticing(Settings::unknown_variables()))
}
