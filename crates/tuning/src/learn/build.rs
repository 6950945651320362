//! Shafts that are built worse than the others, or lean otherwise.

use crate::Scales;
use crate::layout::shaft;
use crate::observation::{Kind, Life, Observations};
use crate::posterior::Posterior;

/// How many times as large a shaft's parts may be as those of the others, and how likely that is before it is shot.
const LARGER: [(f64, f64); 2] = [(1.0, 0.9), (2.5, 0.1)];

/// The precision of a life's own parts as a multiple of the usual: that of a mixture of two sizes instead of one, so
/// that one bad shaft neither widens what is expected of the others nor is drawn to them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Build {
    /// Of its own miss.
    pub miss: f64,
    /// Of what its lean differs from the relation.
    pub lean: f64,
}

impl Build {
    /// As the scales say.
    pub const USUAL: Self = Self { miss: 1.0, lean: 1.0 };
}

/// The build of each life before it is shot.
pub fn before(seen: &Observations) -> Vec<Build> {
    let precision = LARGER.iter().map(|(larger, before)| before / (larger * larger)).sum();
    let build = |life: &Life| match life.kind {
        Kind::Reference => Build::USUAL,
        Kind::Bare => Build { miss: precision, lean: precision },
    };
    seen.lives.iter().map(build).collect()
}

/// The build of each life from the unknowns.
pub fn builds(seen: &Observations, posterior: &Posterior, scales: &Scales) -> Vec<Build> {
    let build = |(life, place): (usize, &Life)| match place.kind {
        Kind::Reference => Build::USUAL,
        Kind::Bare => of_shaft(posterior, posterior.layout.life(life), scales),
    };
    seen.lives.iter().enumerate().map(build).collect()
}

fn of_shaft(posterior: &Posterior, own: usize, scales: &Scales) -> Build {
    let of = |parts: [(usize, f64); 3]| {
        let square = |(at, sd): (usize, f64)| posterior.expected_square(own + at) / (sd * sd);
        precision(parts.into_iter().map(square).sum())
    };
    let differs = |part| (part, scales.discrepancy_deg);
    Build {
        miss: of([
            (shaft::CENTRE, scales.centre_mm),
            (shaft::TURNING, scales.turning_mm),
            (shaft::STIFF, scales.stiff_mm),
        ]),
        lean: of([shaft::CENTRE_LEAN, shaft::TURNING_LEAN, shaft::STIFF_LEAN].map(differs)),
    }
}

/// The coordinates of three planar parts.
const COORDINATES: f64 = 6.0;

/// The expected 1/k², where k times the usual size has the weight πₖ k⁻⁶ exp(−q / 2k²), q the expected sum of the squares
/// of the six coordinates in units of their scales.
fn precision(squares: f64) -> f64 {
    let log = LARGER.map(|(larger, before)| {
        before.ln() - COORDINATES * larger.ln() - squares / (2.0 * larger * larger)
    });
    let most = log.into_iter().fold(f64::MIN, f64::max);
    let likely = log.map(|one| (one - most).exp());
    let precisions =
        LARGER.iter().zip(likely).map(|((larger, _), likely)| likely / (larger * larger));
    precisions.sum::<f64>() / likely.iter().sum::<f64>()
}
