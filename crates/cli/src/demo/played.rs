//! Plays the job: next, shoot, enter, next, until nothing is left that is worth shooting.

use std::path::Path;

use quarterturn_geometry::Offset;
use quarterturn_journal::{BowEntry, EndEntry, Entry, Journal, Word};
use quarterturn_tuning::{
    Advice, Aim, BowPart, PlannedShot, Purpose, ShaftReport, SimulatedArcher, Step, Verdict,
};

use super::invented::{BEGINNING_TYPED, JOURNAL, SEED, WORLD, as_typed, beginning, turned};
use super::transcript::Transcript;
use crate::failure::Failure;
use crate::opened::Opened;
use crate::wording::{self, count};
use crate::{clock, screens, shorthand};

/// More ends than any archer shoots at a dozen.
const MOST_ENDS: usize = 100;

/// What a millimetre at the rest of this invented bow does at the face.
const FACE_MM_PER_REST_MM: f64 = 40.0;

/// A trial move of the rest.
const TRIAL_MM: f64 = 0.8;

/// Plays the whole job with a new journal in `folder`; says how it went.
pub fn play(folder: &Path) -> Result<Played, Failure> {
    let mut game = Game::begin(folder)?;
    let mut advice = game.opened.advice();
    while game.ends < MOST_ENDS {
        match &advice.step {
            Step::Shoot(shots) => game.shoot(shots, &advice)?,
            Step::MoveBow => game.move_bow(&advice)?,
            Step::Finished(_) => break,
        }
        advice = game.opened.advice();
    }
    game.show("next", &screens::next(&game.opened, &advice));
    game.show("show", &screens::show(&game.opened, &advice, &game.opened.doubts()));
    let truth = game.truth(&advice);
    Ok(Played { opened: game.opened, transcript: game.transcript, truth })
}

/// A tuning that was played.
pub struct Played {
    /// Its journal.
    pub opened: Opened,
    /// What was shown.
    pub transcript: Transcript,
    /// How the verdicts compare with the truth, a sentence.
    pub truth: String,
}

/// A tuning that is being played.
struct Game {
    opened: Opened,
    archer: SimulatedArcher,
    transcript: Transcript,
    ends: usize,
    evenings: usize,
    middle_was_shown: bool,
}

impl Game {
    fn begin(folder: &Path) -> Result<Self, Failure> {
        let path = folder.join(JOURNAL);
        let journal = Journal::create(&path, beginning(), &clock::stamp()?)?;
        let archer = SimulatedArcher::new(&journal.state().history().setup, WORLD, SEED);
        let opened = Opened { journal, path };
        let mut game = Self {
            opened,
            archer,
            transcript: Transcript::default(),
            ends: 0,
            evenings: 1,
            middle_was_shown: false,
        };
        let screen = screens::begun(&game.opened);
        game.transcript.screen(&format!("{} {BEGINNING_TYPED}", game.typed("new")), &screen);
        Ok(game)
    }

    /// Shoots an end and enters it as it would be typed.
    fn shoot(&mut self, shots: &[PlannedShot], advice: &Advice) -> Result<(), Failure> {
        let evening = format!("2027-03-{:02}", self.evenings);
        let shot = self.archer.shoot(shots, &evening);
        let line = shorthand::printed(&as_typed(shots, &shot));
        let typed = shorthand::parse(&line, self.opened.ruler().unit())
            .map_err(|located| Failure::in_option("the demo's line", &line, &located))?;
        let at = Some(format!("{evening}T18:00:00Z"));
        let asked = screens::next(&self.opened, advice);
        self.opened.append(Entry::End(EndEntry { at, ..typed.entry }))?;
        self.ends += 1;
        self.evenings += usize::from(advice.pause.is_some());
        if self.is_shown(shots) {
            self.show("next", &asked);
            // A line that goes on below: blanks and line ends round a comma mean nothing.
            let line = line.replace(", ", ",\n>    ");
            let command = format!("{} \\\n>   \"{line}\"", self.typed("end"));
            self.transcript.screen(&command, &screens::recorded_end(&self.opened));
        } else {
            self.transcript.leave_out_an_end();
        }
        Ok(())
    }

    /// The first end is shown, and the first that both tries and confirms something.
    fn is_shown(&mut self, shots: &[PlannedShot]) -> bool {
        let confirms =
            |shot: &PlannedShot| matches!(shot.purpose, Purpose::Bare { aim: Aim::Confirm, .. });
        let middle = shots.iter().any(confirms)
            && shots.iter().any(|shot| turned(shot.purpose).is_some())
            && !std::mem::replace(&mut self.middle_was_shown, true);
        self.ends == 1 || middle
    }

    /// Moves the rest as proposed, or a trial's length, and notes it.
    fn move_bow(&mut self, advice: &Advice) -> Result<(), Failure> {
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
        self.show("next", &screens::next(&self.opened, advice));
        self.opened.append(Entry::Bow(entry))?;
        let options = format!("--note \"rest moved\" --part rest --move-mm {x_mm},{y_mm}");
        let command = format!("{} \\\n>   {options}", self.typed("bow"));
        self.transcript.screen(&command, &screens::recorded_bow(&self.opened, Some(BowPart::Rest)));
        Ok(())
    }

    fn show(&mut self, command: &str, screen: &str) {
        self.transcript.screen(&self.typed(command), screen);
    }

    fn typed(&self, command: &str) -> String {
        wording::command(command, &self.opened.path)
    }

    /// How many of the kept shafts truly land inside the tolerance: the dozen is invented, so it is known.
    fn truth(&self, advice: &Advice) -> String {
        let tolerance = self.opened.journal.state().history().setup.tolerance;
        let lands_inside = |report: &&ShaftReport| {
            let miss = self.archer.true_miss(&report.shaft, report.index);
            miss.is_some_and(|miss| miss.length() <= tolerance)
        };
        let kept: Vec<_> =
            advice.shafts.iter().filter(|report| report.verdict == Verdict::Keep).collect();
        let inside = kept.iter().copied().filter(lands_inside).count();
        format!(
            "The dozen is invented, so the truth is known: of {} to keep {inside} truly land inside \
             the tolerance at that mark.",
            count(kept.len(), "shaft")
        )
    }
}
