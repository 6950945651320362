//! The echo of an end: every shot in words, with its shaft and its mark.

use quarterturn_journal::Word;
use quarterturn_tuning::{Call, End, Event, Shot};

use crate::opened::Opened;
use crate::wording::{Ruler, Table, all, command, count, mark, tail};

/// The last end, as it was recorded.
pub fn recorded_end(opened: &Opened) -> String {
    let state = opened.journal.state();
    let Some(Event::End(end)) = state.last() else { return String::new() };
    let references = &state.history().setup.references;
    let is_reference = |shot: &Shot| references.contains(&shot.shaft);
    let mut lines = vec![heading(end), String::new()];
    let mut table = Table::new(["shaft", "", "hit", "tail"]);
    for shot in &end.shots {
        let mark = if is_reference(shot) {
            "reference".to_owned()
        } else {
            format!("mark at {}", mark(shot.index))
        };
        table.row([shot.shaft.to_string(), mark, hit(shot, opened.ruler()), lean(shot)]);
    }
    lines.extend(table.lines());
    lines.extend(end.shots.iter().filter_map(remarks));
    lines.push(format!("\nThen: {}", command("next", &opened.path)));
    lines.push(format!("Wrong? {}", command("undo", &opened.path)));
    lines.join("\n") + "\n"
}

fn heading(end: &End) -> String {
    format!("Recorded: {}, evening {}.", count(end.shots.len(), "shot"), end.evening)
}

fn hit(shot: &Shot, ruler: Ruler) -> String {
    shot.hit.map_or_else(|| "no hit".to_owned(), |hit| ruler.hit(hit.at.from_spot()))
}

fn lean(shot: &Shot) -> String {
    shot.hit.map(|hit| tail(hit.lean)).unwrap_or_default()
}

/// "9: called poor, wind; kept, and left out of the estimates".
fn remarks(shot: &Shot) -> Option<String> {
    let call = shot.call.map(|call| match call {
        Call::Good => "called good",
        Call::Poor => "called poor",
    });
    let noted: Vec<&str> =
        call.into_iter().chain(shot.flags.iter().map(|flag| flag.word())).collect();
    let left_out = if shot.counts() { "" } else { "; kept, and left out of the estimates" };
    (!noted.is_empty()).then(|| format!("{}: {}{left_out}", shot.shaft, all(noted)))
}
