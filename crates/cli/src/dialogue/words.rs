//! Words of an arrow: what a line says of one, and what becomes of the end by it.

use quarterturn_entry::Advising;
use quarterturn_entry::shorthand::TypedWords;
use quarterturn_journal::Fault;
use quarterturn_tuning::improbable;

use super::arrow::{Arrow, Said};
use super::{Check, Dialogue, Heard, Stage};
use crate::failure::{Failure, Kind, Marked};
use crate::refusal::end_not_recorded;
use crate::wording::{self, Ruler, paragraph};

impl Dialogue {
    /// Words of the arrow that is asked for, or of one that is named.
    pub(super) fn hear_words(&mut self, line: &str, check: Check<'_>) -> Heard {
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
}

fn where_did_it_hit(name: &str) -> Failure {
    let failure = Failure::new(Kind::Data, format!("where did {name} hit?"));
    failure.hinting(["for example r31u8, 2h8, 0 for the spot, x for lost, - where it was not shot"])
}
