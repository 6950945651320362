//! A few sessions in each world, held to honest bounds; with `QUARTERTURN_SESSIONS=200` as many as that.

use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::{env, thread};

use super::bounds::BOUNDS;
use super::figures::Figures;
use super::session::{Session, play};
use super::table;
use super::world::World;

/// How many sessions each world is played, where it is not asked for.
const ORDINARY_SESSIONS: usize = 12;
const OTHER_SESSIONS: usize = 4;

/// `QUARTERTURN_SESSIONS` is how many sessions each world is played; `QUARTERTURN_WORLDS` names some worlds,
/// parted by commas; `--nocapture` shows the table.
#[test]
fn the_archer_finishes_within_bounds_in_every_world() {
    let asked = env::var("QUARTERTURN_SESSIONS").ok();
    let asked = asked.map(|text| text.parse().expect("QUARTERTURN_SESSIONS is a number"));
    let named = env::var("QUARTERTURN_WORLDS").unwrap_or_default();
    let named: Vec<_> = named.split(',').filter(|name| !name.is_empty()).collect();
    let mut broken = Vec::new();
    println!("{}", table::head());
    let mut details = String::new();
    for (world, bounds) in World::all().into_iter().zip(BOUNDS) {
        assert_eq!(world.name, bounds.world, "worlds and bounds stand in one order");
        if !named.is_empty() && !named.contains(&world.name) {
            continue;
        }
        let few = if world.name == "ordinary" { ORDINARY_SESSIONS } else { OTHER_SESSIONS };
        let sessions = play_many(&world, asked.unwrap_or(few));
        let figures = Figures::of(world.name, &sessions);
        println!("{}", table::row(&figures));
        details += &table::calibration(&figures);
        details += &table::faults(world.name, &sessions);
        broken.extend(bounds.broken(&figures));
    }
    println!("{details}");
    assert!(!details.is_empty(), "no world is called {named:?}");
    assert!(broken.is_empty(), "{}", broken.join("\n"));
}

/// Sessions with the seeds 0, 1, 2 ..., as many at once as there are cores.
fn play_many(world: &World, sessions: usize) -> Vec<Session> {
    let next_seed = AtomicUsize::new(0);
    let played = Mutex::new(Vec::with_capacity(sessions));
    let play_on = || {
        loop {
            let seed = next_seed.fetch_add(1, Ordering::Relaxed);
            if seed >= sessions {
                return;
            }
            let session = play(world, seed as u64);
            played.lock().unwrap().push(session);
        }
    };
    thread::scope(|scope| {
        for _ in 0..thread::available_parallelism().map_or(2, usize::from) {
            scope.spawn(play_on);
        }
    });
    let mut played = played.into_inner().unwrap();
    played.sort_by_key(|session| session.seed);
    played
}
