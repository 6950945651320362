//! Advice to stop for tonight.

use quarterturn_tuning::Pause;

use super::count;

/// Why to stop: a phrase without a full stop.
pub fn pause(pause: Pause) -> String {
    match pause {
        Pause::EnoughShots { bare_shots } => {
            format!("{} this evening: enough for tonight", count(bare_shots, "bare shot"))
        }
    }
}
