//! What is said of one arrow beside the others.

use quarterturn_geometry::Millimetres;
use quarterturn_tuning::{FromTheOthers, TogetherVerdict};

use super::{Ruler, all};

/// How far it is off at least and at most, for a column: "0 to 26".
pub fn off(beside: &FromTheOthers, ruler: Ruler) -> String {
    let bare = |mm: f64| ruler.estimate_bare(Millimetres::new(mm));
    format!("{} to {}", bare(beside.at_least_mm), bare(beside.at_most.at_most))
}

/// The verdict in a word, where the archer gave a measure; short enough for a column.
pub fn beside_others(beside: &FromTheOthers) -> &'static str {
    match beside.verdict {
        Some(TogetherVerdict::Together) => "near",
        Some(TogetherVerdict::Apart) => "apart",
        Some(TogetherVerdict::Open { .. }) => "open",
        None => "",
    }
}

/// What is open from one distance, each with the rounds that would settle it; nothing where nothing is.
pub fn open_beside(from: &str, judged: &[(String, FromTheOthers)]) -> Option<String> {
    let open = judged.iter().filter_map(|(name, beside)| match beside.verdict {
        Some(TogetherVerdict::Open { more: Some(more) }) => Some(format!("{name} ({more})")),
        Some(TogetherVerdict::Open { more: None }) => Some(format!("{name} (more than 60)")),
        _ => None,
    });
    let open: Vec<String> = open.collect();
    (!open.is_empty()).then(|| {
        let open = all(open);
        format!("Open from {from}, with about so many more rounds of all to settle each: {open}.")
    })
}
