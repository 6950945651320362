//! Whether what the bench named goes with what was found at the butt.

use quarterturn_geometry::Index;

use super::{count, mark, percent};
use crate::workshop::{BenchSide, FEWEST_TURNED, Found, Predicted};

/// From here on, chance is no longer thought to have done it.
const RARE: f64 = 0.05;

/// The answer, with what it rests on.
pub fn goes_with(predicted: &Predicted) -> String {
    let Predicted { kept, turned, found, side } = predicted;
    let rests = format!(
        "{turned} of the {} to keep that have it measured were turned",
        count(*kept, "shaft")
    );
    let Some(found) = found else {
        return format!(
            "too few to tell: {rests}, and {FEWEST_TURNED} are needed; what was kept where it stood found no index."
        );
    };
    let chance = percent(found.by_chance);
    match found.stands.filter(|_| found.by_chance <= RARE) {
        Some(stands) => format!(
            "it goes with the index found. On the string it stands about {}{} ({rests}; {chance} by chance).",
            mark(Index::from_hour(stands.hours().round())),
            if *side == BenchSide::Stiff { ", or opposite" } else { "" }
        ),
        None => format!("{} ({rests}; {chance} by chance).", no_sign(found)),
    }
}

fn no_sign(found: &Found) -> &'static str {
    // The only p that a side which is the same on all of them can have.
    if found.by_chance >= 1.0 {
        "nothing can be told: no other pairing would agree less, as where all marks were put on the same side"
    } else {
        "no sign that it goes with the index found, which is no proof that it does not"
    }
}
