//! The screen of `cut`: what comes off which end.

use quarterturn_bench::Trim;
use quarterturn_tuning::ShaftName;

use crate::opened::Opened;
use crate::wording::{self, Table, all, command, paragraph};
use crate::workshop::{CutList, Gate, Planned};

const READ_IT: &str = "The stop stands that far from the end, on the piece that falls off: the blade takes the rest. \
    \"Squared\" is too little to saw: take it off squaring the end. Mark the number and the ink mark \
    anew before the end that carries them is cut, and record what came off and the new length.";

/// The list, and whether more than one may be cut yet.
pub fn cut(opened: &Opened, list: &CutList) -> String {
    let mut blocks = vec![paragraph("", &heading(list))];
    if !list.planned.is_empty() {
        blocks.push(table(list));
        blocks.push(paragraph("", READ_IT));
        blocks.extend(guessed(list));
        blocks.push(paragraph("First: ", &gate(&list.gate)));
    }
    blocks.extend(named("Cut already: ", "", &list.done));
    let short =
        list.too_short.iter().map(|(shaft, length)| format!("{shaft} ({:.1} mm)", length.mm()));
    let short: Vec<String> = short.collect();
    blocks.extend(
        (!short.is_empty()).then(|| paragraph("Too short: ", &format!("{}.", short.join(", ")))),
    );
    let bench = command("bench", &opened.path);
    let measure = format!(". Enter them: {bench} NAME --length 762mm");
    blocks.extend(named("Length not known: ", &measure, &list.unmeasured));
    blocks.push(paragraph("Caution: ", wording::CUTTING));
    blocks.push(format!("Then, for each: {bench} NAME --cut-point LENGTH"));
    blocks.join("\n\n") + "\n"
}

fn heading(list: &CutList) -> String {
    format!(
        "To {:.1} mm, with a cut {:.1} mm wide and {:.1} mm left on for squaring: {}.",
        list.target.mm(),
        list.saw.kerf.mm(),
        list.saw.squaring.mm(),
        wording::count(list.planned.len(), "shaft")
    )
}

fn table(list: &CutList) -> String {
    let mut table =
        Table::new(["shaft", "length mm", "off the point mm", "stop", "off the nock mm", "stop"]);
    for Planned { shaft, length, plan, .. } in &list.planned {
        let ([point, point_stop], [nock, nock_stop]) = (trim(plan.point), trim(plan.nock));
        let length = format!("{:.1}", length.mm());
        table.row([shaft.to_string(), length, point, point_stop, nock, nock_stop]);
    }
    table.lines().collect::<Vec<_>>().join("\n")
}

fn trim(trim: Option<Trim>) -> [String; 2] {
    let Some(Trim { off, stop }) = trim else { return ["-", "-"].map(str::to_owned) };
    let stop = stop.map_or_else(|| "squared".to_owned(), |stop| format!("{:.1}", stop.mm()));
    [format!("{:.1}", off.mm()), stop]
}

/// The shafts whose ends were not both measured.
fn guessed(list: &CutList) -> Option<String> {
    let guessed = list.planned.iter().filter(|planned| !planned.ends_known);
    let guessed: Vec<&ShaftName> = guessed.map(|planned| &planned.shaft).collect();
    let text =
        format!("the ends of {} were not measured: any is as good as the other.", all(&guessed));
    (!guessed.is_empty()).then(|| paragraph("Ends: ", &text))
}

fn gate(gate: &Gate) -> String {
    match gate {
        Gate::CutOne => {
            "cut one, fit it, shoot it bare, and cut the rest only when its length is right."
                .to_owned()
        }
        Gate::ShootIt(cut) => {
            format!("cut and not shot yet: {}. Shoot it bare before you cut the rest.", all(cut))
        }
        Gate::CutTheRest(shot) => format!("cut and shot: {}. Cut the rest.", all(shot)),
    }
}

fn named(lead: &str, after: &str, names: &[ShaftName]) -> Option<String> {
    let after = if after.is_empty() { "." } else { after };
    (!names.is_empty()).then(|| paragraph(lead, &format!("{}{after}", all(names))))
}
