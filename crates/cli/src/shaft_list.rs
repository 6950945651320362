//! Lists of shafts as they are typed: `1-12`, `1,2,5-8,A`, and marks: `1=30,7=180`.

use std::ops::Range;

use quarterturn_geometry::Index;
use quarterturn_journal::MOST_SHAFTS;
use quarterturn_tuning::{ShaftName, ShaftNameError};
use thiserror::Error;

use quarterturn_entry::closest;
use quarterturn_entry::quantity::{QuantityFault, angle_deg};
use quarterturn_entry::{Advising, Located};

/// A whole turn of the clock.
const FULL_TURN_DEG: f64 = 360.0;

/// A name and where it was typed; the names of a range share their place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Listed {
    /// The name.
    pub name: ShaftName,
    /// The bytes that named it.
    pub span: Range<usize>,
}

/// Where the mark of a shaft stands, and where that was typed.
#[derive(Clone, Debug, PartialEq)]
pub struct ListedMark {
    /// The shaft.
    pub shaft: Listed,
    /// Where its mark stands.
    pub index: Index,
}

/// Why a list cannot be read.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
pub enum ListFault {
    /// Nothing between two commas, or nothing at all.
    #[error("a shaft is missing here")]
    Missing,
    /// A text that cannot name a shaft.
    #[error("this cannot name a shaft")]
    BadName,
    /// As in 8-5.
    #[error("this range runs backwards")]
    Backwards,
    /// More than one set has.
    #[error("more than {MOST_SHAFTS} shafts")]
    TooMany,
    /// A shaft of another list.
    #[error("there is no such shaft in --shafts")]
    Unknown {
        /// What was perhaps meant.
        meant: Option<String>,
    },
    /// A mark without its `=`.
    #[error("where does the mark of this shaft stand?")]
    NoMark,
    /// A mark beyond a whole turn.
    #[error("this is more than a whole turn")]
    MoreThanATurn,
    /// An angle.
    #[error(transparent)]
    Angle(#[from] QuantityFault),
}

impl Advising for ListFault {
    fn way_on(&self) -> Option<String> {
        Some(match self {
            Self::Missing => "for example 1-12 or 1,2,5-8,A".to_owned(),
            Self::BadName => ShaftNameError.to_string(),
            Self::Backwards => "put the smaller number first".to_owned(),
            Self::TooMany => "begin a journal for each set of arrows".to_owned(),
            Self::Unknown { meant: Some(meant) } => format!("did you mean \"{meant}\"?"),
            Self::Unknown { meant: None } => "name it in --shafts too".to_owned(),
            Self::NoMark => "for example 7=180, in degrees clockwise from 12 o'clock".to_owned(),
            Self::MoreThanATurn => {
                "marks are from 0 to 360 degrees, clockwise from 12 o'clock".to_owned()
            }
            Self::Angle(fault) => return fault.way_on(),
        })
    }
}

/// The shafts of `1,2,5-8,A`, in this order.
pub fn shafts(text: &str) -> Result<Vec<Listed>, Located<ListFault>> {
    let mut listed = Vec::new();
    for (span, item) in items(text) {
        let names = names(item).map_err(|fault| Located::new(fault, span.clone()))?;
        listed.extend(names.into_iter().map(|name| Listed { name, span: span.clone() }));
    }
    Ok(listed)
}

/// The marks of `1=30,7=180`, of shafts that are among `shafts`.
pub fn marks(text: &str, shafts: &[Listed]) -> Result<Vec<ListedMark>, Located<ListFault>> {
    items(text).map(|(span, item)| mark(span, item, shafts)).collect()
}

fn mark(
    span: Range<usize>,
    item: &str,
    shafts: &[Listed],
) -> Result<ListedMark, Located<ListFault>> {
    let Some((name, angle)) = item.split_once('=') else {
        return Err(Located::new(ListFault::NoMark, span));
    };
    let angle_at = span.start + name.len() + 1;
    let span = span.start..span.start + name.trim_end().len();
    let known = shafts.iter().find(|shaft| shaft.name.as_str() == name.trim());
    let Some(Listed { name, .. }) = known else {
        let names = shafts.iter().map(|shaft| shaft.name.as_str());
        let meant = closest(name.trim(), names).map(str::to_owned);
        return Err(Located::new(ListFault::Unknown { meant }, span));
    };
    let deg = angle_deg(angle).map_err(|fault| fault.shifted(angle_at).widened())?;
    if deg.abs() > FULL_TURN_DEG {
        return Err(Located::new(ListFault::MoreThanATurn, angle_at..angle_at + angle.len()));
    }
    let shaft = Listed { name: name.clone(), span };
    Ok(ListedMark { shaft, index: Index::from_degrees(deg) })
}

/// The pieces between commas, without the blanks round them, and their bytes.
fn items(text: &str) -> impl Iterator<Item = (Range<usize>, &str)> {
    text.split(',').map(move |piece| {
        let item = piece.trim();
        let start = item.as_ptr().addr() - text.as_ptr().addr();
        (start..start + item.len(), item)
    })
}

/// The one name of `A`, or the numbers of `5-8`.
fn names(item: &str) -> Result<Vec<ShaftName>, ListFault> {
    let is_number = |text: &str| !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit());
    match item.split_once('-') {
        _ if item.is_empty() => Err(ListFault::Missing),
        Some((first, last)) if is_number(first) && is_number(last) => numbered(first, last),
        _ => Ok(vec![item.parse().map_err(|_| ListFault::BadName)?]),
    }
}

