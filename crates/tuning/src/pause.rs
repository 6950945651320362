//! When it is enough for tonight.

use crate::observation::{Kind, Observations};
use crate::{Event, History, Pause, Policy};

/// Advice to stop for tonight: as many bare shots as one evening bears.
pub fn pause(history: &History, seen: &Observations, policy: &Policy) -> Option<Pause> {
    let evening = history.events.iter().rev().find_map(|event| match event {
        Event::End(end) => Some(&end.evening),
        _ => None,
    })?;
    let bare = |name| seen.life_of(name).is_some_and(|life| seen.lives[life].kind == Kind::Bare);
    let ends = history.events.iter().filter_map(|event| match event {
        Event::End(end) if end.evening == *evening => Some(end),
        _ => None,
    });
    let bare_shots = ends.flat_map(|end| &end.shots).filter(|shot| bare(&shot.shaft)).count();
    (bare_shots >= policy.evening_shots).then_some(Pause::EnoughShots { bare_shots })
}
