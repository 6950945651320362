//! The fourth mark, where an arrow, a shadow or a hole spoils it: from three others, and from what is left of it.

use nalgebra::{Matrix2, Vector2};
use quarterturn_geometry::{Homography, Mark, Millimetres, Offset, Pixel, Point};

use crate::candidate::Candidate;
use crate::lines::Lines;
use crate::look::Look;
use crate::set::slope;
use crate::{Corner, Dot};

/// Steps of the search for the view in which three marks are round.
const STEPS: usize = 12;
/// How little the three may then be round, as a root mean square of shares: more are not three of one face.
const UNROUND: f64 = 0.16;
/// The same where the four are taken for a parallelogram, which a face seen slantwise nearly is.
const FAR_FROM_ROUND: f64 = 1.0;
/// Steps by the lines of the grid.
const BY_LINES: usize = 6;
/// How far round its guessed place the mark is looked for, and how finely, mm.
const SEARCH: [(f64, f64); 3] = [(9.0, 0.75), (1.0, 0.25), (0.25, 0.0625)];
/// The least correlation of what is there with a mark.
const ALIKE: f64 = 0.5;
/// How much less any place must be like a mark that is farther from it than this.
const CLEARLY: f64 = 0.08;
const ELSEWHERE_MM: f64 = 3.0;

/// Three marks at their corners, and the corner that is missing.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Three<'a> {
    /// The marks.
    pub marks: [(Corner, &'a Candidate); 3],
    /// The missing corner.
    pub missing: Corner,
}

impl Three<'_> {
    /// Where the fourth mark is and the view of all four: by what is left of it, or by the lines of the grid.
    pub fn fourth(&self, look: &Look, spacing: Millimetres) -> Option<(Pixel, Homography)> {
        let guess = self.guess(spacing)?;
        let seen = self.seen(look, &guess, spacing);
        let mut pixel = seen.or_else(|| guess.pixel_of(self.missing.point(spacing)))?;
        if seen.is_none() {
            for _ in 0..BY_LINES {
                pixel = self.by_lines(look, pixel, spacing)?;
            }
        }
        Some((pixel, self.view(pixel, spacing)?))
    }

    /// Where enough of the mark is seen to be told.
    fn seen(&self, look: &Look, guess: &Homography, spacing: Millimetres) -> Option<Pixel> {
        let mut best = (self.missing.point(spacing), f64::MIN);
        for (pass, (reach_mm, step_mm)) in SEARCH.into_iter().enumerate() {
            let like = |place| Some((place, self.likeness(look, guess, place)?));
            let tried: Vec<_> = around(best.0, reach_mm, step_mm).filter_map(like).collect();
            best = tried.iter().copied().max_by(|one, other| one.1.total_cmp(&other.1))?;
            let is_elsewhere = |place: &Point| (*place - best.0).length().mm() > ELSEWHERE_MM;
            let elsewhere = tried.iter().filter(|(place, _)| is_elsewhere(place));
            let next = elsewhere.map(|(_, likeness)| *likeness).fold(0.0, f64::max);
            if pass == 0 && (best.1 < ALIKE || best.1 < next + CLEARLY) {
                return None;
            }
        }
        guess.pixel_of(best.0)
    }

    /// Where the fourth mark is by where the lines run, one Gauss-Newton step on from `pixel`.
    fn by_lines(&self, look: &Look, pixel: Pixel, spacing: Millimetres) -> Option<Pixel> {
        let view = self.view(pixel, spacing)?;
        let moved = [(1.0, 0.0), (0.0, 1.0)].map(|(x_px, y_px)| {
            self.view(Pixel::new(pixel.x_px + x_px, pixel.y_px + y_px), spacing)
        });
        let [across, down] = moved;
        let (across, down) = (across?, down?);
        let (mut normal, mut right) = (Matrix2::zeros(), Vector2::zeros());
        for piece in Lines::of(look, &view, spacing).0 {
            let at = view.pixel_of(piece.point)?;
            let slope =
                |moved: &Homography| Some(piece.across_mm(moved.point_at(at)? - piece.point));
            let slopes = Vector2::new(slope(&across)?, slope(&down)?);
            // What is far off is the edge of a shaft or a shadow.
            let weight = 1.0 / (1.0 + piece.off_mm * piece.off_mm);
            normal += slopes * slopes.transpose() * weight;
            right -= slopes * piece.off_mm * weight;
        }
        let step = normal.try_inverse()? * right;
        Some(Pixel::new(pixel.x_px + step.x, pixel.y_px + step.y))
    }

    fn view(&self, fourth: Pixel, spacing: Millimetres) -> Option<Homography> {
        let mark = |corner: Corner| {
            let known = self.marks.iter().find(|(known, _)| *known == corner);
            let pixel = known.map_or(fourth, |(_, one)| Pixel::new(one.middle.x, one.middle.y));
            Mark { pixel, point: corner.point(spacing) }
        };
        Homography::of_marks(&Corner::ALL.map(mark)).ok()
    }

    /// The view in which the three lie where they should and are as round and large as printed, by Gauss-Newton steps
    /// over the pixel of the fourth.
    fn guess(&self, spacing: Millimetres) -> Option<Homography> {
        let middle = |corner: Corner| {
            let known = self.marks.iter().find(|(known, _)| *known == corner);
            known.map(|(_, one)| one.middle)
        };
        let at = Corner::ALL.iter().position(|corner| *corner == self.missing)?;
        let beside = |by: usize| middle(Corner::ALL[(at + by) % 4]);
        let mut pixel = beside(1)? + beside(3)? - beside(2)?;
        for step in 0..STEPS {
            let here = self.unround(pixel, spacing)?;
            if step == 0 && rms(&here) > FAR_FROM_ROUND {
                return None;
            }
            let step_px = self.marks[0].1.radius() / 20.0;
            let slope = |way: Vector2<f64>| {
                let there = self.unround(pixel + way * step_px, spacing)?;
                Some(std::array::from_fn::<f64, 9, _>(|k| (there[k] - here[k]) / step_px))
            };
            let slopes = [slope(Vector2::x())?, slope(Vector2::y())?];
            let dot = |a: &[f64; 9], b: &[f64; 9]| a.iter().zip(b).map(|(a, b)| a * b).sum::<f64>();
            let [across, down] = &slopes;
            let normal = Matrix2::new(
                dot(across, across),
                dot(across, down),
                dot(across, down),
                dot(down, down),
            );
            let right = Vector2::new(dot(across, &here), dot(down, &here));
            pixel -= normal.try_inverse()? * right;
        }
        let left = self.unround(pixel, spacing)?;
        let is_one = rms(&left) < UNROUND;
        is_one.then(|| self.view(Pixel::new(pixel.x, pixel.y), spacing))?
    }

    /// By how much the size of the three, along each axis of the face, differs at most from the printed one, as a share.
    pub fn unlike(&self, view: &Homography) -> Option<f64> {
        let missed = self.unround_in(view)?;
        // The spread goes with the square of the size.
        Some(missed.iter().map(|missed| missed.abs() / 2.0).fold(0.0, f64::max))
    }

    /// What the spreads of the three miss on the face, as shares of what they should be.
    fn unround(&self, fourth: Vector2<f64>, spacing: Millimetres) -> Option<[f64; 9]> {
        self.unround_in(&self.view(Pixel::new(fourth.x, fourth.y), spacing)?)
    }

    fn unround_in(&self, view: &Homography) -> Option<[f64; 9]> {
        let mut missed = [0.0; 9];
        for ((_, one), missed) in self.marks.iter().zip(missed.chunks_exact_mut(3)) {
            let slope = slope(view, Pixel::new(one.middle.x, one.middle.y))?;
            let share = slope * one.spread * slope.transpose() * (4.0 / Dot::WHITE.mm().powi(2));
            missed.copy_from_slice(&[share.m11 - 1.0, share.m22 - 1.0, share.m12]);
        }
        Some(missed)
    }

    /// The correlation of the picture with a mark at a place of the face.
    fn likeness(&self, look: &Look, view: &Homography, place: Point) -> Option<f64> {
        let dot_mm = self.missing.dot().radius().mm();
        let (white_mm, mark_mm) = (Dot::WHITE.mm(), Dot::MARK.mm());
        let circles = [
            (dot_mm * 0.5, 8, 0.0),
            (f64::midpoint(dot_mm, white_mm), 16, 1.0),
            (white_mm - 0.4, 16, 1.0),
            (white_mm + 0.5, 16, 0.0),
            (mark_mm - 0.5, 16, 0.0),
            (mark_mm + 0.6, 16, 1.0),
        ];
        let mut sums = Correlation::default();
        for (radius_mm, count, printed) in circles {
            for k in 0..count {
                let (sin, cos) =
                    (f64::from(k) / f64::from(count) * std::f64::consts::TAU).sin_cos();
                let at = place + Offset::new(cos, sin) * radius_mm;
                sums.add(printed, look.at(view.pixel_of(at)?)?);
            }
        }
        sums.value()
    }
}

