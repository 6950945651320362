//! How many more shots would decide.

use nalgebra::Matrix2;
use quarterturn_geometry::Millimetres;
use quarterturn_statistics::{PlanarEstimate, PlanarSample};

use super::together::{LEVEL, fewest_more, shown};

/// About how many more shots of each of the two `samples` would show that their centres are together or apart, if the
/// difference and the scatter stay as they are: as likely a few more as a few less.
///
/// # Formula
/// The least m at which [`shown`] says something of the same difference with V = S₁/(n₁ + m) + S₂/(n₂ + m), its degrees
/// of freedom grown as n₁ + n₂ + 2m − 2.
pub fn more_shots(
    estimate: &PlanarEstimate,
    samples: [&PlanarSample; 2],
    together: Millimetres,
) -> Option<usize> {
    let freedom = |more: usize| (samples[0].n() + samples[1].n() + 2 * more - 2) as f64;
    fewest_more(|more: usize| {
        let of_mean = |sample: &PlanarSample| -> Option<Matrix2<f64>> {
            Some(sample.covariance()? / (sample.n() + more) as f64)
        };
        let covariance = of_mean(samples[0]).zip(of_mean(samples[1])).map(|(one, two)| one + two);
        covariance.is_some_and(|covariance| {
            let degrees_of_freedom = estimate.degrees_of_freedom * freedom(more) / freedom(0);
            let n = estimate.n + 2 * more;
            let later = PlanarEstimate { covariance, degrees_of_freedom, n, ..*estimate };
            shown(&later, together, LEVEL).is_some()
        })
    })
}
