//! A moment as text, with its date and zone.

use std::fmt;
use std::str::FromStr;

use serde::{Deserialize, Serialize};

use crate::What;

/// A time by RFC 3339, such as `2027-03-02T10:15:00Z` or `2027-03-02T11:15:00.5+01:00`.
///
/// It is kept as it was written. Records follow each other by their number, never by their time, so it is not
/// compared, and a clock that was set wrong does no harm.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(into = "String", try_from = "String")]
pub struct Timestamp(String);

impl Timestamp {
    /// As it was written.
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// The calendar date, `2027-03-02`, where the clock was read.
    pub fn date(&self) -> &str {
        self.0.split_once('T').map_or(&self.0, |(date, _)| date)
    }
}

impl Timestamp {
    /// Seconds since the beginning of 1970 in UTC, without fractions: what tells a clock that was set back.
    pub(crate) fn seconds(&self) -> i64 {
        let number = |start, length| number(&self.0, start, length);
        let days = days_since_1970(number(0, 4), number(5, 2), number(8, 2));
        let local_s = days * 86_400 + number(11, 2) * 3600 + number(14, 2) * 60 + number(17, 2);
        let zone = self.0.len().saturating_sub("+00:00".len());
        let east_s = number(zone + 1, 2) * 3600 + number(zone + 4, 2) * 60;
        match self.0.as_bytes().get(zone) {
            Some(b'+') => local_s - east_s,
            Some(b'-') => local_s + east_s,
            _ => local_s,
        }
    }
}

/// By the Gregorian calendar, whose 400 years have 146,097 days; years begin in March, so that a leap day is the last.
fn days_since_1970(year: i64, month: i64, day: i64) -> i64 {
    let (year, month) = if month > 2 { (year, month - 3) } else { (year - 1, month + 9) };
    let leap_days = year.div_euclid(4) - year.div_euclid(100) + year.div_euclid(400);
    // From the first of March of the year 0 to the beginning of 1970 there are 719,468 days.
    year * 365 + leap_days + (153 * month + 2) / 5 + day - 1 - 719_468
}

/// Each place of a date and time: `d` for a digit, else itself.
const PATTERN: &str = "dddd-dd-ddTdd:dd:dd";

/// Whether `text` has the digits and marks of `pattern`.
fn fits(text: &str, pattern: &str) -> bool {
    let fit = |(c, p): (char, char)| if p == 'd' { c.is_ascii_digit() } else { c == p };
    text.len() == pattern.len() && text.chars().zip(pattern.chars()).all(fit)
}

/// Whether the two digits of `text` at `start` are a number from `least` to `most`.
fn within(text: &str, start: usize, least: u8, most: u8) -> bool {
    let number = text.get(start..start + 2).and_then(|digits| digits.parse().ok());
    number.is_some_and(|number: u8| (least..=most).contains(&number))
}

/// Whether the month has the day.
fn is_in_the_calendar(clock: &str) -> bool {
    let [year, month, day] =
        [(0, 4), (5, 2), (8, 2)].map(|(start, length)| number(clock, start, length));
    let first = days_since_1970(year, month, 1);
    let (year, month) = if month == 12 { (year + 1, 1) } else { (year, month + 1) };
    (1..=days_since_1970(year, month, 1) - first).contains(&day)
}

/// The number that so many digits of `text` at `start` are.
fn number(text: &str, start: usize, length: usize) -> i64 {
    text.get(start..start + length).and_then(|digits| digits.parse().ok()).unwrap_or(0)
}

fn is_zone(text: &str) -> bool {
    let offset = (fits(text, "+dd:dd") || fits(text, "-dd:dd"))
        && within(text, 1, 0, 23)
        && within(text, 4, 0, 59);
    text == "Z" || offset
}

fn is_timestamp(text: &str) -> bool {
    let Some((clock, rest)) = text.split_at_checked(PATTERN.len()) else { return false };
    let zone = match rest.strip_prefix('.') {
        Some(fraction) => fraction.trim_start_matches(|c: char| c.is_ascii_digit()),
        None => rest,
    };
    let bare_point = rest.strip_prefix('.') == Some(zone);
    // The sixtieth second is the leap second.
    let ranges = [(5, 1, 12), (11, 0, 23), (14, 0, 59), (17, 0, 60)];
    fits(clock, PATTERN)
        && is_in_the_calendar(clock)
        && ranges.into_iter().all(|(start, least, most)| within(clock, start, least, most))
        && !bare_point
        && is_zone(zone)
}

impl FromStr for Timestamp {
    type Err = What;

    fn from_str(text: &str) -> Result<Self, What> {
        Self::try_from(text.to_owned())
    }
}

impl TryFrom<String> for Timestamp {
    type Error = What;

    fn try_from(text: String) -> Result<Self, What> {
        if is_timestamp(&text) { Ok(Self(text)) } else { Err(What::BadTime { text }) }
    }
}

impl From<Timestamp> for String {
    fn from(time: Timestamp) -> Self {
        time.0
    }
}

impl fmt::Display for Timestamp {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

#[cfg(test)]
mod tests {
    use super::Timestamp;

    #[test]
    fn a_time_needs_its_date_its_seconds_and_its_zone() {
        let right = [
            "2027-03-02T10:15:00Z",
            "2027-03-02T10:15:00.123456789+01:00",
            "1969-12-31T23:59:60-11:30",
            "2028-02-29T10:15:00Z",
            "2027-12-31T10:15:00Z",
        ];
        let wrong = [
            "",
            "2027-03-02",
            "2027-03-02T10:15:00",
            "2027-03-02T10:15Z",
            "2027-13-02T10:15:00Z",
            "2027-03-32T10:15:00Z",
            "2027-02-29T10:15:00Z",
            "2027-04-31T10:15:00Z",
            "2027-04-00T10:15:00Z",
            "2027-03-02T24:15:00Z",
            "2027-03-02T10:15:00.Z",
            "2027-03-02T10:15:00+1:00",
            "2027-03-02T10:15:00+01:60",
            "2027-03-02 10:15:00Z",
            "é027-03-02T10:15:00Z",
        ];
        for text in right {
            assert!(text.parse::<Timestamp>().is_ok(), "{text}");
        }
        for text in wrong {
            assert!(text.parse::<Timestamp>().is_err(), "{text}");
        }
    }

    #[test]
    fn the_date_is_that_of_the_clock_on_the_wall() {
        let time: Timestamp = "2027-03-02T00:15:00+05:00".parse().unwrap();
        assert_eq!(time.date(), "2027-03-02");
    }

    #[test]
    fn seconds_count_from_1970_in_utc() {
        // By Python: datetime.fromisoformat(text).timestamp().
        let cases = [
            ("1970-01-01T00:00:00Z", 0),
            ("2027-03-02T10:15:00+01:00", 1_803_978_900),
            ("2028-02-29T23:59:59-05:30", 1_835_501_399),
            ("1969-12-31T23:59:58.5Z", -2),
            ("0001-01-01T00:00:00Z", -62_135_596_800),
            ("2000-03-01T00:00:00Z", 951_868_800),
        ];
        for (text, seconds) in cases {
            assert_eq!(text.parse::<Timestamp>().unwrap().seconds(), seconds, "{text}");
        }
    }
}
