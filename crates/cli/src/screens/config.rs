//! The screen of `config`.

use crate::settings::Settings;
use crate::wording::{Table, visible};

/// Every option that is set, and where; then the files that were looked at.
pub fn config(settings: &Settings) -> String {
    let mut table = Table::new(["command", "option", "value", "set in"]);
    for setting in settings.iter() {
        table.row([
            setting.command.to_owned(),
            format!("--{}", setting.option),
            visible(&setting.value),
            setting.origin.to_string(),
        ]);
    }
    let set = match settings.iter().next() {
        Some(_) => table.lines().collect::<Vec<_>>().join("\n"),
        None => "Nothing is set.".to_owned(),
    };
    let looked: Vec<_> = Settings::files()
        .iter()
        .map(|file| format!("  {}", visible(&file.to_string_lossy())))
        .collect();
    format!(
        "{set}\n\nLooked at, the first before the second:\n{}\n\nSee: quarterturn config --help\n",
        looked.join("\n")
    )
}
