//! The echo of a group of finished arrows.

use quarterturn_tuning::{Flag, Group, Head, Shot, Start};

use crate::opened::Opened;
use crate::wording::{self, Table, command, count, paragraph, visible};

/// The last group, as it was recorded.
pub fn recorded_group(opened: &Opened) -> String {
    let Some(group) = opened.journal.state().groups().last() else { return String::new() };
    let mut lines = vec![paragraph("", &visible(&heading(opened, group))), String::new()];
    lines.extend(shots(opened, group));
    lines.extend(group.shots.iter().filter_map(|shot| gone(opened, shot)));
    if let Head::Broadhead(_) = group.head {
        let cautions = wording::WITH_BROADHEADS.iter().map(|caution| paragraph("  - ", caution));
        lines.push(String::new());
        lines.extend(cautions);
    }
    let then = ["heads", "undo"].map(|name| command(name, &opened.path));
    lines.extend([String::new(), format!("Then: {}", then[0]), format!("Wrong? {}", then[1])]);
    lines.join("\n") + "\n"
}

fn heading(opened: &Opened, group: &Group) -> String {
    let carrying = match &group.head {
        Head::Field => "field points".to_owned(),
        Head::Broadhead(name) => format!("the broadhead {name}"),
    };
    let cold = if group.start == Start::Cold { ", the first of the day" } else { "" };
    let shots = count(group.shots.len(), "shot");
    let distance = opened.ruler().distance(group.distance);
    format!("Recorded: {shots} with {carrying} from {distance}{cold}.")
}

fn shots(opened: &Opened, group: &Group) -> Vec<String> {
    let mut table = Table::new(["arrow", "hit", ""]);
    for shot in &group.shots {
        let ruler = opened.ruler();
        let hit = shot.hit.map_or_else(|| "no hit".to_owned(), |hit| ruler.hit(hit.at.from_spot()));
        let left_out = if shot.counts() { "" } else { "kept, and left out" };
        table.row([shot.shaft.to_string(), hit, left_out.to_owned()]);
    }
    table.lines().collect()
}

/// What became of an arrow is recorded by a command of its own: a group changes nothing of the shafts.
fn gone(opened: &Opened, shot: &Shot) -> Option<String> {
    let change = [(Flag::Lost, "lost"), (Flag::Broken, "broken")];
    let (_, word) = change.into_iter().find(|(flag, _)| shot.has(*flag))?;
    let shaft = command("shaft", &opened.path);
    Some(format!("If {0} is {word}, record that too: {shaft} {0} --{word}", shot.shaft))
}
