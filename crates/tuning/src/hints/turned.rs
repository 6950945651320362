//! Shots that fly as if their mark had stood at another index: a nock upside down, or one that slipped.

use std::f64::consts::TAU;

use quarterturn_geometry::Index;

use super::hint::Hint;
use super::left_out::{LeftOut, log_sum};
use super::suspicion::Suspicion;
use crate::evidence::{Evidence, Told};

/// In one shot of so many the nock is on upside down, and in as many it has slipped (common practice, from memory).
const SHOTS_FOR_A_TURN: f64 = 60.0;

/// Of the slips, the share of those by one or two hours, either way.
const NEAR_SHARE: f64 = 0.8;

/// A slip that has lasted longer than so many shots is what the shaft is taken to be.
const LONGEST: usize = 4;

/// The hours by which a mark can be off.
const HOURS: std::ops::Range<usize> = 1..12;

/// The turns that could be suspected of a shaft with these shots, of which those from `first` on are looked at.
pub fn turned(
    evidence: &Evidence<'_>,
    shots: &[usize],
    first: usize,
    end_of: impl Fn(usize) -> usize,
) -> Vec<Suspicion> {
    let looked_at = (0..shots.len()).filter(|&at| shots[at] >= first);
    let runs = looked_at.flat_map(|at| {
        let lasting = shots.len() - at;
        let once = &shots[at..=at];
        let on = (2..=LONGEST).contains(&lasting).then(|| &shots[at..]);
        std::iter::once(once).chain(on)
    });
    runs.filter_map(|run| suspicion(evidence, run, end_of(run[0]))).collect()
}

fn suspicion(evidence: &Evidence<'_>, run: &[usize], end: usize) -> Option<Suspicion> {
    let left_out = LeftOut::of(evidence, run)?;
    let entered: Vec<_> = run.iter().map(|&shot| evidence.as_entered(shot)).collect();
    let as_entered = left_out.log_likelihood(&entered);
    let by_hours = HOURS.map(|hours| {
        let told: Vec<_> = entered.iter().map(|&told| turned_by(told, hours)).collect();
        (hours, share(hours).ln() + left_out.log_likelihood(&told) - as_entered)
    });
    let by_hours: Vec<_> = by_hours.collect();
    let (hours, _) = *by_hours.iter().max_by(|one, other| one.1.total_cmp(&other.1))?;
    let logs: Vec<f64> = by_hours.iter().map(|(_, log)| *log).collect();
    Some(Suspicion {
        hint: hint(evidence, run, hours, end),
        log_odds: log_sum(&logs) - SHOTS_FOR_A_TURN.ln(),
        shots: run.to_vec(),
    })
}

fn turned_by(told: Told, hours: usize) -> Told {
    Told { mark_rad: told.mark_rad + TAU * hours as f64 / 12.0, ..told }
}

/// How likely it is that a mark is off by so many hours, as a multiple of one shot in [`SHOTS_FOR_A_TURN`].
fn share(hours: usize) -> f64 {
    match hours.min(12 - hours) {
        6 => 1.0,
        1 | 2 => NEAR_SHARE / 4.0,
        _ => (1.0 - NEAR_SHARE) / 6.0,
    }
}

fn hint(evidence: &Evidence<'_>, run: &[usize], hours: usize, end: usize) -> Hint {
    let first = &evidence.seen.shots[run[0]];
    let shaft = evidence.seen.lives[first.life].name.clone();
    let recorded = first.index;
    let seems = Index::from_degrees(recorded.degrees() + 30.0 * hours as f64);
    match run.len() {
        1 if hours == 6 => Hint::UpsideDown { shaft, end, recorded, seems },
        shots => Hint::Slipped { shaft, end, recorded, seems, shots },
    }
}
