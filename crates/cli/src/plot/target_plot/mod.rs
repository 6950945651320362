//! The target plot: hits and tails as the archer sees them, and what is known of each shaft.
//!
//! Everything is drawn from the fletched reference: in each end the mean of its hits is the middle of the picture, and
//! in an end without one their mean of that evening. So ends of different aim lie over one another, and what is seen is
//! what is estimated.

mod core;
mod face;
pub mod glyphs;
pub mod hits;
mod layout;
pub mod legend;
pub mod middle;
mod table;
mod wording;

#[cfg(test)]
pub mod invented;
#[cfg(test)]
mod tests;

use quarterturn_geometry::{Millimetres, Offset};
use quarterturn_tuning::{
    Advice, History, Matching, Miss, ShaftReport, StandingOut, known_height, standing_out,
};

use super::backdrop::Backdrop;
use super::block::{Block, StyledBy, stack};
use super::heading::Heading;
use super::svg::About;
use crate::wording::{Ruler, count};
pub use face::region;

use self::core::Core;
use face::Face;
use hits::{HitKind, Hits};
use legend::Legend;
use table::Table;

/// The target plot of a journal.
pub struct TargetPlot<'a> {
    /// What happened.
    pub history: &'a History,
    /// What is said of it.
    pub advice: &'a Advice,
    /// How lengths are said.
    pub ruler: Ruler,
    /// What stands above it.
    pub title: &'a str,
    /// What lies under the hits.
    pub backdrop: Backdrop,
    /// Where it is said how it looks.
    pub styled: StyledBy,
}

impl TargetPlot<'_> {
    /// The picture as an SVG file; the same journal is always the same bytes.
    pub fn svg(&self) -> String {
        let Self { history, advice, ruler, title, .. } = *self;
        let hits = Hits::of(history, advice);
        let standing_out = standing_out(history);
        let face = face(history, advice, &hits, &standing_out, ruler);
        let face = Face { backdrop: self.backdrop, ..face };
        let finding = wording::tally(&advice.shafts);
        let heading = Heading::new(title, &finding, &remarks(&face, history));
        let wide = &standing_out.shafts;
        let table = Table { shafts: &advice.shafts, wide, tolerance: face.tolerance, ruler };
        let found = format!("{finding}. {}", common(&face));
        let about = About { id: "target", title, finding: &found };
        let (core, legend) = (Core::of(&face), Legend::of(&face));
        let mut blocks: Vec<&dyn Block> = vec![&heading, &face];
        blocks.extend(core.as_ref().map(|core| core as &dyn Block));
        blocks.extend([&legend as &dyn Block, &table]);
        stack(&blocks, self.styled, about)
    }
}

fn face<'a>(
    history: &History,
    advice: &Advice,
    hits: &'a Hits,
    standing_out: &'a StandingOut,
    ruler: Ruler,
) -> Face<'a> {
    let wanted = advice.measured_from.at();
    let shot = advice.shafts.iter().filter(|report| report.shots_total > 0);
    let shafts: Vec<_> = shot.map(|report| seen_from_reference(report, wanted)).collect();
    let common = (!shafts.is_empty()).then_some(advice.bow.offset);
    Face {
        hits,
        standing_out,
        shafts,
        wanted,
        common,
        tolerance: history.setup.tolerance,
        ruler,
        backdrop: Backdrop::Grid,
    }
}

/// The report of a shaft that is measured from `wanted`.
fn seen_from_reference(report: &ShaftReport, wanted: Offset) -> ShaftReport {
    let miss = Miss { mean: report.miss.mean + wanted, ..report.miss };
    ShaftReport { miss, ..report.clone() }
}

/// What is known of the bare shafts as a whole.
fn common(face: &Face) -> String {
    face.common.map_or("No bare shot counts yet.".to_owned(), |common| {
        let miss = face.ruler.miss_of(common.mean);
        format!("Bare shafts as a whole land {miss} the reference.")
    })
}

/// What else there is to say, and how the picture was come by.
fn remarks(face: &Face, history: &History) -> Vec<String> {
    let Face { hits, ruler, .. } = face;
    let left_out = hits.count(HitKind::LeftOut);
    let shots = format!(
        "{} from {}: {} counted, {left_out} left out, {} not drawn.",
        count(hits.marks.len() + hits.not_drawn, "bare shot"),
        ruler.distance(history.setup.distance),
        hits.marks.len() - left_out,
        hits.not_drawn,
    );
    let middle = "The middle is where the fletched reference landed in each end.".to_owned();
    let without = hits.ends_without_reference();
    let without = (without > 0).then(|| {
        format!("For {} without it: where it landed that evening.", count(without, "end"))
    });
    let higher = known_height(&history.setup);
    let taken_off = (higher > Millimetres::ZERO).then(|| {
        let higher = ruler.estimate(higher);
        format!("Bare shafts lack the mass of the vanes: {higher} of height are taken off.")
    });
    let together = (history.setup.matching == Matching::Set).then(|| {
        "The tolerance is drawn round the point that most shafts can reach; the table measures from \
         there."
            .to_owned()
    });
    let said = [common(face), shots, middle].into_iter();
    said.chain(together).chain(without).chain(taken_off).collect()
}
