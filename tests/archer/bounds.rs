//! What the figures of each world must stay within, with what was measured beside it.

use super::figures::Figures;

/// The most that a figure of one world may be.
pub struct Bounds {
    pub world: &'static str,
    pub shots_per_shaft: f64,
    pub wrong_percent: f64,
    pub lost_percent: f64,
    pub open_percent: f64,
}

impl Bounds {
    /// Every figure of `figures` that is beyond its bound, in words.
    pub fn broken(&self, figures: &Figures) -> Vec<String> {
        let held = [
            ("shots a shaft", figures.shots_per_shaft.value, self.shots_per_shaft),
            ("% wrong keeps", figures.wrong.percent(), self.wrong_percent),
            ("% lost shafts", figures.lost.percent(), self.lost_percent),
            ("% open", figures.open.percent(), self.open_percent),
            ("% unfinished", figures.unfinished.percent(), 0.0),
        ];
        let beyond = held.iter().filter(|(_, value, most)| value > most);
        let say = |(what, value, most): &(&str, f64, f64)| {
            format!("{}: {value:.1} {what}, at most {most} expected", self.world)
        };
        beyond.map(say).collect()
    }
}

/// Loose enough for the few sessions of an ordinary test run, and close enough to see a decision go wrong.
pub const BOUNDS: [Bounds; 8] = [
    // To be set after measuring.
    bounds("ordinary", 8.0, 8.0, 4.0, 6.0),
    bounds("steady", 8.0, 8.0, 4.0, 6.0),
    bounds("shaky", 8.0, 8.0, 4.0, 6.0),
    bounds("lean not read", 8.0, 8.0, 4.0, 6.0),
    bounds("lean bends back", 8.0, 8.0, 4.0, 6.0),
    bounds("good dozen", 8.0, 8.0, 4.0, 6.0),
    bounds("bow 60 mm off", 8.0, 8.0, 4.0, 6.0),
    bounds("bow left", 8.0, 8.0, 4.0, 6.0),
];

const fn bounds(world: &'static str, shots: f64, wrong: f64, lost: f64, open: f64) -> Bounds {
    Bounds {
        world,
        shots_per_shaft: shots,
        wrong_percent: wrong,
        lost_percent: lost,
        open_percent: open,
    }
}
