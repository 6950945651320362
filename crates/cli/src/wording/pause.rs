//! Advice to stop for tonight.

use quarterturn_tuning::Pause;

use super::{Ruler, count};

/// Why to stop: a phrase without a full stop.
pub fn pause(pause: Pause, ruler: Ruler) -> String {
    match pause {
        Pause::EnoughShots { bare_shots } => {
            format!("{} this evening: enough for tonight", count(bare_shots, "bare shot"))
        }
        Pause::Tiring { wider, first, last } => format!(
            "the last dozen spread {:.0} % wider than the first (n {last} and {first}): enough for tonight",
            (wider - 1.0) * 100.0
        ),
        Pause::Drifting { moved, first, last } => format!(
            "in the last {last} ends the reference landed {} where it did in the first {first}: enough for tonight",
            ruler.miss_of(moved)
        ),
    }
}

#[cfg(test)]
mod tests {
    use quarterturn_geometry::Offset;

    use super::*;
    use quarterturn_entry::quantity::Unit;

    #[test]
    fn what_was_seen_is_said_with_its_figures() {
        let said = |why| pause(why, Ruler::new(Unit::MILLIMETRE));
        assert_eq!(
            said(Pause::EnoughShots { bare_shots: 36 }),
            "36 bare shots this evening: enough for tonight"
        );
        assert_eq!(
            said(Pause::Tiring { wider: 1.62, first: 12, last: 12 }),
            "the last dozen spread 62 % wider than the first (n 12 and 12): enough for tonight"
        );
        assert_eq!(
            said(Pause::Drifting { moved: Offset::new(3.2, -24.0), first: 5, last: 5 }),
            "in the last 5 ends the reference landed 3 mm right and 24 mm low of where it did in the first 5: \
             enough for tonight"
        );
    }
}
