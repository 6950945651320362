//! The named marks of the target plot.

use quarterturn_geometry::Offset;

use super::face::Face;
use super::wording;
use crate::plot::layout::Layout;
use crate::plot::named_mark::{Look, NamedMark, short};
use crate::plot::scale::Scale;
use crate::wording::verdict;

/// The shafts and what lies outside, each with a place for its name.
pub fn layout(face: &Face, scale: Scale) -> Layout {
    let marks: Vec<NamedMark> = shafts(face, scale).chain(strays(face, scale)).collect();
    let common = face.common.map(|common| common.mean);
    let places = [Offset::ZERO].into_iter().chain(common).map(|at| scale.point(at));
    let shown = face.hits.marks.iter().filter(|hit| scale.shows(hit.at));
    let hits = shown.map(|hit| scale.point(hit.at)).collect();
    Layout::of(marks, places, hits, scale.area())
}

fn shafts<'a>(face: &'a Face, scale: Scale) -> impl Iterator<Item = NamedMark> + 'a {
    face.shafts.iter().map(move |report| {
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
    })
}

fn strays<'a>(face: &'a Face, scale: Scale) -> impl Iterator<Item = NamedMark> + 'a {
    face.hits.marks.iter().filter(move |hit| !scale.shows(hit.at)).map(move |hit| {
        let (name, told) = (short(&hit.shaft), face.told(hit));
        NamedMark::outside(scale, hit.at, hit.kind.class(), &name, told, face.ruler)
    })
}
