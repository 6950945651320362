//! The ways in which an entry can be wrong, in a person's words.

use std::ops::Range;

use quarterturn_geometry::GeometryError;
use quarterturn_tuning::{ShaftName, ShaftState};
use thiserror::Error;

use crate::Word;

/// What is wrong at one place of an entry.
#[derive(Clone, Debug, Error, PartialEq)]
#[non_exhaustive]
pub enum What {
    /// The text is not JSON.
    #[error("this is not JSON: {reason}")]
    Syntax {
        /// What the reader of JSON says.
        reason: String,
        /// The bytes at which it gave up; empty at the end of the text.
        span: Range<usize>,
    },
    /// A value of another kind.
    #[error("{expected} is expected here, not {found}")]
    Kind {
        /// The kind that belongs here.
        expected: &'static str,
        /// The kind that stands here.
        found: &'static str,
    },
    /// A member that must be there is not.
    #[error("\"{member}\" is missing")]
    Missing {
        /// Its name.
        member: &'static str,
    },
    /// A member stands twice, and it cannot be known which one is meant.
    #[error("\"{member}\" stands here twice")]
    Repeated {
        /// Its name.
        member: &'static str,
    },
    /// A value says nothing without another one.
    #[error("this says nothing without \"{needs}\"")]
    Alone {
        /// The member that is not there.
        needs: &'static str,
    },
    /// Infinite, or not a number at all.
    #[error("this is not a finite number")]
    NotFinite,
    /// Further from zero than can be.
    #[error("{} {unit} is too much: at most {most} {unit} either way", shown(*value))]
    Beyond {
        /// What was given.
        value: f64,
        /// The largest that is taken.
        most: f64,
        /// The unit of both.
        unit: &'static str,
    },
    /// Zero, negative or more than can be.
    #[error("{} {unit} cannot be: more than 0 and at most {most} {unit}", shown(*value))]
    NotAboveZero {
        /// What was given.
        value: f64,
        /// The largest that is taken.
        most: f64,
        /// The unit of both.
        unit: &'static str,
    },
    /// Negative or more than can be.
    #[error("{} {unit} cannot be: from 0 to {most} {unit}", shown(*value))]
    Negative {
        /// What was given.
        value: f64,
        /// The largest that is taken.
        most: f64,
        /// The unit of both.
        unit: &'static str,
    },
    /// Workshop measures without one.
    #[error("nothing was measured here")]
    NothingMeasured,
    /// An arrow that would balance in the air.
    #[error("a balance point at {balance_mm} mm is not on a shaft of {length_mm} mm")]
    OffTheShaft {
        /// From the groove of the nock to the balance point, mm.
        balance_mm: f64,
        /// From there to the end of the shaft, mm.
        length_mm: f64,
    },
    /// A count outside its range.
    #[error("{count} cannot be: from {least} to {most}")]
    Count {
        /// What was given.
        count: usize,
        /// The smallest that is taken.
        least: usize,
        /// The largest that is taken.
        most: usize,
    },
    /// More shafts than one journal serves.
    #[error("{count} shafts: a journal serves at most {most}")]
    TooManyShafts {
        /// What was given.
        count: usize,
        /// The largest that is taken.
        most: usize,
    },
    /// A count of positions that no nock can be set to.
    #[error("{0}")]
    Positions(GeometryError),
    /// A shaft that the journal does not have.
    #[error("there is no shaft \"{name}\" in this journal")]
    UnknownShaft {
        /// The name that was given.
        name: String,
        /// The names that there are.
        known: Vec<ShaftName>,
    },
    /// A text that cannot name a shaft.
    #[error("\"{name}\" cannot name a shaft")]
    BadName {
        /// The text.
        name: String,
    },
    /// The same shaft a second time.
    #[error("shaft {name} stands here twice")]
    Twice {
        /// Its name.
        name: ShaftName,
    },
    /// A shaft that is not to be shot as it is recorded.
    #[error("{name} is recorded as {}", state.word())]
    OutOfUse {
        /// Its name.
        name: ShaftName,
        /// What it is recorded as.
        state: ShaftState,
    },
    /// A broadhead on a shaft that is not recorded as fletched.
    #[error("{name} is not recorded as fletched: never a broadhead on a bare shaft")]
    BroadheadOnBare {
        /// Its name.
        name: ShaftName,
    },
    /// A shaft among finished arrows that is not recorded as fletched.
    #[error("{name} is not recorded as fletched")]
    NotFletched {
        /// Its name.
        name: ShaftName,
    },
    /// A text that is no day.
    #[error("\"{text}\" is not a day")]
    BadDate {
        /// The text.
        text: String,
    },
    /// A date of limits without one.
    #[error("there is no limit here")]
    NoLimit,
    /// A text that cannot name a head.
    #[error("{}", quarterturn_tuning::HeadNameError)]
    BadHead,
    /// More than one first shot.
    #[error("{count} shots cannot all be the first of the day")]
    ManyCold {
        /// How many there are.
        count: usize,
    },
    /// A change that cannot follow on the recorded state.
    #[error("{name} is {}: this change cannot follow", state.word())]
    CannotFollow {
        /// Its name.
        name: ShaftName,
        /// What it is recorded as.
        state: ShaftState,
    },
    /// A reference is fletched from the beginning.
    #[error("{name} is a reference: it is fletched already")]
    FletchedReference {
        /// Its name.
        name: ShaftName,
    },
    /// A shot that says neither where it hit nor why that is not known.
    #[error("this shot has no hit")]
    NoHit,
    /// Nothing where at least one is needed.
    #[error("at least one is needed here")]
    Empty,
    /// A word that has no meaning here.
    #[error("\"{word}\" is not known here")]
    UnknownWord {
        /// The word.
        word: String,
        /// The words that are.
        known: Vec<&'static str>,
    },
    /// A time in another form.
    #[error("\"{text}\" is not a time with its date and zone")]
    BadTime {
        /// The text.
        text: String,
    },
    /// A name of an evening that cannot be one.
    #[error("an evening is named by 1 to 40 characters on one line")]
    BadEvening,
    /// An undo of something else than the last entry.
    #[error("record {seq} is not the last entry that stands")]
    NotLast {
        /// The record that was to be taken back.
        seq: u64,
    },
    /// A redo of something else than what was taken back last.
    #[error("record {seq} is not what was taken back last")]
    NotTaken {
        /// The record that was to be brought back.
        seq: u64,
    },
    /// A correction of something that is no end, or was taken back.
    #[error("record {seq} is not an end that stands")]
    NoEnd {
        /// The record that was to be corrected.
        seq: u64,
    },
    /// A shaft that the journal has already.
    #[error("the journal has {name} already")]
    Known {
        /// Its name.
        name: ShaftName,
    },
    /// A member in a unit, or by a name, that is not read, where one that is read is missing.
    #[error("\"{found}\" is not read here: \"{expected}\" is expected, {unit}")]
    OtherUnit {
        /// The member that stands there.
        found: String,
        /// The member that is read.
        expected: &'static str,
        /// The unit it is in, in words.
        unit: &'static str,
    },
    /// A second beginning.
    #[error("this journal is begun already")]
    Begun,
    /// More than one record can hold.
    #[error("the entry is too long: {bytes} bytes, at most {most}")]
    TooLong {
        /// The length of its record.
        bytes: usize,
        /// The longest that is taken.
        most: usize,
    },
}

impl What {
    pub(crate) fn unknown_word<W: Word>(word: &str) -> Self {
        let known = W::ALL.iter().map(|known| known.word()).collect();
        Self::UnknownWord { word: word.to_owned(), known }
    }
}

/// A number as it is said: one of many digits by its power of ten.
fn shown(value: f64) -> String {
    if value.abs() < 1e9 { value.to_string() } else { format!("{value:e}") }
}
