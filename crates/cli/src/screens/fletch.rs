//! The screen of `fletch`.

use quarterturn_geometry::Index;
use quarterturn_journal::State;
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
const CARRY_VANES: &str = "This journal was begun with --positions 3, for arrows that carry three vanes already. Nothing \
    is glued: leave each nock so that the mark stands where the table says, and one of the vanes stands where the cock \
    vane stood. Where vanes are renewed, `paper fletch` shows their places.";

/// Where the vanes go, and which shafts are not to be fletched yet.
pub fn fletch(opened: &Opened, fletching: &Fletching<'_>) -> String {
    let thirds = opened.journal.state().beginning().positions == THIRDS;
    let none = fletching.kept.is_empty();
    let mut blocks = vec![paragraph("", &heading(fletching))];
    blocks.extend(thirds.then(|| paragraph("", CARRY_VANES)));
    blocks.extend(match (none, thirds) {
        (true, _) => Vec::new(),
        (false, true) => vec![where_marks_stay(opened.journal.state(), fletching)],
        (false, false) => vec![
            table(fletching),
            paragraph("", READ_IT),
            paragraph("", &wording::how_to_fletch(fletching.asked)),
        ],
    });
    blocks.extend(others(opened, "Still open: ", &fletching.open));
    blocks.extend(others(opened, "Retired: ", &fletching.retired));
    if !fletching.retired.is_empty() {
        blocks.push(format!("What to look at on those: {}", command("checklist", &opened.path)));
    }
    let names = all(fletching.fletched.iter().map(|report| &report.shaft));
    blocks.extend((!fletching.fletched.is_empty()).then(|| format!("Fletched already: {names}.")));
    let shaft = command("shaft", &opened.path);
    blocks.extend(match (none, thirds) {
        (true, _) => vec![format!("Then: {}", command("next", &opened.path))],
        (false, true) => vec![format!("Then, for each: {shaft} NAME --fletched")],
        (false, false) => gluing(opened),
    });
    blocks.join("\n\n") + "\n"
}

/// What belongs to gluing, and the commands for it.
fn gluing(opened: &Opened) -> Vec<String> {
    let [sheet, glue, shaft] =
        ["paper fletch", "glue", "shaft"].map(|name| command(name, &opened.path));
    let cautions = wording::GLUE.iter().map(|caution| paragraph("Caution: ", caution));
    vec![
        cautions.collect::<Vec<_>>().join("\n"),
        format!("To print: {sheet} --diameter 6.5mm"),
        format!(
            "Then: {glue} SHAFTS --part vanes --cure TIME\nand for each: {shaft} NAME --fletched"
        ),
    ]
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

/// Where each mark is left, and how far that is from where it stood at first.
fn where_marks_stay(state: &State, fletching: &Fletching<'_>) -> String {
    let mut table = Table::new(["shaft", "mark at", "from where it stood at first"]);
    for kept in &fletching.kept {
        let first = state.roster().find(&kept.report.shaft).map(|standing| standing.index_first);
        let way = first.and_then(|first| turn(first, kept.report.index));
        table.row([
            kept.report.shaft.to_string(),
            mark(kept.report.index),
            way.unwrap_or_else(|| "as it was".to_owned()),
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
