//! An end as it was typed, which remembers where each part of it stands in the line.

use std::ops::Range;

use quarterturn_journal::{EndEntry, Place};

use super::group::Group;

/// An end and the line that it was read from.
#[derive(Clone, Debug, PartialEq)]
pub struct TypedEnd {
    /// The end.
    pub entry: EndEntry,
    line: Range<usize>,
    /// For each shot its name and its words.
    places: Vec<(Range<usize>, Vec<(&'static str, Range<usize>)>)>,
}

impl TypedEnd {
    pub(super) fn new(line: &str) -> Self {
        Self { entry: EndEntry::default(), line: 0..line.len(), places: Vec::new() }
    }

    pub(super) fn push(&mut self, group: Group) {
        self.entry.shots.push(group.shot);
        self.places.push((group.name, group.words));
    }

    /// The bytes of the line that gave what stands at `place` of the end; the nearest around it where nothing did.
    pub fn span(&self, place: &Place) -> Range<usize> {
        let Some((name, words)) = place.shot().and_then(|shot| self.places.get(shot)) else {
            return self.line.clone();
        };
        let word = words.iter().find(|(member, _)| Some(*member) == place.name());
        word.map_or(name, |(_, span)| span).clone()
    }
}
