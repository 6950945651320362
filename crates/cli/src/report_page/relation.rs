//! How tails go with hits, in numbers.

use quarterturn_tuning::LeanRelation;

use crate::wording::tail;

/// The numbers of the learned line.
pub struct Relation {
    /// Degrees for each millimetre.
    pub slope: String,
    /// Its 90 % interval.
    pub bounds: String,
    /// How a shaft leans that lands on the reference.
    pub common: String,
    /// The shots that it rests on.
    pub shots: usize,
}

impl From<&LeanRelation> for Relation {
    fn from(relation: &LeanRelation) -> Self {
        let LeanRelation { slope_deg_per_mm, interval, common, shots } = *relation;
        let signed = |value: f64| format!("{value:.3}").replace('-', "−");
        Self {
            slope: signed(slope_deg_per_mm),
            bounds: format!("{} to {}", signed(interval.lower), signed(interval.upper)),
            common: tail(Some(common)).replace("tail ", ""),
            shots,
        }
    }
}
