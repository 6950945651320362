//! An end as it would be typed.

use quarterturn_geometry::Index;
use quarterturn_journal::ShotEntry;

/// The line from which [`parse`](super::parse) reads these shots, in millimetres, to a thousandth.
pub fn printed(shots: &[ShotEntry]) -> String {
    shots.iter().map(group).collect::<Vec<_>>().join(", ")
}

/// The word for a mark: `i3`, `i4.5`, `i100deg`.
pub fn mark(index: Index) -> String {
    let hours = if index.hours() < 1.0 { index.hours() + 12.0 } else { index.hours() };
    if (hours * 2.0).fract() == 0.0 {
        format!("i{hours}")
    } else {
        format!("i{}deg", thousandths(index.degrees()))
    }
}

fn group(shot: &ShotEntry) -> String {
    let mut words = vec![shot.shaft.clone()];
    words.extend(shot.index_deg.map(|deg| mark(Index::from_degrees(deg))));
    words.extend(sides("", shot.x_mm.zip(shot.y_mm)));
    words.extend(sides("t", shot.lean_x_deg.zip(shot.lean_y_deg)));
    words.extend(shot.call.iter().chain(&shot.flags).filter_map(|said| letter(said)));
    words.join(" ")
}

/// `r31 u8`, `0`; `tl2.5`, `t0`; nothing where nothing was read.
fn sides(lead: &str, read: Option<(f64, f64)>) -> Vec<String> {
    let Some((x, y)) = read.map(|(x, y)| (thousandths(x), thousandths(y))) else {
        return Vec::new();
    };
    let side = |value: f64, positive: char, negative: char| {
        let letter = if value > 0.0 { positive } else { negative };
        (value != 0.0).then(|| format!("{lead}{letter}{}", value.abs()))
    };
    let said: Vec<String> = [side(x, 'r', 'l'), side(y, 'u', 'd')].into_iter().flatten().collect();
    if said.is_empty() { vec![format!("{lead}0")] } else { said }
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

fn thousandths(value: f64) -> f64 {
    (value * 1000.0).round() / 1000.0
}
