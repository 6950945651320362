//! The screens of the dialogue: the face so far, the arrows so far, what was said, the question; 24 lines at most.

use quarterturn_entry::quantity::Unit;
use quarterturn_entry::shorthand::printed;
use quarterturn_geometry::{Lean, Offset, Point};
use quarterturn_journal::ShotEntry;
use quarterturn_tuning::Hit;

use super::arrow::{Arrow, Said};
use super::{Dialogue, Stage};
use crate::screens::{Sketched, sketch};
use crate::wording::{Ruler, Table, mark, paragraph, tail, turn};

/// So many arrows are shown in words, the last ones.
const SHOWN: usize = 6;

/// So many lines of a card are shown.
const CARD: usize = 16;

impl Dialogue {
    /// The screen that asks for the next line, below what is `said`.
    pub(super) fn asking(&self, said: &str) -> String {
        let mut blocks = Vec::new();
        match self.stage {
            Stage::Marks => blocks.push(self.card()),
            // What is said takes the place of the face: both would not fit.
            Stage::Arrows | Stage::Confirm => {
                if said.lines().count() <= 3 {
                    blocks.extend(self.face());
                }
                blocks.extend(self.table());
            }
        }
        blocks.extend((!said.is_empty()).then(|| said.to_owned()));
        blocks.push(self.question());
        blocks.join("\n\n")
    }

    /// The end that was asked for.
    fn card(&self) -> String {
        let mut table = Table::new(["shot", "shaft", "mark at", ""]);
        for (arrow, number) in self.arrows.iter().zip(1..).take(CARD) {
            let index = arrow.index().filter(|_| !arrow.is_reference);
            let turned = arrow.before.zip(index).and_then(|(from, to)| turn(from, to));
            let turned = turned.map_or_else(String::new, |turned| format!("turned {turned}"));
            let mark = index.map_or_else(|| "-".to_owned(), mark);
            table.row([format!("{number:>4}"), arrow.shot.shaft.clone(), mark, turned]);
        }
        let lines: Vec<String> = table.lines().collect();
        format!("The end that was asked for:\n\n{}", lines.join("\n"))
    }

    fn face(&self) -> Option<String> {
        let hits: Vec<_> =
            self.shown().filter_map(|shot| hit(&shot).map(|hit| (shot.shaft, hit))).collect();
        let arrows: Vec<_> = hits.iter().map(|(name, hit)| Sketched::new(name, hit)).collect();
        let lines = sketch(&arrows, Ruler::new(self.unit));
        (!lines.is_empty()).then(|| lines.join("\n"))
    }

    /// The last arrows in words.
    fn table(&self) -> Option<String> {
        let ruler = Ruler::new(self.unit);
        let shots: Vec<_> = self.shown().collect();
        let mut table = Table::new(["shaft", "mark at", "hit", "tail", "typed"]);
        for shot in shots.iter().skip(shots.len().saturating_sub(SHOWN)) {
            let index =
                self.arrow_of(shot).and_then(|arrow| arrow.index().filter(|_| !arrow.is_reference));
            let read = hit(shot);
            let typed = words(&[ShotEntry { index_deg: None, ..self.as_typed(shot) }], self.unit);
            let noted: Vec<&str> =
                shot.call.iter().chain(&shot.flags).map(String::as_str).collect();
            let hit = read.map_or_else(|| noted.join(", "), |hit| ruler.hit(hit.at.from_spot()));
            let tail = read.map_or_else(String::new, |hit| tail(hit.lean));
            table.row([
                shot.shaft.clone(),
                index.map_or_else(|| "-".to_owned(), mark),
                hit,
                tail,
                typed,
            ]);
        }
        let lines: Vec<String> =
            table.lines().map(|line| line.chars().take(80).collect()).collect();
        (lines.len() > 1).then(|| lines.join("\n"))
    }

    fn question(&self) -> String {
        let asked = self.arrows.iter().find(|arrow| arrow.said == Said::Nothing);
        match (self.stage, asked) {
            (Stage::Marks, _) => {
                "Marks set as on the card? Enter: yes; no: none was turned; or what differs,\n\
                for example 7 i11. ? shows what can be typed.\n> "
                    .to_owned()
            }
            (Stage::Arrows, Some(arrow)) => {
                let place =
                    self.arrows.iter().filter(|arrow| arrow.said != Said::Nothing).count() + 1;
                let index = arrow.index().filter(|_| !arrow.is_reference);
                let mark =
                    index.map_or_else(String::new, |index| format!(", mark at {}", mark(index)));
                format!("{place} of {}: {}{mark}> ", self.arrows.len(), arrow.shot.shaft)
            }
            (Stage::Arrows, None) => {
                "An arrow by its name, for example 7 r31u8tl2; Enter alone when that was all;\nstop leaves.\n> "
                    .to_owned()
            }
            (Stage::Confirm, _) => {
                let shots = self.shown().count();
                paragraph(
                    "",
                    &format!(
                        "Enter records {}; an arrow by its name puts it right; stop leaves.",
                        crate::wording::count(shots, "shot")
                    ),
                ) + "\n> "
            }
        }
    }

    /// The shots that were said, as they would be recorded.
    fn shown(&self) -> impl Iterator<Item = ShotEntry> {
        let end = self.end().unwrap_or_default();
        end.shots.into_iter().map(ShotEntry::derived)
    }

    fn arrow_of(&self, shot: &ShotEntry) -> Option<&Arrow> {
        self.arrows.iter().find(|arrow| arrow.shot.shaft == shot.shaft)
    }

    fn as_typed(&self, shot: &ShotEntry) -> ShotEntry {
        self.arrow_of(shot).map(|arrow| arrow.shot.clone()).unwrap_or_default()
    }
}

/// What was typed of a shot, without its name.
fn words(shots: &[ShotEntry], unit: &'static Unit) -> String {
    let printed = printed(shots, unit);
    printed.split_once(' ').map_or_else(String::new, |(_, words)| words.to_owned())
}

/// Where a shot hit and how it leaned.
fn hit(shot: &ShotEntry) -> Option<Hit> {
    let (x_mm, y_mm) = shot.x_mm.zip(shot.y_mm)?;
    let lean = shot.lean_x_deg.zip(shot.lean_y_deg);
    Some(Hit {
        at: Point::SPOT + Offset::new(x_mm, y_mm),
        lean: lean.map(|(x_deg, y_deg)| Lean::from_degrees(x_deg, y_deg)),
        read_sd: None,
        lean_sd: None,
    })
}
