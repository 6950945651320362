//! Whole numbers on the command line.

use std::fmt::Display;
use std::ops::RangeInclusive;
use std::str::FromStr;

/// Reads a whole number.
pub fn whole_number<N: FromStr>(text: &str) -> Result<N, &'static str> {
    text.parse().map_err(|_| "a whole number is expected")
}

/// Reads a whole number within limits.
pub fn within<N: FromStr + PartialOrd + Display>(
    limits: RangeInclusive<N>,
) -> impl Fn(&str) -> Result<N, String> + Clone
where
    RangeInclusive<N>: Clone,
{
    move |text| {
        let number = text.parse().ok().filter(|number| limits.contains(number));
        number.ok_or_else(|| format!("{} to {} is possible", limits.start(), limits.end()))
    }
}
