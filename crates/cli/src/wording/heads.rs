//! What is said of broadheads beside field points.

use quarterturn_geometry::{Millimetres, Offset};
use quarterturn_journal::MountedHead;
use quarterturn_tuning::{AtDistance, FromTheOthers, Grows, Growth, Pair, TogetherVerdict};

use super::{Ruler, percent, visible};

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
        Some(TogetherVerdict::Together) => format!("together within {within}, at 95 %"),
        Some(TogetherVerdict::Apart) => format!("apart by more than {within}, at 95 %"),
        Some(TogetherVerdict::Open { more: Some(more) }) => {
            format!("cannot say yet: about {more} more of each, if they go on like this")
        }
        Some(TogetherVerdict::Open { more: None }) => {
            "cannot say yet, and 60 more of each would hardly tell: the centres are about as far apart as you call together"
                .to_owned()
        }
        None => {
            let (least, most) = (difference.at_least_mm, difference.at_most.at_most);
            let [least, most] = [least, most].map(Millimetres::new);
            format!("{} to {} apart, at 95 %", ruler.estimate_bare(least), ruler.estimate(most))
        }
    }
}

/// "C, 103.1 gr, 0.5 mm": a single head with its mass and how far it runs out, as they were entered.
pub fn head_on(head: &MountedHead) -> String {
    let mass = head.mass_gr.map(|gr| format!("{gr} gr"));
    let runout = head.runout_mm.map(|mm| format!("{mm} mm"));
    let said = [Some(visible(&head.carries)), mass, runout];
    said.into_iter().flatten().collect::<Vec<_>>().join(", ")
}

/// What is said of each arrow with its head from one distance: those that go another way, and what is open.
pub fn pairs(at: &AtDistance, ruler: Ruler) -> impl Iterator<Item = String> {
    let from = ruler.distance(at.distance);
    let judged = at.pairs.iter().filter_map(|pair| Some((named(pair), pair.from_the_others?)));
    let judged: Vec<(String, FromTheOthers)> = judged.collect();
    let is_apart = |beside: &FromTheOthers| beside.verdict == Some(TogetherVerdict::Apart);
    let apart = |(name, beside): &(String, FromTheOthers)| {
        let value = beside.estimate.value;
        is_apart(beside).then(|| {
            format!(
                "{name} from {from}: its head takes it {} where the others' take them. Spin it; put another head on it, \
                 record that with quiver, and shoot again: what goes with the head is the head's, what stays is the \
                 insert's.",
                ruler.miss_of(Offset::new(value.x, value.y))
            )
        })
    };
    let said: Vec<String> = judged.iter().filter_map(apart).collect();
    said.into_iter().chain(super::open_beside(&from, &judged))
}

/// "6 with C".
fn named(pair: &Pair) -> String {
    let with = pair.piece.as_ref().map(|piece| format!(" with {}", visible(piece)));
    format!("{}{}", pair.arrow, with.unwrap_or_default())
}

/// "40 mm more", "3 mm less".
fn more_or_less(mm: f64, ruler: Ruler) -> String {
    let way = if mm < 0.0 { "less" } else { "more" };
    format!("{} {way}", ruler.estimate(Millimetres::new(mm.abs())))
}

/// How a difference grows with the distance, how sure that is, and what to look at.
pub fn growth(growth: &Growth, together: Option<Millimetres>, ruler: Ruler) -> String {
    let Growth { between: [near, far], excess_mm, faster, grows, .. } = growth;
    let [from, to] = [near, far].map(|distance| ruler.distance(*distance));
    let (value, interval) = (excess_mm.value, excess_mm.interval);
    let excess = more_or_less(value, ruler);
    let [lower, upper] = [interval.lower, interval.upper].map(|mm| more_or_less(mm, ruler));
    let more =
        format!("at {to} {excess} than in proportion to {from} ({lower} to {upper}, at 90 %)");
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
            "it grows slower than in proportion, {} sure: {more}. That is not planing: see whether sight and \
             distance were the same",
            percent(1.0 - faster)
        ),
        Grows::Open => format!(
            "how it grows cannot be said yet: {more}; that it grows faster is {} sure",
            percent(*faster)
        ),
    }
}
