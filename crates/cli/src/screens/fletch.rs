//! The screen of `fletch`.

use quarterturn_geometry::Index;
use quarterturn_tuning::ShaftReport;

use crate::fletching::Fletching;
use crate::opened::Opened;
use crate::wording::{self, Table, all, command, count, mark, paragraph, reason, turn};

/// How to read the table.
const READ_IT: &str = "Look at the nock from behind. On the shaft, the cock vane stands that far from the ink \
    mark, and the vanes at so many degrees clockwise from it. First set the nock so that the mark stands \
    at its place on the string, and leave it there.";

/// The positions of a journal for arrows that are fletched already.
const THIRDS: u16 = 3;

/// What is said of those.
const CARRY_VANES: &str = "This journal was begun with --positions 3, for arrows that carry three vanes already: \
    what follows is for vanes that are renewed.";

/// Where the vanes go, and which shafts are not to be fletched yet.
pub fn fletch(opened: &Opened, fletching: &Fletching<'_>) -> String {
    let mut blocks = vec![paragraph("", &heading(fletching))];
    if opened.journal.state().beginning().positions == THIRDS {
        blocks.push(paragraph("", CARRY_VANES));
    }
    if !fletching.kept.is_empty() {
        blocks.push(table(fletching));
        blocks.push(paragraph("", READ_IT));
        blocks.push(paragraph("", &wording::how_to_fletch(fletching.asked)));
    }
    blocks.extend(others(opened, "Still open: ", &fletching.open));
    blocks.extend(others(opened, "Retired: ", &fletching.retired));
    if !fletching.retired.is_empty() {
        blocks.push(format!("What to look at on those: {}", command("checklist", &opened.path)));
    }
    let names = all(fletching.fletched.iter().map(|report| &report.shaft));
    blocks.extend((!fletching.fletched.is_empty()).then(|| format!("Fletched already: {names}.")));
    if fletching.kept.is_empty() {
        blocks.push(format!("Then: {}", command("next", &opened.path)));
    } else {
        let cautions = wording::GLUE.iter().map(|caution| paragraph("Caution: ", caution));
        blocks.push(cautions.collect::<Vec<_>>().join("\n"));
        let sheet = command("paper fletch", &opened.path);
        blocks.push(format!("To print: {sheet} --diameter 6.5mm"));
        blocks.push(format!(
            "Then: {} SHAFTS --part vanes --cure TIME\nand for each: {} NAME --fletched",
            command("glue", &opened.path),
            command("shaft", &opened.path)
        ));
    }
    blocks.join("\n\n") + "\n"
}

/// "2 of 3 shafts can be fletched: 3 vanes, the cock vane at 12 o'clock."
fn heading(fletching: &Fletching<'_>) -> String {
    let groups = [&fletching.open, &fletching.retired, &fletching.fletched];
    let shafts = fletching.kept.len() + groups.iter().map(|group| group.len()).sum::<usize>();
    format!(
        "{} of {} can be fletched: {} vanes, the cock vane at {}.",
        fletching.kept.len(),
        count(shafts, "shaft"),
        fletching.asked.vanes.count(),
        mark(fletching.asked.cock)
    )
}

fn table(fletching: &Fletching<'_>) -> String {
    let mut table = Table::new(["shaft", "mark at", "cock vane from the mark", "vanes at (deg)"]);
    for kept in &fletching.kept {
        let way = turn(kept.report.index, fletching.asked.cock);
        let vanes = kept.from_mark.iter().map(|vane| degrees(*vane));
        table.row([
            kept.report.shaft.to_string(),
            mark(kept.report.index),
            way.unwrap_or_else(|| "on the mark".to_owned()),
            vanes.collect::<Vec<_>>().join(", "),
        ]);
    }
    table.lines().collect::<Vec<_>>().join("\n")
}

/// Degrees to the tenth: "97.5", "120".
fn degrees(index: Index) -> String {
    ((index.degrees() * 10.0).round() / 10.0).to_string()
}

/// Each shaft with its reason.
fn others(opened: &Opened, lead: &str, reports: &[&ShaftReport]) -> Option<String> {
    let said =
        |report: &&ShaftReport| format!("{} ({})", report.shaft, reason(report, opened.ruler()));
    let said: Vec<String> = reports.iter().map(said).collect();
    (!said.is_empty()).then(|| paragraph(lead, &format!("{}.", said.join("; "))))
}
