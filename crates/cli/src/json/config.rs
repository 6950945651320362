//! The JSON of `config`.

use serde::Serialize;

use super::line;
use crate::failure::Failure;
use crate::settings::Settings;

#[derive(Serialize)]
struct Config {
    schema: &'static str,
    settings: Vec<Set>,
    files: Vec<String>,
}

#[derive(Serialize)]
struct Set {
    command: &'static str,
    option: &'static str,
    value: String,
    #[serde(rename = "set_in")]
    origin: String,
}

/// Every option that is set, and where; the files that were looked at.
pub fn config(settings: &Settings) -> Result<String, Failure> {
    let set = settings.iter().map(|setting| Set {
        command: setting.command,
        option: setting.option,
        value: setting.value.clone(),
        origin: setting.origin.to_string(),
    });
    let files = Settings::files().iter().map(|file| file.display().to_string()).collect();
    line(&Config { schema: "quarterturn.config/1", settings: set.collect(), files })
}
