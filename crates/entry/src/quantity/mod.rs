//! Numbers with units as people type them: `18.3m`, `20 yd`, `25mm`, `1in`, `20gr`, `270fps`.

mod fault;
mod number;
mod unit;

use quarterturn_geometry::Millimetres;

use crate::located::Located;

pub use fault::QuantityFault;
pub use number::leading_number;
pub use unit::{Dimension, Unit};

/// A length; without a unit it is in `bare`, and where there is none it is refused.
///
/// # Errors
/// What is wrong with the number or its unit, and where.
pub fn length(
    text: &str,
    bare: Option<&'static Unit>,
) -> Result<Millimetres, Located<QuantityFault>> {
    in_base(text, Dimension::Length, bare).map(Millimetres::new)
}

/// A mass in grains, with its unit.
///
/// # Errors
/// What is wrong with the number or its unit, and where.
pub fn mass_gr(text: &str) -> Result<f64, Located<QuantityFault>> {
    in_base(text, Dimension::Mass, None)
}

/// A speed in metres per second, with its unit.
///
/// # Errors
/// What is wrong with the number or its unit, and where.
pub fn speed_m_s(text: &str) -> Result<f64, Located<QuantityFault>> {
    in_base(text, Dimension::Speed, None)
}

/// An angle in degrees, with or without its unit: nobody here says anything else.
///
/// # Errors
/// What is wrong with the number or its unit, and where.
pub fn angle_deg(text: &str) -> Result<f64, Located<QuantityFault>> {
    in_base(text, Dimension::Angle, Some(Unit::DEGREE))
}

/// The value of `text` in the base unit of its dimension.
fn in_base(
    text: &str,
    dimension: Dimension,
    bare: Option<&'static Unit>,
) -> Result<f64, Located<QuantityFault>> {
    let number = leading_number(text)?;
    let (_, rest) = text.split_at(number.end);
    let symbol = rest.trim();
    let start = text.len() - rest.trim_start().len();
    let span = start..start + symbol.len();
    let unit = match (symbol, bare) {
        ("", Some(bare)) => bare,
        ("", None) => {
            return Err(Located::new(QuantityFault::no_unit(text.trim(), dimension), span));
        }
        _ => Unit::named(symbol, dimension).map_err(|fault| Located::new(fault, span))?,
    };
    Ok(unit.to_base(number.value))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lengths_in_every_unit() {
        for (text, mm) in [
            ("25mm", 25.0),
            ("2.5 cm", 25.0),
            ("1in", 25.4),
            ("18.3m", 18_300.0),
            ("20yd", 18_288.0),
            ("60 ft", 18_288.0),
            ("-3mm", -3.0),
            (".5in", 12.7),
        ] {
            let read = length(text, None).unwrap().mm();
            assert!((read - mm).abs() <= 1e-9 * mm.abs(), "{text}: {read}");
        }
    }

    #[test]
    fn masses_and_speeds() {
        assert_eq!(mass_gr("20gr"), Ok(20.0));
        assert_eq!(mass_gr("1lb"), Ok(7000.0));
        // 1 g = 15.4323583529 gr, from the exact grain of 64.79891 mg.
        assert!((mass_gr("10 g").unwrap() - 154.323_583_529).abs() < 1e-9);
        assert!((speed_m_s("270fps").unwrap() - 82.296).abs() < 1e-12);
        assert_eq!(speed_m_s("82m/s"), Ok(82.0));
    }

    #[test]
    fn a_bare_number_needs_a_unit_unless_one_applies() {
        assert_eq!(length("25", Some(Unit::MILLIMETRE)).unwrap(), Millimetres::new(25.0));
        assert_eq!(angle_deg("30"), Ok(30.0));
        let Located { fault, span } = length("18.3", None).unwrap_err();
        assert_eq!(span, 4..4);
        assert_eq!(fault.to_string(), "a length needs a unit");
    }

    #[test]
    fn faults_point_at_the_word_and_offer_another() {
        use crate::located::Advising;
        for (text, span, sentence, way_on) in [
            ("18.3yards", 4..9, "\"yards\" is not a unit of length here", "write it \"yd\""),
            ("20 mn", 3..5, "\"mn\" is not a unit of length here", "did you mean \"mm\"?"),
            (
                "20gr",
                2..4,
                "\"gr\" is a unit of mass, not of length",
                "use mm, cm, in, ft, yd or m",
            ),
            ("18,3m", 2..3, "a decimal comma", "write decimals with a point: 18.3m"),
            ("far", 0..3, "a number was expected here", "for example 12 or 12.5"),
            ("", 0..0, "a number was expected here", "for example 12 or 12.5"),
            ("1.2.3m", 3..4, "a second decimal point", "write one number with one point"),
            (
                "1e999m",
                1..2,
                "\"e999m\" is not a unit of length here",
                "use mm, cm, in, ft, yd or m",
            ),
        ] {
            let found = length(text, None).unwrap_err();
            assert_eq!(found.fault.to_string(), sentence, "{text}");
            assert_eq!(found.fault.way_on().unwrap(), way_on, "{text}");
            assert_eq!(found.span.start, span.start, "{text}");
        }
        for text in ["nan", "inf", "-inf", "NaNmm", "1e5", "0x10mm", "111111111111111111111mm"] {
            assert!(length(text, Some(Unit::MILLIMETRE)).is_err(), "{text}");
        }
    }
}
