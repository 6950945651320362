//! The screen of `reach`: the chance on a plate against the distance.

use quarterturn_entry::quantity::Unit;
use quarterturn_geometry::Millimetres;
use quarterturn_statistics::Level;
use quarterturn_tuning::{EndedBy, Farthest, Head, Reach, Rung, ShotKind, Start};

use super::since_the_bow;
use crate::opened::Opened;
use crate::wording::{self, Ruler, Table, command, count, paragraph, percent_short, visible};

/// What the columns mean.
const COLUMNS: &str = "Shots that count: not called poor, no wind, no contact. The chance of the next shot as \
    estimated, and what it is at least, at 95 %; under five shots are too few. Of each distance the kind with the least chance counts (<).";

/// The chance from every distance, and how far it holds.
pub fn reach(opened: &Opened, reach: &Reach, plate: Millimetres, chance: Level) -> String {
    let ruler = opened.ruler();
    let mut blocks = vec![paragraph("", &format!("A plate {} wide.", ruler.read(plate)))];
    if !reach.rungs.is_empty() {
        blocks.extend([table(&reach.rungs, ruler), paragraph("", COLUMNS)]);
    }
    blocks.push(paragraph("", &farthest(opened, reach, chance)));
    blocks.extend(never_found(reach).map(|text| paragraph("", &text)));
    blocks.extend(since_the_bow(opened).map(|text| paragraph("", &text)));
    blocks.extend(wording::OF_A_REACH.map(|caution| paragraph("", caution)));
    blocks.push(format!("Then: {}", command("quiver", &opened.path)));
    blocks.join("\n\n") + "\n"
}

fn table(rungs: &[Rung], ruler: Ruler) -> String {
    let mut table = Table::new(["from", "shots with", "on the plate", "chance", "at least", ""]);
    for rung in rungs {
        for (place, kind) in rung.kinds.iter().enumerate() {
            let from = if place == 0 { ruler.distance(rung.distance) } else { String::new() };
            let counts = if rung.worst == Some(place) { "<" } else { "" };
            let [chance, at_least] = kind.chance.map_or_else(
                || ["too few".to_owned(), String::new()],
                |chance| [chance.estimate, chance.at_least].map(percent_short),
            );
            let on_plate = format!("{} of {}", kind.on_plate, kind.n);
            table.row([from, named(kind), on_plate, chance, at_least, counts.to_owned()]);
        }
    }
    table.lines().collect::<Vec<_>>().join("\n")
}

fn named(kind: &ShotKind) -> String {
    let head = match &kind.head {
        Head::Field => "field points".to_owned(),
        Head::Broadhead(name) => visible(name),
    };
    if kind.start == Start::Cold { format!("{head}, cold") } else { head }
}

fn farthest(opened: &Opened, reach: &Reach, chance: Level) -> String {
    let tenths = (chance.probability() * 1000.0).round();
    let chance = format!("A chance of {} %", tenths / 10.0);
    let ruler = opened.ruler();
    match reach.farthest {
        None => format!(
            "Nothing can be said yet: five shots of one kind from one distance must count, and not lie on one line. \
             Enter groups with {}.",
            command("heads", &opened.path)
        ),
        Some(Farthest { distance, ended_by: EndedBy::Shots }) => format!(
            "{chance} is shown up to {}, the farthest you shot from; beyond it nothing is.",
            ruler.distance(distance)
        ),
        Some(Farthest { distance, ended_by: EndedBy::Chance }) => match whole(distance, ruler) {
            Some(distance) => format!(
                "{chance} is shown up to {distance}, and not farther: for their spread, or for want of shots."
            ),
            None => format!("{chance} is shown at no distance."),
        },
    }
}

/// Whole metres or yards, rounded down; nothing below one.
fn whole(distance: Millimetres, ruler: Ruler) -> Option<String> {
    let whole = if ruler.unit() == Unit::INCH {
        Millimetres::from_yards(distance.yards().floor())
    } else {
        Millimetres::from_metres(distance.metres().floor())
    };
    (whole.mm() > 0.0).then(|| ruler.distance(whole))
}

fn never_found(reach: &Reach) -> Option<String> {
    let kinds = reach.rungs.iter().flat_map(|rung| &rung.kinds);
    let missing = kinds.map(|kind| kind.without_a_hit).sum();
    (missing > 0).then(|| {
        let shots = count(missing, "shot");
        format!("Besides, {shots} without a hit and not called poor: no chance above knows of them, and each is too good.")
    })
}
