//! What is wrong with an entry, and where in it.

use std::fmt;
use std::ops::Range;

use crate::json_piece::locate;
use crate::{Place, What};

/// One thing that is wrong with an entry.
#[derive(Clone, Debug, PartialEq)]
pub struct Fault {
    /// Where in the entry, by the names that its JSON has.
    pub place: Place,
    /// What is wrong there.
    pub what: What,
}

impl Fault {
    pub(crate) fn at(name: &str, what: What) -> Self {
        Self { place: Place::of(name), what }
    }

    pub(crate) fn whole(what: What) -> Self {
        Self { place: Place::WHOLE, what }
    }

    /// The same fault seen from outside: it lies in `list[item]`.
    pub(crate) fn under(self, list: &str, item: usize) -> Self {
        Self { place: self.place.under(Place::of(list).item(item)), ..self }
    }

    /// The bytes of the JSON `text` that it is about; what lacks something, where something is missing.
    pub fn span(&self, text: &str) -> Range<usize> {
        match &self.what {
            What::Syntax { span, .. } => span.clone(),
            _ => locate(text, &self.place),
        }
    }

    /// What to do instead, where that is known.
    pub fn way_on(&self) -> Option<String> {
        self.what.way_on()
    }
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.place == Place::WHOLE {
            write!(f, "{}", self.what)
        } else {
            write!(f, "{}: {}", self.place, self.what)
        }
    }
}

impl std::error::Error for Fault {}
