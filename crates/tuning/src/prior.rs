//! What is known of the unknowns before the first shot.

use nalgebra::DMatrix;

use crate::Scales;
use crate::layout::{Layout, shaft};
use crate::observation::{Kind, Observations};

/// Where references land in a sitting may be anywhere on the butt.
const ANYWHERE_MM: f64 = 1000.0;

/// The prior precision of all unknowns, independent but for the bow, whose offset after a change begins where it was.
pub fn precision(seen: &Observations, layout: &Layout, scales: &Scales) -> DMatrix<f64> {
    let mut precision = DMatrix::zeros(layout.len(), layout.len());
    let mut set = |at: usize, sd: f64| {
        for coordinate in at..at + 2 {
            precision[(coordinate, coordinate)] += sd.powi(-2);
        }
    };
    for (life, place) in seen.lives.iter().enumerate() {
        let own = layout.life(life);
        match place.kind {
            Kind::Bare => shaft_scales(scales).into_iter().for_each(|(at, sd)| set(own + at, sd)),
            Kind::Reference => {
                set(own, scales.between_references_mm);
                set(own + 2, scales.between_references_deg);
            }
        }
    }
    set(layout.set(), scales.set_share * scales.turning_mm);
    set(layout.set() + 2, scales.set_share * scales.stiff_mm);
    set(layout.bow(0), scales.common_mm);
    set(layout.bow(0) + 2, scales.common_lean_deg);
    (0..seen.sittings).for_each(|sitting| set(layout.sitting(sitting), ANYWHERE_MM));
    for (change, gone_mm) in seen.bow_changes_mm.iter().enumerate() {
        let gone_deg = gone_mm * scales.common_lean_deg / scales.common_mm;
        let (before, after) = (layout.bow(change), layout.bow(change + 1));
        tie(&mut precision, before, after, *gone_mm);
        tie(&mut precision, before + 2, after + 2, gone_deg);
    }
    precision
}

/// The prior scale of each part of a bare shaft.
fn shaft_scales(scales: &Scales) -> [(usize, f64); 8] {
    [
        (shaft::CENTRE, scales.centre_mm),
        (shaft::TURNING, scales.turning_mm),
        (shaft::TURNING_AGAINST, scales.against_share * scales.turning_mm),
        (shaft::STIFF, scales.stiff_mm),
        (shaft::STIFF_AGAINST, scales.against_share * scales.stiff_mm),
        (shaft::CENTRE_LEAN, scales.discrepancy_deg),
        (shaft::TURNING_LEAN, scales.discrepancy_deg),
        (shaft::STIFF_LEAN, scales.discrepancy_deg),
    ]
}

/// Lets the planar unknown at `after` differ from the one at `before` by about `sd`.
fn tie(precision: &mut DMatrix<f64>, before: usize, after: usize, sd: f64) {
    let weight = sd.powi(-2);
    for axis in 0..2 {
        let (before, after) = (before + axis, after + axis);
        precision[(before, before)] += weight;
        precision[(after, after)] += weight;
        precision[(before, after)] -= weight;
        precision[(after, before)] -= weight;
    }
}
