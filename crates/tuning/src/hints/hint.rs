//! What a journal makes one suspect; nothing is changed for it.

use quarterturn_geometry::{Index, Lean};

use crate::ShaftName;

/// Something to look at: a hint never changes an estimate.
#[derive(Clone, Debug, PartialEq)]
pub enum Hint {
    /// Two shafts look exchanged in one end: each lies and leans where the other should.
    Exchanged {
        /// The two, in the order in which they were entered.
        shafts: [ShaftName; 2],
        /// The end, counted from 1 over all ends of the journal.
        end: usize,
    },
    /// A shot lies where it would with the mark half a turn from where it was recorded.
    UpsideDown {
        /// Which shaft.
        shaft: ShaftName,
        /// The end, counted from 1 over all ends of the journal.
        end: usize,
        /// Where its mark was recorded.
        recorded: Index,
        /// Where its mark seems to have stood.
        seems: Index,
    },
    /// A shaft flies as with its mark at another index: in one shot, or from that shot on.
    Slipped {
        /// Which shaft.
        shaft: ShaftName,
        /// The end in which it begins, counted from 1 over all ends of the journal.
        end: usize,
        /// Where its mark was recorded in the first of these shots.
        recorded: Index,
        /// Where its mark seems to have stood there.
        seems: Index,
        /// How many shots look so, all of the shaft's up to now where they are several.
        shots: usize,
    },
    /// The leans of a shaft do not go with its hits as those of the others do.
    LeanContradicts {
        /// Which shaft.
        shaft: ShaftName,
        /// How its lean differs from what goes with its hits, at `index`.
        differs: Lean,
        /// Standard deviation of that, per axis, degrees.
        sd_deg: f64,
        /// Where its mark stands now.
        index: Index,
        /// How many of its shots have a lean.
        shots: usize,
    },
}

impl Hint {
    /// The shafts it speaks of.
    pub fn shafts(&self) -> &[ShaftName] {
        match self {
            Self::Exchanged { shafts, .. } => shafts,
            Self::UpsideDown { shaft, .. }
            | Self::Slipped { shaft, .. }
            | Self::LeanContradicts { shaft, .. } => std::slice::from_ref(shaft),
        }
    }

    /// The end it speaks of, or in which it begins.
    pub fn end(&self) -> Option<usize> {
        match self {
            Self::Exchanged { end, .. }
            | Self::UpsideDown { end, .. }
            | Self::Slipped { end, .. } => Some(*end),
            Self::LeanContradicts { .. } => None,
        }
    }
}
