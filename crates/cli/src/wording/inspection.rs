//! What to look at on a shaft that was retired; common practice of the trade.

use quarterturn_tuning::RetireReason;

use crate::workshop::Gauge;

/// What to do, in the order in which it is worth doing; empty where the shaft is not at hand, or nothing is wrong with it.
pub const fn inspection(reason: RetireReason) -> &'static [&'static str] {
    match reason {
        RetireReason::CircleTooBig => &[
            "Nock: does it sit straight and all the way in? Try another one.",
            "Nock end: roll the last 40 mm, or hold a gauge to it; a crooked end throws most.",
            "Insert and point: spin it on the tip; if the wobble stays with the insert, change it.",
            "Point end: is it square? Blacken it and turn it on fine paper.",
            "Then cut the crooked end back, square it, and shoot it again as repaired; else a practice arrow.",
        ],
        RetireReason::CentreOff => &[
            "Mass: weigh it bare beside the others.",
            "Balance point and length: is a part missing, or another one in it?",
            "Spine: is it of another class, or from another batch?",
            "No turn of the nock cures it: try it with another set.",
        ],
        RetireReason::DoesNotRepeat => &[
            "Do not shoot it before this: flex and twist it and listen; a crackle: destroy it.",
            "Nock: cracked ears, loose on the string, or turning in the shaft?",
            "Insert: does it move when the point is turned? Glue that crept is glued anew.",
            "Both ends: look for a split with a drop of oil or a fingernail.",
            "Point: screwed home?",
        ],
        RetireReason::Broken => &[
            "Carbon that cracked is destroyed, not mended: break it, wrap it, throw it away.",
            "Repaired is only what was a nock, an insert or a point, on a shaft that passes the flex test.",
        ],
        RetireReason::SetAside | RetireReason::Lost => &[],
    }
}

/// What was perhaps measured and tells of it.
pub const fn to_measure(reason: RetireReason) -> &'static [Gauge] {
    match reason {
        RetireReason::CircleTooBig => {
            &[Gauge::StraightnessNock, Gauge::StraightnessPoint, Gauge::Square, Gauge::Wobble]
        }
        RetireReason::CentreOff => {
            &[Gauge::Mass, Gauge::BareMass, Gauge::Length, Gauge::Spine, Gauge::Balance]
        }
        RetireReason::DoesNotRepeat => &[Gauge::Wobble, Gauge::Square],
        RetireReason::Broken | RetireReason::SetAside | RetireReason::Lost => &[],
    }
}
