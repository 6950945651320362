//! Which shafts can be fletched, and where their vanes go.

use quarterturn_bench::Vanes;
use quarterturn_geometry::{Index, Millimetres};
use quarterturn_tuning::{Advice, ShaftReport, ShaftState, Verdict};

use crate::args::{VaneAngle, VanesArgs};
use crate::commands::length;
use crate::failure::Failure;

/// What is to be glued on.
#[derive(Clone, Copy)]
pub struct VanesAsked {
    pub vanes: Vanes,
    /// Where the cock vane is to stand on the string.
    pub cock: Index,
    pub angle: Option<VaneAngle>,
    /// How long the wrap under them is.
    pub wrap: Option<Millimetres>,
}

impl VanesAsked {
    /// Reads what was typed.
    pub fn read(args: &VanesArgs) -> Result<Self, Failure> {
        let wrap = args.wrap.as_ref().map(|text| length("--wrap", text, None)).transpose()?;
        Ok(Self {
            vanes: if args.vanes == Vanes::Four.count() { Vanes::Four } else { Vanes::Three },
            cock: Index::from_hour(f64::from(args.cock.unwrap_or(args.rest.cock()))),
            angle: args.vane_angle,
            wrap,
        })
    }
}

/// A dozen before it is fletched.
pub struct Fletching<'a> {
    pub asked: VanesAsked,
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
    pub fn of(advice: &'a Advice, asked: VanesAsked) -> Self {
        let mut fletching = Self {
            asked,
            kept: Vec::new(),
            open: Vec::new(),
            retired: Vec::new(),
            fletched: Vec::new(),
        };
        for report in &advice.shafts {
            match report.verdict {
                _ if report.state == ShaftState::Fletched => fletching.fletched.push(report),
                Verdict::Keep => {
                    let from_mark = asked.vanes.from_mark(report.index, asked.cock).collect();
                    fletching.kept.push(Kept { report, from_mark });
                }
                Verdict::Open(_) => fletching.open.push(report),
                Verdict::Retire(_) => fletching.retired.push(report),
            }
        }
        fletching
    }
}
