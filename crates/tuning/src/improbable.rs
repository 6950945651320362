//! Hits of the last end that lie where they hardly can: a slip of the pen, or a shot that went wild.

use nalgebra::Vector2;
use quarterturn_geometry::{Offset, Point};

use crate::assessment::Assessment;
use crate::evidence::{Evidence, Told};
use crate::hints::LeftOut;
use crate::observation::Kind;
use crate::{End, Event, History, ShaftName};

/// A hit is asked about where fewer than one shot in so many lies so far out.
const ONE_IN: f64 = 100.0;

/// A slip explains a hit where at least one shot in so many lies as far from where it then belongs.
const EXPLAINED_ONE_IN: f64 = 10.0;

/// Divided by ten or more, any hit lies near the spot: a unit is suspected only of one that no flyer reaches.
const BEYOND_A_FLYER: f64 = 1e-9;

/// A hit of the last end that lies improbably far from where all other shots say.
#[derive(Clone, Debug, PartialEq)]
pub struct Improbable {
    /// Whose it is.
    pub shaft: ShaftName,
    /// Where it was entered, from its spot.
    pub at: Point,
    /// Where it was expected, from its spot.
    pub expected: Point,
    /// How likely a hit is to lie so far out or farther.
    pub probability: f64,
    /// What would explain it, where something does.
    pub slip: Option<Slip>,
}

/// What may have been mistaken where a hit was entered.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Slip {
    /// Right for left.
    Sides,
    /// High for low.
    Heights,
    /// A point that was left out or put in.
    DecimalPoint,
    /// Inches for millimetres, or the other way.
    Inches,
    /// The numbers of two shafts of the end.
    Number(ShaftName),
}

/// The improbable hits of the last thing that happened, where that is an end from the journal's distance.
///
/// # Method
/// Each shot is taken out of the posterior exactly, and the chance of a hit as far out or farther is found from what
/// is left, with the share of shots that fly far anyway. The slips are tried one by one, and the likeliest is named
/// where it explains the hit.
pub fn improbable(history: &History) -> Vec<Improbable> {
    let Some(Event::End(end)) = history.events.last() else { return Vec::new() };
    if end.distance.is_some() {
        return Vec::new();
    }
    let assessment = Assessment::of(history);
    let evidence = assessment.evidence();
    let shots = &evidence.seen.shots;
    let ends = history.events.iter().filter(|event| is_read(event)).count();
    let of_end: Vec<usize> = (0..shots.len()).filter(|&at| shots[at].end + 1 == ends).collect();
    of_end.iter().filter_map(|&shot| asked(end, &evidence, shot, &of_end)).collect()
}

fn is_read(event: &Event) -> bool {
    matches!(event, Event::End(end) if end.distance.is_none())
}

fn asked(end: &End, evidence: &Evidence<'_>, shot: usize, of_end: &[usize]) -> Option<Improbable> {
    let only = [shot];
    let left_out = LeftOut::of(evidence, &only)?;
    let told = evidence.as_entered(shot);
    let probability = left_out.tail_of_hit(told, Vector2::zeros())?;
    if probability * ONE_IN >= 1.0 {
        return None;
    }
    let shaft = &evidence.seen.lives[evidence.seen.shots[shot].life].name;
    // As it was entered: what is read of a bare shaft has its known height taken off.
    let at = end.shots.iter().find(|entered| entered.shaft == *shaft)?.hit?.at;
    let off = left_out.off_of_hit(told);
    Some(Improbable {
        shaft: shaft.clone(),
        at,
        expected: at + Offset::new(off.x, off.y),
        probability,
        slip: slip(evidence, shot, of_end, &left_out, probability),
    })
}

/// The slip that explains the hit best, if any does.
fn slip(
    evidence: &Evidence<'_>,
    shot: usize,
    of_end: &[usize],
    left_out: &LeftOut<'_>,
    probability: f64,
) -> Option<Slip> {
    let told = evidence.as_entered(shot);
    let hit = evidence.seen.shots[shot].hit_mm;
    let moved = |slip, to: Vector2<f64>| (slip, told, to - hit);
    let inch = 25.4;
    let mut slips = vec![
        moved(Slip::Sides, Vector2::new(-hit.x, hit.y)),
        moved(Slip::Heights, Vector2::new(hit.x, -hit.y)),
        moved(Slip::DecimalPoint, hit * 10.0),
        moved(Slip::Inches, hit * inch),
    ];
    if probability < BEYOND_A_FLYER {
        slips.extend([moved(Slip::DecimalPoint, hit / 10.0), moved(Slip::Inches, hit / inch)]);
    }
    let others = of_end.iter().filter(|&&other| other != shot && is_bare(evidence, shot, other));
    slips.extend(others.map(|&other| {
        let Told { life, mark_rad } = evidence.as_entered(other);
        let name = evidence.seen.lives[life].name.clone();
        (Slip::Number(name), Told { life, mark_rad }, Vector2::zeros())
    }));
    let tails = slips
        .into_iter()
        .filter_map(|(slip, told, moved)| Some((left_out.tail_of_hit(told, moved)?, slip)));
    let (tail, slip) = tails.max_by(|(one, _), (other, _)| one.total_cmp(other))?;
    (tail * EXPLAINED_ONE_IN >= 1.0).then_some(slip)
}

/// Whether both are bare shafts, whose numbers can be mistaken for each other.
fn is_bare(evidence: &Evidence<'_>, one: usize, other: usize) -> bool {
    let bare = |shot: usize| evidence.seen.kind_of(&evidence.seen.shots[shot]) == Kind::Bare;
    bare(one) && bare(other)
}
