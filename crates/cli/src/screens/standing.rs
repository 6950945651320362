//! The screen without a command: where the archer stands.

use std::path::Path;

use quarterturn_tuning::{Advice, Step};

use super::{heading, next};
use crate::opened::Opened;
use crate::wording::{command, count, paragraph, tally};

/// A beginning for those who have no journal yet.
const NONE_YET: &str = "There is no journal in this folder yet.

  quarterturn demo         plays the whole job on an invented dozen
  quarterturn new --help   how a journal is begun
  quarterturn --help       every command
";

/// The journal and its dozen in a sentence or two, then what to do; `next` itself says how a finished dozen stands.
pub fn standing(opened: &Opened, advice: &Advice) -> String {
    let name = format!("{}: {}", opened.name(), heading(opened));
    let ends = opened.journal.state().ends().count();
    let stands = if ends == 0 || matches!(advice.step, Step::Finished(_)) {
        name
    } else {
        format!("{name} So far {}: {}.", count(ends, "end"), tally(&advice.shafts))
    };
    format!("{}\n\n{}", paragraph("", &stands), next(opened, advice))
}

/// The journals of a folder, none or several.
pub fn journals(journals: &[&Path]) -> String {
    if journals.is_empty() {
        return NONE_YET.to_owned();
    }
    let commands = journals.iter().map(|journal| format!("  {}\n", command("next", journal)));
    format!(
        "{} in this folder. Ask one of them:\n\n{}",
        count(journals.len(), "journal"),
        commands.collect::<String>()
    )
}
