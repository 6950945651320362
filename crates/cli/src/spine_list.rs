//! Spine readings as they are typed: `0=0.500,90=12.9mm`.

use quarterturn_entry::quantity::{self, QuantityFault, Unit};
use quarterturn_entry::{Advising, Located};
use quarterturn_journal::SpineEntry;
use thiserror::Error;

/// Why a text is no list of spine readings.
#[derive(Clone, Debug, Error, PartialEq)]
pub enum SpineFault {
    /// A reading that does not say which side was up.
    #[error("which side was up?")]
    NoSide,
    /// A number or a unit that is not right.
    #[error(transparent)]
    Quantity(#[from] QuantityFault),
}

impl Advising for SpineFault {
    fn way_on(&self) -> Option<String> {
        match self {
            Self::NoSide => {
                Some("for example 0=0.500,90=0.512: degrees from the mark, then the sag".to_owned())
            }
            Self::Quantity(fault) => fault.way_on(),
        }
    }
}

/// Reads a list; a sag without its unit is in inches.
pub fn parse(text: &str) -> Result<Vec<SpineEntry>, Located<SpineFault>> {
    let mut start = 0;
    let reading = |item: &str| {
        let reading = parse_one(item).map_err(|fault| fault.shifted(start));
        start += item.len() + 1;
        reading
    };
    text.split(',').map(reading).collect()
}

fn parse_one(item: &str) -> Result<SpineEntry, Located<SpineFault>> {
    let no_side = || Located::new(SpineFault::NoSide, 0..item.len());
    let (side, sag) = item.split_once('=').ok_or_else(no_side)?;
    let side_deg = quantity::angle_deg(side).map_err(Located::widened)?;
    let sag = quantity::length(sag, Some(Unit::INCH))
        .map_err(|fault| fault.shifted(side.len() + 1).widened())?;
    Ok(SpineEntry { side_deg, sag_in: sag.inches() })
}
