//! The named marks of the target plot.

use quarterturn_geometry::Offset;
use quarterturn_tuning::ShaftReport;

use super::core::Core;
use super::face::Face;
use super::wording;
use crate::plot::layout::Layout;
use crate::plot::named_mark::{Look, NamedMark, short};
use crate::plot::scale::Scale;
use crate::wording::verdict;

/// The shafts and what lies outside, each with a place for its name; those of the core have theirs there.
pub fn layout(face: &Face, scale: Scale) -> Layout {
    let core = Core::of(face);
    let (within, apart): (Vec<_>, Vec<_>) =
        face.shafts.iter().partition(|report| core.as_ref().is_some_and(|core| core.shows(report)));
    let apart = apart.into_iter().map(|report| named(face, report, scale));
    let marks: Vec<NamedMark> = apart.chain(strays(face, scale)).collect();
    let common = face.common.map(|common| common.mean);
    let within = within.into_iter().map(|report| report.miss.mean);
    let places = [Offset::ZERO].into_iter().chain(common).chain(within);
    let shown = face.hits.marks.iter().filter(|hit| scale.shows(hit.at));
    let hits = shown.map(|hit| scale.point(hit.at)).collect();
    Layout::of(marks, places.map(|at| scale.point(at)), hits, scale)
}

/// A shaft at its mean, or at the edge toward it.
pub fn named(face: &Face, report: &ShaftReport, scale: Scale) -> NamedMark {
    let at = report.miss.mean;
    let miss = face.ruler.miss_bare(at - face.wanted);
    let name = short(&report.shaft);
    let told = format!(
        "{}: {}, {miss} ({})",
        report.shaft,
        wording::verdict(report, face.ruler),
        face.ruler.unit().symbol
    );
    if scale.shows(at) {
        let look = Look::Shaft(report.verdict);
        NamedMark { at: scale.point(at), look, name, told }
    } else {
        NamedMark::outside(scale, at, verdict(report.verdict), &name, told, face.ruler)
    }
}

fn strays<'a>(face: &'a Face, scale: Scale) -> impl Iterator<Item = NamedMark> + 'a {
    face.hits.marks.iter().filter(move |hit| !scale.shows(hit.at)).map(move |hit| {
        let (name, told) = (short(&hit.shaft), face.told(hit));
        NamedMark::outside(scale, hit.at, hit.kind.class(), &name, told, face.ruler)
    })
}
