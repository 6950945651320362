//! What is said of broadheads beside field points.

use quarterturn_geometry::Millimetres;
use quarterturn_tuning::{AtDistance, Grows, Growth, HeadVerdict};

use super::{Ruler, percent};

/// What belongs to every shot with a broadhead; common practice of the trade.
pub const WITH_BROADHEADS: [&str; 4] = [
    "Never a broadhead on a bare shaft.",
    "One arrow to a spot: a broadhead cuts vanes and shafts.",
    "Keep broadheads covered until you nock the arrow, and turn them with a wrench, not with fingers.",
    "Give them a butt of their own that is made for broadheads, with nobody near it.",
];

/// "together within 50 mm, at 95 %"; "cannot say yet: about 4 more of each".
pub fn head_verdict(at: &AtDistance, together: Option<Millimetres>, ruler: Ruler) -> String {
    let Some(difference) = at.difference else {
        return if at.field.min(at.broadheads) < 3 {
            "cannot say yet: three of each must count".to_owned()
        } else {
            "cannot say: the hits lie on one line, as nobody shoots".to_owned()
        };
    };
    let within = ruler.read(together.unwrap_or(Millimetres::ZERO));
    match difference.verdict {
        Some(HeadVerdict::Together) => format!("together within {within}, at 95 %"),
        Some(HeadVerdict::Apart) => format!("apart by more than {within}, at 95 %"),
        Some(HeadVerdict::Open { more: Some(more) }) => {
            format!("cannot say yet: about {more} more of each, if they go on like this")
        }
        Some(HeadVerdict::Open { more: None }) => {
            "cannot say yet, and 60 more of each would hardly tell: the centres are about as far apart as you call together"
                .to_owned()
        }
        None => {
            let (least, most) = (difference.at_least_mm, difference.at_most.at_most);
            let [least, most] = [least, most].map(|mm| ruler.estimate(Millimetres::new(mm)));
            format!("{least} to {most} apart, at 95 %")
        }
    }
}

/// How a difference grows with the distance, how sure that is, and what to look at.
pub fn growth(growth: &Growth, together: Option<Millimetres>, ruler: Ruler) -> String {
    let Growth { between: [near, far], excess_mm, faster, grows, .. } = growth;
    let [from, to] = [near, far].map(|distance| ruler.distance(*distance));
    let [excess, lower, upper] =
        [excess_mm.value, excess_mm.interval.lower, excess_mm.interval.upper]
            .map(|mm| ruler.estimate_bare(Millimetres::new(mm)));
    let symbol = ruler.unit().symbol;
    let more = format!(
        "at {to} {excess} {symbol} more than in proportion to {from} ({lower} to {upper}, at 90 %)"
    );
    match grows {
        Grows::NoDifference => {
            format!(
                "no difference is sure from {from} to {to}, so nothing can be said of its growth"
            )
        }
        Grows::InProportion => {
            let within = ruler.read(together.unwrap_or(Millimetres::ZERO));
            format!(
                "it grows in proportion to the distance, within {within}: {more}. That is the sight or the rest: one \
                 small move, noted with bow, then both groups again"
            )
        }
        Grows::Faster => format!(
            "it grows faster than in proportion, {} sure: {more}. The heads plane: look at how each spins on its \
             arrow and at the rest; one small move of 0.8 mm, noted with bow, then both groups again",
            percent(*faster)
        ),
        Grows::Slower => format!(
            "it grows slower than in proportion, {} sure: {more}. That is not planing: was the sight the same, and \
             the distance?",
            percent(1.0 - faster)
        ),
        Grows::Open => format!(
            "how it grows cannot be said yet: {more}; that it grows faster is {} sure",
            percent(*faster)
        ),
    }
}
