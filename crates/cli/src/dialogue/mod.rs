//! Entering an end arrow by arrow: lines in, screens out. The terminal is somebody else's concern.

mod arrow;
mod heard;
mod screen;
#[cfg(test)]
mod tests;

use quarterturn_entry::quantity::Unit;
use quarterturn_entry::shorthand::{TypedWords, share_protruding_length};
use quarterturn_entry::{Advising, closest};
use quarterturn_journal::{EndEntry, Fault, State};
use quarterturn_tuning::{Step, improbable};

use crate::caret::{Paint, drawn};
use crate::failure::{Failure, Kind, Marked};
use crate::opened::Opened;
use crate::refusal::end_not_recorded;
use crate::wording::{self, Ruler, paragraph};
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

    /// Words of the arrow that is asked for, or of one that is named.
    fn hear_words(&mut self, line: &str, check: Check<'_>) -> Heard {
        let target = match self.target(line) {
            Ok(target) => target,
            Err(failure) => return self.refuse(&failure),
        };
        let words = match TypedWords::parse(line, target.from, self.unit) {
            Ok(words) => words,
            Err(fault) => {
                let marked = Marked::typed(line).wrong(fault.span, fault.fault.to_string());
                let failure = Failure::new(Kind::Data, "this was not understood");
                return self.refuse(&failure.marking(marked).hinting(fault.fault.way_on()));
            }
        };
        let mut arrow = self.arrow(&target.name);
        words.amend(&mut arrow.shot);
        if arrow.has_hit() {
            arrow.said = Said::Shot;
        } else if self.stage != Stage::Marks || words.said().index_deg.is_none() {
            return self.refuse(&where_did_it_hit(&target.name));
        }
        let before = self.arrows.clone();
        self.put(arrow);
        if let Some(Err(faults)) = self.end().map(|end| check(&end)) {
            self.arrows = before;
            let marked = Marked::typed(line);
            let span = |fault: &Fault| words.span(&fault.place).unwrap_or(0..line.len());
            return self.refuse(&end_not_recorded("this cannot be", &faults, marked, span));
        }
        if self.stage == Stage::Marks { self.answer("") } else { self.go_on_checked(check) }
    }

    /// Whose words a line has.
    fn target(&mut self, line: &str) -> Result<Target, Failure> {
        let start = line.len() - line.trim_start().len();
        let first = line.split_whitespace().next().unwrap_or_default();
        let behind = start + first.len();
        let alone = line.trim() == first;
        let is_word = TypedWords::parse(first, 0, self.unit).is_ok();
        let known = self.names.iter().find(|name| name.as_str() == first).cloned();
        let current = self.current().map(|arrow| arrow.shot.shaft.clone());
        match (known, current) {
            (Some(name), current) if !alone && (!is_word || current.as_ref() == Some(&name)) => {
                Ok(Target { name, from: behind })
            }
            (Some(name), Some(current)) if !alone => Err(both(line, &name, &current)),
            (_, Some(name)) if self.stage == Stage::Arrows && (is_word || !alone) => {
                Ok(Target { name, from: 0 })
            }
            (Some(name), _) => Err(Failure::new(Kind::Data, format!("what of {name}?"))
                .hinting(["type it behind its name, for example r31u8"])),
            (None, Some(name)) if self.stage == Stage::Arrows => Ok(Target { name, from: 0 }),
            (None, _) => Err(self.unknown(line, start..behind, first)),
        }
    }

    fn unknown(&self, line: &str, span: std::ops::Range<usize>, name: &str) -> Failure {
        let names = || self.names.iter().map(String::as_str);
        let meant = closest(name, names()).map(|meant| format!("did you mean \"{meant}\"?"));
        let what = match self.stage {
            Stage::Marks => "first the marks: do they stand as on the card?",
            Stage::Arrows | Stage::Confirm => "begin with the name of an arrow",
        };
        let marked = Marked::typed(line).wrong(span, format!("no arrow is called \"{name}\""));
        let ways = match self.stage {
            Stage::Marks => "Enter if so, no if no nock was turned, or what differs: 7 i11",
            Stage::Arrows | Stage::Confirm => "for example 7 r31u8; ? shows all that can be typed",
        };
        Failure::new(Kind::Data, what).marking(marked).hinting(meant).hinting([ways])
    }

    /// The arrow of this name as it is so far, or a new one where it was not planned.
    fn arrow(&self, name: &str) -> Arrow {
        let known = self.arrows.iter().find(|arrow| arrow.shot.shaft == name);
        known.cloned().unwrap_or_else(|| Arrow::unplanned(name))
    }

    /// Puts an arrow in its place, or behind the others.
    fn put(&mut self, arrow: Arrow) {
        match self.arrows.iter_mut().find(|known| known.shot.shaft == arrow.shot.shaft) {
            Some(known) => *known = arrow,
            None => self.arrows.push(arrow),
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

    /// The next question, with what should be looked at before the last.
    fn go_on_checked(&mut self, check: Check<'_>) -> Heard {
        let planned = self.arrows.iter().any(|arrow| arrow.is_planned);
        // Without a plan only an empty line says that it was the last.
        if !planned && self.stage == Stage::Arrows {
            return self.answer("");
        }
        self.go_on();
        if self.stage != Stage::Confirm {
            return self.answer("");
        }
        let looks = self.looks(check);
        self.answer(&looks)
    }

    /// What is improbable in the end as it would be.
    fn looks(&self, check: Check<'_>) -> String {
        let Some(Ok(state)) = self.end().map(|end| check(&end)) else { return String::new() };
        let ruler = Ruler::new(self.unit);
        let said = improbable(state.history())
            .into_iter()
            .map(|one| paragraph("Look: ", &wording::improbable_here(&one, ruler)));
        said.collect::<Vec<_>>().join("\n")
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

/// Whose words a line has, and where they begin.
struct Target {
    name: String,
    from: usize,
}

fn where_did_it_hit(name: &str) -> Failure {
    let failure = Failure::new(Kind::Data, format!("where did {name} hit?"));
    failure.hinting(["for example r31u8, 2h8, 0 for the spot, x for lost, - where it was not shot"])
}

/// A line that begins with a word which is also the name of an arrow.
fn both(line: &str, name: &str, current: &str) -> Failure {
    let marked = Marked::typed(line).wrong(0..name.len(), "the arrow of this name, or the word?");
    let ways = format!("begin with the arrow's name: {current} {} or {name} ...", line.trim());
    Failure::new(Kind::Data, "this can be read two ways").marking(marked).hinting([ways])
}
