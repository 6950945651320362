//! Finished arrows as they hit, from every distance, and the chance on a plate over the distance.

mod finished_face;
mod ladder;
#[cfg(test)]
mod tests;

use quarterturn_geometry::Millimetres;
use quarterturn_tuning::{HitsAt, Reach};

use self::finished_face::FinishedFace;
use self::ladder::ladder;
use super::block::{Block, StyledBy, stack};
use super::heading::Heading;
use super::svg::About;
use crate::wording::{Ruler, count};

/// The picture of finished arrows.
pub struct FinishedPlot<'a> {
    /// What was hit from each distance.
    pub distances: &'a [HitsAt],
    /// The chance on the plate.
    pub reach: &'a Reach,
    /// How wide the plate is.
    pub plate: Millimetres,
    /// How lengths are said.
    pub ruler: Ruler,
    /// What stands above it.
    pub title: &'a str,
}

impl FinishedPlot<'_> {
    /// The picture as an SVG file; the same journal is always the same bytes.
    pub fn svg(&self) -> String {
        let Self { distances, ruler, plate, .. } = *self;
        let kinds = distances.iter().flat_map(|at| &at.kinds);
        let shots: usize = kinds.map(|kind| kind.hits.len()).sum();
        let finding = format!(
            "{} of finished arrows from {}, a plate of {}",
            count(shots, "shot"),
            count(distances.len(), "distance"),
            ruler.read(plate)
        );
        let remarks = [
            "Each shot from its own spot; an ellipse holds a centre at 95 %.".to_owned(),
            "An upper bound for practice; no advice to shoot at game.".to_owned(),
        ];
        let heading = Heading::new(self.title, &finding, &remarks);
        let face = |at| FinishedFace { at, plate, ruler };
        let faces: Vec<FinishedFace> = distances.iter().map(face).collect();
        let ladder = ladder(self.reach, ruler);
        let mut blocks: Vec<&dyn Block> = vec![&heading];
        blocks.extend(faces.iter().map(|face| face as &dyn Block));
        blocks.extend(ladder.as_ref().map(|chart| chart as &dyn Block));
        stack(
            &blocks,
            StyledBy::Itself,
            About { id: "finished", title: self.title, finding: &finding },
        )
    }
}
