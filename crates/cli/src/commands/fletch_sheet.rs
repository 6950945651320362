//! `paper fletch`: where the vanes go, to print.

use quarterturn_geometry::Millimetres;
use quarterturn_tuning::ShaftReport;

use crate::failure::{Failure, Kind};
use crate::fletching::{Fletching, Kept, VanesAsked};
use crate::opened::Opened;
use crate::paper::{self, FletchCell, FletchHead, Page, Sheet};
use crate::wording;

/// The sheets of the kept shafts; the others are named on them.
pub fn fletch_sheet(
    opened: &Opened,
    page: Page,
    diameter: Millimetres,
    asked: VanesAsked,
) -> Result<Vec<Sheet>, Failure> {
    let advice = opened.advice();
    let fletching = Fletching::of(&advice, asked);
    if fletching.kept.is_empty() {
        let see = wording::command("fletch", &opened.path);
        let what = "no shaft is to be fletched: none is both kept and bare";
        return Err(Failure::new(Kind::Data, what).hinting([format!("see: {see}")]));
    }
    let head =
        FletchHead { journal: &opened.name(), diameter, cock: asked.cock, told: told(&fletching) };
    let cells: Vec<FletchCell<'_>> = fletching.kept.iter().map(cell).collect();
    Ok(paper::fletch_sheet(page, &head, &cells))
}

fn cell<'a>(kept: &'a Kept<'_>) -> FletchCell<'a> {
    FletchCell {
        shaft: kept.report.shaft.as_str(),
        mark: kept.report.index,
        from_mark: &kept.from_mark,
    }
}

/// How the sheet is read, in which order it is done, and who is not on it, in lines that fit.
fn told(fletching: &Fletching<'_>) -> Vec<String> {
    let missing = |lead: &str, reports: &[&ShaftReport]| {
        let names = wording::all(reports.iter().map(|report| &report.shaft));
        (!reports.is_empty()).then(|| format!("{lead}: {names}."))
    };
    let said = [
        Some(READ_THE_SHEET.to_owned()),
        Some(wording::how_to_fletch(fletching.asked)),
        missing("Not here, still open", &fletching.open),
        missing("Not here, retired", &fletching.retired),
    ];
    said.into_iter().flatten().flat_map(|said| wording::lines(&said, SHEET_LETTERS)).collect()
}

/// How many letters of the sheet's text fit on a line of either paper.
const SHEET_LETTERS: usize = 135;

const READ_THE_SHEET: &str = "Dial: the arrow from behind on the string, disc = ink mark, heavy line with a ring = cock \
    vane. Strip: wrap it round the shaft, arrow toward the point, M on the ink mark; C is the cock vane, the lines are \
    where vanes stand.";
