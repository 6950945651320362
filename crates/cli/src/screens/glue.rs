//! The screens of `glue`.

use jiff::Timestamp;
use quarterturn_journal::GluedPart;

use crate::curing::Gluing;
use crate::opened::Opened;
use crate::wording::{self, Table, command, paragraph};

/// Something was glued.
pub fn recorded_glue(opened: &Opened, glued: Option<&Gluing<'_>>) -> String {
    let Some(gluing) = glued else { return String::new() };
    let said = format!(
        "Recorded: {} glued, of {}. Do not shoot before {}.",
        part(gluing.part),
        wording::all(&gluing.entry.shafts),
        gluing.not_before()
    );
    let cautions = cautions(gluing.part).map(|caution| paragraph("Caution: ", caution));
    let then = command("checklist", &opened.path);
    format!("{}\n\n{}\n\nThen: {then}\n", paragraph("", &said), cautions.join("\n"))
}

/// Everything that was glued, the last first.
pub fn glued(opened: &Opened, glued: &[Gluing<'_>], now: Timestamp) -> String {
    if glued.is_empty() {
        let enter = format!("{} 1-12 --cure 24h", command("glue", &opened.path));
        return format!("Nothing was glued yet.\n\nThen, for example: {enter}\n");
    }
    let mut table = Table::new(["not before", "it has", "part", "shafts"]);
    for gluing in glued.iter().rev() {
        let cures = if gluing.cures(now) { "not cured" } else { "cured" };
        let shafts = gluing.entry.shafts.join(" ");
        table.row([gluing.not_before(), cures.to_owned(), part(gluing.part).to_owned(), shafts]);
    }
    let lines: Vec<String> = table.lines().collect();
    format!("{}\n\nThen: {}\n", lines.join("\n"), command("checklist", &opened.path))
}

fn part(part: GluedPart) -> &'static str {
    match part {
        GluedPart::Insert => "inserts",
        GluedPart::Vanes => "vanes",
        GluedPart::Other => "other parts",
    }
}

fn cautions(part: GluedPart) -> [&'static str; 3] {
    match part {
        GluedPart::Vanes => wording::GLUE,
        GluedPart::Insert | GluedPart::Other => wording::INSERTS,
    }
}
