//! Whether what was measured on the bench goes with the index that was found at the butt.

use quarterturn_geometry::Index;
use quarterturn_journal::{BenchMeasures, State};
use quarterturn_statistics::{Sample, SharedTurn, holm};
use quarterturn_tuning::{Advice, ShaftReport, Verdict};

use super::spine;

/// Of fewer shafts nothing is said: of four, no order is rare enough to convince.
pub const FEWEST_TURNED: usize = 5;

/// The orders that are drawn are always the same, so that the answer is.
const SEED: u64 = 1;

/// A side that the bench can name.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BenchSide {
    /// It has its like half a turn away.
    Stiff,
    Heavy,
    Crooked,
}

/// What a side says of the index.
pub struct Predicted {
    pub side: BenchSide,
    /// Kept shafts that have it.
    pub kept: usize,
    /// Of those, the ones whose mark was tried elsewhere than it stood at first: their index was found.
    pub turned: usize,
    /// The test, with enough of them.
    pub found: Option<Found>,
}

/// The test of one side.
pub struct Found {
    /// Where the side stands on the string, the mark at its index; of a stiff side also half a turn away.
    pub stands: Option<Index>,
    /// How well they agree: 1 where all stand alike.
    pub resultant_length: f64,
    /// The probability of agreeing as well by chance, for all sides that were looked at together.
    pub by_chance: f64,
}

impl BenchSide {
    const ALL: [Self; 3] = [Self::Stiff, Self::Heavy, Self::Crooked];

    /// The word for it.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Stiff => "stiff side",
            Self::Heavy => "heavy side",
            Self::Crooked => "crooked end",
        }
    }

    /// Clockwise from the mark, as seen from the nock.
    pub fn of(self, measures: &BenchMeasures) -> Option<Index> {
        match self {
            Self::Stiff => {
                let found = || spine(measures).and_then(|round| round.stiff_side);
                measures.stiff_side_deg.map(Index::from_degrees).or_else(found)
            }
            Self::Heavy => measures.heavy_side_deg.map(Index::from_degrees),
            Self::Crooked => measures.crooked_side_deg.map(Index::from_degrees),
        }
    }

    /// How often the side comes round in a turn.
    const fn fold(self) -> f64 {
        match self {
            Self::Stiff => 2.0,
            Self::Heavy | Self::Crooked => 1.0,
        }
    }
}

/// Every side that some kept shaft has.
pub fn predicted(advice: &Advice, state: &State) -> Vec<Predicted> {
    let kept: Vec<&ShaftReport> =
        advice.shafts.iter().filter(|report| report.verdict == Verdict::Keep).collect();
    let of = |side: BenchSide| {
        let with: Vec<(&ShaftReport, Index)> = kept
            .iter()
            .filter_map(|report| Some((*report, side.of(&state.measures(&report.shaft))?)))
            .collect();
        let turned: Vec<_> = with.iter().filter(|(report, _)| report.turns > 0).copied().collect();
        let enough = turned.len() >= FEWEST_TURNED;
        let found = if enough { side.found(&turned) } else { None };
        (!with.is_empty()).then_some(Predicted {
            side,
            kept: with.len(),
            turned: turned.len(),
            found,
        })
    };
    adjusted(BenchSide::ALL.into_iter().filter_map(of).collect())
}

impl BenchSide {
    /// The mark at its index, a side that stands s clockwise from it stands at index + s: that is the turn from −s to
    /// the index.
    fn found(self, turned: &[(&ShaftReport, Index)]) -> Option<Found> {
        let fold = self.fold();
        let angle = |index: Index| fold * index.angle().radians();
        let sides = turned.iter().map(|(_, side)| -angle(*side)).collect();
        let indices = turned.iter().map(|(report, _)| angle(report.index)).collect();
        let (sides, indices) = (Sample::new(sides).ok()?, Sample::new(indices).ok()?);
        let shared = SharedTurn::of(&sides, &indices, SEED).ok()?;
        let stands =
            shared.turn.direction_rad.map(|rad| Index::from_degrees(rad.to_degrees() / fold));
        Some(Found {
            stands,
            resultant_length: shared.turn.resultant_length,
            by_chance: shared.test.p_value,
        })
    }
}

/// The same, each probability allowing for how many sides were looked at.
fn adjusted(mut predicted: Vec<Predicted>) -> Vec<Predicted> {
    let tested = || predicted.iter().filter_map(|one| Some(one.found.as_ref()?.by_chance));
    if let Ok(by_chance) = holm(&tested().collect::<Vec<_>>()) {
        let found = predicted.iter_mut().filter_map(|one| one.found.as_mut());
        for (found, by_chance) in found.zip(by_chance) {
            found.by_chance = by_chance;
        }
    }
    predicted
}
