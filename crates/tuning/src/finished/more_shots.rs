//! How many more shots would decide.

use nalgebra::Matrix2;
use quarterturn_geometry::Millimetres;
use quarterturn_statistics::{PlanarEstimate, PlanarSample};

use super::heads::shown;

/// More than this nobody shoots for one question.
const MOST: usize = 60;

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
    let decides = |more: usize| {
        let of_mean = |sample: &PlanarSample| -> Option<Matrix2<f64>> {
            Some(sample.covariance()? / (sample.n() + more) as f64)
        };
        let covariance = of_mean(samples[0]).zip(of_mean(samples[1])).map(|(one, two)| one + two);
        covariance.is_some_and(|covariance| {
            let degrees_of_freedom = estimate.degrees_of_freedom * freedom(more) / freedom(0);
            let n = estimate.n + 2 * more;
            let later = PlanarEstimate { covariance, degrees_of_freedom, n, ..*estimate };
            shown(&later, together).is_some()
        })
    };
    // What m shots show, more show too.
    let (mut too_few, mut enough) = (0, MOST);
    while enough - too_few > 1 {
        let more = too_few.midpoint(enough);
        if decides(more) { enough = more } else { too_few = more }
    }
    decides(enough).then_some(enough)
}
