//! Every tolerance of this crate's checks, with its reason.

/// A few operations on doubles, each right to 1.1e-16 of its value; relative.
pub(crate) const ROUNDING: f64 = 4e-15;

/// The clock angle of an axis, radians: `eigh` is right to a few roundings of the larger variance
/// divided by the difference of the two, here at least a third of the larger.
pub(crate) const AXIS_RADIANS: f64 = 1e-14;

/// How far outside its Mahalanobis radius a point of the boundary may lie: the inverse of the
/// matrix used to measure it loses as many digits as the ratio of its variances has, here at most
/// four; relative.
pub(crate) const MAHALANOBIS: f64 = 1e-11;

/// A value printed with two decimals: half a unit of the last.
pub(crate) const TWO_DECIMALS: f64 = 0.005;

/// An angle after two rotations; radians.
pub(crate) const ROTATED: f64 = 1e-14;

/// How much a relative lean of up to 4 degrees turns about the shaft when the frame is tilted by up to 22 degrees; in
/// degrees.
pub(crate) const RELATIVE_LEAN_DEG: f64 = 0.25;

/// What first order leaves out of a reading to half an hour; relative.
pub(crate) const FIRST_ORDER: f64 = 0.01;

/// Millimetres over half a metre: sixteen digits less the few that a view loses.
pub(crate) const MAPPED_MM: f64 = 1e-9;

/// Where `OpenCV` ends its search, and scipy its own; millimetres.
pub(crate) const OPENCV_STOPS_MM: f64 = 1e-4;
pub(crate) const SCIPY_STOPS_MM: f64 = 1e-6;

/// Where `OpenCV` stops in the flat valley between focal length and distance: the place of a camera a metre away, mm; its focal
/// length, relative, and the bend of its lens, a share.
pub(crate) const CAMERA_MM: f64 = 0.005;
pub(crate) const CAMERA: f64 = 1e-5;

/// The lean of a planted shaft by a camera that is known as exactly as it was planted; degrees.
pub(crate) const PLANTED_LEAN_DEG: f64 = 1e-6;

/// The share of leans within a circle that holds 95 % of errors alike along both axes: 91.7 % where they all lie along one; four
/// standard errors of 600 below that.
pub(crate) const LEANS_WITHIN: std::ops::RangeInclusive<f64> = 0.87..=1.0;

/// Hits from real photos of 640 by 480 pixels, in which a pixel shows 0.5 to 0.8 mm and corners are measured to a fifth of one; mm.
pub(crate) const REAL_HITS_MM: f64 = 0.8;

/// A focal length by four corners of one real photo beside the calibration over thirteen, in what is said of it: the middle of one of
/// these old cameras is three times as far off as is taken for granted.
pub(crate) const REAL_CAMERA_SPREADS: f64 = 4.0;

/// The nine numbers of a view by equations in bare pixels, whose thousands stand beside ones; relative.
pub(crate) const VIEW: f64 = 1e-9;

/// Standard errors that a seeded simulation may be off by: one in sixteen thousand is further out.
pub(crate) const STANDARD_ERRORS: f64 = 4.0;

/// Fails unless `actual` lies within `allowed` of `expected`; a NaN fails.
#[track_caller]
pub(crate) fn assert_within(actual: f64, expected: f64, allowed: f64) {
    let apart = (actual - expected).abs();
    assert!(apart <= allowed, "{actual:e} is {apart:e} from {expected:e}, allowed {allowed:e}");
}
