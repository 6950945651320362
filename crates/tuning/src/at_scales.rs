//! The posterior at stated scales and weights: nothing is learned.

use quarterturn_geometry::Index;

use crate::design;
use crate::layout::Layout;
use crate::learn::Build;
use crate::observation::{Observation, Observations};
use crate::posterior::Posterior;
use crate::readings::{Reader, ShotWeight};
use crate::{History, Miss, Scales, ShaftName};

/// What a journal says at stated scales.
pub struct AtScales {
    seen: Observations,
    posterior: Posterior,
    references: Vec<usize>,
}

impl AtScales {
    /// Reads a history at `scales`, where shots of a shaft scatter `wider` times as much as others.
    pub fn read(history: &History, scales: &Scales, wider: impl Fn(&ShaftName) -> f64) -> Self {
        let seen = Observations::of(history);
        let layout = Layout::of(&seen);
        let weigh = |shot: &Observation| {
            let wider = wider(&seen.lives[shot.life].name);
            ShotWeight { hit: 1.0 / (wider * wider), ..ShotWeight::FULL }
        };
        let weights: Vec<_> = seen.shots.iter().map(weigh).collect();
        let builds = vec![Build::USUAL; seen.lives.len()];
        let reader =
            Reader { seen: &seen, layout: &layout, scales, weights: &weights, builds: &builds };
        let (_, posterior) = reader.solve();
        let references = &history.setup.references;
        let references = references.iter().filter_map(|name| seen.life_of(name)).collect();
        Self { seen, posterior, references }
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

    #[cfg(test)]
    /// −2 ln of the marginal likelihood, but for a constant.
    pub fn deviance(&self) -> f64 {
        self.posterior.deviance
    }

    fn measured(&self, of: design::Planar) -> Miss {
        let layout = &self.posterior.layout;
        self.posterior.miss(&design::from_references(of, layout, &self.references))
    }

    fn bow(&self) -> usize {
        self.seen.bow_changes_mm.len()
    }
}
