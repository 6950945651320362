//! Where a shaft landed first, and where it lands now.

use quarterturn_geometry::{Index, Offset};
use quarterturn_tuning::{Advice, History, ShaftReport};

use crate::plot::target_plot::hits::{HitKind, HitMark, Hits};

/// One bare shaft.
#[derive(Clone, Copy, Debug)]
pub struct Landing<'a> {
    /// What is known of it.
    pub report: &'a ShaftReport,
    /// Where its mark stood when the journal was begun.
    pub as_built: Index,
    /// Its first counted hit with the mark there.
    pub first: Option<&'a HitMark>,
    /// Its last counted hit at the index that is judged, with the bow as it stands.
    pub last: Option<&'a HitMark>,
    /// Where it lands on average at that index, from the reference; nothing before it was shot.
    pub now: Option<Offset>,
}

/// All bare shafts, in the order of the journal.
pub fn landings<'a>(history: &History, advice: &'a Advice, hits: &'a Hits) -> Vec<Landing<'a>> {
    let wanted = advice.measured_from.at();
    let landing = |report: &'a ShaftReport| {
        let built = history.setup.shafts.iter().find(|(shaft, _)| *shaft == report.shaft);
        // One that joined later is as built where it was shot first.
        let mut own = hits.marks.iter().filter(|hit| hit.shaft == report.shaft);
        let counted = |hit: &&HitMark| hit.kind != HitKind::LeftOut;
        let as_built = built
            .map_or_else(|| own.clone().next().map_or(report.index, |hit| hit.index), |at| at.1);
        Landing {
            report,
            as_built,
            last: own.clone().rfind(|hit| hit.kind == HitKind::Judged),
            first: own.find(|hit| counted(hit) && hit.index.is_at(as_built)),
            now: (report.shots_total > 0).then(|| report.miss.mean + wanted),
        }
    };
    advice.shafts.iter().map(landing).collect()
}
