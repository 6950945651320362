//! The closed curve on which a shaft lands as its mark goes round.

use std::f64::consts::PI;

use quarterturn_geometry::{Angle, Offset};
use quarterturn_tuning::Prediction;

/// From one point of the curve to the next.
const STEP_DEG: u16 = 5;
/// What turns once and twice with the mark is told by so many positions and no fewer.
const FEWEST: usize = 5;

/// Points of the curve through the predicted misses; none where the positions are too few to tell it.
///
/// # Formula
/// Σ f(θⱼ) D(θ − θⱼ) over n evenly spaced θⱼ, D(x) = sin(n x / 2) / (n tan(x / 2)) for even n and sin(n x / 2) /
/// (n sin(x / 2)) for odd n: the trigonometric polynomial of lowest degree through them. A miss has harmonics one and two only, so
/// that five positions or more give it exactly.
///
/// # Source
/// R. Kress, 1998, *Numerical Analysis*, section 8.2; from memory.
pub fn curve(positions: &[Prediction]) -> Vec<Offset> {
    if positions.len() < FEWEST {
        return Vec::new();
    }
    let at = |degrees: u16| {
        let angle = Angle::from_degrees(f64::from(degrees));
        let parts = positions.iter().map(|position| {
            position.miss.mean * kernel(positions.len(), (angle - position.index.angle()).radians())
        });
        parts.fold(Offset::ZERO, |sum, part| sum + part)
    };
    (0..360 / STEP_DEG).map(|step| at(step * STEP_DEG)).collect()
}

fn kernel(n: usize, x: f64) -> f64 {
    let (n, half) = (n as f64, x / 2.0);
    if (half / PI - (half / PI).round()).abs() < 1e-9 {
        return 1.0;
    }
    let below = if n % 2.0 == 0.0 { half.tan() } else { half.sin() };
    (n * half).sin() / (n * below)
}
