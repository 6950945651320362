//! A tuning by the advice, with a mistake in the middle.

use quarterturn_tuning::{
    BowChange, BowPart, BowReport, End, Event, History, Pause, PlannedShot, Policy, Setup,
    SimulatedArcher, Step, World, advise,
};

use crate::mistake::{Mistake, Turned, exchange, shoot};
use crate::shown::Shown;

/// So many ends are shot, unless the tuning is finished earlier.
const MOST_ENDS: usize = 24;

/// The end in which something goes wrong.
const SPOILT: usize = 12;

/// What a millimetre at the rest of this invented bow does at the face.
const FACE_MM_PER_REST_MM: f64 = 40.0;

/// Plays a tuning by the advice, with a mistake or without.
pub fn play(world: World, mistake: Option<Mistake>, seed: u64) -> Shown {
    let history = History { setup: Setup::beside_one_reference(12), events: Vec::new() };
    let archer = SimulatedArcher::new(&history.setup, world, seed);
    let shown = Shown { evenings: 1, ..Shown::default() };
    let mut session = Session { history, archer, shown, slipped: None };
    for number in 1..=MOST_ENDS {
        let advice = advise(&session.history, &Policy::default());
        session.shown.hear(advice.hints);
        session.pause(advice.pause);
        match advice.step {
            Step::Shoot(planned) => {
                let end = session.shoot(&planned, mistake.filter(|_| number == SPOILT));
                session.history.events.push(Event::End(end));
            }
            Step::MoveBow => session.move_bow(&advice.bow),
            Step::Finished(_) => break,
        }
    }
    session.shown
}

struct Session {
    history: History,
    archer: SimulatedArcher,
    shown: Shown,
    /// The shaft whose nock slipped.
    slipped: Option<Turned>,
}

impl Session {
    fn pause(&mut self, pause: Option<Pause>) {
        self.shown.evenings += usize::from(pause.is_some());
        let early = pause.filter(|pause| !matches!(pause, Pause::EnoughShots { .. }));
        self.shown.pauses.extend(early.map(|pause| format!("{pause:?}")));
    }

    fn move_bow(&mut self, BowReport { wanted_shift, .. }: &BowReport) {
        self.archer.move_bow(*wanted_shift);
        let moved = Some(*wanted_shift * FACE_MM_PER_REST_MM.recip());
        self.history.events.push(Event::Bow(BowChange { part: BowPart::Rest, moved }));
    }

    /// Shoots an end; a mistake spoils it.
    fn shoot(&mut self, planned: &[PlannedShot], mistake: Option<Mistake>) -> End {
        let turned = mistake.and_then(|mistake| Turned::first(planned, mistake));
        let really = turned.as_ref().or(self.slipped.as_ref());
        let mut end = shoot(&mut self.archer, planned, really, self.shown.evenings);
        if mistake == Some(Mistake::Exchange) {
            self.shown.spoilt = exchange(&mut end, planned, &self.archer);
        }
        if let Some(turned) = turned {
            self.shown.spoilt = turned.spoils(planned, &self.archer);
            self.slipped = Some(turned).filter(|_| mistake == Some(Mistake::Slip));
        }
        end
    }
}
