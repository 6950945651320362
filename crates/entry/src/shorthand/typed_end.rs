//! An end as it was typed, which remembers where each part of it stands in the line.

use std::ops::Range;

use quarterturn_journal::{EndEntry, Place, ShotEntry};

use super::group::Group;

/// An end and the line that it was read from.
#[derive(Clone, Debug, PartialEq)]
pub struct TypedEnd {
    /// The end.
    pub entry: EndEntry,
    line: Range<usize>,
    /// Where each shot stands in the line.
    places: Vec<Places>,
}

/// The bytes of a line that gave a shot.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Places {
    /// Those of its name.
    pub name: Range<usize>,
    /// Those of the word behind each member that was given.
    pub words: Vec<(&'static str, Range<usize>)>,
}

impl TypedEnd {
    pub(super) fn new(line: &str) -> Self {
        Self { entry: EndEntry::default(), line: 0..line.len(), places: Vec::new() }
    }

    pub(super) fn push(&mut self, group: Group) {
        self.entry.shots.push(group.shot);
        self.places.push(group.places);
    }

    /// Where a protruding length was said without a tail that was read by tape.
    pub(super) fn protruding_alone(&self) -> Option<Range<usize>> {
        let alone = |shot: &ShotEntry| shot.protruding_mm.is_some() && shot.tail_x_mm.is_none();
        let at = self.entry.shots.iter().position(alone)?;
        Some(self.places.get(at)?.span(Some("protruding_mm")))
    }

    /// The bytes of the line that gave what stands at `place` of the end; the nearest around it where nothing did.
    pub fn span(&self, place: &Place) -> Range<usize> {
        match place.shot().and_then(|shot| self.places.get(shot)) {
            Some(places) => places.span(place.name()),
            None => self.line.clone(),
        }
    }
}

impl Places {
    pub(super) fn span(&self, member: Option<&str>) -> Range<usize> {
        let word = self.words.iter().find(|(given, _)| Some(*given) == member);
        word.map_or(&self.name, |(_, span)| span).clone()
    }
}
