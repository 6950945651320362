//! Which harmonics a few positions cannot tell apart.

use std::fmt;

use nalgebra::DVector;

use crate::{HarmonicError, Sample};

/// A wave that keeps less than this share of its length beside the earlier ones is told apart by rounding alone.
const ALIASED: f64 = 1e-7;

/// The most harmonics that are looked at: a thousand are more than any circle of positions.
const MOST: usize = 1000;

/// One term of a harmonic series in an angle θ.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wave {
    /// The same everywhere.
    Constant,
    /// cos kθ.
    Cosine(usize),
    /// sin kθ.
    Sine(usize),
}

impl Wave {
    /// The first `count` in the order of the coefficients of a fit: constant, cos θ, sin θ, cos 2θ, …
    pub(crate) fn first(count: usize) -> impl Iterator<Item = Self> {
        (0..count).map(|column| match column {
            0 => Self::Constant,
            _ if column % 2 == 1 => Self::Cosine(column.div_ceil(2)),
            _ => Self::Sine(column / 2),
        })
    }

    /// Its value at an angle.
    pub fn at(self, angle_rad: f64) -> f64 {
        match self {
            Self::Constant => 1.0,
            Self::Cosine(k) => (k as f64 * angle_rad).cos(),
            Self::Sine(k) => (k as f64 * angle_rad).sin(),
        }
    }
}

/// "cos 2θ".
impl fmt::Display for Wave {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Constant => write!(f, "the constant"),
            Self::Cosine(1) => write!(f, "cos θ"),
            Self::Sine(1) => write!(f, "sin θ"),
            Self::Cosine(k) => write!(f, "cos {k}θ"),
            Self::Sine(k) => write!(f, "sin {k}θ"),
        }
    }
}

/// A wave that at the positions looks like earlier ones.
#[derive(Clone, Debug, PartialEq)]
pub struct Alias {
    /// The wave.
    pub wave: Wave,
    /// The earlier waves, each with how much of it: their sum equals the wave at every position. None where the wave is
    /// 0 at all of them.
    pub seen_as: Vec<(Wave, f64)>,
}

/// "cos 2θ cannot be told from cos θ", "sin 2θ cannot be seen".
impl fmt::Display for Alias {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Some(((first, _), rest)) = self.seen_as.split_first() else {
            return write!(f, "{} cannot be seen", self.wave);
        };
        write!(f, "{} cannot be told from {first}", self.wave)?;
        rest.iter().try_for_each(|(wave, _)| write!(f, " and {wave}"))
    }
}

/// Every wave up to harmonic `harmonics` that cannot be told from lower ones at `angles_rad`, in the order of the series.
///
/// # Formula
/// Each wave less its projection on the earlier ones that were told apart (Gram and Schmidt, in its modified form); an
/// alias is what keeps less than 1e-7 of its length. The shares are those of the projection.
///
/// # Errors
/// [`HarmonicError::TooMany`] for more than a thousand harmonics.
///
/// # Example
/// ```
/// use quarterturn_statistics::{Sample, harmonic_aliases};
///
/// # fn main() -> Result<(), Box<dyn std::error::Error>> {
/// let thirds = Sample::new([0.0_f64, 120.0, 240.0].map(f64::to_radians).to_vec())?;
/// let said: Vec<_> = harmonic_aliases(&thirds, 2)?.iter().map(ToString::to_string).collect();
/// assert_eq!(said, ["cos 2θ cannot be told from cos θ", "sin 2θ cannot be told from sin θ"]);
/// # Ok(())
/// # }
/// ```
pub fn harmonic_aliases(
    angles_rad: &Sample,
    harmonics: usize,
) -> Result<Vec<Alias>, HarmonicError> {
    if harmonics > MOST {
        return Err(HarmonicError::TooMany { harmonics, most: MOST });
    }
    Ok(aliases_of(angles_rad.values(), harmonics))
}

/// A wave that was told apart from the earlier ones.
struct Direction {
    wave: Wave,
    /// Of length 1, square to the earlier ones.
    unit: DVector<f64>,
    /// How much of each earlier unit, and of its own, makes the wave.
    parts: Vec<f64>,
}

pub(crate) fn aliases_of(angles_rad: &[f64], harmonics: usize) -> Vec<Alias> {
    let least = ALIASED * (angles_rad.len() as f64).sqrt();
    let (mut told, mut aliases) = (Vec::<Direction>::new(), Vec::new());
    for wave in Wave::first(2 * harmonics + 1) {
        let values = angles_rad.iter().map(|&angle| wave.at(angle));
        let mut rest = DVector::from_iterator(angles_rad.len(), values);
        let mut parts = Vec::new();
        for earlier in &told {
            let part = earlier.unit.dot(&rest);
            rest.axpy(-part, &earlier.unit, 1.0);
            parts.push(part);
        }
        let length = rest.norm();
        if length < least {
            aliases.push(Alias { wave, seen_as: shares(&told, parts) });
        } else {
            parts.push(length);
            told.push(Direction { wave, unit: rest / length, parts });
        }
    }
    aliases
}

/// From parts of units to shares of waves, by substitution from the last; shares that are rounding are left out.
fn shares(told: &[Direction], mut parts: Vec<f64>) -> Vec<(Wave, f64)> {
    for (place, direction) in told.iter().enumerate().rev() {
        let share = parts[place] / direction.parts[place];
        parts[place] = share;
        for (earlier, part) in parts[..place].iter_mut().zip(&direction.parts) {
            *earlier -= share * part;
        }
    }
    let shares = told.iter().map(|direction| direction.wave).zip(parts);
    shares.filter(|(_, share)| share.abs() > ALIASED).collect()
}

/// How many positions differ by more than rounding.
pub(crate) fn positions(angles_rad: &[f64]) -> usize {
    let same = |a: f64, b: f64| (0.5 * (a - b)).sin().abs() < ALIASED;
    let distinct = angles_rad.iter().fold(Vec::new(), |mut seen: Vec<f64>, &angle| {
        if !seen.iter().any(|&earlier| same(earlier, angle)) {
            seen.push(angle);
        }
        seen
    });
    distinct.len()
}
