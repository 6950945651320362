//! Whose words a line has.

use std::ops::Range;

use quarterturn_entry::closest;
use quarterturn_entry::shorthand::TypedWords;

use super::{Dialogue, Stage};
use crate::failure::{Failure, Kind, Marked};

/// Whose words a line has, and where they begin.
pub(super) struct Target {
    pub(super) name: String,
    pub(super) from: usize,
}

impl Dialogue {
    /// Whose words a line has.
    pub(super) fn target(&mut self, line: &str) -> Result<Target, Failure> {
        let start = line.len() - line.trim_start().len();
        let first = line.split_whitespace().next().unwrap_or_default();
        let behind = start + first.len();
        let alone = line.trim() == first;
        let is_word = TypedWords::parse(first, 0, self.unit).is_ok();
        let known = self.names.iter().find(|name| name.as_str() == first).cloned();
        let current = self.current().map(|arrow| arrow.shot.shaft.clone());
        match (known, current) {
            (Some(name), current) if !alone && (!is_word || current.as_ref() == Some(&name)) => {
                Ok(Target { name, from: behind })
            }
            (Some(name), Some(current)) if !alone => Err(both(line, &name, &current)),
            (_, Some(name)) if self.stage == Stage::Arrows && (is_word || !alone) => {
                Ok(Target { name, from: 0 })
            }
            (Some(name), _) => Err(Failure::new(Kind::Data, format!("what of {name}?"))
                .hinting(["type it behind its name, for example r31u8"])),
            (None, Some(name)) if self.stage == Stage::Arrows => Ok(Target { name, from: 0 }),
            (None, _) => Err(self.unknown(line, start..behind, first)),
        }
    }

    fn unknown(&self, line: &str, span: Range<usize>, name: &str) -> Failure {
        let names = || self.names.iter().map(String::as_str);
        let meant = closest(name, names()).map(|meant| format!("did you mean \"{meant}\"?"));
        let what = match self.stage {
            Stage::Marks => "first the marks: do they stand as on the card?",
            Stage::Arrows | Stage::Confirm => "begin with the name of an arrow",
        };
        let marked = Marked::typed(line).wrong(span, format!("no arrow is called \"{name}\""));
        let ways = match self.stage {
            Stage::Marks => "Enter if so, no if no nock was turned, or what differs: 7 i11",
            Stage::Arrows | Stage::Confirm => "for example 7 r31u8; ? shows all that can be typed",
        };
        Failure::new(Kind::Data, what).marking(marked).hinting(meant).hinting([ways])
    }
}

/// A line that begins with a word which is also the name of an arrow.
fn both(line: &str, name: &str, current: &str) -> Failure {
    let marked = Marked::typed(line).wrong(0..name.len(), "the arrow of this name, or the word?");
    let ways = format!("begin with the arrow's name: {current} {} or {name} ...", line.trim());
    Failure::new(Kind::Data, "this can be read two ways").marking(marked).hinting([ways])
}
