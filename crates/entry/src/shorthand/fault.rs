//! What can be wrong with a typed end.

use thiserror::Error;

use crate::quantity::QuantityFault;
use crate::{Advising, closest};

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
    /// A number beyond anything.
    #[error("this is farther than any arrow flies")]
    TooFar,
    /// An arrow to be corrected, and nothing said of it.
    #[error("what of {shaft}?")]
    NothingSaid {
        /// Its name.
        shaft: String,
    },
    /// The same thing a second time.
    #[error("this was said already")]
    SaidTwice,
    /// A tail by an amount, toward nowhere.
    #[error("toward which side does the tail stand off?")]
    TailWithoutSide,
    /// How far arrows stick out, where no tail was read by tape.
    #[error("how far arrows stick out says something only of a tail that was read by tape")]
    ProtrudingAlone,
    /// A tail by degrees and by tape.
    #[error("one tail is read one way: degrees, a tape, or an eye")]
    TailReadTwoWays,
    /// A mark beyond a whole turn.
    #[error("this is more than a whole turn")]
    MoreThanATurn,
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
        let shown: String = word.chars().take(LONGEST_SHOWN).collect();
        let rest = if shown.len() < word.len() { "..." } else { "" };
        Self::UnknownWord { word: shown + rest, meant: meant(word) }
    }

    /// A word that people write in full.
    pub(super) fn full_word(word: &str) -> Option<Self> {
        let known = SHORT_FOR.iter().any(|(full, _)| *full == word);
        known.then(|| Self::unknown_word(word))
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
                "the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters \
                 g p w k n q x b; `quarterturn help end` explains them"
            }
            Self::Nothing => "for example \"R 0, 7 r31 u8\"",
            Self::NoSuchHour => "hours run from 1 to 12; half past two is 2.5",
            Self::Negative => "r right, l left, u up, d down",
            Self::TooFar => "check the number and its unit",
            Self::NothingSaid { .. } => "say what was wrong anew, for example r31 u8, i4 or p",
            Self::SaidTwice => "take one of the two out",
            Self::TailWithoutSide => {
                "tl2 is 2 degrees left; tr right, tu high, td low, t10h2 by clock"
            }
            Self::ProtrudingAlone => {
                "for example tl2cm s62cm; take it out where tails are in degrees"
            }
            Self::TailReadTwoWays => {
                "give both sides of it in degrees, or both with a unit of length"
            }
            Self::MoreThanATurn => "marks are from 0 to 360 degrees, or hours from 1 to 12",
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
    // A tail toward a corner has no side.
    let corner = match word {
        "tul" | "tlu" => Some("t10.5h"),
        "tur" | "tru" => Some("t1.5h"),
        "tdr" | "trd" => Some("t4.5h"),
        "tdl" | "tld" => Some("t7.5h"),
        _ => None,
    };
    if let Some(corner) = corner {
        return Some(corner.to_owned());
    }
    // A tail by eye, with its amount in full.
    let amounts = [("some", "s"), ("lots", "m"), ("much", "m"), ("lot", "m"), ("none", "")];
    for (amount, letter) in amounts {
        match word.strip_suffix(amount) {
            Some("t") if amount == "none" => return Some("tn".to_owned()),
            Some(side @ ("tr" | "tl" | "tu" | "td")) => return Some(format!("{side}{letter}")),
            _ => {}
        }
    }
    let full = SHORT_FOR.iter().map(|(full, _)| *full);
    let full = closest(word, full.filter(|full| full.len() > 3 || *full == word))?;
    SHORT_FOR.iter().find(|(known, _)| *known == full).map(|(_, short)| (*short).to_owned())
}

/// Of a longer word the beginning is enough to be known again.
const LONGEST_SHOWN: usize = 30;

/// Words that people write in full, and what is typed for them.
const SHORT_FOR: [(&str, &str); 15] = [
    ("good", "g"),
    ("poor", "p"),
    ("wind", "w"),
    ("gust", "w"),
    ("contact", "k"),
    ("nock-moved", "n"),
    ("moved", "n"),
    ("doubtful", "q"),
    ("?", "q"),
    ("lost", "x"),
    ("miss", "x"),
    ("missed", "x"),
    ("broken", "b"),
    ("broke", "b"),
    ("straight", "t0"),
];
