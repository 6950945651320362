//! Seconds to read a table of points and to compute their group or their outliers, in one line of JSON:
//! `cargo run --release --example planar_speed group table.csv`, or `half` in place of `group`.
//!
//! The columns, after a line of headings: x, y.
#![allow(clippy::print_stdout, reason = "this is what it is for")]

use std::error::Error;
use std::hint::black_box;
use std::time::Instant;

use nalgebra::Vector2;
use quarterturn_statistics::{
    Coverage, Level, MinimumCovarianceDeterminant, PlanarSample, PooledSpread,
};

/// How long to go on measuring.
const SECONDS: f64 = 2.0;

fn read(path: &str) -> Result<Vec<Vector2<f64>>, Box<dyn Error>> {
    let text = std::fs::read_to_string(path)?;
    let mut points = Vec::new();
    for line in text.lines().skip(1) {
        let (x, y) = line.split_once(',').ok_or("expected two columns")?;
        points.push(Vector2::new(x.parse()?, y.parse()?));
    }
    Ok(points)
}

/// Moments, radii, median radius and extreme spread, from the bare points on.
fn group(points: Vec<Vector2<f64>>) -> Result<(PlanarSample, String), Box<dyn Error>> {
    let sample = PlanarSample::new(points)?;
    let spread = PooledSpread::of([&sample]);
    let sigma = spread.estimate(Level::P95)?;
    let covariance = sample.covariance().ok_or("expected two points")?;
    let text = format!(
        r#""centre":[{:?},{:?}],"covariance":[{:?},{:?},{:?}],"mean_radius":{:?},"median_radius":{:?},"extreme_spread":{:?},"sigma":[{:?},{:?}]"#,
        sample.centroid().x,
        sample.centroid().y,
        covariance.m11,
        covariance.m12,
        covariance.m22,
        sample.mean_radius(),
        sample.radius_holding(Level::P50),
        sample.extreme_spread(),
        sigma.interval.lower,
        sigma.interval.upper,
    );
    Ok((sample, text))
}

fn outliers(sample: &PlanarSample) -> Result<String, Box<dyn Error>> {
    let robust = MinimumCovarianceDeterminant::new(sample, Coverage::Half, 1)?;
    let h = robust.subset.len() as f64;
    Ok(format!(
        r#""h":{h},"log_determinant_ml":{:?},"centre":[{:?},{:?}],"covariance":[{:?},{:?},{:?}],"kept":{}"#,
        robust.log_determinant + 2.0 * ((h - 1.0) / h).ln(),
        robust.centre.x,
        robust.centre.y,
        robust.covariance.m11,
        robust.covariance.m12,
        robust.covariance.m22,
        robust.kept.len(),
    ))
}

fn main() -> Result<(), Box<dyn Error>> {
    let arguments: Vec<_> = std::env::args().collect();
    let [_, what, path] = &arguments[..] else {
        return Err("expected group or half, and a table".into());
    };
    let points = read(path)?;
    let (mut seconds, mut text) = (Vec::new(), String::new());
    let begun = Instant::now();
    while begun.elapsed().as_secs_f64() < SECONDS || seconds.len() < 5 {
        match what.as_str() {
            "group" => {
                let points = points.clone();
                let start = Instant::now();
                let (sample, found) = black_box(group(points)?);
                seconds.push(start.elapsed().as_secs_f64());
                (text, _) = (found, sample);
            }
            "half" => {
                let sample = PlanarSample::new(points.clone())?;
                let start = Instant::now();
                text = black_box(outliers(&sample)?);
                seconds.push(start.elapsed().as_secs_f64());
            }
            other => {
                return Err(format!("nothing is called {other}; expected group or half").into());
            }
        }
    }
    seconds.sort_by(f64::total_cmp);
    let (best, median) = (seconds[0], seconds[seconds.len() / 2]);
    println!(r#"{{{text},"compute_s":{median},"compute_best_s":{best}}}"#);
    Ok(())
}
