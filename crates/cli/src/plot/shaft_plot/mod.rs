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
pub const ROUND_THE_CLOCK: &str = "Each number is an hour of the mark, where the shaft is predicted to land with it, from the \
    fletched reference (the star); the thin ellipses hold its mean in 90 % of all cases. The curve runs through them. The \
    heavy circle is the tolerance. Dots are hits, their lines the tails; grey ones were shot with the mark elsewhere.";

/// The picture of one shaft.
pub struct ShaftPlot<'a> {
    /// What happened.
    pub history: &'a History,
    /// What is said of it.
    pub advice: &'a Advice,
    /// The hits of all shafts.
    pub hits: &'a Hits,
    /// What is known of this one.
    pub report: &'a ShaftReport,
    /// How lengths are said.
    pub ruler: Ruler,
    /// A word that no other picture on a page has.
    pub id: &'a str,
    /// Where it is said how it looks.
    pub styled: StyledBy,
}

impl ShaftPlot<'_> {
    /// The picture as an SVG file; the same journal is always the same bytes.
    pub fn svg(&self) -> String {
        let Self { report, ruler, id, .. } = *self;
        let own = self.hits.marks.iter().filter(|hit| hit.shaft == report.shaft);
        let round = Round {
            report,
            hits: own.collect(),
            wanted: self.advice.measured_from.at(),
            tolerance: self.history.setup.tolerance,
            ruler,
            clip: format!("{id}-face"),
        };
        let (verdict, mark) = (verdict(report.verdict), mark(report.index));
        let title = format!("Shaft {}: {verdict} at {mark}", report.shaft);
        let finding = format!("{}.", reason(report, ruler));
        // A page says it once for all shafts.
        let legend = (self.styled == StyledBy::Itself).then(|| ROUND_THE_CLOCK.to_owned());
        let heading = Heading::new(&title, &finding, legend.as_slice());
        let about = About { id, title: &title, finding: &finding };
        stack(&[&heading, &round, &Chances { report }], self.styled, about)
    }
}
