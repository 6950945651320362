//! How tails go with hits: lean against hit, with the relation that was learned.

mod against;
#[cfg(test)]
mod tests;
mod wording;

use quarterturn_geometry::Offset;
use quarterturn_tuning::{Advice, LeanRelation};

use self::against::{Across, against};
use self::wording::relation_said;
use super::block::{Block, StyledBy, stack};
use super::heading::Heading;
use super::svg::About;
use super::target_plot::hits::{HitKind, HitMark, Hits};
use super::window;
use crate::wording::{Ruler, count};

/// What the marks of the picture mean.
const LEGEND: &str = "Each dot is a bare shot, from the fletched reference of its end. The line is what was learned, \
    beginning from what is usual, between its 90 % bounds. It goes by where each shaft lands on average, about which single hits scatter; so it may be steeper than \
    the dots look.";

/// The picture of a journal.
pub struct LeanPlot<'a> {
    /// What is said of the journal.
    pub advice: &'a Advice,
    /// The hits of all shafts.
    pub hits: &'a Hits,
    /// What was learned, where a tail was read.
    pub relation: Option<LeanRelation>,
    /// How lengths are said.
    pub ruler: Ruler,
    /// What stands above it.
    pub title: &'a str,
    /// Where it is said how it looks.
    pub styled: StyledBy,
}

impl LeanPlot<'_> {
    /// The picture as an SVG file; the same journal is always the same bytes.
    pub fn svg(&self) -> String {
        let title = format!("{}: lean against hit", self.title);
        let finding = relation_said(self.relation.as_ref(), self.ruler);
        let heading = Heading::new(&title, &finding, &self.remarks());
        let charts: Vec<_> = self.charts();
        let mut blocks: Vec<&dyn Block> = vec![&heading];
        blocks.extend(charts.iter().map(|chart| chart as &dyn Block));
        let about = About { id: "lean", title: &title, finding: &finding };
        stack(&blocks, self.styled, about)
    }

    fn charts(&self) -> Vec<super::chart::Chart> {
        let Some(relation) = &self.relation else { return Vec::new() };
        let shown: Vec<&HitMark> = self.shown().collect();
        let (reach_mm, common) = (self.reach_mm(), self.advice.bow.offset.mean);
        let of = |across| against(across, &shown, relation, common, reach_mm, self.ruler);
        vec![of(Across::Sides), of(Across::Height)]
    }

    /// How far the picture reaches to both sides.
    fn reach_mm(&self) -> f64 {
        let least = quarterturn_geometry::Millimetres::new(20.0);
        let at: Vec<Offset> = self.read().map(|hit| hit.at).collect();
        window::half_width(least, &at).mm()
    }

    /// The shots whose tail was read.
    fn read(&self) -> impl Iterator<Item = &HitMark> {
        self.hits.marks.iter().filter(|hit| hit.tail.is_some())
    }

    fn shown(&self) -> impl Iterator<Item = &HitMark> {
        let reach_mm = self.reach_mm();
        self.read().filter(move |hit| hit.at.x_mm.abs().max(hit.at.y_mm.abs()) <= reach_mm)
    }

    fn remarks(&self) -> Vec<String> {
        let (all, read) = (self.hits.marks.len(), self.read().count());
        let left_out = self.read().filter(|hit| hit.kind == HitKind::LeftOut).count();
        let outside = match read - self.shown().count() {
            0 => String::new(),
            outside => format!(", {outside} hit too far off to be shown"),
        };
        let shots = format!(
            "{}: the tail of {read} was read, {left_out} of them are left out of the estimates{outside}.",
            count(all, "bare shot")
        );
        let legend = self.relation.map(|_| LEGEND.to_owned());
        [shots].into_iter().chain(legend).collect()
    }
}
