//! The screen of `rehearse`.

use quarterturn_statistics::Estimate;
use quarterturn_tuning::{Leans, Policy};

use crate::rehearsal::{Alternative, Found, Range};
use crate::wording::{Ruler, Table, count, either, paragraph};

/// Fewer open shafts than this are nothing to do something about, a share.
const FEW_OPEN: f64 = 0.05;

/// An alternative is worth its name when it halves what is open, or saves this share of the shots.
const WORTH_SAVING: f64 = 0.2;

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

/// What one alternative buys, in a sentence.
fn buys(asked: &Found, other: &Found, ruler: Ruler) -> String {
    let (before, after) = (asked.shots.median, other.shots.median);
    let shots = match after.cmp(&before) {
        std::cmp::Ordering::Less => format!("saves about {}", count(before - after, "shot")),
        std::cmp::Ordering::Equal => "takes as many shots".to_owned(),
        std::cmp::Ordering::Greater => {
            format!("takes about {} more", count(after - before, "shot"))
        }
    };
    let open = |one: &Found| one.figures.open.map_or(0.0, |share| share.value);
    let leaves = format!("{} % open instead of {} %", whole(open(other)), whole(open(asked)));
    let what = match other.what {
        Alternative::AsAsked => "Nothing else".to_owned(),
        Alternative::Closer => {
            let asked_there = asked.conditions.distance / other.conditions.distance;
            format!(
                "Coming closer, to {} with the same tolerance (as if it were {} from where you are),",
                ruler.distance(other.conditions.distance),
                ruler.estimate(asked.conditions.tolerance * asked_there)
            )
        }
        Alternative::Wider => {
            format!("Accepting a tolerance of {}", ruler.read(other.conditions.tolerance))
        }
        Alternative::ReadLeans => "Reading how the arrows lean".to_owned(),
    };
    format!("{what} {shots} and leaves {leaves}.")
}

/// Whether to do something else, in a sentence.
fn advice(asked: &Found, others: &[Found]) -> String {
    let open = |one: &Found| one.figures.open.map_or(0.0, |share| share.value);
    let helps = |other: &&Found| {
        let saved = 1.0 - other.shots.median as f64 / asked.shots.median.max(1) as f64;
        open(other) <= open(asked) / 2.0 || saved >= WORTH_SAVING
    };
    let helpful: Vec<_> = others.iter().filter(helps).map(|other| to_do(other.what)).collect();
    if open(asked) <= FEW_OPEN {
        "Shoot it as you asked: hardly a shaft stays open, and there is no need to come closer or to ask \
         for less."
            .to_owned()
    } else if helpful.is_empty() {
        "Nothing of this helps much: what would is a smaller group of your own.".to_owned()
    } else {
        let ever = if helpful.len() > 1 { "whichever" } else { "if" };
        format!("It is worth it to {}, {ever} your hunting allows.", either(helpful))
    }
}

const fn to_do(what: Alternative) -> &'static str {
    match what {
        Alternative::AsAsked => "shoot it as you asked",
        Alternative::Closer => "come closer",
        Alternative::Wider => "accept the wider tolerance",
        Alternative::ReadLeans => "read the leans",
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
