//! The echo of an end: every shot in words, the face in characters, and what is asked about.

use quarterturn_tuning::{End, Shot, improbable};

use super::sketch::{Sketched, sketch};
use crate::opened::Opened;
use crate::wording::{self, Ruler, Table, command, count, mark, paragraph, tail};

/// The last end, as it was recorded.
pub fn recorded_end(opened: &Opened) -> String {
    let number = opened.journal.state().ends().count();
    let mut screen = echo(opened, number, "Recorded");
    let asked = improbable(opened.journal.state().history());
    let asked = asked.iter().map(|one| {
        let said = wording::improbable(one, number, opened.ruler(), &opened.path);
        format!("\n{}\n", paragraph("Look: ", &said))
    });
    screen.extend(asked);
    screen
        + &format!(
            "\nThen: {}\nWrong? {} {number} \"SHAFT ...\"\n    or: {}\n",
            command("next", &opened.path),
            command("fix", &opened.path),
            command("undo", &opened.path)
        )
}

/// An end that was corrected.
pub fn corrected_end(opened: &Opened, number: usize) -> String {
    let screen = echo(opened, number, "Corrected");
    let (next, undo) = (command("next", &opened.path), command("undo", &opened.path));
    screen + &format!("\nThen: {next}\nNot so? {undo}\n")
}

/// End `number` in words and in characters.
fn echo(opened: &Opened, number: usize, done: &str) -> String {
    let state = opened.journal.state();
    let Some(end) = state.ends().nth(number.saturating_sub(1)) else { return String::new() };
    let mut lines = vec![heading(opened, end, number, done), String::new()];
    lines.extend(shots(opened, &end.shots));
    lines.extend(end.shots.iter().filter_map(wording::noted));
    let hits = end
        .shots
        .iter()
        .filter_map(|shot| shot.hit.as_ref().map(|hit| Sketched::new(shot.shaft.as_str(), hit)));
    let face = sketch(&hits.collect::<Vec<_>>(), opened.ruler());
    if !face.is_empty() {
        lines.push(String::new());
        lines.extend(face);
    }
    lines.join("\n") + "\n"
}

/// A table of shots: whose, with its mark where, its hit and its tail.
fn shots(opened: &Opened, shots: &[Shot]) -> Vec<String> {
    let references = &opened.journal.state().history().setup.references;
    let mut table = Table::new(["shaft", "", "hit", "tail"]);
    for shot in shots {
        let mark = if references.contains(&shot.shaft) {
            "reference".to_owned()
        } else {
            format!("mark at {}", mark(shot.index))
        };
        table.row([shot.shaft.to_string(), mark, hit(shot, opened.ruler()), lean(shot)]);
    }
    table.lines().collect()
}

fn heading(opened: &Opened, end: &End, number: usize, done: &str) -> String {
    let shots = count(end.shots.len(), "shot");
    let distance = end.distance.map_or_else(String::new, |distance| {
        let ruler = opened.ruler();
        let setup = &opened.journal.state().history().setup;
        let (from, usual) = (ruler.distance(distance), ruler.distance(setup.distance));
        format!(" from {from}, kept and not pooled with those from {usual}")
    });
    let heading = format!("{done}: end {number}, {shots}{distance}, evening {}.", end.evening);
    paragraph("", &wording::visible(&heading))
}

fn hit(shot: &Shot, ruler: Ruler) -> String {
    shot.hit.map_or_else(|| "no hit".to_owned(), |hit| ruler.hit(hit.at.from_spot()))
}

fn lean(shot: &Shot) -> String {
    shot.hit.map(|hit| tail(hit.lean)).unwrap_or_default()
}
