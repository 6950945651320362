//! The screens of `glue`.

use jiff::Timestamp;
use quarterturn_journal::GluedPart;

use crate::curing::Glueing;
use crate::opened::Opened;
use crate::wording::{self, Table, command, paragraph};

/// Something was glued.
pub fn recorded_glue(opened: &Opened, glued: Option<&Glueing<'_>>) -> String {
    let Some(glueing) = glued else { return String::new() };
    let said = format!(
        "Recorded: {} glued, of {}. Do not shoot before {}.",
        part(glueing.part),
        wording::all(&glueing.entry.shafts),
        glueing.not_before()
    );
    let cautions = cautions(glueing.part).map(|caution| paragraph("Caution: ", caution));
    let then = command("checklist", &opened.path);
    format!("{}\n\n{}\n\nThen: {then}\n", paragraph("", &said), cautions.join("\n"))
}

/// Everything that was glued, the last first.
pub fn glued(opened: &Opened, glued: &[Glueing<'_>], now: Timestamp) -> String {
    if glued.is_empty() {
        let enter = format!("{} 1-12 --cure 24h", command("glue", &opened.path));
        return format!("Nothing was glued yet.\n\nThen, for example: {enter}\n");
    }
    let mut table = Table::new(["not before", "it has", "part", "shafts"]);
    for glueing in glued.iter().rev() {
        let cures = if glueing.cures(now) { "not cured" } else { "cured" };
        let shafts = glueing.entry.shafts.join(" ");
        table.row([glueing.not_before(), cures.to_owned(), part(glueing.part).to_owned(), shafts]);
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
