//! The words that stand for a choice in files and on the command line.

use quarterturn_bench::SpineStandard;
use quarterturn_tuning::{BowPart, Call, Flag, Matching, ShaftChange, ShaftState};

use crate::{FaceUnit, GluedPart, Role, TailSeen, What};

/// A choice with one fixed word for each of its values.
pub trait Word: Copy + 'static {
    /// Every value, in the order in which they are shown.
    const ALL: &'static [Self];

    /// The word for this value.
    fn word(self) -> &'static str;

    /// The value that `word` stands for.
    ///
    /// # Errors
    /// [`What::UnknownWord`] with the words that there are.
    fn from_word(word: &str) -> Result<Self, What> {
        let named = Self::ALL.iter().copied().find(|value| value.word() == word);
        named.ok_or_else(|| What::unknown_word::<Self>(word))
    }
}

/// Gives each value of a choice its word, in the order in which they are shown.
macro_rules! words {
    ($choice:ident: $($value:ident $word:literal),+) => {
        impl Word for $choice {
            const ALL: &'static [Self] = &[$(Self::$value),+];

            fn word(self) -> &'static str {
                match self {
                    $(Self::$value => $word),+
                }
            }
        }
    };
}

words!(Call: Good "good", Poor "poor");
words!(Flag: Lost "lost", Broken "broken", Wind "wind", Contact "contact", NockMoved "nock-moved", Doubtful "doubtful");
words!(BowPart: Rest "rest", NockingPoint "nocking-point", Cam "cam", Sight "sight", String "string", Other "other");
words!(ShaftChange: Lost "lost", Broken "broken", Repaired "repaired", SetAside "set-aside", Readmit "readmit", Fletched "fletched", Checked "checked", HardHit "hard-hit", NewNock "new-nock");
words!(ShaftState: InUse "in use", Fletched "fletched", SetAside "set aside", Lost "lost", Broken "broken");
words!(FaceUnit: Millimetres "mm", Centimetres "cm", Inches "in");
words!(Matching: Reference "reference", Set "set");
words!(SpineStandard: Span28 "28in", Span26 "26in");
words!(GluedPart: Insert "insert", Vanes "vanes", Other "other");
words!(Role: Bare "bare", Reference "reference");
words!(TailSeen: None "none", Some "some", Much "much", Side "side");
