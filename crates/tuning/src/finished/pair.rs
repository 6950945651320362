//! One arrow with one broadhead, beside the others with theirs.

use quarterturn_geometry::Millimetres;
use quarterturn_statistics::PlanarSample;

use super::arrow_means::{ArrowMeans, FromTheOthers};
use super::pooled::{Numbered, Pooled};
use super::{Head, Start};
use crate::ShaftName;

/// An arrow that was shot with field points and with one broadhead.
#[derive(Clone, Debug, PartialEq)]
pub struct Pair {
    /// The arrow.
    pub arrow: ShaftName,
    /// The single head that it carried, by its own name; nothing where none is recorded.
    pub piece: Option<String>,
    /// How many of its shots with field points count.
    pub field: usize,
    /// How many of its shots with this broadhead count.
    pub broadheads: usize,
    /// Where the broadhead takes it, from where the others take theirs: what all share is not in it. Nothing for a single
    /// pair, or where no arrow was shot twice with one head.
    pub from_the_others: Option<FromTheOthers>,
}

/// Every arrow that was shot with field points and with `head`.
///
/// # Method
/// Of each arrow its centre with the broadhead less its centre with field points, and of that the difference from the mean
/// of the other arrows, as [`ArrowMeans::beside_the_others`] has it.
pub fn pairs(at: &Pooled, head: &Head, together: Option<Millimetres>) -> Vec<Pair> {
    let field = at.hits_by_arrow(&Head::Field, Start::Warm);
    let heads = at.hits_by_arrow(head, Start::Warm);
    let place = |arrow: &ShaftName| field.iter().position(|(other, _)| other.arrow == *arrow);
    let places = heads.iter().enumerate();
    let places = places.filter_map(|(n, (numbered, _))| Some((n, place(&numbered.arrow)?)));
    let places: Vec<(usize, usize)> = places.collect();
    let means = |samples: &mut dyn Iterator<Item = &PlanarSample>| {
        ArrowMeans::of(&samples.cloned().collect::<Vec<_>>())
    };
    let of_field = means(&mut field.iter().map(|(_, sample)| sample));
    let differences = means(&mut heads.iter().map(|(_, sample)| sample)).less(&of_field, &places);
    let beside = differences.beside_the_others(together);
    let pair = |((head_at, field_at), from_the_others): (&(usize, usize), _)| {
        let (Numbered { arrow, piece }, with_head) = heads.get(*head_at)?.clone();
        let (_, with_field) = field.get(*field_at)?;
        let (field, broadheads) = (with_field.n(), with_head.n());
        Some(Pair { arrow, piece, field, broadheads, from_the_others })
    };
    places.iter().zip(beside).filter_map(pair).collect()
}