fn rms(missed: &[f64; 9]) -> f64 {
    (missed.iter().map(|one| one * one).sum::<f64>() / 9.0).sqrt()
}

/// The places of a square lattice round about one.
fn around(middle: Point, reach_mm: f64, step_mm: f64) -> impl Iterator<Item = Point> {
    #[expect(clippy::cast_possible_truncation, reason = "a few steps")]
    let steps = (reach_mm / step_mm).round() as i32;
    let offsets = move |k: i32| f64::from(k) * step_mm;
    (-steps..=steps).flat_map(move |x| {
        (-steps..=steps).map(move |y| middle + Offset::new(offsets(x), offsets(y)))
    })
}

/// Sums for the correlation of two lists.
#[derive(Default)]
struct Correlation {
    count: f64,
    sums: [f64; 2],
    squares: [f64; 2],
    product: f64,
}

impl Correlation {
    fn add(&mut self, one: f64, other: f64) {
        self.count += 1.0;
        self.sums = [self.sums[0] + one, self.sums[1] + other];
        self.squares = [self.squares[0] + one * one, self.squares[1] + other * other];
        self.product += one * other;
    }

    fn value(&self) -> Option<f64> {
        let about = |square: f64, one: f64, other: f64| square - one * other / self.count;
        let [one, other] = self.sums;
        let both = about(self.squares[0], one, one) * about(self.squares[1], other, other);
        (both > 0.0).then(|| about(self.product, one, other) / both.sqrt())
    }
}
