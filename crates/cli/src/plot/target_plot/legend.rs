//! What the marks of the target plot mean; the verdicts are explained by the table.

use quarterturn_geometry::{Angle, Lean};
use quarterturn_tuning::{OpenReason, RetireReason, Verdict};

use super::core::Core;
use super::face::{Face, LEVEL};
use super::glyphs;
use super::hits::HitKind;
use crate::plot::block::{Block, INNER_MM};
use crate::plot::canvas::Canvas;
use crate::plot::paper_box::PaperBox;
use crate::plot::paper_ellipse::PaperEllipse;
use crate::plot::paper_point::PaperPoint;
use crate::plot::scale::Scale;
use crate::plot::segment::Segment;
use crate::plot::shape::{Anchor, PLAIN};
use crate::plot::text_width::MIDDLE;
use crate::wording::count;

const TEXT_MM: f64 = 3.3;
const ROW_MM: f64 = 4.6;
const COLUMNS: usize = 2;
const SAMPLE_MM: f64 = 9.0;
/// The tail of the sample.
const TAIL_DEG: f64 = 3.0;

/// The marks that occur, with their meaning.
pub struct Legend {
    entries: Vec<Entry>,
}

#[derive(Debug)]
struct Entry {
    sample: Sample,
    meaning: String,
}

#[derive(Clone, Copy, Debug)]
enum Sample {
    Bar(f64),
    Reference,
    Spot,
    Tolerance,
    Backdrop,
    Region,
    Common,
    Hit(HitKind),
    Far,
    Outside,
    Frame,
    First,
    Way,
    Shaft(Verdict),
}

impl Legend {
    /// The legend of a face.
    pub fn of(face: &Face) -> Self {
        let scale = face.scale(PaperPoint::default());
        let entries = places(face, scale).into_iter().chain(shots(face, scale));
        let step = face.ticks(scale).step;
        let bar = Entry::new(Sample::Bar(scale.length_mm(step)), face.ruler.read(step));
        Self { entries: entries.flatten().chain([bar]).collect() }
    }

    /// The legend of before and after.
    pub fn of_before_and_after(tolerance: &str) -> Self {
        let entries = [
            Entry::new(Sample::Reference, "fletched reference"),
            Entry::new(Sample::Tolerance, format!("tolerance, {tolerance}")),
            Entry::new(Sample::First, "first hit, the mark as built"),
            Entry::new(Sample::Hit(HitKind::Other), "last hit at the index judged"),
            Entry::new(Sample::Way, "from the first hit to the mean now"),
            Entry::new(Sample::Shaft(Verdict::Keep), "the mean: keep"),
            Entry::new(Sample::Shaft(Verdict::Open(OpenReason::NotShot)), "the mean: open"),
            Entry::new(Sample::Shaft(Verdict::Retire(RetireReason::Lost)), "the mean: retire"),
        ];
        Self { entries: entries.into() }
    }

    /// Adds what the regions are.
    pub fn add_region(&mut self) {
        self.entries.push(Entry::new(Sample::Region, format!("{} of the mean now", level())));
    }

    fn rows(&self) -> usize {
        self.entries.len().div_ceil(COLUMNS)
    }
}

/// "90 % region".
fn level() -> String {
    format!("{} % region", (LEVEL * 100.0).round())
}

/// The reference, the tolerance, the spot and what is estimated.
fn places(face: &Face, scale: Scale) -> [Option<Entry>; 6] {
    let reference = match face.hits.reference_hits() {
        0 => "fletched reference".to_owned(),
        n => format!("fletched reference, {}", count(n, "hit")),
    };
    let tolerance = format!("tolerance, {}", face.ruler.read(face.tolerance));
    let level = level();
    let spot = face.hits.spot().filter(|&spot| scale.shows(spot));
    [
        Some(Entry::new(Sample::Reference, reference)),
        Some(Entry::new(Sample::Tolerance, tolerance)),
        face.backdrop.name().map(|name| Entry::new(Sample::Backdrop, name)),
        spot.map(|_| Entry::new(Sample::Spot, "spot aimed at, on average")),
        face.shafts
            .first()
            .map(|_| Entry::new(Sample::Region, format!("{level} of a shaft's mean"))),
        face.common.map(|_| Entry::new(Sample::Common, format!("common offset, {level}"))),
    ]
}

