//! The screen of `heads`: where broadheads land from field points.

use quarterturn_geometry::{Millimetres, Offset};
use quarterturn_journal::Quiver;
use quarterturn_tuning::{AtDistance, Comparison, Difference};

use super::since_the_bow;
use crate::opened::Opened;
use crate::wording::{self, Ruler, Table, command, paragraph, visible};

/// What the columns mean.
const COLUMNS: &str = "Shots: field points and broadheads that count, without the cold first shots. Then where the \
    centre of the broadheads lies from that of the field points; the half axes of the ellipse that holds the truth at \
    95 %; and how far the centres are apart at least and at most, at 95 %.";

/// What the columns of the second table mean.
const PAIRS: &str = "each arrow with its head: where the broadhead takes it from where the other arrows' heads take them, \
    and how far that is at least and at most, at 95 %; what all share is not in it. Near: within what you call together.";

/// Every broadhead against the field points of the same distances.
pub fn heads(
    opened: &Opened,
    compared: &[Comparison],
    together: Option<Millimetres>,
    quiver: &Quiver,
) -> String {
    let ruler = opened.ruler();
    let mut blocks = if compared.is_empty() {
        vec![paragraph("", &nothing_shot(opened))]
    } else {
        vec![table(compared, ruler), paragraph("", COLUMNS), verdicts(compared, together, ruler)]
    };
    blocks.extend(compared.iter().flat_map(|one| pairs(one, quiver, ruler)));
    blocks.extend(since_the_bow(opened).map(|text| paragraph("", &text)));
    let cautions = wording::WITH_BROADHEADS.iter().map(|caution| paragraph("  - ", caution));
    blocks.push(cautions.collect::<Vec<_>>().join("\n"));
    blocks.push(format!("Then: {}", command("reach", &opened.path)));
    blocks.join("\n\n") + "\n"
}

fn nothing_shot(opened: &Opened) -> String {
    let heads = command("heads", &opened.path);
    format!(
        "No broadhead was shot beside field points yet, or only as a cold first shot. Enter a group of each from the \
         same distance: {heads} \"7 r3 u2, 9 l1 d4\" for field points, and the same with --head NAME for broadheads."
    )
}

fn table(compared: &[Comparison], ruler: Ruler) -> String {
    let lands = format!("they land ({})", ruler.unit().symbol);
    let mut table = Table::new(["head", "from", "shots", &lands, "half axes", "apart"]);
    for comparison in compared {
        for at in &comparison.distances {
            let [lands, axes, apart] = at.difference.as_ref().map_or_else(
                || ["-", "-", "-"].map(str::to_owned),
                |difference| cells(difference, ruler),
            );
            let from = ruler.distance(at.distance);
            let shots = format!("{} and {}", at.field, at.broadheads);
            table.row([visible(&comparison.head.to_string()), from, shots, lands, axes, apart]);
        }
    }
    table.lines().collect::<Vec<_>>().join("\n")
}

fn cells(difference: &Difference, ruler: Ruler) -> [String; 3] {
    let bare = |mm: f64| ruler.estimate_bare(Millimetres::new(mm));
    let centre = difference.estimate.value;
    let (major, minor) = difference.region.half_axes();
    [
        ruler.miss_bare(Offset::new(centre.x, centre.y)),
        format!("{} by {}", bare(major), bare(minor)),
        format!("{} to {}", bare(difference.at_least_mm), bare(difference.at_most.at_most)),
    ]
}

/// Every arrow with its head, and what is said of them, for one kind of head.
fn pairs(comparison: &Comparison, quiver: &Quiver, ruler: Ruler) -> Vec<String> {
    let heading = format!("from others ({})", ruler.unit().symbol);
    let mut table = Table::new(["from", "arrow", "carries", "shots", &heading, "off", ""]);
    let mut said = Vec::new();
    for at in &comparison.distances {
        let judged = at.pairs.iter().filter_map(|pair| Some((pair, pair.from_the_others?)));
        for (place, (pair, beside)) in judged.enumerate() {
            let from = if place == 0 { ruler.distance(at.distance) } else { String::new() };
            let value = beside.estimate.value;
            let shots = format!("{} and {}", pair.field, pair.broadheads);
            let lands = ruler.miss_bare(Offset::new(value.x, value.y));
            let (off, verdict) = (wording::off(&beside, ruler), wording::beside_others(&beside));
            let carries = pair.piece.as_deref().map(visible).unwrap_or_default();
            table.row([from, pair.arrow.to_string(), carries, shots, lands, off, verdict.into()]);
        }
        said.extend(wording::pairs(at, ruler).map(|said| paragraph("", &said)));
    }
    let rows: Vec<String> = table.lines().collect();
    if rows.len() == 1 {
        return Vec::new();
    }
    let head = visible(&comparison.head.to_string());
    let meaning = paragraph("", &format!("{head}, {PAIRS}"));
    let said = (!said.is_empty()).then(|| said.join("\n"));
    [rows.join("\n"), meaning].into_iter().chain(weighed(comparison, quiver)).chain(said).collect()
}

/// What was entered of the single heads.
fn weighed(comparison: &Comparison, quiver: &Quiver) -> Option<String> {
    let pairs = comparison.distances.iter().flat_map(|at| &at.pairs);
    let mut pieces: Vec<&str> = pairs.filter_map(|pair| pair.piece.as_deref()).collect();
    pieces.sort_unstable();
    pieces.dedup();
    let heads: Vec<String> =
        pieces.into_iter().filter_map(|piece| quiver.head(piece)).map(wording::head_on).collect();
    let said =
        format!("The heads, what they weigh and how far they run out: {}.", heads.join("; "));
    (!heads.is_empty()).then(|| paragraph("", &said))
}

fn verdicts(compared: &[Comparison], together: Option<Millimetres>, ruler: Ruler) -> String {
    let mut lines = Vec::new();
    for Comparison { head, distances, growth } in compared {
        let head = visible(&head.to_string());
        let said = |at: &AtDistance| {
            let said = wording::head_verdict(at, together, ruler);
            paragraph("", &format!("{head} from {}: {said}.", ruler.distance(at.distance)))
        };
        lines.extend(distances.iter().map(said));
        let grown = growth.map(|growth| wording::growth(&growth, together, ruler));
        lines.extend(grown.map(|said| paragraph("", &format!("{head}: {said}."))));
    }
    if together.is_none() {
        let ask = "Say how near is together for you, and it is judged: --together 50mm. Many hunters accept 5 cm at 37 m \
            (40 yd): common practice, from memory.";
        lines.push(paragraph("", ask));
    }
    lines.join("\n")
}
