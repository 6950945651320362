//! The pinhole that is likeliest, by the marks and by what is known of the lens.

use nalgebra::{SMatrix, Vector2};

use super::Lens;
use super::pinhole::{NUMBERS, Pinhole, Step};
use crate::Mark;

/// A matrix over the numbers of a pinhole.
pub(super) type Normal = SMatrix<f64, NUMBERS, NUMBERS>;

/// Steps at most; ten are usual.
const MOST_STEPS: usize = 200;

/// What the likelihood is made of.
pub(super) struct Evidence<'a> {
    pub marks: &'a [Mark],
    pub lens: &'a Lens,
    /// How well each mark is read, px.
    pub read_sd_px: f64,
}

/// A fit.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Fit {
    pub pinhole: Pinhole,
    /// Its covariance is `root` · `root`ᵀ.
    pub root: Normal,
    /// Twice what the logarithm of its likelihood lacks.
    pub squares: f64,
}

/// The sum of squares with what its slopes make of it.
struct Equations {
    normal: Normal,
    gradient: Step,
    squares: f64,
}

impl Evidence<'_> {
    /// The best pinhole near `start`; `None` where the numbers are not determined.
    ///
    /// # Source
    /// As for views: K. Levenberg, 1944; D. W. Marquardt, 1963 (from memory).
    pub fn fit(&self, start: Pinhole) -> Option<Fit> {
        let (mut pinhole, mut damping) = (start, 1e-4);
        let mut equations = self.equations(&pinhole)?;
        for _ in 0..MOST_STEPS {
            let damped =
                equations.normal + Normal::from_diagonal(&(equations.normal.diagonal() * damping));
            let step = damped.cholesky()?.solve(&-equations.gradient);
            let next = pinhole.moved(&step);
            match self.equations(&next) {
                Some(better) if better.squares < equations.squares => {
                    let gained = equations.squares - better.squares;
                    (pinhole, damping, equations) = (next, 0.1 * damping, better);
                    if gained <= 1e-14 * equations.squares {
                        break;
                    }
                }
                _ if damping > 1e12 => break,
                _ => damping *= 10.0,
            }
        }
        let root = equations.normal.cholesky()?.inverse().cholesky()?.l();
        let is_finite = root.iter().all(|number| number.is_finite());
        is_finite.then_some(Fit { pinhole, root, squares: equations.squares })
    }

    fn equations(&self, pinhole: &Pinhole) -> Option<Equations> {
        let mut sums = self.prior(pinhole);
        for mark in self.marks {
            let (seen, slope) = pinhole.seen(mark.point.vector().push(0.0))?;
            let off = (seen - mark.pixel.vector()) / self.read_sd_px;
            let slope = slope / self.read_sd_px;
            sums.normal += slope.transpose() * slope;
            sums.gradient += slope.transpose() * off;
            sums.squares += off.norm_squared();
        }
        sums.squares.is_finite().then_some(sums)
    }

    /// What the lens is known to be.
    fn prior(&self, pinhole: &Pinhole) -> Equations {
        let lens = self.lens;
        let off: Vector2<f64> = pinhole.middle - lens.middle.vector();
        let known = [
            ((pinhole.focal_px / lens.focal_px).ln(), lens.focal_spread),
            (off.x, lens.middle_sd_px),
            (off.y, lens.middle_sd_px),
            (pinhole.bend, lens.bend_sd),
        ];
        let mut sums = Equations { normal: Normal::zeros(), gradient: Step::zeros(), squares: 0.0 };
        for (at, (off, sd)) in (NUMBERS - known.len()..).zip(known) {
            sums.normal[(at, at)] = sd.powi(-2);
            sums.gradient[at] = off * sd.powi(-2);
            sums.squares += (off / sd).powi(2);
        }
        sums
    }
}
