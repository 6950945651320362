//! What a number rests on, and how much of it there is in a journal.

use quarterturn_tuning::{Advice, ShaftReport};

use crate::opened::Opened;
use crate::wording::count;

/// What a number rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Counted {
    /// The counted shots of each shaft.
    Shafts,
    /// The counted bare shots of all shafts.
    Bow,
    /// Shots of one arrow at one mark.
    Repeated,
    /// The shots of finished arrows.
    Finished,
}

impl Counted {
    const ALL: [Self; 4] = [Self::Shafts, Self::Bow, Self::Repeated, Self::Finished];

    /// How the document says it.
    pub const fn said(self) -> &'static str {
        match self {
            Self::Shafts => "the shots of each shaft that count",
            Self::Bow => "the bare shots that count",
            Self::Repeated => "the shots repeated at one mark",
            Self::Finished => "the shots of finished arrows",
        }
    }

    /// What the document says so.
    pub fn of(said: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|counted| counted.said() == said)
    }

    /// How many there are.
    pub fn told(self, opened: &Opened, advice: &Advice) -> String {
        match self {
            Self::Shafts => of_shafts(advice),
            Self::Bow => {
                let shots = advice.shafts.iter().map(|report| report.shots_total).sum();
                format!("{} of {}", count(shots, "shot"), count(advice.bow.shafts, "shaft"))
            }
            Self::Repeated => advice.archer.spread.map_or_else(
                || "none yet".to_owned(),
                |spread| {
                    format!(
                        "{}, {} degrees of freedom",
                        count(spread.shots, "shot"),
                        spread.degrees_of_freedom
                    )
                },
            ),
            Self::Finished => {
                let groups: Vec<_> = opened.journal.state().groups_beside_this_bow().collect();
                let shots = groups.iter().map(|group| group.shots.len()).sum();
                format!("{} in {}", count(shots, "shot"), count(groups.len(), "group"))
            }
        }
    }
}

/// "shaft 1 has 5, 2 has 3".
fn of_shafts(advice: &Advice) -> String {
    let has = |report: &ShaftReport| format!("{} has {}", report.shaft, report.shots_total);
    format!("shaft {}", advice.shafts.iter().map(has).collect::<Vec<_>>().join(", "))
}
