//! What the JSON of an end must look like, and everything that does not.

use crate::json_piece::{JsonPiece, Member};
use crate::{Fault, Place, What};

/// The kind of a value; members that are not named here are allowed.
pub(crate) enum Shape {
    Text,
    Number,
    Truth,
    /// An object whose members all are texts.
    Texts,
    List(&'static Shape),
    Object(&'static [Field]),
}

/// A member that is known by its name.
pub(crate) struct Field {
    name: &'static str,
    shape: Shape,
    need: Need,
}

#[derive(PartialEq)]
enum Need {
    Must,
    May,
}

const fn must(name: &'static str, shape: Shape) -> Field {
    Field { name, shape, need: Need::Must }
}

const fn may(name: &'static str, shape: Shape) -> Field {
    Field { name, shape, need: Need::May }
}

/// An end as [`EndEntry`](crate::EndEntry) reads it.
pub(crate) const END: Shape = Shape::Object(&[
    must("shots", Shape::List(&SHOT)),
    may("at", Shape::Text),
    may("evening", Shape::Text),
    may("note", Shape::Text),
    may("distance_m", Shape::Number),
]);

/// A group as [`GroupEntry`](crate::GroupEntry) reads it.
pub(crate) const GROUP: Shape = Shape::Object(&[
    must("shots", Shape::List(&SHOT)),
    must("distance_m", Shape::Number),
    must("head", Shape::Text),
    may("cold", Shape::Truth),
    may("at", Shape::Text),
    may("mounted", Shape::Texts),
]);

const SHOT: Shape = Shape::Object(&[
    must("shaft", Shape::Text),
    may("index_deg", Shape::Number),
    may("x_mm", Shape::Number),
    may("y_mm", Shape::Number),
    may("lean_x_deg", Shape::Number),
    may("lean_y_deg", Shape::Number),
    may("call", Shape::Text),
    may("flags", Shape::List(&Shape::Text)),
    may("read_sd_mm", Shape::Number),
    may("lean_sd_deg", Shape::Number),
    may("out_mm", Shape::Number),
    may("toward_deg", Shape::Number),
    may("tail_x_mm", Shape::Number),
    may("tail_y_mm", Shape::Number),
    may("protruding_mm", Shape::Number),
    may("tail_seen", Shape::Text),
    may("tail_toward_deg", Shape::Number),
]);

impl Shape {
    /// Everything in `piece`, which stands at `place`, that is of another shape.
    pub fn faults(&self, piece: JsonPiece, place: &Place) -> Vec<Fault> {
        if piece.kind() != self.kind() {
            let what = What::Kind { expected: self.kind(), found: piece.kind() };
            return vec![Fault { place: place.clone(), what }];
        }
        match self {
            Self::Text | Self::Number | Self::Truth => Vec::new(),
            Self::Texts => {
                let members = piece.members().into_iter().flatten();
                let faults = |member: &Member| {
                    Self::Text.faults(member.value, &place.clone().member(&member.name))
                };
                members.flat_map(|member| faults(&member)).collect()
            }
            Self::List(shape) => {
                let items = piece.items().into_iter().flatten().enumerate();
                items.flat_map(|(n, item)| shape.faults(item, &place.clone().item(n))).collect()
            }
            Self::Object(fields) => {
                fields.iter().flat_map(|field| field.faults(piece, place)).collect()
            }
        }
    }

    /// As [`JsonPiece::kind`] says it.
    fn kind(&self) -> &'static str {
        match self {
            Self::Text => "text in quotes",
            Self::Number => "a number",
            Self::Truth => "true or false",
            Self::List(_) => "a list in brackets",
            Self::Texts | Self::Object(_) => "an object in braces",
        }
    }
}

impl Field {
    fn faults(&self, object: JsonPiece, place: &Place) -> Vec<Fault> {
        let inside = place.clone().member(self.name);
        let mut found = object.members().unwrap_or_default();
        found.retain(|member| member.name == self.name);
        match found.as_slice() {
            [] if self.need == Need::Must => {
                vec![Fault { place: place.clone(), what: What::Missing { member: self.name } }]
            }
            [] => Vec::new(),
            [one] => self.shape.faults(one.value, &inside),
            _ => vec![Fault { place: inside, what: What::Repeated { member: self.name } }],
        }
    }
}
