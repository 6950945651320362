//! One arrow of the shorthand: its name and the words behind it.

use std::ops::Range;

use quarterturn_journal::{ShotEntry, Word as _};

use super::glued::words;
use super::typed_end::Places;
use super::word::{Read, Word};
use super::{ShorthandFault, span_in};
use crate::Located;
use crate::quantity::Unit;

/// A shot and where each part of it stands in the line.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Group {
    /// The shot.
    pub shot: ShotEntry,
    /// Where it stands.
    pub places: Places,
}

impl Group {
    /// Reads the group `text` of `line`; nothing where it is blank.
    pub fn parse(line: &str, text: &str, unit: &'static Unit) -> Read<Option<Self>> {
        let Some(name) = text.split_whitespace().next() else { return Ok(None) };
        let named = span_in(line, name);
        let behind = line.get(named.end..span_in(line, text).end).unwrap_or_default();
        let mut group = Self::of_words(line, behind, unit)?;
        name.clone_into(&mut group.shot.shaft);
        group.places.name = named;
        group.has_hit()?;
        Ok(Some(group))
    }

    /// Reads the words `text` of `line`, with what one side alone leaves unsaid: "3 right" is neither high nor low.
    pub fn of_words(line: &str, text: &str, unit: &'static Unit) -> Read<Self> {
        let mut group = Self::default();
        for piece in text.split_whitespace() {
            let start = span_in(line, piece).start;
            // Both have the same length, so places in one are places in the other.
            let lower = piece.to_ascii_lowercase();
            for word in words(&lower) {
                let at = start + span_in(&lower, word).start;
                let read = Word::parse(word, unit).map_err(|fault| fault.shifted(at))?;
                group.say(read, at..at + word.len())?;
            }
        }
        let shot = &mut group.shot;
        pair(&mut shot.x_mm, &mut shot.y_mm);
        pair(&mut shot.lean_x_deg, &mut shot.lean_y_deg);
        pair(&mut shot.tail_x_mm, &mut shot.tail_y_mm);
        Ok(group)
    }

    fn say(&mut self, word: Word, span: Range<usize>) -> Read<()> {
        let said = |member| self.places.words.iter().any(|(earlier, _)| *earlier == member);
        if !matches!(word, Word::Noticed(_)) && word.members().iter().copied().any(said) {
            return Err(Located::new(ShorthandFault::SaidTwice, span));
        }
        self.places.words.extend(word.members().iter().map(|member| (*member, span.clone())));
        self.put(word);
        let shot = &self.shot;
        if shot.lean_x_deg.or(shot.lean_y_deg).is_some()
            && shot.tail_x_mm.or(shot.tail_y_mm).is_some()
        {
            return Err(Located::new(ShorthandFault::TailReadTwoWays, span));
        }
        Ok(())
    }

    fn put(&mut self, word: Word) {
        let shot = &mut self.shot;
        match word {
            Word::Spot => (shot.x_mm, shot.y_mm) = (Some(0.0), Some(0.0)),
            Word::HitRight(mm) => shot.x_mm = Some(mm),
            Word::HitUp(mm) => shot.y_mm = Some(mm),
            Word::HitOut { mm, toward } => {
                (shot.out_mm, shot.toward_deg) = (Some(mm), Some(toward.degrees()));
            }
            Word::Tail { x_deg, y_deg } => {
                (shot.lean_x_deg, shot.lean_y_deg) = (Some(x_deg), Some(y_deg));
            }
            Word::TailRight(deg) => shot.lean_x_deg = Some(deg),
            Word::TailUp(deg) => shot.lean_y_deg = Some(deg),
            Word::TapeOff(off) => {
                (shot.tail_x_mm, shot.tail_y_mm) = (Some(off.x_mm), Some(off.y_mm));
            }
            Word::TapeRight(mm) => shot.tail_x_mm = Some(mm),
            Word::TapeUp(mm) => shot.tail_y_mm = Some(mm),
            Word::TailSeen(seen, toward) => {
                shot.tail_seen = Some(seen.word().to_owned());
                shot.tail_toward_deg = toward.map(quarterturn_geometry::Index::degrees);
            }
            Word::Protruding(mm) => shot.protruding_mm = Some(mm),
            Word::Mark(index) => shot.index_deg = Some(index.degrees()),
            Word::Called(call) => shot.call = Some(call.word().to_owned()),
            Word::Noticed(flag) => shot.flags.push(flag.word().to_owned()),
        }
    }

    /// That it says where the arrow hit, or why that is not known.
    fn has_hit(&self) -> Read<()> {
        let shot = &self.shot;
        let gone = shot.flags.iter().any(|flag| matches!(flag.as_str(), "lost" | "broken"));
        if shot.x_mm.is_some() || shot.out_mm.is_some() || gone {
            return Ok(());
        }
        let fault = ShorthandFault::NoHit { shaft: shot.shaft.clone() };
        Err(Located::new(fault, self.places.name.clone()))
    }
}

/// Where one of the two is given, the other is 0.
fn pair(x: &mut Option<f64>, y: &mut Option<f64>) {
    if x.is_some() || y.is_some() {
        x.get_or_insert(0.0);
        y.get_or_insert(0.0);
    }
}
