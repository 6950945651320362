//! What makes up for a printer that shrinks.

use quarterturn_geometry::Millimetres;
use thiserror::Error;

use crate::plot::Stretch;

/// How long the bars are drawn.
pub const BAR_MM: f64 = 100.0;
/// A print may be off by a tenth; beyond that it was scaled to something else.
const CAN_BE_MM: std::ops::RangeInclusive<f64> = 90.0..=110.0;

/// How much larger a sheet is drawn so that it comes out of the printer in its true size.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Correction(Stretch);

/// A bar that cannot have been measured on such a sheet.
#[derive(Clone, Copy, Debug, PartialEq, Error)]
#[error("a bar of {measured_mm} mm is more than a tenth off the 100 mm that it is drawn with")]
pub struct CorrectionFault {
    /// How long it was said to be.
    pub measured_mm: f64,
}

impl Correction {
    /// For a printer that prints in true size.
    pub const NONE: Self = Self(Stretch::NONE);

    /// For a printer that prints the bars of 100 mm so long, across and up.
    ///
    /// # Formula
    /// 100 mm / measured, for each axis.
    ///
    /// # Errors
    /// [`CorrectionFault`] for a bar outside 90 to 110 mm.
    pub fn measured(across: Millimetres, up: Millimetres) -> Result<Self, CorrectionFault> {
        let [x, y] = [across, up].map(|bar| {
            let measured_mm = bar.mm();
            if CAN_BE_MM.contains(&measured_mm) {
                Ok(BAR_MM / measured_mm)
            } else {
                Err(CorrectionFault { measured_mm })
            }
        });
        Ok(Self(Stretch { x: x?, y: y? }))
    }

    /// Paper millimetres for each that is wanted.
    pub const fn stretch(self) -> Stretch {
        self.0
    }
}
