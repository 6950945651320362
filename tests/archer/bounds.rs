//! What the figures of each world must stay within.
//!
//! The bounds are those of a test run of few sessions: what was measured over many, and beyond it two or three
//! standard errors of so few. They see a decision go wrong, not a figure slip; for that, play many.

use super::figures::Figures;

/// The most that the figures of one world may be, and the least that it asks for the bow.
pub struct Bounds {
    pub world: &'static str,
    shots_per_shaft: f64,
    wrong_percent: f64,
    lost_percent: f64,
    open_percent: f64,
    bow: Bow,
}

/// Whether the bow should be asked for.
enum Bow {
    /// Seldom: bare shafts land near enough.
    Seldom,
    /// In every session, and early in some of them.
    Always,
}

impl Bounds {
    /// Every figure of `figures` that is beyond its bound, in words.
    pub fn broken(&self, figures: &Figures) -> Vec<String> {
        let (least_early, least_bow, most_bow) = match self.bow {
            Bow::Seldom => (0.0, 0.0, 25.0),
            Bow::Always => (75.0, 100.0, 100.0),
        };
        let held = [
            ("shots a shaft", figures.shots_per_shaft.value, 0.0, self.shots_per_shaft),
            ("% wrong keeps", figures.wrong.percent(), 0.0, self.wrong_percent),
            ("% lost shafts", figures.lost.percent(), 0.0, self.lost_percent),
            ("% open", figures.open.percent(), 0.0, self.open_percent),
            ("% unfinished", figures.unfinished.percent(), 0.0, 0.0),
            ("% bow asked for", figures.bow.percent(), least_bow, most_bow),
            ("% bow asked for early", figures.bow_early.percent(), least_early, 100.0),
            ("% bow asked for falsely", figures.bow_false.percent(), 0.0, 10.0),
            ("% of 90 % regions hold the truth", figures.said.covered.percent(), 70.0, 100.0),
        ];
        let beyond = held.iter().filter(|(_, value, least, most)| value < least || value > most);
        let say = |(what, value, least, most): &(&str, f64, f64, f64)| {
            format!("{}: {value:.1} {what}, expected {least} to {most}", self.world)
        };
        beyond.map(say).collect()
    }
}

/// Measured over 60 sessions a world, 2026-11-25, above each: shots a shaft, wrong, lost, open in per cent.
pub const BOUNDS: [Bounds; 8] = [
    // 5.8, 3.9, 0.2, 3.3
    bounds("ordinary", [9.0, 11.0, 3.0, 12.0], Bow::Seldom),
    // 4.4, 6.0, 0.0, 2.8
    bounds("steady", [8.0, 20.0, 5.0, 15.0], Bow::Seldom),
    // 9.5, 1.7, 0.7, 6.5
    bounds("shaky", [15.0, 10.0, 5.0, 25.0], Bow::Seldom),
    // 9.6, 3.2, 0.0, 5.3
    bounds("lean not read", [15.0, 12.0, 5.0, 30.0], Bow::Seldom),
    // 5.8, 3.0, 0.2, 3.3
    bounds("lean bends back", [10.0, 12.0, 5.0, 25.0], Bow::Seldom),
    // 5.1, 2.6, 0.0, 0.1
    bounds("good dozen", [9.0, 10.0, 5.0, 10.0], Bow::Seldom),
    // 6.5, 2.0, 0.3, 8.5
    bounds("bow 60 mm off", [12.0, 12.0, 5.0, 40.0], Bow::Always),
    // What only the bow keeps out of reach stays open.
    bounds("bow left", [18.0, 12.0, 15.0, 100.0], Bow::Always),
];

const fn bounds(world: &'static str, most: [f64; 4], bow: Bow) -> Bounds {
    let [shots_per_shaft, wrong_percent, lost_percent, open_percent] = most;
    Bounds { world, shots_per_shaft, wrong_percent, lost_percent, open_percent, bow }
}
