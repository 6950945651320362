//! Whether a difference grows with the distance in proportion, or faster.

use nalgebra::{Matrix2, Vector2};
use quarterturn_geometry::Millimetres;
use quarterturn_statistics::distributions::StudentT;
use quarterturn_statistics::{Estimate, Interval, Level, PlanarEstimate};

use super::{AtDistance, Difference};

/// A difference is believed where its test is below this.
const SURE: f64 = 0.05;

/// Each end of a central interval of this coverage is a bound at 95 %.
const BETWEEN_BOUNDS: Level = Level::P90;

/// How the difference of two kinds of heads grows with the distance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Growth {
    /// The nearest distance and the farthest.
    pub between: [Millimetres; 2],
    /// The direction in which broadheads land, of length 1.
    pub along: Vector2<f64>,
    /// By how much the difference at the farthest distance is more, along that direction, than the nearest one in
    /// proportion, mm; with the interval whose ends are each a bound at 95 %.
    pub excess_mm: Estimate,
    /// How sure it is that it grows faster than in proportion: Student's distribution function at excess/standard error.
    pub faster: f64,
    /// What that comes to.
    pub grows: Grows,
}

/// How a difference grows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Grows {
    /// No difference is sure yet, so that nothing can be said of its growth.
    NoDifference,
    /// Faster than in proportion, at 95 %: broadheads plane.
    Faster,
    /// Slower than in proportion, at 95 %.
    Slower,
    /// In proportion, within what the archer calls together, at 95 %: the sight or the rest.
    InProportion,
    /// None of these is shown.
    Open,
}

/// One difference along the common direction, over its distance.
struct Angle {
    distance_mm: f64,
    slope: f64,
    variance: f64,
    degrees_of_freedom: f64,
}

impl Growth {
    /// How the differences at two distances or more grow.
    ///
    /// # Formula
    /// With δᵢ at dᵢ and its covariance Vᵢ, p = (Σ dᵢ² Vᵢ⁻¹)⁻¹ Σ dᵢ Vᵢ⁻¹ δᵢ is the difference in proportion, u its
    /// direction. zᵢ = uᵀδᵢ/dᵢ is fitted as a + b dᵢ by least squares with weights dᵢ²/uᵀVᵢu; the excess is
    /// b (dₙ − d₁) dₙ: with two distances uᵀ(δ₂ − δ₁ d₂/d₁). Its degrees of freedom are
    /// Satterthwaite's, (Σ cᵢ²vᵢ)²/Σ (cᵢ²vᵢ)²/νᵢ.
    ///
    /// # Assumptions
    /// Those of the differences. p and b are not correlated where the Vᵢ are alike in shape, so that choosing the
    /// direction by p does not favour one sign of b.
    ///
    /// # Source
    /// F. E. Satterthwaite, 1946, An approximate distribution of estimates of variance components, Biometrics Bulletin 2,
    /// 110 (from memory). That planing grows faster than a mere offset is common practice.
    pub fn of(distances: &[AtDistance], together: Option<Millimetres>) -> Option<Self> {
        let known: Vec<_> =
            distances.iter().filter_map(|at| Some((at.distance, at.difference?))).collect();
        let between = [known.first()?.0, known.last()?.0];
        let proportional = in_proportion(&known)?;
        let along = proportional.value.try_normalize(0.0)?;
        let angles: Vec<_> = known.iter().map(|known| Angle::of(known, along)).collect();
        let (excess_mm, degrees_of_freedom) = excess(&angles, proportional.n)?;
        let student = StudentT::new(degrees_of_freedom).ok()?;
        let grows = if proportional.test(Vector2::zeros()).p_value >= SURE {
            Grows::NoDifference
        } else {
            shown(&excess_mm.interval, together)
        };
        let faster = student.cdf(excess_mm.value / excess_mm.standard_error);
        Some(Self { between, along, excess_mm, faster, grows })
    }
}

impl Angle {
    fn of((distance, difference): &(Millimetres, Difference), along: Vector2<f64>) -> Self {
        let (distance_mm, estimate) = (distance.mm(), &difference.estimate);
        Self {
            distance_mm,
            slope: along.dot(&estimate.value) / distance_mm,
            variance: along.dot(&(estimate.covariance * along)) / distance_mm.powi(2),
            degrees_of_freedom: estimate.degrees_of_freedom,
        }
    }
}

/// The difference at one millimetre of distance, if it is in proportion; nothing for fewer than two differences.
fn in_proportion(known: &[(Millimetres, Difference)]) -> Option<PlanarEstimate> {
    if known.len() < 2 {
        return None;
    }
    let (mut weight, mut weighed) = (Matrix2::zeros(), Vector2::zeros());
    for (distance, Difference { estimate, .. }) in known {
        let inverse = estimate.covariance.try_inverse()?;
        weight += inverse * distance.mm().powi(2);
        weighed += inverse * estimate.value * distance.mm();
    }
    let covariance = weight.try_inverse()?;
    let freedoms = known.iter().map(|(_, known)| known.estimate.degrees_of_freedom);
    Some(PlanarEstimate {
        value: covariance * weighed,
        covariance,
        // The weights are estimates too: with all degrees of freedom together the test would say too much.
        degrees_of_freedom: freedoms.fold(f64::INFINITY, f64::min),
        n: known.iter().map(|(_, known)| known.estimate.n).sum(),
    })
}

/// What is more than in proportion at the farthest distance, with its degrees of freedom.
fn excess(angles: &[Angle], n: usize) -> Option<(Estimate, f64)> {
    let (near, far) = (angles.first()?.distance_mm, angles.last()?.distance_mm);
    let weights: f64 = angles.iter().map(|angle| angle.variance.recip()).sum();
    let middle =
        angles.iter().map(|angle| angle.distance_mm / angle.variance).sum::<f64>() / weights;
    let lever = |angle: &Angle| (angle.distance_mm - middle) / angle.variance;
    let moment: f64 = angles.iter().map(|angle| lever(angle) * angle.distance_mm).sum();
    let to_excess = (far - near) * far / moment;
    let value: f64 = angles.iter().map(|angle| to_excess * lever(angle) * angle.slope).sum();
    let share = |angle: &Angle| (to_excess * lever(angle)).powi(2) * angle.variance;
    let variance: f64 = angles.iter().map(share).sum();
    let spent: f64 =
        angles.iter().map(|angle| share(angle).powi(2) / angle.degrees_of_freedom).sum();
    let degrees_of_freedom = variance.powi(2) / spent;
    let standard_error = variance.sqrt();
    let student = StudentT::new(degrees_of_freedom).ok()?;
    let reach = student.quantile(BETWEEN_BOUNDS.upper_end()) * standard_error;
    let level = BETWEEN_BOUNDS.probability();
    let interval = Interval { lower: value - reach, upper: value + reach, level };
    Some((Estimate { value, standard_error, interval, n }, degrees_of_freedom))
}

fn shown(excess_mm: &Interval, together: Option<Millimetres>) -> Grows {
    let within = |together: Millimetres| {
        excess_mm.lower >= -together.mm() && excess_mm.upper <= together.mm()
    };
    match together {
        // What is less than the archer minds is in proportion, however surely it is not nought.
        Some(together) if within(together) => Grows::InProportion,
        _ if excess_mm.lower > 0.0 => Grows::Faster,
        _ if excess_mm.upper < 0.0 => Grows::Slower,
        _ => Grows::Open,
    }
}
