//! Entering an end arrow by arrow: lines in, screens out. The terminal is somebody else's concern.

mod arrow;
mod heard;
mod screen;
mod target;
#[cfg(test)]
mod tests;
mod words;

use quarterturn_entry::quantity::Unit;
use quarterturn_entry::shorthand::share_protruding_length;
use quarterturn_journal::{EndEntry, Fault, State};
use quarterturn_tuning::Step;

use crate::caret::{Paint, drawn};
use crate::failure::{Failure, Kind};
use crate::opened::Opened;
use crate::wording::paragraph;
use arrow::{Arrow, Said};
pub use heard::Heard;

/// What can be typed, on one screen.
const HELP: &str = "\
r31u8    31 right and 8 up (l left, d down); 2h8 toward 2 o'clock; 0 the spot
tl2.5    tail 2.5 degrees left (tr right, tu high, td low); t0 straight
tl2cm    tail 2 cm left by tape; tls some, tlm much, tl unknown; tn none
i4       the mark stood at 4 o'clock after all
p g      called poor, good; w wind, k contact, n nock turned, q doubtful
x b      lost, broken;  -  this arrow was not shot
7 l9     of arrow 7: puts right what was typed, or adds an arrow to the end
note ... a note on this end;  stop  leave, nothing is recorded";

/// What is said where `next` asks for no end.
const BOW_FIRST: &str =
    "No end is asked for: `next` has the bow moved first. Any arrows can be entered.";
const NOTHING_LEFT: &str =
    "No end is asked for: nothing is left worth a shot. Any arrows can be entered.";

/// An end that is being entered.
pub struct Dialogue {
    arrows: Vec<Arrow>,
    /// The arrows of the journal that can be shot.
    names: Vec<String>,
    stage: Stage,
    note: Option<String>,
    /// Why no end was asked for, where none was.
    unasked: Option<&'static str>,
    unit: &'static Unit,
}

/// What is being asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Stage {
    /// Whether the marks stand as on the card.
    Marks,
    /// Where an arrow hit.
    Arrows,
    /// Whether all is right.
    Confirm,
}

/// What an end would make of the journal, or what is wrong with it.
type Check<'a> = &'a dyn Fn(&EndEntry) -> Result<State, Vec<Fault>>;

impl Dialogue {
    /// Begins with the end that the journal's advice asks for.
    pub fn begin(opened: &Opened) -> Self {
        let state = opened.journal.state();
        let roster = state.roster();
        let (arrows, unasked): (Vec<Arrow>, _) = match opened.advice().step {
            Step::Shoot(shots) => {
                (shots.iter().map(|shot| Arrow::planned(shot, roster)).collect(), None)
            }
            Step::MoveBow => (Vec::new(), Some(BOW_FIRST)),
            Step::Finished(_) => (Vec::new(), Some(NOTHING_LEFT)),
        };
        let known = roster.shafts.iter().chain(&roster.references);
        Self {
            stage: if arrows.is_empty() { Stage::Arrows } else { Stage::Marks },
            arrows,
            names: known.map(|standing| standing.name.to_string()).collect(),
            note: None,
            unasked,
            unit: opened.ruler().unit(),
        }
    }

    /// The first screen.
    pub fn opening(&self) -> String {
        self.asking(self.unasked.unwrap_or_default())
    }

    /// What follows on a line; without one, the person has gone.
    pub fn hear(
        &mut self,
        line: Option<&str>,
        check: impl Fn(&EndEntry) -> Result<State, Vec<Fault>>,
    ) -> Heard {
        let Some(line) = line else { return Heard::Stopped };
        let check: Check<'_> = &check;
        match (line.trim(), self.stage) {
            ("stop", _) => Heard::Stopped,
            ("?" | "help", _) => self.answer(HELP),
            ("", Stage::Marks) => self.go_on(),
            ("no", Stage::Marks) => {
                self.arrows.iter_mut().for_each(Arrow::stands_as_before);
                self.answer("Then the marks stand as they last stood. Enter if so.")
            }
            ("", Stage::Confirm) => self.done(check),
            ("", Stage::Arrows) if self.current().is_none() && self.is_anything_said() => {
                self.go_on()
            }
            ("", Stage::Arrows) if self.current().is_none() => {
                self.answer("Nothing is entered yet; stop leaves it so.")
            }
            ("-", Stage::Arrows) => {
                if let Some(arrow) = self.current() {
                    arrow.said = Said::NotShot;
                }
                self.go_on()
            }
            (text, _) => match text.strip_prefix("note ") {
                Some(note) => {
                    self.note = Some(note.trim().to_owned());
                    self.answer("Noted.")
                }
                None => self.hear_words(line, check),
            },
        }
    }

    /// The arrow that is asked for.
    fn current(&mut self) -> Option<&mut Arrow> {
        self.arrows.iter_mut().find(|arrow| arrow.said == Said::Nothing)
    }

    fn is_anything_said(&self) -> bool {
        self.arrows.iter().any(|arrow| arrow.said == Said::Shot)
    }

    /// The end so far; nothing where no arrow was entered.
    fn end(&self) -> Option<EndEntry> {
        let shot = self.arrows.iter().filter(|arrow| arrow.said == Said::Shot);
        let mut shots: Vec<_> = shot.map(|arrow| arrow.shot.clone()).collect();
        share_protruding_length(&mut shots);
        let end = EndEntry { shots, note: self.note.clone(), ..EndEntry::default() };
        (!end.shots.is_empty()).then_some(end)
    }

    /// The next question.
    fn go_on(&mut self) -> Heard {
        let asked = self.current().is_some();
        let all_said = !asked && self.is_anything_said();
        self.stage = if all_said { Stage::Confirm } else { Stage::Arrows };
        self.answer("")
    }

    fn done(&mut self, check: Check<'_>) -> Heard {
        let Some(end) = self.end() else { return self.answer("") };
        match check(&end) {
            Ok(_) => Heard::Done(end),
            Err(faults) => {
                let said: Vec<_> = faults.iter().map(|fault| fault.what.to_string()).collect();
                let failure = Failure::new(Kind::Data, said.join("; "));
                self.refuse(&failure.hinting(crate::refusal::hints(&faults)))
            }
        }
    }

    fn answer(&self, said: &str) -> Heard {
        Heard::Asking(self.asking(said))
    }

    fn refuse(&self, failure: &Failure) -> Heard {
        self.answer(&fitted(&drawn(failure, Paint::Plain)))
    }
}

/// A message with its hints broken to fit the screen.
fn fitted(message: &str) -> String {
    let fit = |line: &str| match line.split_once("= help: ") {
        Some((margin, hint)) => paragraph(&format!("{margin}= help: "), hint),
        None => line.to_owned(),
    };
    message.lines().map(fit).collect::<Vec<_>>().join("\n")
}
