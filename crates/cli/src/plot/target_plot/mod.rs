//! The target plot: hits and tails as the archer sees them, and what is known of each shaft.
//!
//! Everything is drawn from the fletched reference: in each end the mean of its hits is the middle of the picture, and
//! in an end without one their mean of that evening. So ends of different aim lie over one another, and what is seen is
//! what is estimated.

mod face;
mod glyphs;
mod hits;
mod layout;
mod legend;
mod middle;
mod table;
mod wording;

#[cfg(test)]
mod invented;
#[cfg(test)]
mod tests;

use quarterturn_geometry::{Millimetres, Offset};
use quarterturn_tuning::{Advice, History, Matching, Miss, ShaftReport, known_height};

use super::block::stack;
use super::canvas::About;
use super::heading::Heading;
use crate::wording::{Ruler, count};
use face::Face;
use hits::{HitKind, Hits};
use legend::Legend;
use table::Table;

/// The target plot of a journal as an SVG file, with `title` above it and lengths as `ruler` says them.
///
/// The same journal is always the same bytes.
pub fn target(history: &History, advice: &Advice, ruler: Ruler, title: &str) -> String {
    let hits = Hits::of(history, advice);
    let face = face(history, advice, &hits, ruler);
    let finding = wording::tally(&advice.shafts);
    let heading = Heading::new(title, &finding, &remarks(&face, history));
    let wide = &hits.standing_out.shafts;
    let table = Table { shafts: &advice.shafts, wide, tolerance: face.tolerance, ruler };
    let about = About { id: "target", title, finding: &format!("{finding}. {}", common(&face)) };
    stack(&[&heading, &face, &Legend::of(&face), &table], about)
}

fn face<'a>(history: &History, advice: &Advice, hits: &'a Hits, ruler: Ruler) -> Face<'a> {
    let wanted = advice.measured_from.at();
    let shot = advice.shafts.iter().filter(|report| report.shots_total > 0);
    let shafts: Vec<_> = shot.map(|report| seen_from_reference(report, wanted)).collect();
    let common = (!shafts.is_empty()).then_some(advice.bow.offset);
    Face { hits, shafts, wanted, common, tolerance: history.setup.tolerance, ruler }
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
