//! A file of settings: a table a command, a line an option.
//!
//! ```toml
//! [new]
//! distance = "20yd"
//! arrows-per-end = 4
//! ```

use std::ops::Range;
use std::path::Path;

use quarterturn_entry::{all, closest};
use toml::Spanned;
use toml::de::{DeTable, DeValue};

use super::settable::COMMANDS;
use super::{Origin, Setting};
use crate::failure::{Failure, Kind, Marked};
use crate::input;

/// What a file sets; one that is not there sets nothing.
pub fn read(path: &Path) -> Result<Vec<Setting>, Failure> {
    if !path.exists() {
        return Ok(Vec::new());
    }
    let text = input::read(path)?.text;
    parsed(path, &text).map_err(|wrong| wrong.failure(path, &text))
}

/// What is wrong, where, and ways on.
struct Wrong {
    span: Range<usize>,
    what: String,
    hints: Vec<String>,
}

impl Wrong {
    fn failure(self, path: &Path, text: &str) -> Failure {
        let marked = Marked::file(&path.display().to_string(), text).wrong(self.span, self.what);
        Failure::new(Kind::Data, "the settings cannot be read").marking(marked).hinting(self.hints)
    }
}

fn parsed(path: &Path, text: &str) -> Result<Vec<Setting>, Wrong> {
    let tables = DeTable::parse(text).map_err(|error| Wrong {
        span: error.span().unwrap_or(0..0),
        what: error.message().to_owned(),
        hints: vec![
            "the file is TOML: a line like distance = \"20yd\" below a line like [new]".to_owned(),
        ],
    })?;
    let mut settings = Vec::new();
    for (command, table) in tables.get_ref() {
        let (name, options) = known_command(command)?;
        let DeValue::Table(table) = table.get_ref() else {
            let hint = format!(
                "write [{}] on a line of its own, and its options below",
                command.get_ref()
            );
            return Err(Wrong {
                span: command.span(),
                what: "this is a command, not an option".to_owned(),
                hints: vec![hint],
            });
        };
        for (option, value) in table {
            settings.push(setting(path, name, options, option, value)?);
        }
    }
    Ok(settings)
}

/// A command and its options.
fn known_command(
    command: &Spanned<impl AsRef<str>>,
) -> Result<(&'static str, &'static [&'static str]), Wrong> {
    let name = command.get_ref().as_ref();
    let known = COMMANDS.into_iter().find(|(known, _)| *known == name);
    known.ok_or_else(|| unknown(command, "command", COMMANDS.iter().map(|(command, _)| *command)))
}

fn setting(
    path: &Path,
    command: &'static str,
    options: &[&'static str],
    option: &Spanned<impl AsRef<str>>,
    value: &Spanned<DeValue>,
) -> Result<Setting, Wrong> {
    let typed = option.get_ref().as_ref();
    let known = options.iter().copied().find(|known| *known == typed);
    let name = known.ok_or_else(|| unknown(option, "option", options.iter().copied()))?;
    let text = match value.get_ref() {
        DeValue::String(text) => text.to_string(),
        DeValue::Integer(number) => number.to_string(),
        DeValue::Float(number) => number.to_string(),
        _ => {
            let what = "a text in quotes or a number is expected here".to_owned();
            return Err(Wrong { span: value.span(), what, hints: vec![] });
        }
    };
    Ok(Setting { command, option: name, value: text, origin: Origin::File(path.to_owned()) })
}

fn unknown<'a>(
    name: &Spanned<impl AsRef<str>>,
    kind: &str,
    known: impl Iterator<Item = &'a str> + Clone,
) -> Wrong {
    let nearest = closest(name.get_ref().as_ref(), known.clone());
    let hint = nearest.map_or_else(
        || format!("what can be set: {}", all(known)),
        |nearest| format!("did you mean \"{nearest}\"?"),
    );
    Wrong { span: name.span(), what: format!("no {kind} that can be set"), hints: vec![hint] }
}
