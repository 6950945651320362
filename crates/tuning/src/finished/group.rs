//! One group of finished arrows.

use std::collections::BTreeMap;

use quarterturn_geometry::Millimetres;

use super::Head;
use crate::{ShaftName, Shot};

/// Finished arrows shot at one distance with one kind of head, each at a spot of its own and measured from it.
#[derive(Clone, Debug, PartialEq)]
pub struct Group {
    /// From the archer to the face.
    pub distance: Millimetres,
    /// What the arrows carried.
    pub head: Head,
    /// Whether this was the first shot of the day.
    pub start: Start,
    /// Which single head each arrow carried, where that is recorded: its own name among heads of one kind.
    pub mounted: BTreeMap<ShaftName, String>,
    /// The shots; their leans are not read.
    pub shots: Vec<Shot>,
}

impl Group {
    /// The single broadhead that an arrow carried, by its own name, where that is recorded.
    pub fn piece(&self, arrow: &ShaftName) -> Option<String> {
        let mounted = self.mounted.get(arrow).cloned();
        mounted.filter(|_| self.head != Head::Field)
    }
}

/// How a group was begun.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub enum Start {
    /// After other shots of the day.
    #[default]
    Warm,
    /// The first shot of the day, before any other: the one that a hunter has.
    Cold,
}
