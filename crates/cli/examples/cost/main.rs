//! What one advice costs as a journal grows, drawn as a picture: `docs/pictures/cost.svg`.
//!
//! ```sh
//! cargo run --release -p quarterturn-cli --example cost -- docs/pictures/cost.svg
//! ```
#![allow(clippy::print_stdout, reason = "it is run by hand, to be read")]

mod drawn;

use std::error::Error;
use std::time::{Duration, Instant};

use quarterturn_geometry::Index;
use quarterturn_tuning::{
    Aim, Event, History, PlannedShot, Policy, Purpose, Setup, SimulatedArcher, World, advise,
};

/// Shots an end, the reference included.
const ARROWS: usize = 4;
/// The sizes that are timed, up to the most that are read.
const SHOTS: [usize; 7] = [100, 400, 800, 1200, 1600, 2300, 3000];
/// The quickest of so many is taken: whatever else the machine does only adds.
const ROUNDS: usize = 5;

fn main() -> Result<(), Box<dyn Error>> {
    let file = std::env::args().nth(1).unwrap_or_else(|| "cost.svg".to_owned());
    let mut timed = Vec::new();
    for shots in SHOTS {
        let history = shot_over(shots);
        let took = (0..ROUNDS).map(|_| time(&history)).min().unwrap_or_default();
        println!("{shots} shots: {:.1} ms", 1000.0 * took.as_secs_f64());
        timed.push((shots, took));
    }
    drawn::draw(&file, &timed)
}

fn time(history: &History) -> Duration {
    let begun = Instant::now();
    std::hint::black_box(advise(history, &Policy::default()));
    begun.elapsed()
}

/// A dozen shot over and over, three beside the reference in each end, at one hour after another.
fn shot_over(shots: usize) -> History {
    let setup = Setup::beside_one_reference(12);
    let mut archer = SimulatedArcher::new(&setup, World::ORDINARY, 1);
    let bare = setup.shafts.iter().map(|(name, _)| name.clone()).cycle();
    let mut bare =
        bare.zip((0..12_u8).map(|hour| Index::from_hour(f64::from(hour))).cycle().skip(5));
    let mut events = Vec::new();
    for _ in 0..shots / ARROWS {
        let reference = setup.references.iter().map(|name| (name.clone(), Purpose::Reference));
        let planned = bare
            .by_ref()
            .take(ARROWS - 1)
            .map(|(name, index)| (name, Purpose::Bare { index, from: index, aim: Aim::Try }));
        let planned: Vec<_> = reference
            .chain(planned)
            .map(|(shaft, purpose)| PlannedShot { shaft, purpose })
            .collect();
        events.push(Event::End(archer.shoot(&planned, "one evening")));
    }
    History { setup, events }
}
