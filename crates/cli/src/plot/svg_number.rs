//! Numbers in an SVG file: whole hundredths of a millimetre, written as shortly as they can be read.

/// A length in whole hundredths.
pub fn hundredths(value: f64) -> i64 {
    // A sheet is smaller than a kilometre.
    #[expect(clippy::cast_possible_truncation, reason = "a sheet is some 100,000 of them")]
    let whole = (value * 100.0).round() as i64;
    whole
}

/// At most two decimals, no zero before the point, and never a zero with a sign.
pub fn number(value: f64) -> String {
    told(hundredths(value))
}

/// Hundredths as a number.
pub fn told(hundredths: i64) -> String {
    let sign = if hundredths < 0 { "-" } else { "" };
    let (whole, rest) = (hundredths.abs() / 100, hundredths.abs() % 100);
    let after = match (rest, rest % 10) {
        (0, _) => String::new(),
        (_, 0) => format!(".{}", rest / 10),
        _ => format!(".{rest:02}"),
    };
    let before = if whole == 0 && rest > 0 { String::new() } else { whole.to_string() };
    format!("{sign}{before}{after}")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_have_two_decimals_at_most_and_zero_has_no_sign() {
        for (value, told) in [
            (-0.001, "0"),
            (-0.0, "0"),
            (2.0 / 3.0, ".67"),
            (-2.0 / 3.0, "-.67"),
            (0.05, ".05"),
            (12.3, "12.3"),
            (-7.0, "-7"),
            (100.0, "100"),
        ] {
            assert_eq!(number(value), told);
        }
    }
}
