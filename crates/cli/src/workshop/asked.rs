//! What is asked of a set beside its measures.

use quarterturn_bench::{
    Grains, JOULES_PER_FOOT_POUND, NEWTON_SECONDS_PER_SLUG_FOOT, end_tilt, grains_per_pound,
    kinetic_energy_j, momentum_n_s, point_throw,
};
use quarterturn_geometry::{Angle, Millimetres};

use super::{Bench, Gauge, Workshop};

/// What the person said of the bow and the arrows.
pub struct Asked {
    /// Speed of the finished arrow.
    pub speed_m_s: Option<f64>,
    /// What the finished mass is held against.
    pub limit: Option<Limit>,
    /// What it takes to say what a crooked end does.
    pub crooked: Option<Crooked>,
}

/// The draw weight, and the least that somebody allows.
#[derive(Clone, Copy)]
pub struct Limit {
    pub draw_lbf: f64,
    pub least_gr_lb: Option<f64>,
}

/// The ends of the shafts and their points.
#[derive(Clone, Copy)]
pub struct Crooked {
    pub diameter: Millimetres,
    /// From the end of the shaft to the tip.
    pub point: Millimetres,
}

/// What an arrow of the set's median mass carries.
pub struct Carried {
    pub mass_gr: f64,
    pub speed_m_s: f64,
    pub energy_j: f64,
    pub energy_ftlbf: f64,
    pub momentum_n_s: f64,
    pub momentum_slug_ft_s: f64,
}

/// What a crooked end does to the point.
pub struct Thrown<'a> {
    pub bench: &'a Bench,
    pub runout_mm: f64,
    pub tilt: Angle,
    pub throw: Millimetres,
}

impl Workshop {
    /// What the median finished arrow carries at the speed that was said.
    pub fn carried(&self, asked: &Asked) -> Option<Carried> {
        let (mass_gr, speed_m_s) = (self.median(Gauge::FinishedMass)?, asked.speed_m_s?);
        let mass = Grains::new(mass_gr).ok()?;
        let (energy_j, momentum_n_s) =
            (kinetic_energy_j(mass, speed_m_s), momentum_n_s(mass, speed_m_s));
        Some(Carried {
            mass_gr,
            speed_m_s,
            energy_j,
            energy_ftlbf: energy_j / JOULES_PER_FOOT_POUND,
            momentum_n_s,
            momentum_slug_ft_s: momentum_n_s / NEWTON_SECONDS_PER_SLUG_FOOT,
        })
    }

    /// Grains per pound of every arrow, bare where it was not weighed finished, the lightest first.
    pub fn per_pound(&self, limit: Limit) -> Vec<(&Bench, f64)> {
        let per_pound = |(bench, mass_gr): (_, f64)| {
            let mass = Grains::new(mass_gr).ok()?;
            Some((bench, grains_per_pound(mass, limit.draw_lbf).ok()?))
        };
        let weighed = self.candidates().filter_map(|bench| {
            let mass = Gauge::FinishedMass.of(&bench.measures);
            Some((bench, mass.or_else(|| Gauge::BareMass.of(&bench.measures))?))
        });
        let mut per_pound: Vec<_> = weighed.filter_map(per_pound).collect();
        per_pound.sort_by(|(_, a), (_, b)| a.total_cmp(b));
        per_pound
    }

    /// What each end out of square does.
    pub fn thrown(&self, crooked: Crooked) -> Vec<Thrown<'_>> {
        let thrown = |(bench, runout_mm): (_, f64)| {
            let tilt = end_tilt(Millimetres::new(runout_mm), crooked.diameter).ok()?;
            Some(Thrown { bench, runout_mm, tilt, throw: point_throw(tilt, crooked.point) })
        };
        let crooked =
            self.with(Gauge::Square).into_iter().filter(|(_, runout_mm)| *runout_mm > 0.0);
        crooked.filter_map(thrown).collect()
    }
}
