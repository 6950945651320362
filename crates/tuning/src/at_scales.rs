//! The posterior at stated scales, every shot counting in full: nothing is learned.

use quarterturn_geometry::Index;

use crate::design;
use crate::layout::Layout;
use crate::normal_equations::NormalEquations;
use crate::observation::Observations;
use crate::posterior::Posterior;
use crate::prior::Prior;
use crate::readings::{Reader, ShotWeight};
use crate::{History, Miss, Scales, ShaftName};

/// What a journal says at stated scales.
pub struct AtScales {
    seen: Observations,
    posterior: Posterior,
    references: Vec<usize>,
}

impl AtScales {
    /// Reads a history at `scales`.
    pub fn read(history: &History, scales: &Scales) -> Self {
        let seen = Observations::of(history);
        let layout = Layout::of(&seen);
        let weights = vec![ShotWeight::FULL; seen.shots.len()];
        let reader = Reader { seen: &seen, layout: &layout, scales, weights: &weights };
        let prior = Prior::of(&seen, &layout, scales);
        let equations = NormalEquations::gather(&reader.coordinates(), prior);
        let references = &history.setup.references;
        let references = references.iter().filter_map(|name| seen.life_of(name)).collect();
        Self { posterior: Posterior::of(layout.clone(), equations), seen, references }
    }

    /// The miss of a shaft with the bow as it stands, from the mean of the references.
    pub fn miss(&self, shaft: &ShaftName, index: Index) -> Option<Miss> {
        let life = self.seen.life_of(shaft)?;
        let mark_rad = index.angle().radians();
        Some(self.measured(design::bare_hit(&self.posterior.layout, life, self.bow(), mark_rad)))
    }

    #[cfg(test)]
    /// The common offset of bare shafts, from the mean of the references.
    pub fn common_offset(&self) -> Miss {
        self.measured(design::single(self.posterior.layout.bow(self.bow())))
    }

    fn measured(&self, of: design::Planar) -> Miss {
        let layout = &self.posterior.layout;
        self.posterior.miss(&design::from_references(of, layout, &self.references))
    }

    fn bow(&self) -> usize {
        self.seen.bow_changes_mm.len()
    }
}
