//! The archer's random stream: seeded, and the same on every machine.

use std::ops::Range;

use rand::{RngExt, SeedableRng};
use rand_distr::{Distribution, StandardNormal};
use rand_pcg::Pcg64;

use super::vector::Vector;

/// A stream of chance.
pub struct Luck(Pcg64);

impl Luck {
    pub fn new(seed: u64) -> Self {
        Self(Pcg64::seed_from_u64(seed))
    }

    /// Normal with standard deviation `sd` on each axis.
    pub fn scatter(&mut self, sd: f64) -> Vector {
        Vector { x: self.normal(), y: self.normal() } * sd
    }

    pub fn normal(&mut self) -> f64 {
        StandardNormal.sample(&mut self.0)
    }

    pub fn between(&mut self, range: Range<f64>) -> f64 {
        self.0.random_range(range)
    }

    pub fn happens(&mut self, probability: f64) -> bool {
        self.0.random_bool(probability)
    }

    /// A vector of this length in any direction.
    pub fn direction(&mut self, length: f64) -> Vector {
        Vector { x: 0.0, y: length }.clockwise(self.between(0.0..360.0))
    }
}
