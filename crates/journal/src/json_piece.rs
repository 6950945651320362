//! A piece of a JSON text that knows where it stands.

use std::fmt;
use std::ops::Range;

use serde::Deserialize;
use serde::de::{MapAccess, Visitor};
use serde_json::value::RawValue;

use crate::{Place, Step};

/// One value as it is written in a JSON text, without the space around it.
#[derive(Clone, Copy)]
pub(crate) struct JsonPiece<'t> {
    text: &'t str,
}

/// One member of an object as it is written; a name may stand twice.
pub(crate) struct Member<'t> {
    pub name: String,
    pub value: JsonPiece<'t>,
}

impl<'t> JsonPiece<'t> {
    /// The whole of a text that is JSON.
    pub fn whole(text: &'t str) -> Self {
        Self { text: text.trim_ascii() }
    }

    /// What it is, in a person's words.
    pub fn kind(self) -> &'static str {
        match self.text.as_bytes().first() {
            Some(b'{') => "an object in braces",
            Some(b'[') => "a list in brackets",
            Some(b'"') => "text in quotes",
            Some(b't' | b'f') => "true or false",
            Some(b'n') => "null",
            _ => "a number",
        }
    }

    /// Its members, where it is an object.
    pub fn members(self) -> Option<Vec<Member<'t>>> {
        serde_json::from_str(self.text).ok().map(|Members(members)| members)
    }

    /// Its items, where it is a list.
    pub fn items(self) -> Option<Vec<Self>> {
        let items: Vec<&RawValue> = serde_json::from_str(self.text).ok()?;
        Some(items.into_iter().map(|item| Self { text: item.get() }).collect())
    }

    /// The piece at `place`, or the nearest one around it where nothing stands there.
    fn at(self, place: &Place) -> Self {
        let mut piece = self;
        for step in place.steps() {
            match piece.inside(step) {
                Some(inner) => piece = inner,
                None => break,
            }
        }
        piece
    }

    fn inside(self, step: &Step) -> Option<Self> {
        match step {
            // The last one of two with the same name: it is the one too many.
            Step::Member(name) => {
                self.members()?.into_iter().rfind(|m| m.name == *name).map(|m| m.value)
            }
            Step::Item(item) => self.items()?.get(*item).copied(),
        }
    }
}

/// The bytes of `text` at which the value at `place` stands; where nothing stands there, what it is missing from.
///
/// Where `text` is not JSON it is the whole of it.
pub(crate) fn locate(text: &str, place: &Place) -> Range<usize> {
    let piece = JsonPiece::whole(text).at(place).text;
    // Every piece is borrowed from the text, so the distance of their first bytes is its place.
    let start = piece.as_ptr().addr() - text.as_ptr().addr();
    start..start + piece.len()
}

struct Members<'t>(Vec<Member<'t>>);

impl<'de> Deserialize<'de> for Members<'de> {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_map(MembersVisitor)
    }
}

struct MembersVisitor;

impl<'de> Visitor<'de> for MembersVisitor {
    type Value = Members<'de>;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("an object")
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Self::Value, A::Error> {
        let mut members = Vec::new();
        while let Some((name, value)) = map.next_entry::<String, &RawValue>()? {
            members.push(Member { name, value: JsonPiece { text: value.get() } });
        }
        Ok(Members(members))
    }
}
