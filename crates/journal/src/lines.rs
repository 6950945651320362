//! The lines of a journal, as they stand in the file.

use std::io::{self, BufRead, Read};

use crate::chain::LONGEST_LINE;

/// Reads line after line, none of them longer than it may be.
pub(crate) struct Lines<R> {
    reader: R,
    line: Vec<u8>,
    /// The rest of a line that is too long is passed over when the next one is asked for: it may never end.
    unfinished: bool,
}

/// One line, without its line feed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Line<'a> {
    /// Its line feed follows.
    Ended(&'a [u8]),
    /// The file ends before its line feed.
    Cut(&'a [u8]),
    /// No record is so long.
    TooLong,
}

impl<R: BufRead> Lines<R> {
    pub fn of(reader: R) -> Self {
        Self { reader, line: Vec::new(), unfinished: false }
    }

    /// The next line; nothing at the end of the file.
    pub fn next(&mut self) -> io::Result<Option<Line<'_>>> {
        if self.unfinished {
            self.reader.skip_until(b'\n')?;
        }
        self.line.clear();
        let mut rest = self.reader.by_ref().take(LONGEST_LINE as u64 + 1);
        let bytes = rest.read_until(b'\n', &mut self.line)?;
        let ended = self.line.last() == Some(&b'\n');
        self.unfinished = !ended && bytes > LONGEST_LINE;
        Ok(match self.line.strip_suffix(b"\n") {
            Some(line) => Some(Line::Ended(line)),
            None if self.unfinished => Some(Line::TooLong),
            None if bytes == 0 => None,
            None => Some(Line::Cut(&self.line)),
        })
    }

    /// Whether nothing follows.
    pub fn at_end(&mut self) -> io::Result<bool> {
        self.reader.fill_buf().map(<[u8]>::is_empty)
    }

    /// What the lines were read from; it may have been read further than they were.
    pub fn into_inner(self) -> R {
        self.reader
    }
}

#[cfg(test)]
mod tests {
    use super::{LONGEST_LINE, Line, Lines};

    #[test]
    fn a_line_may_have_so_many_bytes_and_no_more() {
        let longest = vec![b'x'; LONGEST_LINE];
        let text = [&longest[..], b"\n", &longest, b"x\nlast\ncut"].concat();
        let mut lines = Lines::of(&text[..]);
        assert_eq!(lines.next().unwrap(), Some(Line::Ended(&longest)));
        assert_eq!(lines.next().unwrap(), Some(Line::TooLong));
        assert_eq!(lines.next().unwrap(), Some(Line::Ended(b"last")));
        assert!(!lines.at_end().unwrap());
        assert_eq!(lines.next().unwrap(), Some(Line::Cut(b"cut")));
        assert!(lines.at_end().unwrap());
        assert_eq!(lines.next().unwrap(), None);
    }
}
