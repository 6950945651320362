//! One arrow of the shorthand: its name and the words behind it.

use std::ops::Range;

use quarterturn_journal::{ShotEntry, Word as _};

use super::typed_end::Places;
use super::word::Word;
use super::{ShorthandFault, span_in};
use crate::located::Located;
use crate::quantity::Unit;

/// A shot and where each part of it stands in the line.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Group {
    /// The shot.
    pub shot: ShotEntry,
    /// Where it stands.
    pub places: Places,
}

impl Group {
    /// Reads the group `text` of `line`; nothing where it is blank.
    pub fn parse(
        line: &str,
        text: &str,
        unit: &'static Unit,
    ) -> Result<Option<Self>, Located<ShorthandFault>> {
        let mut words = text.split_whitespace();
        let Some(name) = words.next() else { return Ok(None) };
        let shot = ShotEntry { shaft: name.to_owned(), ..ShotEntry::default() };
        let places = Places { name: span_in(line, name), words: Vec::new() };
        let mut group = Self { shot, places };
        for text in words {
            let span = span_in(line, text);
            let word = Word::parse(&text.to_ascii_lowercase(), unit);
            group.say(word.map_err(|fault| fault.shifted(span.start))?, span)?;
        }
        group.finished().map(Some)
    }

    fn say(&mut self, word: Word, span: Range<usize>) -> Result<(), Located<ShorthandFault>> {
        let said = |member| self.places.words.iter().any(|(earlier, _)| *earlier == member);
        if !matches!(word, Word::Noticed(_)) && word.members().iter().copied().any(said) {
            return Err(Located::new(ShorthandFault::SaidTwice, span));
        }
        self.places.words.extend(word.members().iter().map(|member| (*member, span.clone())));
        let shot = &mut self.shot;
        match word {
            Word::Hit(at) => (shot.x_mm, shot.y_mm) = (Some(at.x_mm), Some(at.y_mm)),
            Word::HitRight(mm) => shot.x_mm = Some(mm),
            Word::HitUp(mm) => shot.y_mm = Some(mm),
            Word::TailStraight => (shot.lean_x_deg, shot.lean_y_deg) = (Some(0.0), Some(0.0)),
            Word::TailRight(deg) => shot.lean_x_deg = Some(deg),
            Word::TailUp(deg) => shot.lean_y_deg = Some(deg),
            Word::Mark(index) => shot.index_deg = Some(index.degrees()),
            Word::Called(call) => shot.call = Some(call.word().to_owned()),
            Word::Noticed(flag) => shot.flags.push(flag.word().to_owned()),
        }
        Ok(())
    }

    /// The group with what one side alone leaves unsaid: "3 right" is neither high nor low.
    fn finished(mut self) -> Result<Self, Located<ShorthandFault>> {
        let shot = &mut self.shot;
        let gone = shot.flags.iter().any(|flag| matches!(flag.as_str(), "lost" | "broken"));
        if shot.x_mm.is_none() && shot.y_mm.is_none() && !gone {
            let fault = ShorthandFault::NoHit { shaft: shot.shaft.clone() };
            return Err(Located::new(fault, self.places.name));
        }
        pair(&mut shot.x_mm, &mut shot.y_mm);
        pair(&mut shot.lean_x_deg, &mut shot.lean_y_deg);
        Ok(self)
    }
}

/// Where one of the two is given, the other is 0.
fn pair(x: &mut Option<f64>, y: &mut Option<f64>) {
    if x.is_some() || y.is_some() {
        x.get_or_insert(0.0);
        y.get_or_insert(0.0);
    }
}
