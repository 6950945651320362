//! The screen of `rehearse`.

mod worth;

use quarterturn_statistics::Estimate;
use quarterturn_tuning::{Leans, Policy};

use self::worth::{advice, buys};
use crate::rehearsal::{Alternative, Found, Range};
use crate::wording::{Ruler, Table, count, paragraph};

/// What the shares mean.
const SHARES: &str = "Open: without a verdict at the end. Kept wrongly: of those to keep, those that truly do \
    not group or land more than 1.25 tolerances off. Lost: of those that some mark would bring well inside, \
    those retired. In brackets: where the share lies with 95 % certainty, for this many dozens.";

/// How far to trust it.
const INVENTED: &str = "The dozens are invented, with a bow and faults that are common practice: yours may be \
    better or worse. Coming closer with the same tolerance asks for less, and a fault that hardly shows from \
    close may show more than its share farther out.";

/// What was found.
pub fn rehearsed(found: &[Found], ruler: Ruler) -> String {
    let Some((asked, others)) = found.split_first() else { return String::new() };
    let mut blocks = vec![heading(asked, ruler), takes(asked), paragraph("", &becomes(asked))];
    blocks.push(cases(found, ruler));
    blocks.extend(others.iter().map(|other| paragraph("", &buys(asked, other, ruler))));
    blocks.push(paragraph("", &advice(asked, others)));
    blocks.push(paragraph("", SHARES));
    blocks.push(paragraph("", INVENTED));
    blocks.join("\n\n") + "\n"
}

fn heading(asked: &Found, ruler: Ruler) -> String {
    let conditions = &asked.conditions;
    let leans = match conditions.leans {
        Leans::Read => "leans read",
        Leans::NotRead => "leans not read",
    };
    paragraph(
        "",
        &format!(
            "Rehearsed on {} invented dozens: {} at {}, tolerance {}, {} an end, {leans}. Your group: nine \
             out of ten fletched shots in a circle {} across, a spread of {} either way in each direction.",
            asked.figures.dozens,
            count(conditions.shafts.into(), "shaft"),
            ruler.distance(conditions.distance),
            ruler.read(conditions.tolerance),
            count(conditions.arrows_per_end.into(), "arrow"),
            ruler.read(conditions.group),
            ruler.estimate(conditions.spread()),
        ),
    )
}

/// What it takes, as a table.
fn takes(asked: &Found) -> String {
    let mut table = Table::new(["", "median", "nine out of ten"]);
    let evenings = format!("evenings of {} bare shots", Policy::default().evening_shots);
    let rows = [
        ("shots, the reference too", asked.shots),
        ("ends", asked.ends),
        (&evenings, asked.evenings),
    ];
    for (what, Range { median, from, to }) in rows {
        table.row([what.to_owned(), format!("{median:>6}"), format!("{from} to {to}")]);
    }
    table.lines().collect::<Vec<_>>().join("\n")
}

/// What becomes of the shafts.
fn becomes(asked: &Found) -> String {
    let figures = &asked.figures;
    format!(
        "Open at the end: {} of the shafts. Kept wrongly: {}. Lost: {}.",
        share_said(figures.open.as_ref()),
        share_said(figures.wrong.as_ref()),
        share_said(figures.lost.as_ref())
    )
}

/// All cases side by side.
fn cases(found: &[Found], ruler: Ruler) -> String {
    let mut table = Table::new(["", "shots", "evenings", "open", "kept wrongly", "lost"]);
    for one in found {
        let short = |share: &Option<Estimate>| {
            share.map_or("-".to_owned(), |share| format!("{} %", whole(share.value)))
        };
        table.row([
            name(one, ruler),
            one.shots.median.to_string(),
            one.evenings.median.to_string(),
            short(&one.figures.open),
            short(&one.figures.wrong),
            short(&one.figures.lost),
        ]);
    }
    table.lines().collect::<Vec<_>>().join("\n")
}

fn name(one: &Found, ruler: Ruler) -> String {
    match one.what {
        Alternative::AsAsked => "as asked".to_owned(),
        Alternative::Closer => format!("from {}", ruler.distance(one.conditions.distance)),
        Alternative::Wider => format!("tolerance {}", ruler.read(one.conditions.tolerance)),
        Alternative::ReadLeans => "with leans read".to_owned(),
    }
}

/// "3 % (2 to 5 %)".
fn share_said(share: Option<&Estimate>) -> String {
    share.map_or("not known, there was none".to_owned(), |Estimate { value, interval, .. }| {
        let [value, lower, upper] = [*value, interval.lower, interval.upper].map(whole);
        format!("{value} % ({lower} to {upper} %)")
    })
}

/// Whole per cent.
fn whole(share: f64) -> f64 {
    (share * 100.0).round()
}

#[cfg(test)]
mod tests;
