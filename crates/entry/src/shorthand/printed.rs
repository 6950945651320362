//! An end as it would be typed.

use quarterturn_geometry::Index;
use quarterturn_journal::ShotEntry;

use super::word::thousandths;
use crate::quantity::Unit;

/// The line from which [`parse`](super::parse) reads these shots where lengths are in `unit`, to a thousandth of a
/// millimetre or a degree.
///
/// What was read by clock, tape or eye is printed as it was read.
pub fn printed(shots: &[ShotEntry], unit: &'static Unit) -> String {
    // A thousandth of a millimetre is no round number in another unit.
    let symbol = if unit == Unit::MILLIMETRE { "" } else { Unit::MILLIMETRE.symbol };
    shots.iter().map(|shot| group(shot, symbol)).collect::<Vec<_>>().join(", ")
}

/// The word for a mark: `i3`, `i4.5`, `i100deg`.
pub fn mark(index: Index) -> String {
    let hours = hours(index);
    if (hours * 2.0).fract() == 0.0 {
        format!("i{hours}")
    } else {
        format!("i{}deg", thousandths(index.degrees()))
    }
}

fn group(shot: &ShotEntry, symbol: &str) -> String {
    let mut words = vec![shot.shaft.clone()];
    words.extend(shot.index_deg.map(|deg| mark(Index::from_degrees(deg))));
    words.extend(hit(shot, symbol));
    words.extend(tail(shot));
    words.extend(shot.call.iter().chain(&shot.flags).filter_map(|said| letter(said)));
    words.join(" ")
}

fn hit(shot: &ShotEntry, symbol: &str) -> Vec<String> {
    match shot.out_mm.zip(shot.toward_deg) {
        Some((mm, deg)) => vec![format!("{}h{}{symbol}", clock(deg), thousandths(mm))],
        None => sides("", shot.x_mm.zip(shot.y_mm), symbol),
    }
}

/// By tape, by eye or in degrees, as it was read.
fn tail(shot: &ShotEntry) -> Vec<String> {
    let tape = shot.tail_x_mm.zip(shot.tail_y_mm);
    let seen = shot.tail_seen.as_deref().map(|seen| seen_tail(seen, shot.tail_toward_deg));
    let mut words = match tape {
        _ if seen.is_some() => seen.into_iter().collect(),
        Some(tape) => sides("t", Some(tape), Unit::MILLIMETRE.symbol),
        None => sides("t", shot.lean_x_deg.zip(shot.lean_y_deg), ""),
    };
    words.extend(shot.protruding_mm.map(|mm| {
        let symbol = Unit::MILLIMETRE.symbol;
        format!("s{}{symbol}", thousandths(mm))
    }));
    words
}

/// `tn`, `tl`, `tls`, `t10hm`.
fn seen_tail(seen: &str, toward_deg: Option<f64>) -> String {
    let Some(deg) = toward_deg else { return "tn".to_owned() };
    let toward = match deg {
        0.0 => "u".to_owned(),
        90.0 => "r".to_owned(),
        180.0 => "d".to_owned(),
        270.0 => "l".to_owned(),
        _ => format!("{}h", clock(deg)),
    };
    let amount = match seen {
        "some" => "s",
        "much" => "m",
        _ => "",
    };
    format!("t{toward}{amount}")
}

/// `r31 u8`, `0`; `tl2.5`, `t0`; nothing where nothing was read.
fn sides(lead: &str, read: Option<(f64, f64)>, symbol: &str) -> Vec<String> {
    let Some((x, y)) = read.map(|(x, y)| (thousandths(x), thousandths(y))) else {
        return Vec::new();
    };
    let side = |value: f64, positive: char, negative: char| {
        let letter = if value > 0.0 { positive } else { negative };
        (value != 0.0).then(|| format!("{lead}{letter}{}{symbol}", value.abs()))
    };
    let said: Vec<String> = [side(x, 'r', 'l'), side(y, 'u', 'd')].into_iter().flatten().collect();
    match (said.is_empty(), lead) {
        (false, _) => said,
        // The spot needs no unit; a tail's says how it was read.
        (true, "") => vec!["0".to_owned()],
        (true, _) => vec![format!("{lead}0{symbol}")],
    }
}

/// Hours from 1 to below 13.
fn hours(index: Index) -> f64 {
    if index.hours() < 1.0 { index.hours() + 12.0 } else { index.hours() }
}

/// The hour of a direction, fine enough to come back.
fn clock(deg: f64) -> f64 {
    (hours(Index::from_degrees(deg)) * 100_000.0).round() / 100_000.0
}

fn letter(said: &str) -> Option<String> {
    let letter = match said {
        "good" => "g",
        "poor" => "p",
        "wind" => "w",
        "contact" => "k",
        "nock-moved" => "n",
        "doubtful" => "q",
        "lost" => "x",
        "broken" => "b",
        _ => return None,
    };
    Some(letter.to_owned())
}
