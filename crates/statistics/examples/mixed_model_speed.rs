//! Seconds to read a table and to fit a mixed model to two responses, in one line of JSON:
//! `cargo run --release --example mixed_model_speed table.csv m1`.
//!
//! The columns, after a line of headings: block, level, indicator, angle in degrees, two responses. `m1` gives each level a
//! coefficient for the cosine and sine of the angle, `m2` also for a constant and for the second harmonic.
#![allow(clippy::print_stdout, reason = "this is what it is for")]

use std::error::Error;
use std::time::Instant;

use nalgebra::DMatrix;
use quarterturn_statistics::{Level, MixedDesign, MixedFit, MixedModel, Sample};

/// The columns that are read.
#[derive(Default)]
struct Table {
    blocks: Vec<u64>,
    levels: Vec<u64>,
    /// Indicator, angle, two responses.
    numbers: [Vec<f64>; 4],
}

/// How long to go on measuring.
const SECONDS: f64 = 2.0;

fn read(path: &str) -> Result<Table, Box<dyn Error>> {
    let text = std::fs::read_to_string(path)?;
    let mut table = Table::default();
    for line in text.lines().skip(1) {
        let mut cells = line.split(',');
        table.blocks.push(cells.next().unwrap_or_default().parse()?);
        table.levels.push(cells.next().unwrap_or_default().parse()?);
        for column in &mut table.numbers {
            column.push(cells.next().unwrap_or_default().parse()?);
        }
    }
    Ok(table)
}

fn fit(table: &Table, terms: usize) -> Result<[MixedFit; 2], Box<dyn Error>> {
    let [indicator, angle, first, second] = &table.numbers;
    let rows = angle.len();
    let mut random = DMatrix::zeros(rows, terms);
    for (row, angle) in angle.iter().enumerate() {
        let (sin, cos) = angle.to_radians().sin_cos();
        let all = [cos, sin, 1.0, 2.0 * cos * cos - 1.0, 2.0 * sin * cos];
        random.row_mut(row).iter_mut().zip(all).for_each(|(place, value)| *place = value);
    }
    let fixed =
        DMatrix::from_fn(rows, 2, |row, column| if column == 0 { 1.0 } else { indicator[row] });
    let design =
        MixedDesign { fixed, blocks: table.blocks.clone(), levels: table.levels.clone(), random };
    let model = MixedModel::new(&design)?;
    let fit = |response: &Vec<f64>| -> Result<_, Box<dyn Error>> {
        Ok(model.fit(&Sample::new(response.clone())?, Level::P95)?)
    };
    Ok([fit(first)?, fit(second)?])
}

fn json(fit: &MixedFit) -> String {
    let fixed: Vec<_> = fit.fixed.iter().map(|e| [e.value, e.standard_error]).collect();
    let coefficients: Vec<_> = fit.coefficient_variances.iter().map(|e| e.value).collect();
    format!(
        r#"{{"loglik":{:?},"fixed":{fixed:?},"block":{:?},"coefficients":{coefficients:?},"residual":{:?}}}"#,
        fit.log_likelihood, fit.block_variance.value, fit.residual_variance.value,
    )
}

fn main() -> Result<(), Box<dyn Error>> {
    let arguments: Vec<_> = std::env::args().collect();
    let [_, path, model] = &arguments[..] else {
        return Err("expected a table and m1 or m2".into());
    };
    let terms = match model.as_str() {
        "m1" => 2,
        "m2" => 5,
        other => return Err(format!("no model is called {other}; expected m1 or m2").into()),
    };
    let start = Instant::now();
    let table = read(path)?;
    let read_s = start.elapsed().as_secs_f64();
    let mut fits = fit(&table, terms)?;
    let mut seconds = Vec::new();
    while start.elapsed().as_secs_f64() < SECONDS || seconds.len() < 5 {
        let start = Instant::now();
        fits = fit(&table, terms)?;
        seconds.push(start.elapsed().as_secs_f64());
    }
    seconds.sort_by(f64::total_cmp);
    let [first, second] = fits.map(|fit| json(&fit));
    let (best, median) = (seconds[0], seconds[seconds.len() / 2]);
    println!(
        r#"{{"x":{first},"y":{second},"compute_s":{median},"compute_best_s":{best},"read_s":{read_s}}}"#
    );
    Ok(())
}
