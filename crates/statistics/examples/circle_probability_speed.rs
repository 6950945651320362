//! Nanoseconds a call of both circle probabilities: `cargo run --release --example circle_probability_speed`.
#![allow(clippy::print_stdout, reason = "this is what it is for")]

use std::hint::black_box;
use std::time::Instant;

use nalgebra::{Matrix2, Vector2};
use quarterturn_statistics::{approximate_probability_within_circle, probability_within_circle};

type Circle = (Vector2<f64>, Matrix2<f64>);

/// Round and flat clouds of standard deviation `sd` and half of it, in units of the radius, at offsets of up to twice the radius.
fn circles(sd: f64) -> Vec<Circle> {
    let cloud = |i: u32| {
        let (turn, flat) = (f64::from(i) * 0.1, if i.is_multiple_of(2) { 0.5 } else { 1.0 });
        let mean = Vector2::new(turn.cos(), turn.sin()) * (f64::from(i) * 0.01);
        (mean, Matrix2::from_diagonal(&Vector2::new(sd * sd, (flat * sd).powi(2))))
    };
    (0..200).map(cloud).collect()
}

/// The best of many rounds: the one least disturbed.
fn nanoseconds(circles: &[Circle], f: fn(Vector2<f64>, &Matrix2<f64>, f64) -> f64) -> f64 {
    let round = |_| {
        let start = Instant::now();
        for (mean, covariance) in circles {
            black_box(f(*black_box(mean), black_box(covariance), black_box(1.0)));
        }
        start.elapsed().as_nanos() as f64 / circles.len() as f64
    };
    (0..500).map(round).fold(f64::INFINITY, f64::min)
}

fn main() {
    println!("sd/radius   exact    quick");
    for sd in [0.02, 0.05, 0.1, 0.2, 0.3, 0.5, 1.0, 3.0] {
        let circles = circles(sd);
        let exact = nanoseconds(&circles, probability_within_circle);
        let quick = nanoseconds(&circles, approximate_probability_within_circle);
        println!("{sd:>9} {exact:>4.0} ns  {quick:>4.0} ns");
    }
}
