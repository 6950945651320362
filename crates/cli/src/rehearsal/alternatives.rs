//! What else a person could do.

use quarterturn_geometry::Millimetres;
use quarterturn_tuning::Leans;

use super::Conditions;

/// A shorter distance is about so much of it ...
const CLOSER: f64 = 0.75;

/// ... paced to the half metre ...
const STEP_MM: f64 = 500.0;

/// ... and a wider tolerance so many times as wide.
const WIDER: f64 = 1.5;

/// What else a person could do.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Alternative {
    /// Nothing else.
    AsAsked,
    /// Come closer, with the same tolerance.
    Closer,
    /// Accept a wider tolerance.
    Wider,
    /// Read how arrows lean.
    ReadLeans,
}

/// What is rehearsed: as asked first, then what else could be done.
pub fn alternatives(asked: Conditions) -> Vec<(Alternative, Conditions)> {
    let read = Conditions { leans: Leans::Read, ..asked };
    // A group is as much smaller as the way is shorter.
    let distance = Millimetres::new((asked.distance.mm() * CLOSER / STEP_MM).round() * STEP_MM);
    let group = asked.group * (distance / asked.distance);
    let mut all = vec![
        (Alternative::AsAsked, asked),
        (Alternative::Closer, Conditions { group, distance, ..asked }),
        (Alternative::Wider, Conditions { tolerance: asked.tolerance * WIDER, ..asked }),
    ];
    if asked.leans == Leans::NotRead {
        all.push((Alternative::ReadLeans, read));
    }
    all
}
