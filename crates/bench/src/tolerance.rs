//! Every tolerance of this crate's checks, with its reason.

/// A few operations on doubles, each right to 1.1e-16 of its value; relative.
pub const ROUNDING: f64 = 1e-13;

/// How far θ may be from its exact tangent or sine at 5°, as the docs say; relative.
pub const SMALL_ANGLE: f64 = 0.003;

/// Fails unless `actual` lies within `allowed` of `expected`; a NaN fails.
#[track_caller]
pub fn assert_within(actual: f64, expected: f64, allowed: f64) {
    let apart = (actual - expected).abs();
    assert!(apart <= allowed, "{actual} is {apart:e} from {expected}, allowed {allowed:e}");
}
