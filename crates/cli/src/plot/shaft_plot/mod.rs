//! One shaft all round the clock: where it is predicted at each position of its mark, and how likely that is inside.

mod chances;
mod curve;
mod round;
#[cfg(test)]
mod tests;

use quarterturn_tuning::{Advice, History, ShaftReport};

use self::chances::Chances;
use self::round::Round;
use super::block::{StyledBy, stack};
use super::heading::Heading;
use super::svg::About;
use super::target_plot::hits::Hits;
use crate::wording::{Ruler, mark, reason, verdict};

/// What the marks of the picture mean.
const LEGEND: &str = "Each number is an hour of the mark, where the shaft is predicted to land with it, from the \
    fletched reference (the star); the thin ellipses hold its mean in 90 % of all cases. The curve runs through them. The \
    heavy circle is the tolerance. Dots are hits, their lines the tails; grey ones were shot with the mark elsewhere.";

/// The picture of one shaft as an SVG file; `id` must be the only one on its page.
///
/// The same journal is always the same bytes.
pub fn shaft(
    history: &History,
    advice: &Advice,
    report: &ShaftReport,
    ruler: Ruler,
    id: &str,
    styled: StyledBy,
) -> String {
    let hits = Hits::of(history, advice);
    let round = Round {
        report,
        hits: hits.marks.iter().filter(|hit| hit.shaft == report.shaft).collect(),
        wanted: advice.measured_from.at(),
        tolerance: history.setup.tolerance,
        ruler,
        clip: format!("{id}-face"),
    };
    let title =
        format!("Shaft {}: {} at {}", report.shaft, verdict(report.verdict), mark(report.index));
    let finding = format!("{}.", reason(report, ruler));
    let heading = Heading::new(&title, &finding, &[LEGEND.to_owned()]);
    let about = About { id, title: &title, finding: &finding };
    stack(&[&heading, &round, &Chances { report }], styled, about)
}
