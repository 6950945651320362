//! What is read from a file that a person names, or from standard input.

use std::fs::File;
use std::io::{self, Read};
use std::path::Path;

use crate::failure::{Failure, Kind};

/// An end of a thousand shots is far smaller.
const MOST_BYTES: u64 = 1 << 20;

/// A text and where it came from.
pub struct Input {
    /// The text.
    pub text: String,
    /// The file, or "standard input".
    pub origin: String,
}

/// Reads the file `path`, or standard input where that is `-`.
pub fn read(path: &Path) -> Result<Input, Failure> {
    let origin =
        if is_standard(path) { "standard input".into() } else { path.display().to_string() };
    let failed =
        |error| Failure::new(Kind::InputOutput, format!("could not read {origin}: {error}"));
    let reader: Box<dyn Read> = if is_standard(path) {
        Box::new(io::stdin())
    } else {
        Box::new(File::open(path).map_err(failed)?)
    };
    let mut bytes = Vec::new();
    reader.take(MOST_BYTES + 1).read_to_end(&mut bytes).map_err(failed)?;
    if bytes.len() as u64 > MOST_BYTES {
        let what = format!("{origin} is longer than an end can be: more than {MOST_BYTES} bytes");
        return Err(Failure::new(Kind::Data, what));
    }
    match String::from_utf8(bytes) {
        // Some editors begin a file with a mark that no reader of JSON expects.
        Ok(text) => Ok(Input { text: text.trim_start_matches('\u{feff}').to_owned(), origin }),
        Err(_) => Err(Failure::new(Kind::Data, format!("{origin} is not text in UTF-8"))
            .hinting(["save it as UTF-8"])),
    }
}

/// The next line of standard input; nothing where it has ended.
pub fn line() -> Result<Option<String>, Failure> {
    let mut line = String::new();
    let read = io::stdin().read_line(&mut line).map_err(|error| {
        Failure::new(Kind::InputOutput, format!("could not read standard input: {error}"))
    })?;
    Ok((read > 0).then_some(line))
}

/// Whether `path` stands for standard input or output.
pub fn is_standard(path: &Path) -> bool {
    path == Path::new("-")
}