/// The hits of each kind, and what lies outside.
fn shots(face: &Face, scale: Scale) -> [Option<Entry>; 6] {
    let tail = format!("hit, its tail {TAIL_DEG} deg high");
    let hit = |kind: HitKind, meaning: &str| {
        (face.hits.count(kind) > 0).then(|| Entry::new(Sample::Hit(kind), meaning))
    };
    let mut shown = face.hits.marks.iter().map(|hit| hit.at);
    let mut shafts = face.shafts.iter().map(|report| report.miss.mean);
    let mut drawn = face.hits.marks.iter().filter(|hit| scale.shows(hit.at));
    let far = drawn.any(|hit| face.is_far(hit));
    let outside = !shown.all(|at| scale.shows(at)) || !shafts.all(|at| scale.shows(at));
    [
        hit(HitKind::Judged, &tail),
        hit(HitKind::Other, "at another index, or earlier"),
        hit(HitKind::LeftOut, "left out of the estimates"),
        far.then(|| Entry::new(Sample::Far, "far from its other hits there")),
        outside.then(|| Entry::new(Sample::Outside, "outside, with its distance")),
        Core::of(face).map(|_| Entry::new(Sample::Frame, "drawn larger below, with names")),
    ]
}

impl Entry {
    fn new(sample: Sample, meaning: impl Into<String>) -> Self {
        Self { sample, meaning: meaning.into() }
    }
}

impl Block for Legend {
    fn height_mm(&self) -> f64 {
        ROW_MM * self.rows() as f64
    }

    /// Column by column.
    fn draw(&self, canvas: &mut Canvas, corner: PaperPoint) {
        for (column, entries) in self.entries.chunks(self.rows().max(1)).enumerate() {
            let mut at = corner.moved(column as f64 * INNER_MM / COLUMNS as f64, -ROW_MM / 2.0);
            for Entry { sample, meaning } in entries {
                let width_mm = sample.draw(canvas, at);
                let text = at.moved(width_mm, -MIDDLE * TEXT_MM);
                canvas.text(PLAIN, text, Anchor::Start, TEXT_MM, meaning);
                at = at.moved(0.0, -ROW_MM);
            }
        }
    }
}

impl Sample {
    /// Draws it to the right of `at` and says how much room it took, mm.
    fn draw(self, canvas: &mut Canvas, at: PaperPoint) -> f64 {
        let middle = at.moved(SAMPLE_MM / 2.0 - 1.0, 0.0);
        match self {
            Self::Bar(length_mm) => {
                glyphs::bar(canvas, at, length_mm);
                return (length_mm + 2.0).max(SAMPLE_MM);
            }
            Self::Reference => glyphs::reference(canvas, middle),
            Self::Spot => glyphs::spot(canvas, middle),
            Self::Tolerance => canvas.circle("tolerance", middle, 1.7),
            Self::Backdrop => canvas.circle("ring-line", middle, 1.9),
            Self::Region => canvas.ellipse("region open", sample_region(middle)),
            Self::Common => {
                canvas.ellipse("region common", sample_region(middle));
                glyphs::common(canvas, middle);
            }
            Self::Hit(kind) => {
                let tail = (kind == HitKind::Judged).then(|| Lean::from_degrees(0.0, TAIL_DEG));
                let down_mm = if tail.is_some() { 1.4 } else { 0.0 };
                glyphs::hit(canvas, kind, middle.moved(0.0, -down_mm), tail);
            }
            Self::First => glyphs::first(canvas, middle),
            Self::Way => {
                let [from, to] = [-3.0, 3.0].map(|right_mm| middle.moved(right_mm, 0.0));
                canvas.line("way", Segment { from, to });
            }
            Self::Shaft(verdict) => glyphs::small_shaft(canvas, verdict, middle),
            Self::Far => {
                glyphs::hit(canvas, HitKind::Judged, middle, None);
                glyphs::far(canvas, middle);
            }
            Self::Frame => canvas.rectangle("frame", PaperBox::around(middle, 5.2, 3.0)),
            Self::Outside => glyphs::outward(canvas, "judged", middle, Angle::from_degrees(90.0)),
        }
        SAMPLE_MM
    }
}

fn sample_region(centre: PaperPoint) -> PaperEllipse {
    let orientation = Angle::from_degrees(90.0);
    PaperEllipse { centre, semi_major_mm: 3.2, semi_minor_mm: 1.8, orientation }
}
