//! Where the labels go: beside their marks, never over one another, tied to them by short lines.

use std::f64::consts::TAU;

use super::paper_box::PaperBox;
use super::paper_point::PaperPoint;
use super::segment::Segment;

/// Distances from a mark to its label that are tried, mm; near ones first.
const GAPS_MM: [f64; 18] = [
    2.8, 4.0, 5.5, 7.0, 9.0, 11.0, 13.5, 16.5, 20.0, 24.0, 29.0, 35.0, 42.0, 50.0, 60.0, 72.0,
    88.0, 110.0,
];
/// Directions that are tried at each distance.
const DIRECTIONS: u8 = 24;
/// After a first round each label is placed again among the others this many times.
const ROUNDS: usize = 4;
/// Air between two labels, mm.
const AIR_MM: f64 = 0.3;
/// What a label costs beside its distance in mm: for each hit it covers, each line it crosses or lies on, each
/// mark its own line runs through, each other mark that is nearer to it, and for pointing inward.
const HIT: f64 = 1.5;
const CROSSING: f64 = 15.0;
const MARK: f64 = 8.0;
const NEARER: f64 = 4.0;
const INWARD: f64 = 1.0;
/// What a label costs that lies among marks that stand close together.
const CROWD: f64 = 14.0;

/// A mark that wants a label of some size.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wish {
    /// The mark.
    pub mark: PaperPoint,
    /// The label's width, mm.
    pub width_mm: f64,
    /// The label's height, mm.
    pub height_mm: f64,
}

/// The room there is for labels.
#[derive(Clone, Debug, PartialEq)]
pub struct Room {
    /// No label leaves it.
    pub area: PaperBox,
    /// No label covers these.
    pub kept_free: Vec<PaperBox>,
    /// Labels rather do not cover these.
    pub hits: Vec<PaperPoint>,
    /// Where marks stand close together, their names rather stand around them.
    pub crowd: Option<PaperBox>,
}

/// A label that found its place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Label {
    /// What it covers.
    pub area: PaperBox,
    /// From its mark to its edge.
    pub leader: Segment,
}

/// Places for the labels, in the order of `wishes`; nothing where there is no room left for one.
///
/// Each label takes the cheapest free place; then each is placed again among the others, which frees what
/// the first ones took from the last. The same wishes always get the same places.
pub fn place(wishes: &[Wish], room: &Room) -> Vec<Option<Label>> {
    let mut labels: Vec<Option<Label>> = vec![None; wishes.len()];
    let marks: Vec<PaperPoint> = wishes.iter().map(|wish| wish.mark).collect();
    let middle = middle(&marks);
    for _ in 0..=ROUNDS {
        let before = labels.clone();
        for (at, &wish) in wishes.iter().enumerate() {
            let others: Vec<Label> = neighbours(&labels, at).collect();
            let search = Search { wish, middle, room, others: &others, marks: &marks };
            if let Some(label) = labels.get_mut(at) {
                *label = search.best();
            }
        }
        if labels == before {
            break;
        }
    }
    labels
}

fn neighbours(labels: &[Option<Label>], at: usize) -> impl Iterator<Item = Label> {
    let others = labels.iter().enumerate().filter(move |(other, _)| *other != at);
    others.filter_map(|(_, label)| *label)
}

fn middle(marks: &[PaperPoint]) -> PaperPoint {
    let n = marks.len().max(1) as f64;
    let origin = PaperPoint::default();
    let sum = marks.iter().fold(origin, |sum, mark| sum.moved(mark.x_mm, mark.y_mm));
    PaperPoint::new(sum.x_mm / n, sum.y_mm / n)
}

/// The search for one label's place among the others.
struct Search<'a> {
    wish: Wish,
    middle: PaperPoint,
    room: &'a Room,
    others: &'a [Label],
    marks: &'a [PaperPoint],
}

impl Search<'_> {
    fn best(&self) -> Option<Label> {
        let mut best: Option<(f64, Label)> = None;
        for gap_mm in GAPS_MM {
            // Nothing further out can be cheaper than its distance.
            if best.is_some_and(|(cost, _)| cost <= gap_mm) {
                break;
            }
            for label in self.ring(gap_mm).filter(|label| self.is_free(label.area)) {
                let cost = gap_mm + self.cost(label);
                if best.is_none_or(|(lowest, _)| cost < lowest) {
                    best = Some((cost, label));
                }
            }
        }
        best.map(|(_, label)| label)
    }

    /// The places whose edge is about `gap_mm` from the mark.
    fn ring(&self, gap_mm: f64) -> impl Iterator<Item = Label> {
        let Wish { mark, width_mm, height_mm } = self.wish;
        (0..DIRECTIONS).map(move |k| {
            let (sin, cos) = (TAU * f64::from(k) / f64::from(DIRECTIONS)).sin_cos();
            let centre =
                mark.moved(sin * (gap_mm + width_mm / 2.0), cos * (gap_mm + height_mm / 2.0));
            let area = PaperBox::around(centre, width_mm, height_mm);
            Label { area, leader: Segment { from: mark, to: area.nearest(mark) } }
        })
    }

    fn is_free(&self, area: PaperBox) -> bool {
        let airy = area.grown(AIR_MM);
        self.room.area.holds(area)
            && !self.room.kept_free.iter().any(|kept| kept.overlaps(area))
            && !self.others.iter().any(|other| other.area.overlaps(airy))
    }

    fn cost(&self, label: Label) -> f64 {
        let count = |n: usize, price: f64| n as f64 * price;
        let hits = self.room.hits.iter().filter(|&&hit| label.area.has(hit)).count();
        let lines = self.others.iter().filter(|other| tangled(label, **other)).count();
        let near_mark = |mark: PaperPoint| PaperBox::around(mark, 3.0, 3.0);
        let others = || self.marks.iter().filter(|&&mark| mark != self.wish.mark);
        let through = others().filter(|&&mark| label.leader.touches(near_mark(mark))).count();
        let away_mm = |mark: PaperPoint| label.area.nearest(mark).distance_mm(mark);
        let nearer = others().filter(|&&mark| away_mm(mark) < away_mm(self.wish.mark)).count();
        let among = usize::from(self.room.crowd.is_some_and(|crowd| crowd.overlaps(label.area)));
        count(hits, HIT)
            + count(among, CROWD)
            + count(lines, CROSSING)
            + count(through, MARK)
            + count(nearer, NEARER)
            + self.inwardness(label)
    }

    /// From nothing, where the label lies outward of its mark, to twice its price, where it lies inward.
    fn inwardness(&self, label: Label) -> f64 {
        let outward = Segment { from: self.middle, to: self.wish.mark };
        let away = Segment { from: self.wish.mark, to: label.area.centre() };
        let lengths = outward.length_mm() * away.length_mm();
        if lengths > 0.0 { INWARD * (1.0 - outward.dot_mm2(away) / lengths) } else { 0.0 }
    }
}

/// Whether the line of one crosses the line or the label of the other.
fn tangled(a: Label, b: Label) -> bool {
    a.leader.crosses(b.leader) || a.leader.touches(b.area) || b.leader.touches(a.area)
}
