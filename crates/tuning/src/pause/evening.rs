//! The shots of the present evening.

use crate::observation::{Kind, Observations};
use crate::{End, Event, History};

/// What was shot this evening.
pub struct Evening {
    /// The bare shots, counted or not, at any distance.
    pub bare_shots: usize,
    /// The counted shots at the journal's distance, places in [`Observations::shots`].
    pub shots: Vec<usize>,
}

impl Evening {
    /// The evening of the last end.
    pub fn of(history: &History, seen: &Observations) -> Option<Self> {
        let ends = || {
            history.events.iter().filter_map(|event| match event {
                Event::End(end) => Some(end),
                _ => None,
            })
        };
        let evening = &ends().next_back()?.evening;
        let bare =
            |name| seen.life_of(name).is_some_and(|life| seen.lives[life].kind == Kind::Bare);
        let tonight = ends().filter(|end| end.evening == *evening);
        let bare_shots = tonight.flat_map(|end| &end.shots).filter(|shot| bare(&shot.shaft));
        let at_its_distance: Vec<&End> = ends().filter(|end| end.distance.is_none()).collect();
        let shot_tonight = |&at: &usize| at_its_distance[seen.shots[at].end].evening == *evening;
        Some(Self {
            bare_shots: bare_shots.count(),
            shots: (0..seen.shots.len()).filter(shot_tonight).collect(),
        })
    }
}
