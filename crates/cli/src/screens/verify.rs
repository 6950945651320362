//! The screen of `verify`: finished arrows by number, the sight, and the shape of the group.

use quarterturn_geometry::{Millimetres, Offset};
use quarterturn_tuning::{ShaftReport, Verified, VerifiedArrow};

use super::since_the_bow;
use crate::opened::Opened;
use crate::wording::{self, Ruler, Table, command, paragraph};

/// What the columns mean.
const COLUMNS: &str = "Shots with field points that count. Where their middle lies from the middle of the other arrows, \
    so that the sight is not in it, and how far that is at least and at most, at 95 %; near: the promise is kept. Bare: where the bare shaft was \
    to land at its mark, from the reference; vanes leave a part of that.";

/// Every finished arrow beside the others, where they land together, and what their group looks like.
pub fn verify(
    opened: &Opened,
    verified: &[Verified],
    promised: &[ShaftReport],
    eye_to_pin: Option<Millimetres>,
) -> String {
    let ruler = opened.ruler();
    let mut blocks = Vec::new();
    if verified.is_empty() {
        blocks.push(paragraph("", &nothing_shot(opened)));
    } else {
        blocks.push(paragraph("", &promise(opened)));
        blocks.push(table(opened, verified, promised));
        blocks.push(paragraph("", COLUMNS));
        blocks.extend(off(verified, ruler));
        blocks.push(sight(opened, verified, eye_to_pin));
        blocks.extend(wording::group_shapes(verified, ruler).map(|said| paragraph("", &said)));
    }
    blocks.extend(since_the_bow(opened).map(|text| paragraph("", &text)));
    blocks.push(format!("Then: {}", command("heads", &opened.path)));
    blocks.join("\n\n") + "\n"
}

fn nothing_shot(opened: &Opened) -> String {
    let heads = command("heads", &opened.path);
    format!(
        "No finished arrow was shot with field points yet, or only as a cold first shot. Shoot each three times, one \
         arrow to a spot, and enter every round: {heads} --distance 18m \"7 r3 u2, 9 l1 d4\"."
    )
}

fn promise(opened: &Opened) -> String {
    let setup = &opened.journal.state().history().setup;
    let ruler = opened.ruler();
    format!(
        "The bare shafts promised arrows within {} of each other's middle at {}, and in proportion farther off.",
        ruler.read(setup.tolerance),
        ruler.distance(setup.distance)
    )
}

fn table(opened: &Opened, verified: &[Verified], promised: &[ShaftReport]) -> String {
    let ruler = opened.ruler();
    let heading = format!("from others ({})", ruler.unit().symbol);
    let mut table = Table::new(["from", "arrow", "shots", &heading, "off", "", "bare"]);
    for at in verified {
        for (place, arrow) in at.arrows.iter().enumerate() {
            let from = if place == 0 { ruler.distance(at.distance) } else { String::new() };
            let report = promised.iter().find(|report| report.shaft == arrow.arrow);
            let there = opened.journal.state().history().setup.distance;
            // The model speaks of one distance.
            let same = (at.distance - there).mm().abs() < 1000.0;
            let bare =
                report.filter(|_| same).map_or_else(String::new, |report| bare(report, ruler));
            let [lands, off, said] = cells(arrow, ruler);
            table.row([
                from,
                arrow.arrow.to_string(),
                arrow.shots.to_string(),
                lands,
                off,
                said,
                bare,
            ]);
        }
    }
    table.lines().collect::<Vec<_>>().join("\n")
}

fn cells(arrow: &VerifiedArrow, ruler: Ruler) -> [String; 3] {
    let Some(beside) = arrow.from_the_others else { return ["-", "-", ""].map(str::to_owned) };
    let value = beside.estimate.value;
    [
        ruler.miss_bare(Offset::new(value.x, value.y)),
        wording::off(&beside, ruler),
        wording::beside_others(&beside).to_owned(),
    ]
}

fn bare(report: &ShaftReport, ruler: Ruler) -> String {
    ruler.miss_bare(report.miss.mean)
}

/// What cannot be said of arrows, and those that are off.
fn off(verified: &[Verified], ruler: Ruler) -> Option<String> {
    let lines: Vec<String> = verified
        .iter()
        .flat_map(|at| wording::verified(at, ruler))
        .map(|said| paragraph("", &said))
        .collect();
    (!lines.is_empty()).then(|| lines.join("\n"))
}

fn sight(opened: &Opened, verified: &[Verified], eye_to_pin: Option<Millimetres>) -> String {
    let ruler = opened.ruler();
    let said = verified.iter().map(|at| paragraph("", &wording::sight(at, eye_to_pin, ruler)));
    let mut lines: Vec<String> = said.collect();
    let bow = command("bow", &opened.path);
    lines.push(paragraph("", &format!("{} {bow} --note \"pin\" --part sight.", wording::SIGHT)));
    lines.join("\n")
}
