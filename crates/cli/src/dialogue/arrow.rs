//! An arrow of the end that is being entered.

use quarterturn_geometry::Index;
use quarterturn_journal::ShotEntry;
use quarterturn_tuning::{PlannedShot, Purpose, Roster};

/// An arrow and what was said of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Arrow {
    /// Its shot so far.
    pub shot: ShotEntry,
    /// How far it has come.
    pub said: Said,
    /// Whether the card asked for it.
    pub is_planned: bool,
    /// Whether it is a reference, whose mark is nobody's concern.
    pub is_reference: bool,
    /// Where its mark last stood.
    pub before: Option<Index>,
}

/// What was said of an arrow.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Said {
    /// Nothing: it will be asked for.
    Nothing,
    /// Where it hit, or that it is gone.
    Shot,
    /// That it was not shot.
    NotShot,
}

impl Arrow {
    /// An arrow as the card asks for it, its mark where the card says.
    pub fn planned(shot: &PlannedShot, roster: &Roster) -> Self {
        let before = roster.find(&shot.shaft).map(|standing| standing.index_now);
        let index = match shot.purpose {
            Purpose::Reference => before,
            Purpose::Bare { index, .. } => Some(index),
        };
        Self {
            is_planned: true,
            is_reference: shot.purpose == Purpose::Reference,
            before,
            shot: ShotEntry {
                index_deg: index.map(Index::degrees),
                ..Self::unplanned(shot.shaft.as_str()).shot
            },
            said: Said::Nothing,
        }
    }

    /// An arrow that the card did not ask for; its mark stands where it last stood.
    pub fn unplanned(name: &str) -> Self {
        Self {
            shot: ShotEntry { shaft: name.to_owned(), ..ShotEntry::default() },
            said: Said::Nothing,
            is_planned: false,
            is_reference: false,
            before: None,
        }
    }

    /// Nobody turned its nock.
    pub fn stands_as_before(&mut self) {
        self.shot.index_deg = self.before.map(Index::degrees).or(self.shot.index_deg);
    }

    /// Where its mark stands.
    pub fn index(&self) -> Option<Index> {
        self.shot.index_deg.map(Index::from_degrees)
    }

    /// Whether it is known where it hit, or why that is not known.
    pub fn has_hit(&self) -> bool {
        let gone = |flag: &String| matches!(flag.as_str(), "lost" | "broken");
        self.shot.x_mm.or(self.shot.out_mm).is_some() || self.shot.flags.iter().any(gone)
    }
}
