//! How often hints come where nothing was wrong, and where something was:
//! `cargo run --release --example hint_rates [CLEAN SESSIONS] [SESSIONS OF EACH MISTAKE]`.

#![expect(clippy::print_stdout, reason = "it prints a table")]

mod mistake;
mod session;
mod shown;

use quarterturn_tuning::World;

use self::mistake::Mistake;
use self::session::play;
use self::shown::Shown;

fn main() {
    let [clean, spoilt] = [1, 2]
        .map(|at| std::env::args().nth(at).and_then(|text| text.parse::<u64>().ok()).unwrap_or(40));
    let crooked = World { turning_mm: 25.0, centre_mm: 10.0, ..World::ORDINARY };
    let steady = World { spread_mm: [8.0, 14.0], ..crooked };
    let worlds = [
        ("ordinary", World::ORDINARY),
        ("crooked shafts", crooked),
        ("crooked shafts and a good shot", steady),
    ];
    for (name, world) in worlds {
        println!("{name}: {clean} clean sessions, {spoilt} of each mistake");
        print_clean(&(0..clean).map(|seed| play(world, None, seed)).collect::<Vec<_>>());
        for (mistake, what) in [
            (Mistake::Exchange, "exchange"),
            (Mistake::UpsideDown, "upside down"),
            (Mistake::Slip, "slip by two hours"),
        ] {
            let played: Vec<_> = (0..spoilt).map(|seed| play(world, Some(mistake), seed)).collect();
            print_spoilt(what, mistake, &played);
        }
    }
}

fn print_clean(clean: &[Shown]) {
    let with_any = clean.iter().filter(|one| !one.hints.is_empty()).count();
    println!("  clean: {with_any} of {} sessions with a hint at any time", clean.len());
    for (at, one) in clean.iter().enumerate() {
        one.hints.keys().for_each(|hint| println!("    {at}: {hint}"));
    }
    let evenings: usize = clean.iter().map(|one| one.evenings).sum();
    let pauses: Vec<_> = clean.iter().flat_map(|one| &one.pauses).collect();
    println!("  {} early pauses in {evenings} evenings: {pauses:?}", pauses.len());
}

fn print_spoilt(what: &str, mistake: Mistake, all: &[Shown]) {
    for (from, to) in [(0.0, 30.0), (30.0, 50.0), (50.0, 80.0), (80.0, 999.0)] {
        let size = |one: &&Shown| {
            one.spoilt.as_ref().is_some_and(|spoilt| (from..to).contains(&spoilt.by_mm))
        };
        let of_size: Vec<_> = all.iter().filter(size).collect();
        let found = of_size.iter().filter(|one| one.finds(mistake)).count();
        let named = of_size.iter().filter(|one| one.names()).count();
        let other = of_size.iter().filter(|one| one.blames_another()).count();
        println!(
            "  {what} by {from} to {to} mm: {found} found, {named} named, {other} with another shaft, of {}",
            of_size.len()
        );
    }
}
