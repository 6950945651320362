//! What each shot differs from what the posterior expects of it, squared and averaged over what is not known.

use super::end_mean::EndMean;
use crate::observation::Observations;
use crate::posterior::Posterior;
use crate::readings::{Coordinate, Of, Reading};

/// Expected squares.
pub struct Residuals {
    /// For each shot, of the scatter of its hit along the two axes, mm².
    pub hit: Vec<[f64; 2]>,
    /// For each shot, of the scatter of its lean, deg², summed over the two axes, where it was read.
    pub lean: Vec<Option<f64>>,
    /// Over the ends, of their own aim along the two axes, mm², and how many ends that sums.
    pub aim: [Sum; 2],
    /// Over the ends, of their own lean frame, deg², and how many coordinates that sums.
    pub frame: Sum,
}

/// A sum of squares and how many terms it has.
#[derive(Clone, Copy, Debug, Default)]
pub struct Sum {
    /// The sum of squares.
    pub squares: f64,
    /// How many terms.
    pub terms: f64,
}

impl Residuals {
    /// The residuals of all that was read.
    pub fn of(seen: &Observations, coordinates: &[Coordinate], posterior: &Posterior) -> Self {
        let shots = seen.shots.len();
        let mut all = Self {
            hit: vec![[0.0; 2]; shots],
            lean: vec![None; shots],
            aim: [Sum::default(); 2],
            frame: Sum::default(),
        };
        for (at, coordinate) in coordinates.iter().enumerate() {
            if !coordinate.readings.is_empty() {
                all.add(coordinate, at % 2, posterior);
            }
        }
        all
    }

    fn add(&mut self, coordinate: &Coordinate, axis: usize, posterior: &Posterior) {
        let end = EndMean::of(coordinate, posterior);
        let of_end = match coordinate.of {
            Of::Hit => &mut self.aim[axis],
            Of::Lean => &mut self.frame,
        };
        of_end.squares += end.expected_square();
        of_end.terms += 1.0;
        for reading in &coordinate.readings {
            let square =
                expected_scatter(reading, end.expected_residual_square(reading, posterior));
            match coordinate.of {
                Of::Hit => self.hit[reading.shot][axis] = square,
                Of::Lean => *self.lean[reading.shot].get_or_insert(0.0) += square,
            }
        }
    }
}

/// The expected square of the part of a reading's noise that is the shot's own scatter, from that of the noise.
fn expected_scatter(Reading { weight, scatter_share, .. }: &Reading, square: f64) -> f64 {
    // Of a noise that is scatter and reading, the scatter's share is known up to what the reading may have been.
    scatter_share * scatter_share * square + scatter_share * (1.0 - scatter_share) / weight
}
