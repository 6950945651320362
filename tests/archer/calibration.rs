//! Whether what the program says of its own certainty is true.

use std::array;

use super::next::Judged;
use super::player::Player;
use super::share::Share;
use super::vector::Vector;
use super::world::TOLERANCE_MM;

/// How many bins `within` is counted in.
pub const BINS: usize = 10;
/// The 0.90 point of chi-square with two degrees of freedom: −2 ln 0.1.
const REGION_90: f64 = 4.605_170_185_988_092;

/// What was said of `within` and of the region of the miss, beside what was true.
#[derive(Clone, Default)]
pub struct Calibration {
    pub bins: [Bin; BINS],
    /// How often the 90 % region of the miss held the truth.
    pub covered: Share,
}

/// The statements whose probability fell in one bin.
#[derive(Clone, Copy, Default)]
pub struct Bin {
    /// How often the shaft was inside the tolerance.
    pub inside: Share,
    /// The probabilities said, summed up.
    pub said: f64,
}

impl Calibration {
    /// Counts what one answer says of every shaft.
    pub fn count(&mut self, shafts: &[Judged], player: &Player<'_>) {
        for judged in shafts {
            let truth = player.miss(&judged.shaft, judged.index_deg);
            #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "0 to 9")]
            let bin = ((judged.within * BINS as f64) as usize).min(BINS - 1);
            self.bins[bin].said += judged.within;
            self.bins[bin].inside.count(truth.length() <= TOLERANCE_MM);
            self.covered.count(distance2(judged, truth) <= REGION_90);
        }
    }

    pub fn join(&self, other: &Self) -> Self {
        Self {
            bins: array::from_fn(|k| self.bins[k].join(other.bins[k])),
            covered: self.covered.join(other.covered),
        }
    }
}

impl Bin {
    fn join(self, other: Self) -> Self {
        Self { inside: self.inside.join(other.inside), said: self.said + other.said }
    }

    /// The mean of what was said.
    pub fn said(self) -> f64 {
        self.said / self.inside.of as f64
    }
}

/// The squared distance of the truth from the estimate, in standard deviations of the estimate.
fn distance2(judged: &Judged, truth: Vector) -> f64 {
    let [[xx, xy], [yx, yy]] = judged.miss_cov_mm2;
    let determinant = xx * yy - xy * yx;
    let symmetric = (xy - yx).abs() <= 1e-9 * (xx + yy);
    assert!(symmetric && xx > 0.0 && determinant > 0.0, "{:?}", judged.miss_cov_mm2);
    let off = truth - Vector::from(judged.miss_mm);
    (yy * off.x * off.x - (xy + yx) * off.x * off.y + xx * off.y * off.y) / determinant
}
