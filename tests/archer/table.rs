//! The figures of the worlds, for people to read.

use super::calibration::{BINS, Calibration};
use super::figures::Figures;
use super::session::Session;

const COLUMNS: [&str; 13] = [
    "world",
    "sessions",
    "shots/shaft",
    "wrong",
    "lost",
    "open",
    "bow",
    "early",
    "false",
    "ends",
    "turns/shaft",
    "region",
    "unfinished",
];
const WIDTHS: [usize; 13] = [16, 8, 12, 7, 7, 7, 7, 7, 7, 13, 12, 7, 10];

/// The head of the table.
pub fn head() -> String {
    line(&COLUMNS.map(str::to_owned))
}

/// One world's line.
pub fn row(figures: &Figures) -> String {
    line(&[
        figures.world.to_owned(),
        figures.sessions.to_string(),
        figures.shots_per_shaft.to_string(),
        figures.wrong.to_string(),
        figures.lost.to_string(),
        figures.open.to_string(),
        figures.bow.to_string(),
        figures.bow_early.to_string(),
        figures.bow_false.to_string(),
        figures.ends.to_string(),
        figures.turns_per_shaft.to_string(),
        figures.said.covered.to_string(),
        figures.unfinished.to_string(),
    ])
}

/// One world's calibration: what was said of `within` beside what was true, in bins.
pub fn calibration(figures: &Figures) -> String {
    let answers = |what: &str, said: &Calibration| {
        let cells = |of: &dyn Fn(usize) -> String| {
            (0..BINS).map(|bin| format!("{:>7}", of(bin))).collect::<Vec<_>>().concat()
        };
        let number = |value: f64| if value.is_nan() { "-".into() } else { format!("{value:.3}") };
        format!(
            "{}: within in {what} (90 % regions held the truth in {})\n  cases{}\n  said {}\n  true {}\n",
            figures.world,
            said.covered,
            cells(&|bin| said.bins[bin].inside.of.to_string()),
            cells(&|bin| number(said.bins[bin].said())),
            cells(&|bin| number(said.bins[bin].inside.ratio())),
        )
    };
    let every = answers("every answer after the sixth end", &figures.said);
    every + &answers("the last answer", &figures.said_last)
}

/// Every wrong keep and lost shaft, with its seed.
pub fn faults(world: &str, sessions: &[Session]) -> String {
    let mut lines = Vec::new();
    for session in sessions {
        for fate in &session.fates {
            let fault = match () {
                () if fate.is_wrong_keep() => "wrong",
                () if fate.is_lost() => "lost",
                () => continue,
            };
            lines.push(format!("{fault}: {world}, seed {}, {fate}\n", session.seed));
        }
    }
    lines.concat()
}

fn line(cells: &[String; COLUMNS.len()]) -> String {
    let padded = cells.iter().zip(WIDTHS).map(|(cell, width)| format!("{cell:>width$}"));
    padded.collect::<Vec<_>>().join("  ")
}
