//! The view whose squared distances on the face are least.

use nalgebra::SVector;

use super::view::{Pair, Parameters, View};

/// Steps at most; from the linear solution five are usual.
const MOST_STEPS: usize = 100;

/// The best view and the inverse of its normal equations, (Σ Jᵢᵀ Jᵢ)⁻¹; `None` where some direction of the numbers is
/// not determined.
///
/// # Source
/// K. Levenberg, 1944, Quarterly of Applied Mathematics 2, 164; D. W. Marquardt, 1963, SIAM Journal 11, 431 (from
/// memory). A step that does not help is damped ten times more, one that helps a tenth as much; it ends where nothing
/// helps any more.
pub(super) fn refined(start: View, pairs: &[Pair]) -> Option<(View, Parameters)> {
    let (mut view, mut damping) = (start, 1e-6);
    for _ in 0..MOST_STEPS {
        let (normal, gradient) = equations(&view, pairs);
        let damped = normal + Parameters::from_diagonal(&(normal.diagonal() * damping));
        let step = damped.cholesky()?.solve(&gradient);
        let next = View(view.0 - step);
        if next.is_before(pairs) && squares(&next, pairs) < squares(&view, pairs) {
            (view, damping) = (next, 0.1 * damping);
        } else {
            damping *= 10.0;
        }
        if step.norm() <= f64::EPSILON * view.0.norm() {
            break;
        }
    }
    let inverse = equations(&view, pairs).0.cholesky()?.inverse();
    inverse.iter().all(|value| value.is_finite()).then_some((view, inverse))
}

/// Σ Jᵢᵀ Jᵢ and Σ Jᵢᵀ eᵢ.
fn equations(view: &View, pairs: &[Pair]) -> (Parameters, SVector<f64, 8>) {
    let mut sums = (Parameters::zeros(), SVector::zeros());
    for (pixel, point) in pairs {
        let slope = view.parameter_slope(*pixel).transpose();
        sums.0 += slope * slope.transpose();
        sums.1 += slope * (view.at(*pixel) - point);
    }
    sums
}

fn squares(view: &View, pairs: &[Pair]) -> f64 {
    pairs.iter().map(|(pixel, point)| (view.at(*pixel) - point).norm_squared()).sum()
}
