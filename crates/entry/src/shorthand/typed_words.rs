//! What is typed of one arrow whose name is known already.

use std::ops::Range;

use quarterturn_journal::{Place, ShotEntry};

use super::group::Group;
use super::word::Read;
use crate::quantity::Unit;

/// The words of one arrow, without its name, and where they stand in the line.
#[derive(Clone, Debug, PartialEq)]
pub struct TypedWords(Group);

impl TypedWords {
    /// Reads the words of `line` from the byte `from` on; lengths without a unit are in `unit`.
    ///
    /// # Errors
    /// The first word that cannot be read, and where it stands.
    pub fn parse(line: &str, from: usize, unit: &'static Unit) -> Read<Self> {
        Self::between(line, from..line.len(), unit)
    }

    /// The same of these bytes only.
    pub(super) fn between(line: &str, bytes: Range<usize>, unit: &'static Unit) -> Read<Self> {
        Group::of_words(line, line.get(bytes).unwrap_or_default(), unit).map(Self)
    }

    /// What was said, as a shot without a name.
    pub fn said(&self) -> &ShotEntry {
        &self.0.shot
    }

    /// Whether nothing was said.
    pub fn is_empty(&self) -> bool {
        self.0.places.words.is_empty()
    }

    /// Puts what was said in place of what `shot` says of the same: its hit, its tail, its mark, its call, its flags.
    pub fn amend(&self, shot: &mut ShotEntry) {
        let said = &self.0.shot;
        if said.x_mm.is_some() || said.out_mm.is_some() {
            (shot.x_mm, shot.y_mm) = (said.x_mm, said.y_mm);
            (shot.out_mm, shot.toward_deg) = (said.out_mm, said.toward_deg);
            shot.read_sd_mm = None;
        }
        if said.lean_x_deg.is_some() || said.tail_x_mm.is_some() || said.tail_seen.is_some() {
            (shot.lean_x_deg, shot.lean_y_deg) = (said.lean_x_deg, said.lean_y_deg);
            (shot.tail_x_mm, shot.tail_y_mm) = (said.tail_x_mm, said.tail_y_mm);
            shot.tail_seen.clone_from(&said.tail_seen);
            shot.tail_toward_deg = said.tail_toward_deg;
            shot.protruding_mm = shot.protruding_mm.filter(|_| said.tail_x_mm.is_some());
            shot.lean_sd_deg = None;
        }
        if said.protruding_mm.is_some() && shot.tail_x_mm.is_some() {
            // The lean follows anew from the tape.
            (shot.lean_x_deg, shot.lean_y_deg, shot.lean_sd_deg) = (None, None, None);
            shot.protruding_mm = said.protruding_mm;
        }
        shot.index_deg = said.index_deg.or(shot.index_deg);
        if said.call.is_some() {
            shot.call.clone_from(&said.call);
        }
        if !said.flags.is_empty() {
            shot.flags.clone_from(&said.flags);
        }
    }

    /// The bytes of the line that say how the tail leans.
    pub(crate) fn tail(&self) -> Option<Range<usize>> {
        let words = &self.0.places.words;
        words.iter().find(|(given, _)| given.starts_with("lean_")).map(|(_, span)| span.clone())
    }

    /// The bytes of the line that gave what stands at `place` of an end; nothing where no word did.
    pub fn span(&self, place: &Place) -> Option<Range<usize>> {
        let words = &self.0.places.words;
        words.iter().find(|(given, _)| Some(*given) == place.name()).map(|(_, span)| span.clone())
    }
}
