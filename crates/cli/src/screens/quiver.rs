//! The screen of `quiver`: the order, the heads, what to look at again, the season, the limits.

use quarterturn_journal::{Happening, Quiver, QuiverArrow};
use quarterturn_tuning::ShaftState;

use crate::failure::Failure;
use crate::opened::Opened;
use crate::quiver_row::{QuiverRow, beside_limits};
use crate::wording::{self, Table, as_words, command, count, mark, paragraph, visible};

/// The last happenings of a season that are told.
const TOLD: usize = 12;

/// The quiver and its season.
pub fn quiver(opened: &Opened, quiver: &Quiver) -> String {
    let rows = QuiverRow::all(opened, quiver);
    let placed: Vec<_> = rows.iter().filter(|row| row.place.is_some()).collect();
    let looked_at = if placed.is_empty() { rows.iter().collect() } else { placed };
    let seasons: Vec<&QuiverArrow> = looked_at.iter().filter_map(|row| row.season).collect();
    let mut blocks = Vec::new();
    if rows.is_empty() {
        let shaft = command("shaft", &opened.path);
        blocks.push(paragraph("", &format!("No arrow is fletched yet: {shaft} NAME --fletched.")));
    } else {
        blocks.extend([table(&rows), paragraph("", &order(opened, quiver))]);
    }
    let rechecks = wording::rechecks(quiver, &seasons);
    blocks.extend(rechecks.iter().map(|said| paragraph("", said)));
    let limits = beside_limits(opened, quiver, &rows);
    let limits = limits.iter().enumerate();
    let limits = limits.map(|(line, said)| paragraph(if line == 0 { "" } else { "  - " }, said));
    let limits = limits.collect::<Vec<_>>().join("\n");
    blocks.extend((!limits.is_empty()).then_some(limits));
    blocks.push(season(quiver));
    let cautions = wording::IN_THE_QUIVER.iter().map(|caution| paragraph("  - ", caution));
    blocks.push(cautions.collect::<Vec<_>>().join("\n"));
    blocks.push(format!("To print: {}", command("paper quiver", &opened.path)));
    blocks.join("\n\n") + "\n"
}

/// What was recorded, with the quiver as it is now.
pub fn recorded_quiver(opened: &Opened) -> Result<String, Failure> {
    let rows = opened.quiver()?;
    let rows = QuiverRow::all(opened, &rows);
    let table = if rows.is_empty() { String::new() } else { table(&rows) + "\n\n" };
    Ok(format!("Recorded.\n\n{table}Then: {}\n", command("quiver", &opened.path)))
}

fn table(rows: &[QuiverRow<'_>]) -> String {
    let mut table =
        Table::new(["shot", "arrow", "mark at", "carries", "checked", "shots", "nock turns"]);
    for row in rows {
        let place = row.place.map_or_else(|| "-".to_owned(), |place| place.to_string());
        let state = match row.state {
            ShaftState::Lost => " (lost)",
            ShaftState::Broken => " (broken)",
            ShaftState::SetAside => " (set aside)",
            ShaftState::InUse | ShaftState::Fletched => "",
        };
        let [turned, left] = row.turns;
        let checked = row.season.and_then(|season| season.checked_on.clone());
        table.row([
            place,
            format!("{}{state}", row.name),
            mark(row.mark),
            row.head().unwrap_or_default(),
            checked.unwrap_or_else(|| "never".to_owned()),
            row.shots().to_string(),
            format!("{turned}, {left} left"),
        ]);
    }
    table.lines().collect::<Vec<_>>().join("\n")
}

fn order(opened: &Opened, quiver: &Quiver) -> String {
    if quiver.order.is_empty() {
        let quiver = command("quiver", &opened.path);
        format!("No order yet: {quiver} --order 2,9,4, the arrow that is shot first at the front.")
    } else {
        "Shot in this order; those without a place are spares and practice arrows.".to_owned()
    }
}

fn season(quiver: &Quiver) -> String {
    let shots: usize =
        quiver.arrows.iter().map(|arrow| arrow.shots_in_ends + arrow.shots_in_groups).sum();
    let heading = format!(
        "The season: {} in {} and {} of finished arrows.",
        count(shots, "shot"),
        count(quiver.ends, "end"),
        count(quiver.groups, "group")
    );
    let happened = |happening: &Happening| {
        let who = happening.arrow.as_ref().map_or("bow", |arrow| arrow.as_str());
        paragraph(
            "  ",
            &visible(&format!("{}  {who}: {}", happening.on, as_words(&happening.what))),
        )
    };
    // Every arrow that was fletched would fill the screen.
    let told = quiver.happenings.iter().filter(|happening| happening.what != "fletched");
    let told: Vec<String> = told.map(happened).collect();
    let last = told.iter().skip(told.len().saturating_sub(TOLD)).cloned();
    std::iter::once(paragraph("", &heading)).chain(last).collect::<Vec<_>>().join("\n")
}
