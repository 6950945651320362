//! What is known of the unknowns before the first shot.

use nalgebra::DMatrix;

use crate::Scales;
use crate::layout::{Layout, shaft};
use crate::learn::Build;
use crate::observation::{Kind, Observations};

/// Where references land in a sitting may be anywhere on the butt.
const ANYWHERE_MM: f64 = 1000.0;

/// A change of the bow may change the common lean by at least so much for each millimetre it may move hits.
const LEAST_LEAN_DEG_PER_MM: f64 = 0.05;

/// The prior of all unknowns, independent but for the bow, whose offset after a change is drawn toward where it was.
pub struct Prior {
    /// Its precision matrix Λ₀.
    pub precision: DMatrix<f64>,
    /// ln det Λ₀.
    pub log_det: f64,
}

impl Prior {
    /// The prior at given scales, each life as it is built.
    pub fn of(seen: &Observations, layout: &Layout, scales: &Scales, builds: &[Build]) -> Self {
        let precision = DMatrix::zeros(layout.len(), layout.len());
        let mut prior = Self { precision, log_det: 0.0 };
        for (life, place) in seen.lives.iter().enumerate() {
            let own = layout.life(life);
            match place.kind {
                Kind::Bare => {
                    let Build { miss, lean } = builds[life];
                    for (at, sd_mm) in shaft_parts(scales) {
                        prior.set(own + at, sd_mm / miss.sqrt());
                    }
                    for at in [shaft::CENTRE_LEAN, shaft::TURNING_LEAN, shaft::STIFF_LEAN] {
                        prior.set(own + at, scales.discrepancy_deg / lean.sqrt());
                    }
                }
                Kind::Reference => {
                    prior.set(own, scales.between_references_mm);
                    prior.set(own + 2, scales.between_references_deg);
                }
            }
        }
        prior.set(layout.set(), scales.set_share * scales.turning_mm);
        prior.set(layout.set() + 2, scales.set_share * scales.stiff_mm);
        prior.set_bows(seen, layout, scales);
        (0..seen.sittings).for_each(|sitting| prior.set(layout.sitting(sitting), ANYWHERE_MM));
        prior
    }

    /// Only the bow as it stands is expected to be nearly right: that is what it was changed for.
    fn set_bows(&mut self, seen: &Observations, layout: &Layout, scales: &Scales) {
        let changes = seen.bow_changes_mm.len();
        let sizes = |bow: usize| if bow == changes { *scales } else { scales.far_off() };
        let Scales { common_mm, common_lean_deg, .. } = sizes(0);
        self.set(layout.bow(0), common_mm);
        self.set(layout.bow(0) + 2, common_lean_deg);
        for (change, &gone_mm) in seen.bow_changes_mm.iter().enumerate() {
            let gone_deg =
                gone_mm * scales.lean_per_miss_deg_per_mm.abs().max(LEAST_LEAN_DEG_PER_MM);
            let (before, after) = (layout.bow(change), layout.bow(change + 1));
            let Scales { common_mm, common_lean_deg, .. } = sizes(change + 1);
            self.tie(before, after, gone_mm, common_mm);
            self.tie(before + 2, after + 2, gone_deg, common_lean_deg);
        }
    }

    /// Lets the planar unknown at `at` be about as large as `sd`.
    fn set(&mut self, at: usize, sd: f64) {
        for coordinate in at..at + 2 {
            self.precision[(coordinate, coordinate)] += sd.powi(-2);
            self.log_det -= 2.0 * sd.ln();
        }
    }

    /// Lets the planar unknown at `after` be about as large as `size`, and differ by about `gone` from the one at `before`.
    ///
    /// # Formula
    /// after | before ~ N(ρ before, ρ gone²), ρ = size² / (size² + gone²): the product of the two.
    fn tie(&mut self, before: usize, after: usize, gone: f64, size: f64) {
        let share = size * size / (size * size + gone * gone);
        let weight = (share * gone * gone).recip();
        for axis in 0..2 {
            let (before, after) = (before + axis, after + axis);
            self.precision[(before, before)] += weight * share * share;
            self.precision[(after, after)] += weight;
            self.precision[(before, after)] -= weight * share;
            self.precision[(after, before)] -= weight * share;
            // A chain of independent steps: its determinant is the product of theirs.
            self.log_det += weight.ln();
        }
    }
}

/// The prior scale of each part of a bare shaft's own miss.
fn shaft_parts(scales: &Scales) -> [(usize, f64); 5] {
    [
        (shaft::CENTRE, scales.centre_mm),
        (shaft::TURNING, scales.turning_mm),
        (shaft::TURNING_AGAINST, scales.against_share * scales.turning_mm),
        (shaft::STIFF, scales.stiff_mm),
        (shaft::STIFF_AGAINST, scales.against_share * scales.stiff_mm),
    ]
}
