//! The learned relation in words.

use quarterturn_entry::quantity::Unit;
use quarterturn_tuning::LeanRelation;

use crate::wording::{Ruler, count};

/// "For each 10 mm to the right a tail stands 0.9 deg farther left (90 % sure: 0.6 to 1.2 deg; 42 shots), and …".
pub fn relation_said(relation: Option<&LeanRelation>, ruler: Ruler) -> String {
    let Some(relation) = relation else {
        return "No counted bare shot with its tail read yet.".to_owned();
    };
    let (name, step_mm) = step(ruler);
    // Said for tails that stand against the way of the hit, as nearly all do.
    let against = [relation.slope_deg_per_mm, relation.interval.upper, relation.interval.lower]
        .map(|slope| format!("{:.1}", -slope * step_mm + 0.0));
    let [slope, least, most] = against;
    format!(
        "For each {name} that bare shafts land farther right, tails stand {slope} deg farther left ({:.0} % sure: {least} to \
         {most}; {}); and for each {name} higher as much lower.",
        relation.interval.level * 100.0,
        count(relation.shots, "shot"),
    )
}

/// A step that the reader thinks in, and its millimetres.
fn step(ruler: Ruler) -> (String, f64) {
    let count = if ruler.unit() == Unit::MILLIMETRE { 10.0 } else { 1.0 };
    (format!("{count} {}", ruler.unit().symbol), ruler.unit().to_base(count))
}
