//! What one doubtful shot changes, in words.

use quarterturn_tuning::{Doubt, Verdict, Without};

use super::{Ruler, mark};

/// "Without the shot of end 5 (31 mm right) it would be open.", a sentence.
pub fn doubt(doubt: &Doubt, ruler: Ruler) -> String {
    let instead = match doubt.without {
        Without::Verdict(Verdict::Keep) => "kept".to_owned(),
        Without::Verdict(Verdict::Open(_)) => "open".to_owned(),
        Without::Verdict(Verdict::Retire(_)) => "retired".to_owned(),
        Without::Index(index) => format!("kept with its mark at {}", mark(index)),
    };
    format!(
        "Without the shot of end {} ({}) it would be {instead}.",
        doubt.end,
        ruler.hit(doubt.miss)
    )
}

#[cfg(test)]
mod tests {
    use quarterturn_geometry::{Index, Offset};
    use quarterturn_tuning::{OpenReason, RetireReason};

    use super::*;
    use quarterturn_entry::quantity::Unit;

    #[test]
    fn a_shot_is_named_by_its_end_and_where_it_hit() {
        let said = |without| {
            let shaft = "7".parse().unwrap();
            let on = Doubt { shaft, end: 5, miss: Offset::new(31.0, 0.0), without };
            doubt(&on, Ruler::new(Unit::MILLIMETRE))
        };
        let verdict = |verdict| said(Without::Verdict(verdict));
        let without = "Without the shot of end 5 (31 mm right) it would be";
        assert_eq!(verdict(Verdict::Open(OpenReason::MoreShots(2))), format!("{without} open."));
        assert_eq!(verdict(Verdict::Keep), format!("{without} kept."));
        let retired = Verdict::Retire(RetireReason::CentreOff);
        assert_eq!(verdict(retired), format!("{without} retired."));
        let index = Index::from_hour(3.0);
        let turned = format!("{without} kept with its mark at 3 o'clock.");
        assert_eq!(said(Without::Index(index)), turned);
    }
}
