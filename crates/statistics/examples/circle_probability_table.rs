//! Microseconds a call, and the largest error, of the probability of a circle over a table of circles.
//!
//! `cargo run --release -p quarterturn-statistics --example circle_probability_table circles.csv [probabilities.csv]`:
//! under one heading radius, mean x and y, covariance xx, xy and yy; the probabilities, one a line, under another.
#![allow(
    clippy::print_stdout,
    clippy::unwrap_used,
    reason = "this is what it is for; it is run by hand"
)]

use std::time::Instant;

use nalgebra::{Matrix2, Vector2};
use quarterturn_statistics::probability_within_circle;

const ROUNDS: usize = 100;

fn numbers(path: &str) -> Vec<Vec<f64>> {
    let text = std::fs::read_to_string(path).unwrap();
    let rows = text.lines().skip(1);
    rows.map(|row| row.split(',').map(|cell| cell.parse().unwrap()).collect()).collect()
}

fn main() {
    let mut paths = std::env::args().skip(1);
    let circles: Vec<_> = numbers(&paths.next().unwrap())
        .iter()
        .map(|n| (Vector2::new(n[1], n[2]), Matrix2::new(n[3], n[4], n[4], n[5]), n[0]))
        .collect();
    let all = || -> Vec<f64> {
        circles
            .iter()
            .map(|(mean, covariance, r)| probability_within_circle(*mean, covariance, *r))
            .collect()
    };
    let rounds = (0..ROUNDS).map(|_| {
        let start = Instant::now();
        std::hint::black_box(all());
        start.elapsed().as_secs_f64() * 1e6 / circles.len() as f64
    });
    // The round that was least disturbed.
    let least = rounds.fold(f64::INFINITY, f64::min);
    println!("{} circles, {least:.3} us each", circles.len());
    if let Some(reference) = paths.next() {
        let off = numbers(&reference)
            .iter()
            .zip(all())
            .map(|(n, p)| (n[0] - p).abs())
            .fold(0.0, f64::max);
        println!("largest error {off:e}");
    }
}
