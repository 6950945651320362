//! Spine readings around one shaft.

use quarterturn_geometry::{Index, Millimetres};

/// Readings from which a side may be named: a shaft has two stiff sides and two soft ones, a quarter turn apart.
pub const FEWEST_READINGS: usize = 4;

/// Sags that differ by less name no side: three times what a dial gauge tells apart (0.02 mm, common practice).
pub const LEAST_SPREAD: Millimetres = Millimetres::new(0.06);

/// How far a shaft sags with one side up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SpineReading {
    /// The side that faced up, clockwise from the ink mark as seen from the nock.
    pub side: Index,
    /// How far it sagged.
    pub sag: Millimetres,
}

/// What the readings around a shaft say.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SpineRound {
    /// The mean sag.
    pub mean: Millimetres,
    /// Largest less smallest sag: of four readings a quarter turn apart the "spine around shaft variation" of ASTM F2031,
    /// 2.1.2.
    pub spread: Millimetres,
    /// The side that sagged least, where there are [`FEWEST_READINGS`] and they differ by [`LEAST_SPREAD`].
    pub stiff_side: Option<Index>,
    /// How many readings there are.
    pub n: usize,
}

impl SpineRound {
    /// Reads the readings of one shaft; nothing without one.
    pub fn of(readings: &[SpineReading]) -> Option<Self> {
        let by_sag = |a: &&SpineReading, b: &&SpineReading| a.sag.mm().total_cmp(&b.sag.mm());
        let least = readings.iter().min_by(by_sag)?;
        let most = readings.iter().max_by(by_sag)?;
        let n = readings.len();
        let sum_mm: f64 = readings.iter().map(|reading| reading.sag.mm()).sum();
        let spread = most.sag - least.sag;
        let told = n >= FEWEST_READINGS && spread >= LEAST_SPREAD;
        Some(Self {
            mean: Millimetres::new(sum_mm / n as f64),
            spread,
            stiff_side: told.then_some(least.side),
            n,
        })
    }
}
