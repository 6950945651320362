//! The course of a tuning: where the reference landed, how far shots were from what is expected, and what was settled.

mod reference_course;
mod settled;
mod shot_course;
#[cfg(test)]
mod tests;

use quarterturn_tuning::{Advice, History, Verdict};

use self::reference_course::reference_course;
pub use self::settled::places;
use self::settled::{BY_NOW, settled};
use self::shot_course::shot_course;
use super::block::{Block, StyledBy, stack};
use super::heading::Heading;
use super::svg::About;
use crate::wording::{Ruler, count, tally};

/// The course of a journal.
pub struct CoursePlot<'a> {
    /// What happened.
    pub history: &'a History,
    /// What is said of it now.
    pub advice: &'a Advice,
    /// The verdicts on all shafts at each of the [`places`].
    pub stood: &'a [Vec<Verdict>],
    /// How lengths are said.
    pub ruler: Ruler,
    /// What stands above it.
    pub title: &'a str,
    /// Where it is said how it looks.
    pub styled: StyledBy,
}

impl CoursePlot<'_> {
    /// The picture as an SVG file; the same journal is always the same bytes.
    pub fn svg(&self) -> String {
        let settled = settled(self.history, self.advice, self.stood);
        let shots: usize = self.history.events.iter().map(settled::shots).sum();
        let finding = format!("{}: {}", count(shots, "shot"), tally(&self.advice.shafts));
        let heading = Heading::new(self.title, &finding, &[BY_NOW.to_owned()]);
        let reference = reference_course(self.history, self.ruler);
        let course = shot_course(self.history, self.advice, self.ruler);
        let mut blocks: Vec<&dyn Block> = vec![&heading, &settled];
        blocks.extend([&reference, &course].into_iter().flatten().map(|chart| chart as &dyn Block));
        let about = About { id: "course", title: self.title, finding: &finding };
        stack(&blocks, self.styled, about)
    }
}
