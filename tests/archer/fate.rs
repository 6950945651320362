//! What became of a shaft, held against the truth.

use std::fmt;

use super::next::{Judged, Verdict};
use super::player::Player;
use super::world::TOLERANCE_MM;

/// A verdict and what is true of its shaft.
pub struct Fate {
    pub verdict: Verdict,
    /// It groups, and some hour puts it well inside the tolerance.
    pub usable: bool,
    /// It does not group, or misses by clearly more than the tolerance at the index judged.
    pub bad: bool,
    /// The whole story, for a person who wants to know why.
    story: String,
}

impl Fate {
    pub fn of(judged: &Judged, player: &Player<'_>) -> Self {
        let miss_mm = |index_deg| player.miss(&judged.shaft, index_deg).length();
        let here_mm = miss_mm(judged.index_deg);
        let best_mm = (0..12).map(|hour| miss_mm(f64::from(hour) * 30.0)).fold(f64::MAX, f64::min);
        let groups = player.groups(&judged.shaft);
        let story = format!(
            "shaft {} {:?} at {} deg after {} shots, within {:.3} ({}); in truth {here_mm:.0} mm, \
             {best_mm:.0} mm at its best hour{}",
            judged.shaft,
            judged.verdict,
            judged.index_deg,
            judged.shots_total,
            judged.within,
            judged.reason,
            if groups { "" } else { ", does not group" },
        );
        Self {
            verdict: judged.verdict,
            usable: groups && best_mm <= 0.75 * TOLERANCE_MM,
            bad: !groups || here_mm > 1.25 * TOLERANCE_MM,
            story,
        }
    }

    pub fn is_wrong_keep(&self) -> bool {
        self.bad && self.verdict == Verdict::Keep
    }

    pub fn is_lost(&self) -> bool {
        self.usable && self.verdict == Verdict::Retire
    }
}

impl fmt::Display for Fate {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.story)
    }
}
