//! What doing something else is worth, in sentences.

use std::cmp::Ordering;

use super::whole;
use crate::rehearsal::{Alternative, Found};
use crate::wording::{Ruler, count, either};

/// Fewer open shafts than this are nothing to do something about, a share.
const FEW_OPEN: f64 = 0.05;

/// An alternative is worth its name when it halves what is open, or saves this share of the shots.
const WORTH_SAVING: f64 = 0.2;

/// What one alternative buys, in a sentence.
pub fn buys(asked: &Found, other: &Found, ruler: Ruler) -> String {
    let (before, after) = (asked.shots.median, other.shots.median);
    let shots = match after.cmp(&before) {
        Ordering::Less => format!("saves about {}", count(before - after, "shot")),
        Ordering::Equal => "takes as many shots".to_owned(),
        Ordering::Greater => {
            format!("takes about {} more", count(after - before, "shot"))
        }
    };
    let open = |one: &Found| one.figures.open.map_or(0.0, |share| share.value);
    let leaves = format!("{} % open instead of {} %", whole(open(other)), whole(open(asked)));
    let what = match other.what {
        Alternative::AsAsked => "as asked".to_owned(),
        Alternative::Closer => {
            let asked_there = asked.conditions.distance / other.conditions.distance;
            format!(
                "Coming closer, to {} with the same tolerance (as if it were {} from where you are),",
                ruler.distance(other.conditions.distance),
                ruler.estimate(asked.conditions.tolerance * asked_there)
            )
        }
        Alternative::Wider => {
            format!("Accepting a tolerance of {}", ruler.read(other.conditions.tolerance))
        }
        Alternative::ReadLeans => "Reading how the arrows lean".to_owned(),
    };
    format!("{what} {shots} and leaves {leaves}.")
}

/// Whether to do something else, in a sentence.
pub fn advice(asked: &Found, others: &[Found]) -> String {
    let open = |one: &Found| one.figures.open.map_or(0.0, |share| share.value);
    let helps = |other: &&Found| {
        let saved = 1.0 - other.shots.median as f64 / asked.shots.median.max(1) as f64;
        open(other) <= open(asked) / 2.0 || saved >= WORTH_SAVING
    };
    let helpful: Vec<_> = others.iter().filter(helps).map(|other| to_do(other.what)).collect();
    if open(asked) <= FEW_OPEN {
        "Shoot it as you asked: hardly a shaft stays open, and there is no need to come closer or to ask \
         for less."
            .to_owned()
    } else if helpful.is_empty() {
        "Nothing of this helps much: what would is a smaller group of your own.".to_owned()
    } else {
        let ever = if helpful.len() > 1 { "whichever" } else { "if" };
        format!("It is worth it to {}, {ever} your hunting allows.", either(helpful))
    }
}

const fn to_do(what: Alternative) -> &'static str {
    match what {
        Alternative::AsAsked => "as asked",
        Alternative::Closer => "come closer",
        Alternative::Wider => "accept the wider tolerance",
        Alternative::ReadLeans => "read the leans",
    }
}
