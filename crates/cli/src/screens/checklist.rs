//! The screen of `checklist`.

use crate::checklist::{Checklist, Inspection, Stage, Told};
use crate::opened::Opened;
use crate::wording::{self, command, paragraph};

/// Every stage, what is to be done now, and what to look at.
pub fn checklist(opened: &Opened, checklist: &Checklist) -> String {
    let stages = (1..).zip(&checklist.stages).map(|(n, stage)| line(n, stage));
    let mut blocks = vec![
        format!("From raw shaft to quiver, as {} has it:", opened.name()),
        stages.collect::<Vec<_>>().join("\n"),
    ];
    blocks.extend(checklist.inspections.iter().map(inspection));
    let cautions = checklist.cautions();
    let cautions = cautions.iter().map(|caution| paragraph("Caution: ", caution));
    blocks.push(cautions.collect::<Vec<_>>().join("\n"));
    blocks.extend(checklist.now().map(|(n, stage)| format!("Now {n}: {}.", stage.what)));
    blocks.push(format!("Then: {}", command(command_of(checklist), &opened.path)));
    blocks.join("\n\n") + "\n"
}

/// " 4  missing  cut to length: 3 and 7".
fn line(n: usize, stage: &Stage) -> String {
    let lead = format!("{n:>2}  {:<8} ", stage.stands.word());
    let said = if stage.said.is_empty() { String::new() } else { format!(": {}", stage.said) };
    paragraph(&lead, &format!("{}{said}", stage.what))
}

fn inspection(inspection: &Inspection) -> String {
    let reason = wording::retire_reason(inspection.reason);
    let mut lines = vec![format!("Look at {} ({reason}):", inspection.shaft)];
    lines.extend(inspection.look.iter().map(|look| paragraph("  - ", look)));
    if !inspection.measured.is_empty() {
        let measured: Vec<String> = inspection.measured.iter().map(told).collect();
        lines.push(paragraph("  Measured: ", &format!("{}.", measured.join(", "))));
    }
    lines.join("\n")
}

/// "straightness at the nock 0.21 mm (set 0.06 mm)".
fn told(told: &Told) -> String {
    let set = told.median.map(|median| format!(" (set {})", told.gauge.value(median)));
    let value = told.gauge.value(told.value);
    format!("{} {value}{}", told.gauge.said().name, set.unwrap_or_default())
}

/// Where the first stage that is missing something is worked on.
fn command_of(checklist: &Checklist) -> &'static str {
    match checklist.now().map(|(_, stage)| stage.word) {
        Some("weigh" | "straightness" | "sides" | "square" | "insert" | "tape") => "bench",
        Some("cut") => "cut",
        Some("glue" | "cure") => "glue",
        Some("fletch") => "fletch",
        Some("verify") => "heads",
        _ => "next",
    }
}
