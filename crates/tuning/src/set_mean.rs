//! The mean of where the shafts of a set land, as what the others are measured from.

use nalgebra::{DMatrix, DVector, Matrix2};
use quarterturn_geometry::{Index, Offset};

use crate::Miss;
use crate::design::{self, Combination, Planar};
use crate::posterior::Posterior;

/// The mean of the own misses of some shafts, each at one index.
///
/// Where the set as a whole lands is in every own miss and in their mean alike; it goes out of the difference, with what
/// is not known of it.
#[derive(Clone, Debug)]
pub struct SetMean {
    of: Planar,
    miss: Miss,
    /// Its covariance with every unknown.
    bears: [DVector<f64>; 2],
}

impl SetMean {
    /// The mean over `shafts`, given by their lives and where their marks stand.
    pub fn of(posterior: &Posterior, shafts: &[(usize, Index)]) -> Self {
        let mut mean = Planar::default();
        for &(life, index) in shafts {
            let own = design::own_miss(&posterior.layout, life, index.angle().radians());
            for (mean, own) in mean.iter_mut().zip(own) {
                mean.0.extend(own.scaled(1.0 / shafts.len() as f64).0);
            }
        }
        let of = mean.map(Combination::merged);
        let bears = of.each_ref().map(|one| posterior.covariance_with_all(one));
        Self { miss: posterior.miss(&of), of, bears }
    }

    /// Where it lies, from the common offset.
    pub fn mean(&self) -> Offset {
        self.miss.mean
    }

    /// Where it lies from `references`, with the bow whose unknowns stand at `bow`.
    pub fn beside_references(
        &self,
        posterior: &Posterior,
        bow: usize,
        references: &[usize],
    ) -> Miss {
        let [mut x, mut y] =
            design::from_references(self.of.clone(), &posterior.layout, references);
        let [common_x, common_y] = design::single(bow);
        x.0.extend(common_x.0);
        y.0.extend(common_y.0);
        posterior.miss(&[x.merged(), y.merged()])
    }

    /// The miss `own`, whose combination is `of`, measured from here.
    pub fn subtracted_from(&self, own: &Miss, of: &Planar) -> Miss {
        let across = self.across(of);
        let apart = own.covariance_mm2 - across - across.transpose() + self.miss.covariance_mm2;
        Miss { mean: own.mean - self.miss.mean, covariance_mm2: covariance(&apart) }
    }

    /// The joint covariance `shown` of the planar combinations `of`, when every second one, from the first, is measured
    /// from here.
    pub fn subtracted_from_every_second(
        &self,
        mut shown: DMatrix<f64>,
        of: &[Planar],
    ) -> DMatrix<f64> {
        for (at, of) in of.iter().enumerate() {
            let across = self.across(of);
            for hit in (0..shown.nrows() / 2).step_by(2) {
                let mut rows = shown.fixed_view_mut::<2, 2>(2 * hit, 2 * at);
                rows -= across.transpose();
                let mut columns = shown.fixed_view_mut::<2, 2>(2 * at, 2 * hit);
                columns -= across;
                if at % 2 == 0 {
                    let mut both = shown.fixed_view_mut::<2, 2>(2 * at, 2 * hit);
                    both += self.miss.covariance_mm2;
                }
            }
        }
        shown
    }

    /// The covariance of a planar combination with the mean.
    fn across(&self, of: &Planar) -> Matrix2<f64> {
        Matrix2::from_fn(|row, column| of[row].of(|at| self.bears[column][at]))
    }
}

/// What rounding leaves below zero, where a shaft is nearly all of its set, taken for zero.
fn covariance(of: &Matrix2<f64>) -> Matrix2<f64> {
    let (x, y) = (of.m11.max(0.0), of.m22.max(0.0));
    let most = (x * y).sqrt();
    let across = of.m12.clamp(-most, most);
    Matrix2::new(x, across, across, y)
}
