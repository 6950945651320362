//! Many invented dozens, by this program's advice and by other ways of going about them: the figures of `docs/figures.md`.
//!
//! ```sh
//! cargo run --release -p quarterturn-cli --example experiment -- --dozens 400 --json figures.json
//! ```
#![allow(clippy::print_stdout, clippy::print_stderr, reason = "it is run by hand, to be read")]

mod drawn_once;
mod named;
mod options;
mod record;
mod table;

#[path = "../../src/in_parallel.rs"]
mod in_parallel;

use std::error::Error;
use std::time::Instant;

use clap::Parser;
use quarterturn_tuning::{Figures, Protocol, Setup, World};

use self::in_parallel::in_parallel;
use self::options::Options;

/// What one protocol came to in one world.
struct Row {
    world: &'static str,
    protocol: &'static str,
    figures: Figures,
}

fn main() -> Result<(), Box<dyn Error>> {
    let options = Options::parse();
    let setup = Setup::beside_one_reference(12);
    let mut rows = Vec::new();
    for (world_name, world) in options.worlds() {
        for (protocol_name, protocol) in options.protocols() {
            let begun = Instant::now();
            let figures = play(&setup, world, protocol, &options);
            let took = begun.elapsed().as_secs_f64();
            let pace = options.dozens as f64 / took;
            eprintln!("{world_name}, {protocol_name}: {took:.1} s, {pace:.1} dozens a second");
            rows.push(Row { world: world_name, protocol: protocol_name, figures });
        }
    }
    println!("{}", table::figures(&rows));
    println!("{}", table::calibration(&rows));
    if let Some(file) = &options.json {
        std::fs::write(file, record::json(&rows, &options)?)?;
    }
    Ok(())
}

/// The same seeds for every protocol: all shoot the same shafts.
fn play(setup: &Setup, world: World, protocol: Protocol, options: &Options) -> Figures {
    let first = options.seed * 1_000_000;
    let work = |place: usize| protocol.play(setup, world, first + place as u64);
    Figures::of(&in_parallel(options.dozens, work, |_| {}), setup.tolerance)
}
