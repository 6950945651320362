//! An open journal, with what every command asks of it.

use std::path::{Path, PathBuf};

use quarterturn_journal::{Confirmed, Entry, FaceUnit, Journal, Log, Quiver};
use quarterturn_tuning::{
    Advice, Doubt, LeanRelation, StandingOut, Verdict, advise, advise_with_course,
    advise_with_leans, doubts, standing_out,
};

use crate::clock;
use crate::failure::Failure;
use crate::wording::Ruler;
use quarterturn_entry::quantity::Unit;

/// A journal and where it is.
pub struct Opened {
    /// The journal.
    pub journal: Journal,
    /// Its file.
    pub path: PathBuf,
}

impl Opened {
    /// Opens the journal `path`.
    pub fn at(path: &Path) -> Result<Self, Failure> {
        Ok(Self { journal: Journal::open(path)?, path: path.to_owned() })
    }

    /// Opens the journal `path` to add to it: of a long one only what that takes is read.
    pub fn to_add(path: &Path) -> Result<Self, Failure> {
        Ok(Self { journal: Journal::open_to_add(path)?, path: path.to_owned() })
    }

    /// The name of its file.
    pub fn name(&self) -> String {
        self.path.file_name().unwrap_or_default().to_string_lossy().into_owned()
    }

    /// A file beside it: its name without its ending, and what comes after.
    pub fn beside(&self, after: &str) -> PathBuf {
        let stem = self.path.file_stem().unwrap_or_default().to_string_lossy();
        self.path.with_file_name(format!("{stem}{after}"))
    }

    /// Adds an entry, stamped now.
    pub fn append(&mut self, entry: Entry) -> Result<Confirmed, Failure> {
        Ok(self.journal.append(entry, &clock::stamp()?)?)
    }

    /// What the journal says now.
    pub fn advice(&self) -> Advice {
        let state = self.journal.state();
        advise(state.history(), state.policy())
    }

    /// The same with how leans go with misses.
    pub fn advice_with_leans(&self) -> (Advice, Option<LeanRelation>) {
        let state = self.journal.state();
        advise_with_leans(state.history(), state.policy())
    }

    /// The same with the verdicts that stood after each of so many events.
    pub fn advice_with_course(&self, after: &[usize]) -> (Advice, Vec<Vec<Verdict>>) {
        let state = self.journal.state();
        advise_with_course(state.history(), state.policy(), after)
    }

    /// The doubtful shots that its verdicts hang on; this takes a reading of the journal for each.
    pub fn doubts(&self) -> Vec<Doubt> {
        let state = self.journal.state();
        doubts(state.history(), state.policy())
    }

    /// The shots and shafts that stand out.
    pub fn standing_out(&self) -> StandingOut {
        standing_out(self.journal.state().history())
    }

    /// The quiver and its season; this reads every record again.
    pub fn quiver(&self) -> Result<Quiver, Failure> {
        Ok(Quiver::of(&Log::of(self.journal.records()?)))
    }

    /// Says lengths in the unit that the journal's owner likes.
    pub fn ruler(&self) -> Ruler {
        Ruler::new(unit(self.journal.state().unit()))
    }

    /// What has to be said about the file itself.
    pub fn notices(&self) -> Option<String> {
        self.journal.torn().map(|torn| format!("{}: {torn}", self.path.display()))
    }
}

/// The unit in which a face is read.
pub const fn unit(unit: FaceUnit) -> &'static Unit {
    match unit {
        FaceUnit::Millimetres => Unit::MILLIMETRE,
        FaceUnit::Centimetres => Unit::CENTIMETRE,
        FaceUnit::Inches => Unit::INCH,
    }
}