/// The numbers from `first` to `last`, with as many digits as the first was written with.
fn numbered(first: &str, last: &str) -> Result<Vec<ShaftName>, ListFault> {
    let number = |text: &str| text.parse::<u32>().map_err(|_| ListFault::TooMany);
    let (from, to) = (number(first)?, number(last)?);
    match to.checked_sub(from) {
        None => Err(ListFault::Backwards),
        Some(more) if more as usize >= MOST_SHAFTS => Err(ListFault::TooMany),
        Some(_) => (from..=to)
            .map(|n| format!("{n:0width$}", width = first.len()))
            .map(|name| name.parse().map_err(|_| ListFault::BadName))
            .collect(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn named(text: &str) -> Vec<String> {
        shafts(text).unwrap().into_iter().map(|shaft| shaft.name.to_string()).collect()
    }

    #[test]
    fn numbers_ranges_and_names() {
        assert_eq!(named("1-4"), ["1", "2", "3", "4"]);
        assert_eq!(named("1, 2,5-7,A"), ["1", "2", "5", "6", "7", "A"]);
        assert_eq!(named("08-10"), ["08", "09", "10"]);
        assert_eq!(named("shaft-1"), ["shaft-1"]);
        assert_eq!(named("1-72").len(), 72);
    }

    #[test]
    fn every_fault_stands_where_it_is() {
        for (text, place, fault) in [
            ("1,,3", "", ListFault::Missing),
            ("", "", ListFault::Missing),
            ("1,a b", "a b", ListFault::BadName),
            ("1,8-5", "8-5", ListFault::Backwards),
            ("1-73", "1-73", ListFault::TooMany),
            ("1-99999999999", "1-99999999999", ListFault::TooMany),
        ] {
            let found = shafts(text).unwrap_err();
            assert_eq!(found.fault, fault, "{text}");
            assert_eq!(&text[found.span], place, "{text}");
        }
    }

    #[test]
    fn marks_belong_to_shafts() {
        let shafts = shafts("1-12").unwrap();
        let read = marks("1=30, 7=-90deg", &shafts).unwrap();
        let degrees: Vec<f64> = read.iter().map(|mark| mark.index.degrees()).collect();
        assert_eq!(degrees, [30.0, 270.0]);
        for (text, place, sentence) in [
            ("1=30,13=5", "13", "there is no such shaft in --shafts"),
            ("1=30,7", "7", "where does the mark of this shaft stand?"),
            ("1=30,7=3mm", "mm", "\"mm\" is a unit of length, not of angle"),
            ("7=", "", "a number was expected here"),
            ("1=30,7=400", "400", "this is more than a whole turn"),
        ] {
            let found = marks(text, &shafts).unwrap_err();
            assert_eq!(found.fault.to_string(), sentence, "{text}");
            assert_eq!(&text[found.span], place, "{text}");
        }
    }
}
