//! Whether one direction goes with another: whether the turn from the one to the other is the same.

use std::f64::consts::TAU;

use rand::SeedableRng;
use rand::seq::SliceRandom;
use rand_pcg::Pcg64;

use crate::statistic_error::at_least;
use crate::{MeanDirection, Sample, StatisticError, TestResult};

/// Up to so many pairs every order is tried: 40,320 of them.
const EVERY_ORDER: usize = 8;

/// How many orders are drawn beyond that.
const DRAWN: usize = 9_999;

/// Resultants nearer to each other than this are the same but for rounding.
const SAME: f64 = 1e-9;

/// How far it is from one direction to the other in pairs of them, and whether that is always the same.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SharedTurn {
    /// The turns from the first to the second direction of each pair.
    pub turn: MeanDirection,
    /// The test of pairs that do not belong together; its statistic is the resultant length of the turns.
    pub test: TestResult,
}

impl SharedTurn {
    /// Tests whether `to` turns as `from` does. Neither needs to be spread evenly: where all of either are the same, no
    /// order differs from another, and p is 1.
    ///
    /// # Formula
    /// R̄ is the resultant length of the angles to − from. p is the share of all orders π of `to` in which that of
    /// to(π) − from is R̄ or more: of all n! up to eight pairs, beyond that (1 + those of 9,999 drawn from `seed`) of
    /// 10,000. It is never below 1/n!: fewer than four pairs cannot show anything at 0.05.
    ///
    /// # Assumptions
    /// Pairs independent of each other.
    ///
    /// # Errors
    /// [`StatisticError::CountsDiffer`], [`StatisticError::TooFew`] for fewer than two pairs.
    ///
    /// # Source
    /// A permutation test: R. A. Fisher, 1935, The Design of Experiments, section 21; of this kind of dependence N. I.
    /// Fisher, 1993, Statistical Analysis of Circular Data, section 6.3 (both from memory).
    pub fn of(from_rad: &Sample, to_rad: &Sample, seed: u64) -> Result<Self, StatisticError> {
        let (from, to) = (from_rad.values(), to_rad.values());
        if from.len() != to.len() {
            return Err(StatisticError::CountsDiffer { first: from.len(), second: to.len() });
        }
        at_least(from.len(), 2)?;
        let n = from.len();
        let turns = from.iter().zip(to).map(|(from, to)| (to - from).rem_euclid(TAU));
        let turn = MeanDirection::of(&Sample::new(turns.collect())?);
        let parts: (Vec<Unit>, Vec<Unit>) = (units(from), units(to));
        let least = turn.resultant_length * n as f64 - SAME;
        let p_value = if n <= EVERY_ORDER {
            share_of_every_order(&parts.0, parts.1, least)
        } else {
            share_of_drawn_orders(&parts.0, parts.1, least, seed)
        };
        Ok(Self { turn, test: TestResult { statistic: turn.resultant_length, p_value, n } })
    }
}

/// Cosine and sine of a direction.
type Unit = [f64; 2];

fn units(angles: &[f64]) -> Vec<Unit> {
    angles.iter().map(|angle| [angle.cos(), angle.sin()]).collect()
}

/// The length of the sum of the turns, n times their resultant length.
fn resultant(from: &[Unit], to: &[Unit]) -> f64 {
    let sum = from.iter().zip(to).fold([0.0, 0.0], |[x, y], ([c, s], [cos, sin])| {
        [x + cos * c + sin * s, y + sin * c - cos * s]
    });
    sum[0].hypot(sum[1])
}

/// By B. R. Heap's exchanges, 1963, Computer Journal 6, 293 (from memory).
fn share_of_every_order(from: &[Unit], mut to: Vec<Unit>, least: f64) -> f64 {
    let (mut orders, mut as_far) = (0_u32, 0_u32);
    let mut see = |to: &[Unit]| {
        orders += 1;
        as_far += u32::from(resultant(from, to) >= least);
    };
    see(&to);
    let mut counters = vec![0; to.len()];
    let mut at = 1;
    while at < to.len() {
        if counters[at] < at {
            let other = if at % 2 == 0 { 0 } else { counters[at] };
            to.swap(other, at);
            see(&to);
            counters[at] += 1;
            at = 1;
        } else {
            counters[at] = 0;
            at += 1;
        }
    }
    f64::from(as_far) / f64::from(orders)
}

fn share_of_drawn_orders(from: &[Unit], mut to: Vec<Unit>, least: f64, seed: u64) -> f64 {
    let mut random = Pcg64::seed_from_u64(seed);
    let as_far = (0..DRAWN).filter(|_| {
        to.shuffle(&mut random);
        resultant(from, &to) >= least
    });
    (as_far.count() + 1) as f64 / (DRAWN + 1) as f64
}
