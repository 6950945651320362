//! Words that run together: `r31u8tl2` is `r31 u8 tl2`.

/// What may stand between a number and the word that is glued to it.
const UNITS: [&str; 7] = ["mm", "cm", "in", "ft", "yd", "m", "deg"];

/// The words of a piece without blanks, in small letters.
///
/// A word begins behind a number, or its unit, where a side, a tail, a mark or a protruding length begins with
/// something behind its letter. Calls and flags are single letters and stand alone: `r3n` could be `r3in` mistyped.
pub(super) fn words(piece: &str) -> impl Iterator<Item = &str> {
    let mut starts = vec![0];
    let bytes = piece.as_bytes();
    for at in 1..piece.len() {
        let begun = starts.last().copied().unwrap_or_default();
        if begins_word(bytes.get(at..).unwrap_or_default())
            && follows_amount(piece.get(begun..at).unwrap_or_default())
        {
            starts.push(at);
        }
    }
    let ends: Vec<usize> = starts.iter().skip(1).copied().chain([piece.len()]).collect();
    starts.into_iter().zip(ends).filter_map(|(start, end)| piece.get(start..end))
}

/// Whether a word that can be glued begins here.
fn begins_word(text: &[u8]) -> bool {
    let amount = |at: usize| text.get(at).is_some_and(|c| c.is_ascii_digit() || *c == b'.');
    let side = |at: usize| text.get(at).is_some_and(|c| b"rlud".contains(c));
    match text.first() {
        Some(b'r' | b'l' | b'u' | b'd' | b's' | b'i') => amount(1),
        Some(b't') => amount(1) || side(1) || text == b"tn",
        _ => false,
    }
}

/// Whether `text` is a whole word that ends in an amount: a number, or a number and its unit.
fn follows_amount(text: &str) -> bool {
    let letters = text.trim_end_matches(|c: char| c.is_ascii_alphabetic());
    let unit = text.get(letters.len()..).unwrap_or_default();
    let number = letters.ends_with(|c: char| c.is_ascii_digit() || c == '.');
    number && (unit.is_empty() || UNITS.contains(&unit))
}

#[cfg(test)]
mod tests {
    use super::words;

    #[test]
    fn words_run_together_behind_numbers_and_units() {
        for (piece, parts) in [
            ("r31u8tl2", vec!["r31", "u8", "tl2"]),
            ("r1inu2cmtl.5", vec!["r1in", "u2cm", "tl.5"]),
            ("r3md2", vec!["r3m", "d2"]),
            ("2h8t10h2i4", vec!["2h8", "t10h2", "i4"]),
            ("0tn", vec!["0", "tn"]),
            ("0t0", vec!["0", "t0"]),
            ("r3tl", vec!["r3", "tl"]),
            ("i120degr2", vec!["i120deg", "r2"]),
            ("tl2cms62cm", vec!["tl2cm", "s62cm"]),
            // A slip is never taken for something else.
            ("r3inn", vec!["r3inn"]),
            ("r3gr", vec!["r3gr"]),
            ("r3p", vec!["r3p"]),
            ("r3yd2", vec!["r3yd2"]),
            ("tl2deg", vec!["tl2deg"]),
            ("r1e999", vec!["r1e999"]),
            ("größe3r4", vec!["größe3", "r4"]),
        ] {
            assert_eq!(words(piece).collect::<Vec<_>>(), parts, "{piece}");
        }
    }
}
