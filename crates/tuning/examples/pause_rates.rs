//! How often a steady, a tiring and a drifting archer is told to stop: `cargo run --release --example pause_rates`.

#![expect(clippy::print_stdout, reason = "it prints a table")]

use quarterturn_geometry::Offset;
use quarterturn_tuning::{
    BowChange, BowPart, Event, History, Pause, Policy, Setup, SimulatedArcher, Step, World, advise,
};

/// 36 bare shots at three an end.
const ENDS: usize = 12;

/// What happens to the archer in the second half of the evening.
#[derive(Clone, Copy)]
struct Change {
    wider: f64,
    drift_mm: f64,
}

fn main() {
    let evenings: u64 = std::env::args().nth(1).map_or(200, |text| text.parse().unwrap_or(200));
    let change = |wider, drift_mm| Change { wider, drift_mm };
    for change in [
        change(1.0, 0.0),
        change(1.3, 0.0),
        change(1.6, 0.0),
        change(2.0, 0.0),
        change(1.0, 20.0),
        change(1.0, 40.0),
    ] {
        let pauses: Vec<_> = (0..evenings).filter_map(|seed| first_pause(change, seed)).collect();
        let tiring = pauses.iter().filter(|one| matches!(one, Pause::Tiring { .. })).count();
        println!(
            "second half {} times as wide, {} mm off: {tiring} tiring, {} drifting, of {evenings} evenings",
            change.wider,
            change.drift_mm,
            pauses.len() - tiring
        );
    }
}

/// The first pause before the evening has its 36 shots.
fn first_pause(change: Change, seed: u64) -> Option<Pause> {
    let mut history = History { setup: Setup::beside_one_reference(12), events: Vec::new() };
    let tired = World::ORDINARY.spread_mm.map(|mm| mm * change.wider);
    let mut fresh = SimulatedArcher::new(&history.setup, World::ORDINARY, seed);
    // The same seed gives the same shafts; what he shoots elsewhere leads his randomness away.
    let mut tired =
        SimulatedArcher::new(&history.setup, World { spread_mm: tired, ..World::ORDINARY }, seed);
    let Step::Shoot(elsewhere) = advise(&history, &Policy::default()).step else { return None };
    (0..50).for_each(|_| drop(tired.shoot(&elsewhere, "elsewhere")));
    for end in 0..ENDS {
        let advice = advise(&history, &Policy::default());
        if let Some(pause) = advice.pause {
            return (!matches!(pause, Pause::EnoughShots { .. })).then_some(pause);
        }
        let planned = match advice.step {
            Step::Shoot(planned) => planned,
            Step::MoveBow => {
                fresh.move_bow(advice.bow.wanted_shift);
                tired.move_bow(advice.bow.wanted_shift);
                history.events.push(Event::Bow(BowChange { part: BowPart::Rest, moved: None }));
                continue;
            }
            Step::Finished(_) => return None,
        };
        let (archer, off_mm) =
            if end < ENDS / 2 { (&mut fresh, 0.0) } else { (&mut tired, change.drift_mm) };
        let mut shot = archer.shoot(&planned, "tonight");
        for hit in shot.shots.iter_mut().filter_map(|shot| shot.hit.as_mut()) {
            hit.at = hit.at + Offset::new(0.0, -off_mm);
        }
        history.events.push(Event::End(shot));
    }
    let pause = advise(&history, &Policy::default()).pause?;
    (!matches!(pause, Pause::EnoughShots { .. })).then_some(pause)
}
