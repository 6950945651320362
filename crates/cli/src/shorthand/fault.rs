//! What can be wrong with a typed end.

use thiserror::Error;

use crate::located::Advising;
use crate::quantity::QuantityFault;

/// Why a line is not an end.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
pub enum ShorthandFault {
    /// No arrow at all.
    #[error("no arrow is named here")]
    Nothing,
    /// A word that means nothing here.
    #[error("\"{word}\" is not a word of the line")]
    UnknownWord {
        /// As typed, in small letters.
        word: String,
        /// What was perhaps meant.
        meant: Option<String>,
    },
    /// A number or its unit.
    #[error(transparent)]
    Quantity(#[from] QuantityFault),
    /// An hour that no clock has.
    #[error("no clock has this hour")]
    NoSuchHour,
    /// A side with a minus sign.
    #[error("the letter says the side: no sign is needed")]
    Negative,
    /// The same thing a second time.
    #[error("this was said already")]
    SaidTwice,
    /// A tail with a side only.
    #[error("how many degrees?")]
    TailWithoutDegrees,
    /// A tail toward an hour.
    #[error("a tail is typed by its side and its degrees")]
    TailByClock,
    /// A comma between digits.
    #[error("a new arrow, or a decimal?")]
    DecimalComma,
    /// An arrow with nothing to say where it went.
    #[error("where did {shaft} hit?")]
    NoHit {
        /// Its name.
        shaft: String,
    },
}

impl ShorthandFault {
    pub(super) fn unknown_word(word: &str) -> Self {
        Self::UnknownWord { word: word.to_owned(), meant: meant(word) }
    }
}

impl Advising for ShorthandFault {
    fn way_on(&self) -> Option<String> {
        let fixed = match self {
            Self::UnknownWord { meant: Some(meant), .. } => {
                return Some(format!("did you mean \"{meant}\"?"));
            }
            Self::Quantity(fault) => return fault.way_on(),
            Self::UnknownWord { meant: None, .. } => {
                "the words are r l u d and h for a hit, t for a tail, i for a mark, and the letters \
                 g p w k n q x b; `quarterturn help end` explains them"
            }
            Self::Nothing => "for example \"R 0, 7 r31 u8\"",
            Self::NoSuchHour => "hours run from 1 to 12; half past two is 2.5",
            Self::Negative => "r right, l left, u up, d down",
            Self::SaidTwice => "take one of the two out",
            Self::TailWithoutDegrees => {
                "for example tl2.5; leave the tail out where it was not read"
            }
            Self::TailByClock => "tl2.5 is 2.5 degrees left; tr right, tu high, td low",
            Self::DecimalComma => {
                "write decimals with a point, and put a blank after a comma that parts arrows"
            }
            Self::NoHit { .. } => "type r31 u8, 2h8, 0 for the spot, x for lost or b for broken",
        };
        Some(fixed.to_owned())
    }
}

/// What is perhaps meant by a word in which number and letter changed places, or by a full word.
fn meant(word: &str) -> Option<String> {
    let letters = word.trim_start_matches(|c: char| c.is_ascii_digit() || c == '.');
    let number = word.strip_suffix(letters).unwrap_or_default();
    if !number.is_empty() && matches!(letters, "r" | "l" | "u" | "d") {
        return Some(format!("{letters}{number}"));
    }
    let short = match word {
        "good" => "g",
        "poor" => "p",
        "wind" | "gust" => "w",
        "contact" => "k",
        "moved" => "n",
        "doubtful" | "?" => "q",
        "lost" | "miss" | "missed" => "x",
        "broken" | "broke" => "b",
        _ => return None,
    };
    Some(short.to_owned())
}
