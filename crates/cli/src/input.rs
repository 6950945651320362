//! What is read from a file that a person names, or from standard input.

use std::fs::File;
use std::io::{self, BufRead, Read};
use std::path::Path;

use crate::failure::{Failure, Kind};

/// An end of a thousand shots is far smaller.
const MOST_BYTES: u64 = 1 << 20;

/// A table of a hundred thousand shots is smaller.
const MOST_BYTES_OF_A_TABLE: u64 = 64 << 20;

/// A telephone's photo of 50 million pixels is smaller.
#[cfg(feature = "photo")]
const MOST_BYTES_OF_A_PHOTO: u64 = 64 << 20;

/// A line that a person types is far shorter.
const MOST_BYTES_OF_A_LINE: u64 = 1 << 16;

/// A text and where it came from.
pub struct Input {
    /// The text.
    pub text: String,
    /// The file, or "standard input".
    pub origin: String,
}

/// Reads the file `path`, or standard input where that is `-`.
pub fn read(path: &Path) -> Result<Input, Failure> {
    within(path, MOST_BYTES, "an end")
}

/// The same of a table or an export, which may be longer.
pub fn table(path: &Path) -> Result<Input, Failure> {
    within(path, MOST_BYTES_OF_A_TABLE, "a table")
}

/// Bytes and where they came from.
#[cfg(feature = "photo")]
pub struct Bytes {
    /// The bytes.
    pub bytes: Vec<u8>,
    /// The file, or "standard input".
    pub origin: String,
}

/// The same of a photo, which is no text.
#[cfg(feature = "photo")]
pub fn bytes(path: &Path) -> Result<Bytes, Failure> {
    let (bytes, origin) = bytes_within(path, MOST_BYTES_OF_A_PHOTO, "a photo")?;
    Ok(Bytes { bytes, origin })
}

fn within(path: &Path, most: u64, what: &str) -> Result<Input, Failure> {
    let (bytes, origin) = bytes_within(path, most, what)?;
    let encoding = match bytes.as_slice() {
        [0xff, 0xfe, ..] | [0xfe, 0xff, ..] => "it is in UTF-16: save it as UTF-8",
        _ => "save it as UTF-8",
    };
    match String::from_utf8(bytes) {
        // Some editors begin a file with a mark that no reader of JSON expects.
        Ok(text) => Ok(Input { text: text.trim_start_matches('\u{feff}').to_owned(), origin }),
        Err(_) => {
            Err(Failure::new(Kind::Data, format!("{origin} is not text in UTF-8"))
                .hinting([encoding]))
        }
    }
}

fn bytes_within(path: &Path, most: u64, what: &str) -> Result<(Vec<u8>, String), Failure> {
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
    reader.take(most + 1).read_to_end(&mut bytes).map_err(failed)?;
    if bytes.len() as u64 > most {
        let what = format!("{origin} is longer than {what} can be: more than {most} bytes");
        return Err(Failure::new(Kind::Data, what));
    }
    Ok((bytes, origin))
}

/// The next line of standard input, without its end; nothing where it has ended.
///
/// What is not UTF-8 is shown as such: nobody loses an end by a wrong key.
pub fn line() -> Result<Option<String>, Failure> {
    let mut bytes = Vec::new();
    let mut stdin = io::stdin().lock();
    let read = stdin.by_ref().take(MOST_BYTES_OF_A_LINE).read_until(b'\n', &mut bytes);
    let read = read.map_err(|error| {
        Failure::new(Kind::InputOutput, format!("could not read standard input: {error}"))
    })?;
    let line = String::from_utf8_lossy(&bytes);
    Ok((read > 0).then(|| line.trim_end_matches(['\r', '\n']).to_owned()))
}

/// Whether `path` stands for standard input or output.
pub fn is_standard(path: &Path) -> bool {
    path == Path::new("-")
}
