//! Choices on the command line, by the words that the journal has for them.

use clap::builder::{PossibleValuesParser, TypedValueParser};
use quarterturn_journal::Word;

/// Reads one of the words of `W`; clap offers the nearest one.
pub fn word<W: Word + Send + Sync>() -> impl TypedValueParser<Value = W> {
    PossibleValuesParser::new(W::ALL.iter().map(|value| value.word()))
        .try_map(|word| W::from_word(&word))
}
