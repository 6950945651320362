//! Before and after: where every bare shaft landed as it was built, and where it lands at the index of its verdict.

mod landing;
mod panel;
mod spread;
#[cfg(test)]
mod tests;

use quarterturn_geometry::Millimetres;
use quarterturn_tuning::{Advice, History, Spread, Verdict};

pub use self::landing::{Landing, landings};
use self::panel::{MOST_REGIONS, Panel};
use self::spread::spread;
use super::block::{StyledBy, stack};
use super::heading::Heading;
use super::svg::About;
use super::target_plot::hits::Hits;
use super::target_plot::legend::Legend;
use crate::wording::{Ruler, all, count};

/// Why the two can be compared.
const COMPARED: &str = "Spread is the standard deviation in each direction. Both count one shot of each shaft, so both hold \
    your own spread; the last hits also helped to choose the index, and the retired are not among them.";

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
        let said = std::iter::once(COMPARED.to_owned()).chain(missing(&landings));
        let heading = Heading::new(&title, &finding, &said.collect::<Vec<_>>());
        let wanted = advice.measured_from.at();
        let regions = landings.len() <= MOST_REGIONS;
        let panel = Panel { landings, wanted, tolerance: history.setup.tolerance, ruler };
        let about = About { id: "before-after", title: &title, finding: &finding };
        let mut legend = Legend::of_before_and_after(&ruler.read(history.setup.tolerance));
        if regions {
            legend.add_region();
        }
        stack(&[&heading, &panel, &legend], self.styled, about)
    }
}

/// Which shafts have no hit to show, before or after.
fn missing(landings: &[Landing]) -> impl Iterator<Item = String> {
    let stays = |one: &Landing| !matches!(one.report.verdict, Verdict::Retire(_));
    let named = |lead: &str, lacks: &dyn Fn(&Landing) -> bool| {
        let lacking = landings.iter().filter(|one| lacks(one)).map(|one| &one.report.shaft);
        let names: Vec<_> = lacking.collect();
        (!names.is_empty()).then(|| format!("{lead}: {}.", all(names)))
    };
    let unshot = named("Not shot yet", &|one| one.now.is_none());
    let shot = |one: &Landing| one.now.is_some();
    let never_first = named("No counted hit as built", &|one| shot(one) && one.first.is_none());
    let not_since = named("Not shot at the index judged with the bow as it stands", &|one| {
        shot(one) && stays(one) && one.last.is_none()
    });
    [unshot, never_first, not_since].into_iter().flatten()
}

/// What both come to, in two sentences.
pub fn finding(landings: &[Landing], ruler: Ruler) -> String {
    let first: Vec<_> = landings.iter().filter_map(|landing| landing.first).collect();
    let stays = |landing: &&Landing| !matches!(landing.report.verdict, Verdict::Retire(_));
    let last: Vec<_> = landings.iter().filter(stays).filter_map(|landing| landing.last).collect();
    let told = |lead: &str, hits: &[_], which: &str| {
        let shafts = count(hits.len(), which);
        match spread(hits) {
            None => format!("{lead}, {shafts}: too few to tell a spread."),
            Some(spread) => format!("{lead}, {shafts} spread {}.", said(spread, ruler)),
        }
    };
    let after = told("At the index judged", &last, "last hit");
    format!("{} {after}", told("As built", &first, "first hit"))
}

/// "31 mm (90 % sure: 25 to 42)".
fn said(spread: Spread, ruler: Ruler) -> String {
    let [lower, upper] = [spread.interval.lower, spread.interval.upper].map(Millimetres::new);
    format!(
        "{} ({:.0} % sure: {} to {})",
        ruler.estimate(spread.per_axis),
        spread.interval.level * 100.0,
        ruler.estimate_bare(lower),
        ruler.estimate_bare(upper),
    )
}
