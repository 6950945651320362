//! Before and after: where every bare shaft landed as it was built, and where it lands at the index of its verdict.

mod landing;
mod panel;
mod spread;
#[cfg(test)]
mod tests;

use quarterturn_tuning::{Advice, History, Spread, Verdict};

pub use self::landing::{Landing, landings};
use self::panel::Panel;
use self::spread::spread;
use super::block::{StyledBy, stack};
use super::heading::Heading;
use super::svg::About;
use super::target_plot::hits::Hits;
use crate::wording::{Ruler, all, count};

/// What the marks of the picture mean.
const LEGEND: &str = "Squares are first hits with the mark as built; from each a line runs to where the shaft lands on average \
    with its mark at the index of its verdict: a disc to keep, a diamond while open, a crossed square to retire, in ellipses \
    that hold this mean in 90 % of all cases. Dots are last hits there. All is from the fletched reference, the star; the \
    heavy circle is the tolerance.";

/// Why the two can be compared, and what is left to say.
const COMPARED: &str = "Both count one shot of each shaft, so that both hold your own spread; the last hits also helped to \
    choose the index.";

/// The picture of a journal.
pub struct BeforeAfter<'a> {
    /// What happened.
    pub history: &'a History,
    /// What is said of it.
    pub advice: &'a Advice,
    /// The hits of all shafts.
    pub hits: &'a Hits,
    /// How lengths are said.
    pub ruler: Ruler,
    /// What stands above it.
    pub title: &'a str,
    /// Where it is said how it looks.
    pub styled: StyledBy,
}

impl BeforeAfter<'_> {
    /// The picture as an SVG file; the same journal is always the same bytes.
    pub fn svg(&self) -> String {
        let Self { history, advice, hits, ruler, .. } = *self;
        let landings = landings(history, advice, hits);
        let finding = finding(&landings, ruler);
        let title = format!("{}: before and after", self.title);
        let unshot = landings.iter().filter(|landing| landing.report.shots_total == 0);
        let unshot: Vec<_> = unshot.map(|landing| &landing.report.shaft).collect();
        let unshot = (!unshot.is_empty()).then(|| format!("Not shot yet: {}.", all(unshot)));
        let said = [COMPARED.to_owned(), LEGEND.to_owned()].into_iter().chain(unshot);
        let heading = Heading::new(&title, &finding, &said.collect::<Vec<_>>());
        let wanted = advice.measured_from.at();
        let panel = Panel { landings, wanted, tolerance: history.setup.tolerance, ruler };
        let about = About { id: "before-after", title: &title, finding: &finding };
        stack(&[&heading, &panel], self.styled, about)
    }
}

/// What both come to, in a sentence or two.
pub fn finding(landings: &[Landing], ruler: Ruler) -> String {
    let first: Vec<_> = landings.iter().filter_map(|landing| landing.first).collect();
    let stays = |landing: &&Landing| !matches!(landing.report.verdict, Verdict::Retire(_));
    let last = landings.iter().filter(stays).filter_map(|landing| landing.last).collect::<Vec<_>>();
    let told = |lead: &str, hits: &[_], which: &str| {
        let shafts = count(hits.len(), which);
        match spread(hits) {
            None => format!("{lead}: {shafts}, too few to tell a spread."),
            Some(spread) => format!("{lead}: {shafts} spread {}.", said(spread, ruler)),
        }
    };
    format!(
        "{} {}",
        told("As built", &first, "first hit"),
        told("At the index of the verdict, without what is retired", &last, "last hit")
    )
}

/// "31 mm in each direction (90 % sure: 25 to 42 mm)".
fn said(spread: Spread, ruler: Ruler) -> String {
    let [lower, upper] =
        [spread.interval.lower, spread.interval.upper].map(quarterturn_geometry::Millimetres::new);
    format!(
        "{} in each direction ({:.0} % sure: {} to {})",
        ruler.estimate(spread.per_axis),
        spread.interval.level * 100.0,
        ruler.estimate_bare(lower),
        ruler.estimate(upper),
    )
}
