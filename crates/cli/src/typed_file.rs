//! A file of typed ends, blank lines between them.

use std::ops::Range;

use quarterturn_entry::quantity::Unit;
use quarterturn_entry::{Advising, shorthand};
use quarterturn_journal::Place;

use crate::failure::{Failure, Kind, Marked};
use crate::input::Input;
use crate::refusal::END_NOT_RECORDED;

/// The ends of a file.
pub struct TypedFile {
    /// In the order in which they stand.
    pub ends: Vec<TypedPart>,
}

/// An end and where it begins in its file.
pub struct TypedPart {
    /// The end.
    pub typed: shorthand::TypedEnd,
    begins: usize,
}

impl TypedFile {
    /// Reads every end, or says what is wrong with the first that cannot be read.
    pub fn read(input: &Input, unit: &'static Unit) -> Result<Self, Failure> {
        let mut ends = Vec::new();
        for (begins, part) in parts(&input.text) {
            let typed = shorthand::parse(part, unit).map_err(|located| {
                let fault = located.shifted(begins);
                let marked = Marked::file(&input.origin, &input.text);
                Failure::new(Kind::Data, END_NOT_RECORDED)
                    .marking(marked.wrong(fault.span, fault.fault.to_string()))
                    .hinting(fault.fault.way_on())
            })?;
            ends.push(TypedPart { typed, begins });
        }
        if ends.is_empty() {
            let failure = Failure::new(Kind::Data, format!("there is no end in {}", input.origin));
            return Err(failure.hinting(["for example a line \"R 0, 7 r31 u8\""]));
        }
        Ok(Self { ends })
    }
}

impl TypedPart {
    /// The bytes of the file that gave what stands at `place` of the end.
    pub fn span(&self, place: &Place) -> Range<usize> {
        let Range { start, end } = self.typed.span(place);
        self.begins + start..self.begins + end
    }
}

/// The pieces between blank lines, each with where it begins.
fn parts(text: &str) -> Vec<(usize, &str)> {
    let (mut parts, mut begun, mut at) = (Vec::new(), None, 0);
    for line in text.split_inclusive('\n') {
        match (line.trim().is_empty(), begun) {
            (true, Some(start)) => {
                parts.push((start, text.get(start..at).unwrap_or_default()));
                begun = None;
            }
            (false, None) => begun = Some(at),
            _ => {}
        }
        at += line.len();
    }
    parts.extend(begun.map(|start| (start, text.get(start..).unwrap_or_default())));
    parts
}

#[cfg(test)]
mod tests {
    use super::parts;

    #[test]
    fn blank_lines_part_ends() {
        let text = "\nR 0\n7 r3\n\n \nR 0, 8 x\r\n\r\n9 0";
        assert_eq!(parts(text), [(1, "R 0\n7 r3\n"), (13, "R 0, 8 x\r\n"), (25, "9 0")]);
        assert_eq!(parts(" \n"), []);
    }
}
