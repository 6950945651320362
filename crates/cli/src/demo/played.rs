//! Plays the job: next, shoot, enter, next, until nothing is left that is worth shooting.

use std::path::Path;

use quarterturn_geometry::Offset;
use quarterturn_journal::{BowEntry, EndEntry, Entry, Journal, Word};
use quarterturn_tuning::{Advice, BowPart, PlannedShot, SimulatedArcher, Step, World};

use super::invented::{BEGINNING_TYPED, as_typed, beginning};
use super::{Audience, Going};
use crate::failure::Failure;
use crate::opened::Opened;
use crate::{clock, screens, wording};
use quarterturn_entry::shorthand;

/// More ends than any archer shoots at a dozen.
const MOST_ENDS: usize = 100;

/// What a millimetre at the rest of this invented bow does at the face.
const FACE_MM_PER_REST_MM: f64 = 40.0;

/// A trial move of the rest.
const TRIAL_MM: f64 = 0.8;

/// Plays the whole job with a new journal at `path` before `audience`, until it is done or the audience has seen enough.
pub fn play(
    path: &Path,
    world: World,
    seed: u64,
    audience: &mut dyn Audience,
) -> Result<Played, Failure> {
    let mut game = Game::begin(path, world, seed)?;
    audience
        .done(&format!("{} {BEGINNING_TYPED}", game.typed("new")), &screens::begun(&game.opened))?;
    loop {
        let advice = game.opened.advice();
        let screen = screens::next(&game.opened, &advice);
        let going = audience.asked(&game.typed("next"), &screen, &advice.step)?;
        let (command, screen) = match &advice.step {
            Step::Shoot(shots) if going == Going::On && game.ends < MOST_ENDS => {
                game.shoot(shots, &advice)?
            }
            Step::MoveBow if going == Going::On => game.move_bow(&advice)?,
            _ => {
                audience.done(
                    &game.typed("show"),
                    &screens::show(&game.opened, &advice, &game.opened.doubts()),
                )?;
                return Ok(Played { opened: game.opened, archer: game.archer, advice });
            }
        };
        audience.done(&command, &screen)?;
    }
}

/// A tuning that was played.
pub struct Played {
    /// Its journal.
    pub opened: Opened,
    /// Who shot it.
    pub archer: SimulatedArcher,
    /// What was said last.
    pub advice: Advice,
}

/// A tuning that is being played.
struct Game {
    opened: Opened,
    archer: SimulatedArcher,
    ends: usize,
    evenings: usize,
}

impl Game {
    fn begin(path: &Path, world: World, seed: u64) -> Result<Self, Failure> {
        let journal = Journal::create(path, beginning(), &clock::stamp()?)?;
        let archer = SimulatedArcher::new(&journal.state().history().setup, world, seed);
        let opened = Opened { journal, path: path.to_owned() };
        Ok(Self { opened, archer, ends: 0, evenings: 1 })
    }

    /// Shoots an end and enters it as it would be typed: what is typed, and the screen that follows.
    fn shoot(
        &mut self,
        shots: &[PlannedShot],
        advice: &Advice,
    ) -> Result<(String, String), Failure> {
        let evening = format!("2027-03-{:02}", self.evenings);
        let shot = self.archer.shoot(shots, &evening);
        let line = shorthand::printed(&as_typed(shots, &shot), self.opened.ruler().unit());
        let typed = shorthand::parse(&line, self.opened.ruler().unit())
            .map_err(|located| Failure::in_option("the invented line", &line, &located))?;
        let at = Some(format!("{evening}T18:00:00Z"));
        self.opened.append(Entry::End(EndEntry { at, ..typed.entry }))?;
        self.ends += 1;
        self.evenings += usize::from(advice.pause.is_some());
        // A line that goes on below: blanks and line ends round a comma mean nothing.
        let line = line.replace(", ", ",\n>    ");
        let command = format!("{} \\\n>   \"{line}\"", self.typed("end"));
        Ok((command, screens::recorded_end(&self.opened)))
    }

    /// Moves the rest as proposed, or a trial's length, and notes it: what is typed, and the screen that follows.
    fn move_bow(&mut self, advice: &Advice) -> Result<(String, String), Failure> {
        let wanted = advice.bow.wanted_shift;
        let trial = wanted * (TRIAL_MM / wanted.length().mm());
        let by = advice.bow.proposed_move.unwrap_or(trial);
        let tenths = |mm: f64| (mm * 10.0).round() / 10.0;
        let (x_mm, y_mm) = (tenths(by.x_mm), tenths(by.y_mm));
        self.archer.move_bow(Offset::new(x_mm, y_mm) * FACE_MM_PER_REST_MM);
        let entry = BowEntry::Change {
            note: "rest moved".to_owned(),
            part: Some(BowPart::Rest.word().to_owned()),
            move_mm: Some([x_mm, y_mm]),
        };
        self.opened.append(Entry::Bow(entry))?;
        let options = format!("--note \"rest moved\" --part rest --move-mm {x_mm},{y_mm}");
        let command = format!("{} \\\n>   {options}", self.typed("bow"));
        Ok((command, screens::recorded_bow(&self.opened, Some(BowPart::Rest))))
    }

    fn typed(&self, command: &str) -> String {
        wording::command(command, &self.opened.path)
    }
}
