//! One end as it was shot, from the spot that was aimed at.

mod face;
mod rows;
#[cfg(test)]
mod tests;

use quarterturn_tuning::{End, Setup};

use self::face::Face;
use self::rows::Rows;
use super::backdrop::Backdrop;
use super::block::{StyledBy, stack};
use super::heading::Heading;
use super::svg::About;
use super::target_plot::middle::own;
use crate::wording::{Ruler, count, noted};

/// What the marks of the picture mean.
const LEGEND: &str = "The small ring is the spot, stars are fletched references, dots are bare shafts, rings what is left out \
    of the estimates; lines run to where tails point.";

/// The picture of an end.
pub struct EndPlot<'a> {
    /// How the journal was begun.
    pub setup: &'a Setup,
    /// The end.
    pub end: &'a End,
    /// Which it is, counted from 1 over all ends of the journal.
    pub number: usize,
    /// How lengths are said.
    pub ruler: Ruler,
    /// The journal it comes from.
    pub title: &'a str,
    /// What lies under the hits.
    pub backdrop: Backdrop,
}

impl EndPlot<'_> {
    /// The picture as an SVG file; the same end is always the same bytes.
    pub fn svg(&self) -> String {
        let Self { setup, end, number, ruler, .. } = *self;
        let middle = own(end, &setup.references);
        let face = Face { setup, end, middle, ruler, backdrop: self.backdrop };
        let title = format!("{}: end {number}", self.title);
        let finding = self.finding();
        let heading = Heading::new(&title, &finding, &self.remarks(&face));
        let about = About { id: "end", title: &title, finding: &finding };
        let rows = Rows { setup, end, middle, ruler };
        stack(&[&heading, &face, &rows], StyledBy::Itself, about)
    }

    /// "4 shots from 18.3 m, evening 2027-03-02."
    fn finding(&self) -> String {
        let distance = self.end.distance.unwrap_or(self.setup.distance);
        let apart = if self.end.distance.is_some() { ", not pooled with the others" } else { "" };
        format!(
            "{} from {}{apart}, evening {}.",
            count(self.end.shots.len(), "shot"),
            self.ruler.distance(distance),
            self.end.evening
        )
    }

    fn remarks(&self, face: &Face) -> Vec<String> {
        let tolerance = self.ruler.read(self.setup.tolerance);
        let circle =
            face.middle.map(|_| format!("The heavy circle is {tolerance} about the reference."));
        let legend = [Some(LEGEND.to_owned()), circle].into_iter().flatten();
        let legend = legend.collect::<Vec<_>>().join(" ");
        let backdrop = self.backdrop.name().map(|name| format!("Under it a {name}."));
        let noted = self.end.shots.iter().filter_map(noted).map(|said| said + ".");
        [legend].into_iter().chain(backdrop).chain(noted).collect()
    }
}
