//! The words of the target plot that no other place needs.

use quarterturn_tuning::{OpenReason, ShaftReport, Verdict};

use crate::wording::{self, Ruler, count, mark};

/// "keep at 3 o'clock", "open, not shot yet", "retire: circle too big".
pub fn verdict(report: &ShaftReport, ruler: Ruler) -> String {
    match report.verdict {
        Verdict::Keep => format!("keep at {}", mark(report.index)),
        Verdict::Open(OpenReason::NotShot) => "open, not shot yet".to_owned(),
        Verdict::Open(_) => format!("open at {}", mark(report.index)),
        Verdict::Retire(_) => {
            let reason = wording::reason(report, ruler);
            let short = reason.split_once(':').map_or(reason.as_str(), |(short, _)| short);
            format!("retire: {short}")
        }
    }
}

/// "12 shafts: 7 keep, 3 open, 2 retire".
pub fn tally(shafts: &[ShaftReport]) -> String {
    let counted = ["keep", "open", "retire"].map(|word| {
        let n = shafts.iter().filter(|report| wording::verdict(report.verdict) == word).count();
        format!("{n} {word}")
    });
    format!("{}: {}", count(shafts.len(), "shaft"), counted.join(", "))
}
