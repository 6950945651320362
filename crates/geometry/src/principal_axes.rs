//! The two directions in which a covariance spreads most and least.

use std::f64::consts::PI;

use nalgebra::Matrix2;

use crate::{Angle, GeometryError, wrap};

/// What a computed covariance may be off by, as a share of its largest entry: far more than doubles
/// lose in a few hundred operations, far less than anyone can see (an axis 30,000 times shorter
/// than the other).
const ROUNDING: f64 = 1e-9;

/// The variances of a covariance along its own axes, mm², and where the longer axis points.
#[derive(Clone, Copy, Debug)]
pub(crate) struct PrincipalAxes {
    pub(crate) larger_mm2: f64,
    pub(crate) smaller_mm2: f64,
    /// Clock angle of the axis of the larger variance, in [0, π); 0 where the two are equal.
    pub(crate) direction: Angle,
}

impl PrincipalAxes {
    /// # Formula
    /// With m = (xx + yy)/2, d = (yy − xx)/2 and s = √(d² + xy²) the variances are m + s and m − s;
    /// the longer axis stands at the clock angle ½ atan2(xy, d). m − s cancels, so the smaller
    /// variance is taken as (xx·yy − xy²)/(m + s), in an order in which no square overflows and
    /// which is right to the rounding of the smaller of xx and yy. No difference of variances is
    /// divided by: nearly equal ones are as good as any.
    ///
    /// # Source
    /// LAPACK, routine DLAEV2 (E. Anderson and others, *LAPACK Users' Guide*, 3rd edition, 1999).
    pub(crate) fn of(covariance: &Matrix2<f64>) -> Result<Self, GeometryError> {
        if let Some(&value_mm2) = covariance.iter().find(|value| !value.is_finite()) {
            return Err(GeometryError::NotFinite { value_mm2 });
        }
        let [[xx, yx], [xy, yy]] = covariance.data.0;
        if (xy - yx).abs() > ROUNDING * covariance.amax() {
            return Err(GeometryError::Asymmetric { xy_mm2: xy, yx_mm2: yx });
        }
        let half_difference = yy / 2.0 - xx / 2.0;
        let middle = xx / 2.0 + yy / 2.0;
        let spread = half_difference.hypot(xy);
        let larger = middle + spread;
        let smaller =
            if larger > 0.0 { (xx / larger) * yy - (xy / larger) * xy } else { middle - spread };
        if smaller < -ROUNDING * larger {
            return Err(GeometryError::Indefinite { variance_mm2: smaller });
        }
        let direction = wrap::positive(xy.atan2(half_difference) / 2.0, PI);
        Ok(Self {
            larger_mm2: larger,
            smaller_mm2: smaller.max(0.0),
            direction: Angle::from_radians(direction),
        })
    }
}
