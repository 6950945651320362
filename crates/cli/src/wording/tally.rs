//! How many shafts have which verdict.

use quarterturn_tuning::ShaftReport;

use super::{all, count, verdict};

/// "9 shafts to keep, 2 shafts to retire and 1 shaft still open".
pub fn tally(shafts: &[ShaftReport]) -> String {
    let words = [("keep", "to keep"), ("retire", "to retire"), ("open", "still open")];
    let counted = words.map(|(word, words)| {
        let number = shafts.iter().filter(|report| verdict(report.verdict) == word).count();
        (number > 0).then(|| format!("{} {words}", count(number, "shaft")))
    });
    all(counted.into_iter().flatten())
}
