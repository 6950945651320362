//! Which shafts can be fletched, and where their vanes go.

use quarterturn_bench::Vanes;
use quarterturn_geometry::Index;
use quarterturn_tuning::{Advice, ShaftReport, ShaftState, Verdict};

/// A dozen before it is fletched.
pub struct Fletching<'a> {
    pub vanes: Vanes,
    /// Where the cock vane is to stand on the string.
    pub cock: Index,
    /// The kept shafts, each with where its vanes go.
    pub kept: Vec<Kept<'a>>,
    pub open: Vec<&'a ShaftReport>,
    pub retired: Vec<&'a ShaftReport>,
    pub fletched: Vec<&'a ShaftReport>,
}

/// A shaft that can be fletched.
pub struct Kept<'a> {
    pub report: &'a ShaftReport,
    /// Each vane, clockwise from the ink mark as seen from behind, the cock vane first.
    pub from_mark: Vec<Index>,
}

impl<'a> Fletching<'a> {
    /// Sorts the shafts by what was said of them.
    pub fn of(advice: &'a Advice, vanes: Vanes, cock: Index) -> Self {
        let mut fletching = Self {
            vanes,
            cock,
            kept: Vec::new(),
            open: Vec::new(),
            retired: Vec::new(),
            fletched: Vec::new(),
        };
        for report in &advice.shafts {
            match report.verdict {
                _ if report.state == ShaftState::Fletched => fletching.fletched.push(report),
                Verdict::Keep => {
                    let from_mark = vanes.from_mark(report.index, cock).collect();
                    fletching.kept.push(Kept { report, from_mark });
                }
                Verdict::Open(_) => fletching.open.push(report),
                Verdict::Retire(_) => fletching.retired.push(report),
            }
        }
        fletching
    }
}
