//! The file of a picture: SVG, or PNG where its name ends so.

use std::path::Path;

use quarterturn_journal::Existing;

use crate::failure::{Failure, Kind};
use crate::output;
use crate::png::png;

const LETTERS_MISSING: &str =
    "letters that the font of a PNG lacks are left out; an SVG has them: -o picture.svg";

/// What the fonts of a PNG have letters for; see `fonts/README.md`.
const LETTERS: [std::ops::RangeInclusive<char>; 14] = [
    '\u{20}'..='\u{7e}',
    '\u{a0}'..='\u{17f}',
    '\u{218}'..='\u{21b}',
    '\u{370}'..='\u{3ff}',
    '\u{400}'..='\u{45f}',
    '\u{2010}'..='\u{2027}',
    '\u{2030}'..='\u{203a}',
    '\u{20ac}'..='\u{20ac}',
    '\u{2190}'..='\u{2193}',
    '\u{2212}'..='\u{2212}',
    '\u{221a}'..='\u{221a}',
    '\u{2260}'..='\u{2260}',
    '\u{2264}'..='\u{2265}',
    '\n'..='\n',
];

/// What a picture might be asked for as, and is not made.
const OTHER_PICTURES: [&str; 5] = ["gif", "jpeg", "jpg", "pdf", "webp"];

/// Writes a picture that is given as SVG; what is to be said beside it is that letters are missing.
///
/// # Errors
/// Where it cannot be written, or its name says that it is of another kind.
pub fn write(file: &Path, svg: &str, existing: Existing) -> Result<Option<String>, Failure> {
    if file
        .extension()
        .is_some_and(|ending| OTHER_PICTURES.iter().any(|other| ending.eq_ignore_ascii_case(other)))
    {
        let what = format!("{} does not end in .svg or .png", file.display());
        return Err(
            Failure::new(Kind::Usage, what).hinting(["name the file, for example target.svg"])
        );
    }
    if !is_png(file) {
        output::write(file, svg, existing)?;
        return Ok(None);
    }
    output::write(file, png(svg)?, existing)?;
    let all = svg.chars().all(|c| LETTERS.iter().any(|letters| letters.contains(&c)));
    Ok((!all).then(|| LETTERS_MISSING.to_owned()))
}

/// Whether a file's name ends in .png.
pub fn is_png(file: &Path) -> bool {
    file.extension().is_some_and(|ending| ending.eq_ignore_ascii_case("png"))
}
